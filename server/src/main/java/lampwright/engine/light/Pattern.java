package lampwright.engine.light;

import java.util.Optional;
import lampwright.engine.unit.Degrees;

/**
 * The trade's names for where a light on a face comes from. Names are common practice without one
 * source; the boundaries are this engine's own, and what lies within 10 degrees of one is called
 * "between". Noses differ: a pattern needs a look, not an angle.
 */
public enum Pattern {
  /** Before the nose and high: a symmetrical shadow under it. */
  BUTTERFLY("butterfly"),
  /** Before the nose and level: hardly any shadow. */
  FLAT("flat/on-axis"),
  /** Little aside: a small slanting nose shadow, apart from the cheek's. */
  LOOP("loop"),
  /** Further aside: both shadows meet and leave a triangle of light. */
  REMBRANDT("Rembrandt"),
  /** The same but low: the triangle has no lower edge. */
  LOW_SIDE("low side"),
  /** From the side: half the face dark. */
  SPLIT("split"),
  /** From behind at the side: an edge of cheek and jaw. */
  KICKER("kicker"),
  /** From behind and low: a thin outline. */
  RIM("rim"),
  /** From behind and high: top of head and shoulders. */
  HAIR("hair"),
  /** From above: eye sockets dark. */
  TOP("top"),
  /** From below: shadows run upward. */
  UNDER("under"),
  /** Aimed at the ground behind, not at the subject; never computed from an angle. */
  BACKGROUND("background");

  private static final double NEAR_A_BOUNDARY = 10;
  private static final double SOFT_ANGULAR_SIZE = 30;

  private final String tradeName;

  Pattern(String tradeName) {
    this.tradeName = tradeName;
  }

  /**
   * A pattern and, where a boundary is near, the one on its other side.
   *
   * @param pattern the name
   * @param neighbour the other name within 10 degrees
   */
  public record Named(Pattern pattern, Optional<Pattern> neighbour) {

    /** "loop", or "between loop and Rembrandt". */
    @Override
    public String toString() {
      return neighbour
          .map(other -> "between " + pattern.tradeName + " and " + other.tradeName)
          .orElse(pattern.tradeName);
    }
  }

  /** Returns the name as the trade writes it. */
  public String tradeName() {
    return tradeName;
  }

  /**
   * Returns the name of a direction measured from the nose (see {@link Direction#fromNose}); left
   * and right have the same name.
   */
  public static Pattern of(Direction fromNose) {
    return of(Math.abs(fromNose.azimuth().value()), fromNose.elevation().value());
  }

  /** Returns the name, and its neighbour's where a boundary is within 10 degrees. */
  public static Named named(Direction fromNose) {
    double azimuth = Math.abs(fromNose.azimuth().value());
    double elevation = fromNose.elevation().value();
    Pattern here = of(azimuth, elevation);
    Optional<Pattern> neighbour = Optional.empty();
    double nearest = NEAR_A_BOUNDARY;
    // Walk outwards by a degree each way and take the first other name; the boundaries are all
    // whole
    // degrees, so a step of one never jumps over a zone.
    for (int side = 0; side < 4; side++) {
      double stepAzimuth = side == 0 ? 1 : side == 1 ? -1 : 0;
      double stepElevation = side == 2 ? 1 : side == 3 ? -1 : 0;
      for (int away = 1; away <= nearest; away++) {
        Pattern there =
            of(
                Math.max(0, Math.min(180, azimuth + away * stepAzimuth)),
                Math.max(-90, Math.min(90, elevation + away * stepElevation)));
        if (there != here) {
          neighbour = Optional.of(there);
          nearest = away - 1;
        }
      }
    }
    return new Named(here, neighbour);
  }

  /** Asks whether a source looks so large that it blurs the pattern: "soft loop". */
  public static boolean isSoft(Degrees angularSize) {
    return angularSize.value() > SOFT_ANGULAR_SIZE;
  }

  private static Pattern of(double azimuth, double elevation) {
    if (elevation > 75) {
      return TOP;
    }
    if (elevation < -10) {
      return UNDER;
    }
    if (azimuth < 15) {
      return elevation >= 20 ? BUTTERFLY : FLAT;
    }
    if (azimuth < 40) {
      return LOOP;
    }
    if (azimuth < 70) {
      return elevation >= 20 ? REMBRANDT : LOW_SIDE;
    }
    if (azimuth < 110) {
      return SPLIT;
    }
    if (azimuth < 150) {
      return KICKER;
    }
    return elevation >= 30 ? HAIR : RIM;
  }
}
