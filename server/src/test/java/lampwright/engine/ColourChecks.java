package lampwright.engine;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lampwright.engine.colour.Lab;
import lampwright.engine.colour.LightnessTones;
import lampwright.engine.colour.Oklab;
import lampwright.engine.colour.Srgb;
import lampwright.engine.colour.WhitePoint;
import lampwright.engine.colour.Xyz;

/** How each check value on colours and tones is computed. */
final class ColourChecks {

  private ColourChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry("colour.linear_to_srgb", in -> Srgb.signal(in.number("linear"))),
          entry("colour.srgb_to_linear", in -> Srgb.linear(in.number("srgb"))),
          entry("colour.relative_luminance", ColourChecks::luminance),
          entry(
              "colour.grey_lstar",
              in -> Xyz.lightness(grey((int) in.number("srgb8_grey")).toLinear().luminance())),
          entry("colour.lab_l", in -> lab(in).lightness()),
          entry("colour.lab_a", in -> lab(in).a()),
          entry("colour.lab_b", in -> lab(in).b()),
          entry("colour.oklab_l", in -> oklab(in).lightness()),
          entry("colour.oklab_a", in -> oklab(in).a()),
          entry("colour.oklab_b", in -> oklab(in).b()),
          entry(
              "colour.ciede2000",
              in -> lab(in.numbers("lab_1")).differenceTo(lab(in.numbers("lab_2")))),
          entry("tone.mean_lstar", in -> tones(in).mean()),
          entry("tone.sd_lstar", in -> tones(in).deviation()),
          entry("tone.low_key_share", in -> tones(in).darkShare()));

  private static Object luminance(CheckInputs in) {
    List<Double> bytes = in.numbers("srgb8");
    return Srgb.ofBytes(bytes.get(0).intValue(), bytes.get(1).intValue(), bytes.get(2).intValue())
        .toLinear()
        .luminance();
  }

  private static Srgb grey(int signal) {
    return Srgb.ofBytes(signal, signal, signal);
  }

  private static Xyz xyz(CheckInputs in) {
    List<Double> values = in.numbers("xyz");
    return new Xyz(values.get(0), values.get(1), values.get(2));
  }

  private static Lab lab(CheckInputs in) {
    return xyz(in).toLab(WhitePoint.valueOf(in.text("white")));
  }

  private static Lab lab(List<Double> values) {
    return new Lab(values.get(0), values.get(1), values.get(2));
  }

  private static Oklab oklab(CheckInputs in) {
    return xyz(in).toOklab();
  }

  private static LightnessTones tones(CheckInputs in) {
    return LightnessTones.of(
        in.numbers("lstar").stream().mapToDouble(Double::doubleValue).toArray());
  }
}
