package lampwright.setup.reacting;

import lampwright.engine.exposure.Ev100;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;

/** What happened to a setup that stands, so that somebody asks what to change now. */
public sealed interface Happening {

  /** The meter was held into the ambient again. */
  record AmbientReads(Ev100 level) implements Happening {}

  /**
   * The ambient is so much less than the setup's; minus is more.
   *
   * @param stops below the setup's reading
   */
  record AmbientFalls(Stops stops) implements Happening {}

  /** A light stands somewhere else, aimed at what it was aimed at. */
  record LightMoved(LightId light, Point place) implements Happening {}

  /** One head of a light does not fire any more. */
  record HeadDead(LightId light) implements Happening {}
}
