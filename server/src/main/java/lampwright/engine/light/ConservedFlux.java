package lampwright.engine.light;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.beam.CutSpread;
import lampwright.engine.beam.Lobe;
import lampwright.engine.beam.Spread;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * What a modifier makes of a head's flux: a share leaves it, spread by its face and its beam. The
 * head is known by its standard reflector, whose beam holds the flux {@code 2 pi Q / (m + 1)}
 * (source derived). The model for a modifier that nobody metered: sure to a stop, the meter
 * decides.
 *
 * @param transmission share of the standard reflector's flux that leaves the modifier, before a
 *     grid or snoot cuts any off; above 0, up to 2 (a bare tube loses nothing in a reflector)
 * @param face what then shines
 * @param spread how; a {@link CutSpread} absorbs what it cuts, so that the axis keeps what it had
 */
public record ConservedFlux(double transmission, EmittingFace face, Spread spread) {

  /** From here the narrowest beam of the largest face is a point's. */
  private static final double FURTHEST_M = 1e6;

  /** Checks the bounds, and that the axis shines at all. */
  public ConservedFlux {
    Bounds.requirePositive("Transmission", transmission, "");
    Bounds.requireBetween("Transmission", transmission, "", 0, 2);
    if (spread.relativeAt(1, 0) <= 0) {
      throw new IllegalArgumentException(
          "Intensity on the axis (0) must be more than 0. Maybe turn the table about?");
    }
  }

  /** Returns the share of the standard reflector's flux that leaves, after grids and snoots. */
  public double passedShare() {
    return transmission * passed(spread);
  }

  /**
   * Returns the intensity on the axis, far away, over that of the standard reflector on the same
   * head.
   */
  public double axisRatio() {
    return passedShare()
        * spread.relativeAt(1, 0)
        * standard().solidAngleSr()
        / spread.solidAngleSr();
  }

  /**
   * Returns the loss against the standard reflector on the axis.
   *
   * @param reference distance from the face, above 0
   */
  public Stops lossAt(Metres reference) {
    double point = new EmittingFace.PointSource().geometry(reference);
    return Stops.ofRatio(point / (axisRatio() * geometry(reference)));
  }

  /**
   * Returns the modifier for the engine, with the modelled loss at the reference distance, or
   * further away where a narrow beam does not yet send half of its face's light there.
   */
  public ModifierEffect effectAt(Metres reference) {
    Metres known = reference;
    while (geometry(known) * known.value() * known.value() < 0.5 && known.value() < FURTHEST_M) {
      known = known.times(2);
    }
    return new ModifierEffect(face, spread, lossAt(known), known);
  }

  /** Returns the steps to {@link #lossAt}. */
  public Working lossWorking(Metres reference) {
    double point = new EmittingFace.PointSource().geometry(reference);
    return Working.of(
        "modelled loss against the standard reflector",
        lossAt(reference).value(),
        "stops",
        "log2(Ω / (τ · Ω_standard) · G_point / G)",
        Source.DERIVED,
        Working.given("solid angle of the beam Ω", spread.solidAngleSr(), "sr"),
        Working.of(
            "share of the flux that leaves τ",
            passedShare(),
            "",
            "transmission · share that grid or snoot passes",
            Source.TRADE_PRACTICE,
            Working.given("transmission", transmission, ""),
            Working.given("share that grid or snoot passes", passed(spread), "")),
        Working.of(
            "solid angle of the standard reflector",
            standard().solidAngleSr(),
            "sr",
            "2π / (m + 1)",
            Source.DERIVED),
        Working.given(
            "point's light at the reference distance over the face's",
            point / geometry(reference),
            ""));
  }

  private double geometry(Metres reference) {
    return PlacedSource.geometryOnAxis(face, spread, reference);
  }

  private static double passed(Spread spread) {
    return spread instanceof CutSpread cut ? cut.passedShare() * passed(cut.beam()) : 1;
  }

  private static Lobe standard() {
    return Lobe.ofBeam(Lobe.STANDARD_REFLECTOR);
  }
}
