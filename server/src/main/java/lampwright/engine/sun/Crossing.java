package lampwright.engine.sun;

/**
 * Whether the sun crosses an elevation in half a day. A day without a crossing, as near the poles,
 * is an answer and no error.
 */
public sealed interface Crossing {

  /** Returns the crossing, or where the sun comes nearest to one. */
  Encounter encounter();

  /** It crosses, to the second. */
  record At(Encounter encounter) implements Crossing {}

  /**
   * It stays above.
   *
   * @param encounter its lowest
   */
  record StaysAbove(Encounter encounter) implements Crossing {}

  /**
   * It stays below.
   *
   * @param encounter its highest
   */
  record StaysBelow(Encounter encounter) implements Crossing {}
}
