package lampwright.engine.sun;

import java.time.Instant;
import lampwright.engine.unit.Seconds;

/** When the ambient falls to a level under a clear sky: an estimate, good to some ten minutes. */
public sealed interface AmbientFall {

  /**
   * It falls to the level.
   *
   * @param at when
   * @param waiting until then
   * @param sun where it stands then
   */
  record Falls(Instant at, Seconds waiting, SunPosition sun) implements AmbientFall {}

  /** It is as low already. */
  record IsLower() implements AmbientFall {}

  /**
   * It does not fall so low in the days that were searched: the nights are too bright, or the level
   * is darker than the model tells.
   */
  record StaysBrighter() implements AmbientFall {}
}
