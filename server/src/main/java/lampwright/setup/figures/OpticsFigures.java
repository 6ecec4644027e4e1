package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.lens.CropBasis;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.lens.FocusedLens;
import lampwright.engine.lens.SensorFormat;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Micrometres;
import lampwright.engine.unit.Millimetres;

/**
 * What camera and lens make of the picture.
 *
 * @param format the sensor or film, held level
 * @param equivalents against 36 by 24 mm, by diagonal, long and short side
 * @param equivalentFNumber with the same depth of field on 36 by 24 mm, by the diagonal
 * @param hyperfocals for each circle of confusion in use, the usual one first
 * @param pixelPitch absent where the pixels are not known
 * @param airyDisc of green light at the marked aperture
 * @param focused what depends on the focused distance; absent where that is not known
 */
public record OpticsFigures(
    SensorFormat format,
    Millimetres focal,
    FNumber aperture,
    List<Equivalent> equivalents,
    FNumber equivalentFNumber,
    Degrees angleAcross,
    Degrees angleUpright,
    Degrees angleDiagonal,
    List<Hyperfocal> hyperfocals,
    Optional<Micrometres> pixelPitch,
    Micrometres airyDisc,
    Optional<Focused> focused) {

  /** What a focal length is worth on 36 by 24 mm. */
  public record Equivalent(CropBasis basis, double crop, Millimetres focal) {}

  /**
   * A circle of confusion, a convention, and the hyperfocal distance that it leads to.
   *
   * @param convention "d/1500", "d/1730", "0.030 mm"
   */
  public record Hyperfocal(String convention, Millimetres circle, Metres distance) {}

  /**
   * What depends on the focused distance.
   *
   * @param known set; or computed, where the lens was taken as focused on the first target
   * @param fieldWidth what the frame takes in at the focused distance
   * @param depths for each circle of confusion in use, the usual one first
   */
  public record Focused(
      FocusedLens lens,
      Known known,
      Metres fieldWidth,
      Metres fieldHeight,
      double magnification,
      FNumber effectiveFNumber,
      Micrometres airyDiscCloseUp,
      List<DepthOfField> depths) {

    public Focused {
      depths = List.copyOf(depths);
    }
  }

  public OpticsFigures {
    equivalents = List.copyOf(equivalents);
    hyperfocals = List.copyOf(hyperfocals);
  }

  /**
   * Asks whether diffraction spreads a point over more than two pixels, so that finer pixels show
   * no more; absent where the pixels are not known.
   */
  public Optional<Boolean> diffractionExceedsTwoPixels() {
    Micrometres disc = focused.map(Focused::airyDiscCloseUp).orElse(airyDisc);
    return pixelPitch.map(pitch -> disc.value() > 2 * pitch.value());
  }

  /** The steps to the figures. */
  public List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    Working f = Working.given("focal length", focal.value(), "mm");
    Working n = Working.given("aperture", aperture.value(), "f-number");
    for (Equivalent equivalent : equivalents) {
      workings.add(
          lens(
              "equivalent focal length by " + words(equivalent.basis()),
              equivalent.focal().value(),
              "mm",
              "f · crop",
              f,
              lens("crop", equivalent.crop(), "", "measure of 36 × 24 mm / measure", sides())));
    }
    workings.add(lens("equivalent f-number", equivalentFNumber.value(), "f-number", "N · crop", n));
    for (Hyperfocal hyperfocal : hyperfocals) {
      workings.add(
          lens(
              "hyperfocal distance, circle " + hyperfocal.convention(),
              hyperfocal.distance().value(),
              "m",
              "f² / (N · c) + f",
              f,
              n,
              Working.given("circle of confusion", hyperfocal.circle().value(), "mm")));
    }
    workings.add(
        lens(
            "angle of view across",
            angleAcross.value(),
            "°",
            "2 · atan(side / 2f)",
            sides()[0],
            f));
    workings.add(
        lens(
            "angle of view upright",
            angleUpright.value(),
            "°",
            "2 · atan(side / 2f)",
            sides()[1],
            f));
    pixelPitch.ifPresent(
        pitch ->
            workings.add(lens("pixel pitch", pitch.value(), "µm", "width / pixels", sides()[0])));
    workings.add(lens("Airy disc", airyDisc.value(), "µm", "2.44 · λ · N", n));
    focused.ifPresent(at -> add(workings, at, f, n));
    return workings;
  }

  private void add(List<Working> workings, Focused at, Working f, Working n) {
    Working s = Working.given("focused distance", at.lens().focus().value(), "m", at.known());
    workings.add(lens("magnification", at.magnification(), "", "f / (s − f)", f, s));
    workings.add(
        lens("effective f-number", at.effectiveFNumber().value(), "f-number", "N · (1 + m)", n));
    workings.add(
        lens("field width", at.fieldWidth().value(), "m", "side · (s − f) / f", sides()[0], s));
    workings.add(
        lens("field height", at.fieldHeight().value(), "m", "side · (s − f) / f", sides()[1], s));
    for (int i = 0; i < at.depths().size(); i++) {
      DepthOfField depth = at.depths().get(i);
      String circle = ", circle " + hyperfocals.get(i).convention();
      Working h =
          Working.given("hyperfocal distance", depth.hyperfocal().value(), "m", Known.COMPUTED);
      workings.add(
          lens(
              "nearest sharp" + circle,
              depth.near().value(),
              "m",
              "s · (H − f) / (H + s − 2f)",
              s,
              h,
              f));
      depth
          .far()
          .ifPresent(
              far ->
                  workings.add(
                      lens(
                          "furthest sharp" + circle,
                          far.value(),
                          "m",
                          "s · (H − f) / (H − s)",
                          s,
                          h,
                          f)));
    }
  }

  private Working[] sides() {
    return new Working[] {
      Working.given("width", format.width().value(), "mm"),
      Working.given("height", format.height().value(), "mm")
    };
  }

  private static String words(CropBasis basis) {
    return switch (basis) {
      case DIAGONAL -> "the diagonal";
      case LONG_SIDE -> "the long side";
      case SHORT_SIDE -> "the short side";
    };
  }

  private static Working lens(
      String quantity, double value, String unit, String formula, Working... parts) {
    return Working.of(quantity, value, unit, formula, Source.THIN_LENS, parts);
  }
}
