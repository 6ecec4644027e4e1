package lampwright.engine.light;

/**
 * What an incident meter, a face or a wall takes light with, at a point: how it weighs light by its
 * direction.
 */
public sealed interface Receptor {

  /**
   * A flat receptor, or a surface: the cosine of the angle, nothing from behind.
   *
   * @param normal away from its lit side
   */
  record Flat(UnitVector normal) implements Receptor {}

  /**
   * A dome: {@code (1 + cos) / 2} of the angle from its axis, so that light from the side counts
   * half (the projected area of a half sphere; source derived).
   *
   * @param axis where the dome points
   */
  record Dome(UnitVector axis) implements Receptor {}

  /** A flat receptor pointed at the middle of the source that is metered. */
  record TowardSource() implements Receptor {}
}
