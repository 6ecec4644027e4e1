package lampwright.engine.light;

import java.util.Optional;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.beam.Even;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.CandelaSeconds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * One light as one target gets it: output, modifier, gel, where the source stands and looks, where
 * the target is and how it takes light. Power, place, modifier and the receiver's angle change it
 * independently.
 *
 * <p>Predicted from one reading it is sure to 0.3 stop, inside one diagonal of the source to 0.5
 * (trade-practice); the meter decides.
 *
 * @param output what the head gives
 * @param modifier what is in front of it
 * @param gel colour filters
 * @param pose where the modifier's face is and where it looks; not at the target itself
 * @param at where the light is taken
 * @param receptor what it is taken with there
 */
public record LightAtTarget(
    HeadOutput output, ModifierEffect modifier, Gel gel, Pose pose, Point at, Receptor receptor) {

  /** Below this share a light only grazes the receiver, and what doubles leave over is no light. */
  private static final double GRAZING = 1e-9;

  /** Checks the distance. */
  public LightAtTarget {
    Bounds.requirePositive("Distance", pose.place().distanceTo(at).value(), "m");
  }

  /**
   * Returns a light that is aimed at its target, without a gel, metered by pointing at it.
   *
   * @param distance from the modifier's face, above 0
   */
  public static LightAtTarget of(HeadOutput output, ModifierEffect modifier, Metres distance) {
    Bounds.requirePositive("Distance", distance.value(), "m");
    return of(output, modifier, new Point(0, -distance.value(), 0), new Point(0, 0, 0));
  }

  /** Returns a light that is aimed at its target, without a gel, metered by pointing at it. */
  public static LightAtTarget of(
      HeadOutput output, ModifierEffect modifier, Point place, Point target) {
    return new LightAtTarget(
        output,
        modifier,
        Gel.NONE,
        Pose.toward(place, target),
        target,
        new Receptor.TowardSource());
  }

  /** Returns a copy with another head in the same place. */
  public LightAtTarget withOutput(HeadOutput other) {
    return new LightAtTarget(other, modifier, gel, pose, at, receptor);
  }

  /** Returns a copy with gels. */
  public LightAtTarget withGel(Gel other) {
    return new LightAtTarget(output, modifier, other, pose, at, receptor);
  }

  /** Returns a copy whose source stands at another distance in the same direction. */
  public LightAtTarget withDistance(Metres other) {
    Point place = at.moved(UnitVector.between(at, pose.place()), other.value());
    return new LightAtTarget(output, modifier, gel, pose.at(place), at, receptor);
  }

  /** Returns a copy that is metered otherwise. */
  public LightAtTarget withReceptor(Receptor other) {
    return new LightAtTarget(output, modifier, gel, pose, at, other);
  }

  /** Returns a copy at another point; the source stays and looks as it did. */
  public LightAtTarget withPoint(Point other) {
    return new LightAtTarget(output, modifier, gel, pose, other, receptor);
  }

  /** Returns the distance from the middle of the face. */
  public Metres distance() {
    return pose.place().distanceTo(at);
  }

  /** Returns the angle between the source's axis and the way to the target: 0 where it is aimed. */
  public Degrees offAxis() {
    return pose.axis().angleTo(UnitVector.between(pose.place(), at));
  }

  /**
   * Returns the share of light from the middle of the face that the receptor takes, 0 to 1: the
   * cosine of a flat one, 1 where it points at the source. A large face may still give light where
   * this is 0.
   */
  public double cosine() {
    UnitVector toSource = UnitVector.between(at, pose.place());
    double share =
        switch (receptor) {
          case Receptor.TowardSource _ -> 1;
          case Receptor.Flat flat -> toSource.receivedBy(flat.normal());
          case Receptor.Dome dome -> (1 + toSource.cosineTo(dome.axis())) / 2;
        };
    return share < GRAZING ? 0 : share;
  }

  /** Returns the source as it stands. */
  public PlacedSource source() {
    return modifier.placed(pose);
  }

  /** Returns the geometry factor from the source to the target's receptor, in 1/m2. */
  public double geometry() {
    double geometry = source().geometryAt(at, receptor);
    double d = distance().value();
    return geometry * d * d < GRAZING ? 0 : geometry;
  }

  /** Returns the far-away intensity on the axis so many stops below full power, behind the gels. */
  public CandelaSeconds peakAt(Stops stopsDown) {
    double factor = gel.loss().plus(stopsDown).negated().toFactor();
    return new CandelaSeconds(output.peak(modifier).value() * factor);
  }

  /** Returns the exposure at full power. */
  public LuxSeconds atFullPower() {
    return new LuxSeconds(output.peak(modifier).value() * geometry()).minus(gel.loss());
  }

  /** Returns the exposure so many stops below full power. */
  public LuxSeconds at(Stops stopsDown) {
    return atFullPower().minus(stopsDown);
  }

  /**
   * Returns what a meter at the target reads so many stops below full power.
   *
   * @throws IllegalArgumentException where no light reaches the target (geometry 0): nothing to
   *     read
   */
  public FNumber readingAt(Stops stopsDown, Iso iso, MeterConstant constant) {
    return FNumber.ofExposure(at(stopsDown), iso, constant);
  }

  /**
   * Returns the power, in stops below full, that gives the wanted exposure: negative where the head
   * is too weak by that much. Empty where no light reaches the target.
   *
   * @param wanted above 0
   */
  public Optional<Stops> stopsDownFor(LuxSeconds wanted) {
    LuxSeconds full = atFullPower();
    return full.value() == 0 ? Optional.empty() : Optional.of(full.stopsOver(wanted));
  }

  /**
   * Returns by how many stops the inverse square law alone would have misjudged this light, on its
   * axis from the distance where the output is known to this one.
   */
  public Stops inverseSquareError() {
    Metres known = output.knownAt(modifier);
    double near = known.value() / distance().value();
    return Stops.ofRatio(
        near * near * modifier.geometryOnAxis(known) / modifier.geometryOnAxis(distance()));
  }

  /** Returns the steps to the exposure so many stops below full power. */
  public Working exposureWorking(String name, Stops stopsDown) {
    return Working.of(
        "exposure by the " + name,
        at(stopsDown).value(),
        "lx·s",
        "I₀ · G · 2^−(stops down + gel loss)",
        Source.DERIVED,
        output.peakWorking(modifier),
        geometryWorking(),
        Working.given("power below full", stopsDown.value(), "stops"),
        Working.given("loss of the gels", gel.loss().value(), "stops"));
  }

  /** The steps to how the source and the receptor stand to each other. */
  private Working geometryWorking() {
    boolean point = modifier.face() instanceof EmittingFace.PointSource;
    boolean even = modifier.spread() instanceof Even;
    boolean disc = modifier.face() instanceof EmittingFace.Disc;
    String formula =
        point
            ? "I / I₀ · cos θ / d²"
            : even ? "π F / area, " + modifier.face() : "∫ I / I₀ · cos θ / r² dA / A";
    Source source =
        point
            ? Source.IES_DEFINITIONS
            : !even ? Source.DERIVED : disc ? Source.HOWELL : Source.LAMBERT_CONTOUR;
    return Working.of(
        "geometry at the target",
        geometry(),
        "1/m²",
        formula,
        source,
        Working.of("distance", distance().value(), "m", "|target − face|", Source.DERIVED),
        Working.of("angle off the axis", offAxis().value(), "°", "∠(axis, way)", Source.DERIVED),
        Working.of("share the receptor takes", cosine(), "", "cos θ", Source.DERIVED));
  }

  /**
   * Returns the steps to the power that gives the wanted exposure, in stops below full; empty where
   * no light reaches the target.
   *
   * @param wanted how much light is wanted, in lux seconds above 0, with its own steps
   */
  public Optional<Working> powerWorking(String name, Working wanted) {
    return stopsDownFor(new LuxSeconds(wanted.value()))
        .map(
            down ->
                Working.of(
                    "power of the " + name + " below full",
                    down.value(),
                    "stops",
                    "log2(H_full / H_wanted)",
                    Source.DERIVED,
                    exposureWorking(name, Stops.ZERO),
                    wanted));
  }

  /** Returns the steps to what a meter reads so many stops below full power. */
  public Working readingWorking(String name, Stops stopsDown, Iso iso, MeterConstant constant) {
    return Working.of(
        "reading of the " + name,
        readingAt(stopsDown, iso, constant).value(),
        "f-number",
        "√(H · S / C)",
        Source.ISO_2720,
        exposureWorking(name, stopsDown),
        Working.given("ISO", iso.value(), ""),
        Working.given("meter constant", constant.luxSeconds(), "lx·s"));
  }
}
