package lampwright.engine.light;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.SquareMetres;
import lampwright.engine.unit.Stops;

/**
 * The part of a source that shines at the subject, as a shape of even brightness that faces it. Of
 * an umbrella it is the fabric, not the tube; distances are measured from there.
 */
public sealed interface EmittingFace {

  /**
   * Returns the on-axis geometry factor G per square metre: the exposure at a distance is the
   * far-away intensity times G. {@code 1/d^2} for a point; for a disc or rectangle the exact factor
   * (sources howell, br-187), which tends to {@code 1/d^2} far away and stays below it close by.
   *
   * @param distance from the face, above 0
   */
  double geometry(Metres distance);

  /** Returns the longest straight side or the diameter; 0 for a point. */
  Metres largestDimension();

  /** Returns how large the face is; 0 for a point. */
  SquareMetres area();

  /**
   * Returns the angle that the face fills, seen from a distance on its axis: of a disc its
   * diameter, of a rectangle the disc of the same area. It says how soft the light is; an angular
   * radius above 15 degrees (a size above 30) blurs the names of portrait patterns.
   *
   * @param distance from the face, above 0
   */
  Degrees angularSize(Metres distance);

  /**
   * Returns how far the inverse square law, extrapolated inwards from far away, overstates the
   * light at this distance; 0 for a point. For a disc exactly {@code log2(1 + 1/(4 k^2))} at k
   * diameters.
   */
  default Stops inverseSquareError(Metres distance) {
    double d = distance.value();
    return Stops.ofRatio(1 / (geometry(distance) * d * d));
  }

  /**
   * Returns the change of light on the axis from one distance to another; plus where the second is
   * brighter.
   */
  default Stops change(Metres from, Metres to) {
    return Stops.ofRatio(geometry(to) / geometry(from));
  }

  /** Asks whether the inverse square law holds within 1.4 % here: five times the largest side. */
  default boolean isFar(Metres distance) {
    return distance.value() >= 5 * largestDimension().value();
  }

  /**
   * Returns how wide the edge of a shadow is that falls so far behind what throws it, {@code D g /
   * d} with the face's apparent size D (source derived): the gap times twice the tangent of half
   * the angular size, so that the distance itself is not needed.
   *
   * @param angularSize of the face seen from the edge, under half a turn
   * @param gap from the edge to the surface behind it
   */
  static Metres penumbra(Degrees angularSize, Metres gap) {
    double half = angularSize.value() / 2 * (StrictMath.PI / 180);
    return new Metres(2 * gap.value() * StrictMath.sin(half) / StrictMath.cos(half));
  }

  /** A source small enough, or far enough, that only its distance counts. */
  record PointSource() implements EmittingFace {

    @Override
    public double geometry(Metres distance) {
      Bounds.requirePositive("Distance", distance.value(), "m");
      return 1 / (distance.value() * distance.value());
    }

    @Override
    public SquareMetres area() {
      return new SquareMetres(0);
    }

    @Override
    public Metres largestDimension() {
      return new Metres(0);
    }

    @Override
    public Degrees angularSize(Metres distance) {
      return new Degrees(0);
    }

    @Override
    public String toString() {
      return "point";
    }
  }

  /**
   * A round source.
   *
   * @param radius above 0
   */
  record Disc(Metres radius) implements EmittingFace {

    /** Checks the bound. */
    public Disc {
      Bounds.requirePositive("Radius", radius.value(), "m");
    }

    /**
     * Returns the disc with the area of a regular octagon, which lights like it to well under a
     * hundredth of a stop: 1.5 m across flats has a radius of 0.770 m.
     *
     * @param acrossFlats distance between opposite sides
     */
    public static Disc ofOctagonAcrossFlats(Metres acrossFlats) {
      return new Disc(new Metres(Math.sqrt(new Octagon(acrossFlats).area().value() / Math.PI)));
    }

    /**
     * Returns the disc with the area of a regular octagon: 1.5 m across corners has a radius of
     * 0.712 m.
     *
     * @param acrossCorners distance between opposite corners
     */
    public static Disc ofOctagonAcrossCorners(Metres acrossCorners) {
      // Area of the octagon: w^2 / sqrt 2.
      double area = acrossCorners.value() * acrossCorners.value() / Math.sqrt(2);
      return new Disc(new Metres(Math.sqrt(area / Math.PI)));
    }

