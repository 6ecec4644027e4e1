package lampwright.gear;

/** One piece of gear, of any kind. */
public sealed interface Piece permits Body, Gel, Head, Lens, Modifier, NeutralDensity, Pack, Stand {

  /** What the studio calls it. */
  String name();
}
