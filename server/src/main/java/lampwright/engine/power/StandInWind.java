package lampwright.engine.power;

import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Kilograms;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.NewtonMetres;
import lampwright.engine.unit.Newtons;
import lampwright.engine.unit.SquareMetres;

/**
 * A stand with a face in the wind: the force on it, what it needs to stay up, and when it goes.
 *
 * <p>For a steady push square on the face, a rigid stand and firm level ground. A check of whether
 * a plan is plausible, no structural calculation: soft ground, slopes and swinging ballast take
 * most of the margin.
 *
 * @param face area that is turned to the wind
 * @param dragCoefficient how the face takes the wind, 0.1 to 3; {@link #FLAT_PLATE} unless known
 * @param centre height of the middle of the face above the ground
 * @param legs its feet
 * @param mass stand, head, modifier and the ballast that is on it already
 */
public record StandInWind(
    SquareMetres face, double dragCoefficient, Metres centre, Legs legs, Kilograms mass) {

  /** Drag of a flat plate square to the wind (source nasa-drag); cupped faces take up to 1.4. */
  public static final double FLAT_PLATE = 1.28;

  /** Checks the coefficient. */
  public StandInWind {
    Bounds.requireBetween("Drag coefficient", dragCoefficient, "", 0.1, 3);
  }

  /** Returns a stand with a flat face. */
  public static StandInWind of(SquareMetres face, Metres centre, Legs legs, Kilograms mass) {
    return new StandInWind(face, FLAT_PLATE, centre, legs, mass);
  }

  /** Returns the force of a gust, {@code F = ρ v² C A / 2} (source nasa-drag). */
  public Newtons force(Wind wind) {
    return new Newtons(wind.pressurePa() * dragCoefficient * face.value());
  }

  /** Returns the moment that would tip it, {@code M = F h} (source derived). */
  public NewtonMetres moment(Wind wind) {
    return force(wind).onArm(centre);
  }

  /** Returns the mass it needs in all to hold the moment so many times over. */
  public Kilograms massNeeded(Wind wind, double safetyFactor) {
    return legs.massAgainst(moment(wind), safetyFactor);
  }

  /**
   * Returns the mass that is missing, 0 where it has enough.
   *
   * @param safetyFactor 1 to 10; at least 1.5, near people 2 (source trade-practice)
   */
  public Kilograms ballast(Wind wind, double safetyFactor) {
    return new Kilograms(Math.max(0, massNeeded(wind, safetyFactor).value() - mass.value()));
  }

  /**
   * Returns the mean speed at which its gusts use the margin up, {@code √(2 m g r / (SF ρ C A h))}
   * over the gust factor; with a safety factor of 1 the speed at which it goes.
   *
   * @param like the wind's gust factor and air; its speed is not used
   * @throws IllegalArgumentException where there is no face, or it is at no height
   */
  public MetresPerSecond speedHeld(Wind like, double safetyFactor) {
    Bounds.requireBetween("Safety factor", safetyFactor, "", 1, 10);
    double tipped = face.value() * centre.value();
    Bounds.requirePositive("Face times its height", tipped, "m³");
    double gust =
        Math.sqrt(
            2
                * legs.holding(mass).value()
                / (safetyFactor * like.airKgPerM3() * dragCoefficient * tipped));
    return new MetresPerSecond(gust / like.gustFactor());
  }

  /** Returns the missing mass with its steps. */
  public Working ballastWorking(Wind wind, double safetyFactor) {
    return Working.of(
        "ballast",
        ballast(wind, safetyFactor).value(),
        "kg",
        "max(0, needed − there)",
        Source.DERIVED,
        Working.of(
            "mass needed in all",
            massNeeded(wind, safetyFactor).value(),
            "kg",
            "SF M / (g r)",
            Source.DERIVED,
            Working.given("safety factor", safetyFactor, ""),
            momentWorking(wind),
            radiusWorking()),
        Working.given("mass that is there", mass.value(), "kg"));
  }

  /** Returns the speed that it holds with its steps. */
  public Working speedHeldWorking(Wind like, double safetyFactor) {
    return Working.of(
        "mean wind that it holds",
        speedHeld(like, safetyFactor).value(),
        "m/s",
        "√(2 m g r / (SF ρ C A h)) / G",
        Source.DERIVED,
        Working.given("mass that is there", mass.value(), "kg"),
        radiusWorking(),
        Working.given("safety factor", safetyFactor, ""),
        Working.given("density of the air", like.airKgPerM3(), "kg/m³"),
        dragWorking(),
        Working.given("face", face.value(), "m²"),
        Working.given("height of its centre", centre.value(), "m"),
        Working.given("gust factor", like.gustFactor(), ""));
  }

  private Working momentWorking(Wind wind) {
    return Working.of(
        "tipping moment",
        moment(wind).value(),
        "N·m",
        "M = F h",
        Source.DERIVED,
        Working.of(
            "force of a gust",
            force(wind).value(),
            "N",
            "F = ρ v² C A / 2",
            Source.NASA_DRAG,
            Working.given("density of the air", wind.airKgPerM3(), "kg/m³"),
            Working.of(
                "gust",
                wind.gust().value(),
                "m/s",
                "v = G mean",
                Source.TRADE_PRACTICE,
                Working.given("mean wind", wind.mean().value(), "m/s"),
                Working.given("gust factor", wind.gustFactor(), "")),
            dragWorking(),
            Working.given("face", face.value(), "m²")),
        Working.given("height of its centre", centre.value(), "m"));
  }

  private Working dragWorking() {
    return dragCoefficient == FLAT_PLATE
        ? Working.of("drag of a flat plate", dragCoefficient, "", "", Source.NASA_DRAG)
        : Working.given("drag coefficient", dragCoefficient, "");
  }

  private Working radiusWorking() {
    return Working.of(
        "tipping radius",
        legs.tippingRadius().value(),
        "m",
        "r = R cos(π / n)",
        Source.DERIVED,
        Working.given("radius of the legs' circle", legs.circle().value(), "m"),
        Working.given("legs", legs.count(), ""));
  }
}