    /** Returns Howell B-12 over the radius squared: {@code 1 / (R^2 + d^2)}. */
    @Override
    public double geometry(Metres distance) {
      Bounds.requirePositive("Distance", distance.value(), "m");
      double r = radius.value();
      double d = distance.value();
      return 1 / (r * r + d * d);
    }

    @Override
    public SquareMetres area() {
      return new SquareMetres(Math.PI * radius.value() * radius.value());
    }

    @Override
    public Metres largestDimension() {
      return radius.times(2);
    }

    @Override
    public Degrees angularSize(Metres distance) {
      Bounds.requirePositive("Distance", distance.value(), "m");
      return Degrees.ofRadians(2 * StrictMath.atan2(radius.value(), distance.value()));
    }

    @Override
    public String toString() {
      return "disc of " + radius + " radius";
    }
  }

  /**
   * A source with eight equal sides, a flat one up and one down.
   *
   * @param acrossFlats distance between opposite sides, above 0
   */
  record Octagon(Metres acrossFlats) implements EmittingFace {

    /** Half the angle that a side fills from the middle has this tangent. */
    private static final double SIDE_OVER_FLATS = Math.sqrt(2) - 1;

    /** Checks the bound. */
    public Octagon {
      Bounds.requirePositive("Size across flats", acrossFlats.value(), "m");
    }

    /** Returns the length of one side. */
    public Metres side() {
      return acrossFlats.times(SIDE_OVER_FLATS);
    }

    /**
     * Returns the contour formula (source lambert-contour) for eight sides at half the flats, a,
     * half a side s: {@code atan(s/D) / (s D)} with {@code D = sqrt(a^2 + d^2)}.
     */
    @Override
    public double geometry(Metres distance) {
      Bounds.requirePositive("Distance", distance.value(), "m");
      double flat = acrossFlats.value() / 2;
      double half = flat * SIDE_OVER_FLATS;
      double toSide = Math.sqrt(flat * flat + distance.value() * distance.value());
      return StrictMath.atan2(half, toSide) / (half * toSide);
    }

    /** Returns the size across flats, as of the other faces without their corners. */
    @Override
    public SquareMetres area() {
      double w = acrossFlats.value();
      return new SquareMetres(2 * (Math.sqrt(2) - 1) * w * w);
    }

    @Override
    public Metres largestDimension() {
      return acrossFlats;
    }

    @Override
    public Degrees angularSize(Metres distance) {
      return Disc.ofOctagonAcrossFlats(acrossFlats).angularSize(distance);
    }

    @Override
    public String toString() {
      return "octagon of " + acrossFlats + " across flats";
    }
  }

  /**
   * A rectangular source.
   *
   * @param width above 0
   * @param height above 0
   */
  record Rectangle(Metres width, Metres height) implements EmittingFace {

    /** Checks the bounds. */
    public Rectangle {
      Bounds.requirePositive("Width", width.value(), "m");
      Bounds.requirePositive("Height", height.value(), "m");
    }

    /** Returns four corners of Howell B-3, as intensity: {@code pi F / (w h)}. */
    @Override
    public double geometry(Metres distance) {
      Bounds.requirePositive("Distance", distance.value(), "m");
      double w = width.value();
      double h = height.value();
      double d = distance.value();
      return Math.PI * ConfigurationFactors.rectangle(w, h, d) / (w * h);
    }

    @Override
    public SquareMetres area() {
      return new SquareMetres(width.value() * height.value());
    }

    @Override
    public Metres largestDimension() {
      return width.compareTo(height) >= 0 ? width : height;
    }

    @Override
    public Degrees angularSize(Metres distance) {
      return equalDisc().angularSize(distance);
    }

    /** Returns the disc of the same area. */
    public Disc equalDisc() {
      return new Disc(new Metres(Math.sqrt(width.value() * height.value() / Math.PI)));
    }

    @Override
    public String toString() {
      return Bounds.rounded(width.value(), 3) + " × " + height;
    }
  }
}
