package lampwright.engine;

import static java.util.Map.entry;

import java.util.Map;
import java.util.function.Function;
import lampwright.engine.beam.CandelaFile;
import lampwright.engine.beam.CandelaTable;
import lampwright.engine.beam.Lobe;
import lampwright.engine.beam.Opening;
import lampwright.engine.unit.Degrees;

/** How each check value on beams, grids and photometric files is computed. */
final class BeamChecks {

  private BeamChecks() {}

  static final Map<String, Function<CheckInputs, Object>> FORMULAS =
      Map.ofEntries(
          entry("lobe.m", in -> beam(in, "beam_full_angle_deg").exponent()),
          entry(
              "lobe.intensity",
              in ->
                  in.number("peak_cd")
                      * lobe(in).relativeAt(Math.cos(degrees(in, "theta_deg").toRadians()), 0)),
          entry("lobe.flux", in -> in.number("peak_cd") * lobe(in).solidAngleSr()),
          entry("lobe.full_angle", in -> lobe(in).fullAngleAt(in.number("level")).value()),
          entry(
              "lobe.enclosed_fraction",
              in -> lobe(in).enclosedShare(degrees(in, "half_angle_deg"))),
          entry(
              "lobe.same_flux_gain_stops",
              in ->
                  beam(in, "from_full_angle_deg")
                      .sameFluxGain(beam(in, "to_full_angle_deg"))
                      .value()),
          entry(
              "grid.cutoff_full_angle",
              in -> new Opening.Grid(in.number("depth_over_cell")).cutOffFullAngle().value()),
          entry(
              "ies.candela",
              in ->
                  table(in)
                      .candelaAt(
                          degrees(in, "vertical_deg"),
                          new Degrees(in.number("horizontal_deg", 0)))),
          entry("ies.zonal_flux", in -> table(in).zonalFluxLm()),
          entry("ies.lux_horizontal", BeamChecks::luxHorizontal));

  /** E = I cos^3 / h^2 on a floor below a light that points straight down. */
  private static double luxHorizontal(CheckInputs in) {
    Degrees angle = degrees(in, "vertical_deg");
    double height = in.number("height_m");
    double cosine = Math.cos(angle.toRadians());
    return table(in).candelaAt(angle, new Degrees(0))
        * cosine
        * cosine
        * cosine
        / (height * height);
  }

  private static CandelaTable table(CheckInputs in) {
    return switch (CandelaFile.read(in.text("ies_text"))) {
      case CandelaFile.Read file -> file.table();
      case CandelaFile.Refused refused -> throw new AssertionError(refused);
    };
  }

  private static Lobe lobe(CheckInputs in) {
    return new Lobe(in.number("m"));
  }

  private static Lobe beam(CheckInputs in, String name) {
    return Lobe.ofBeam(degrees(in, name));
  }

  private static Degrees degrees(CheckInputs in, String name) {
    return new Degrees(in.number(name));
  }
}
