package lampwright.setup.used;

import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;

/**
 * One light as it was planned and as it was used. Differences are used against planned: plus is
 * more light.
 *
 * @param iso that was really used
 */
public record ComparedLight(LightFigures planned, LightFigures used, Iso iso) {

  /** Less than half a tenth shows nowhere. */
  private static final double SHOWN_STOPS = 0.05;

  /** By how much its power differs; absent where either is not known. */
  public Optional<Stops> powerDifference() {
    return planned.light().stopsDown().flatMap(was -> used.light().stopsDown().map(was::minus));
  }

  /** What a meter at the ISO that was used was expected to show, had all been as planned. */
  public Optional<FNumber> expected() {
    return planned
        .level()
        .map(level -> FNumber.ofExposure(level.exposure(), iso, MeterConstant.FLAT));
  }

  /** By how much the light at its target differs, {@code log2(H_used / H_planned)}. */
  public Optional<Stops> levelDifference() {
    return planned
        .level()
        .map(Level::exposure)
        .flatMap(was -> used.level().map(level -> level.exposure().stopsOver(was)));
  }

  /** The same with what the camera was set to: each level from its own shooting exposure. */
  public Optional<Stops> fromShootingDifference() {
    return planned
        .level()
        .map(Level::fromShooting)
        .flatMap(was -> used.level().map(level -> level.fromShooting().minus(was)));
  }

  /** Whether another head was used. */
  public boolean isOtherHead() {
    return !planned.light().head().equals(used.light().head());
  }

  /** Whether it stood elsewhere. */
  public boolean isMoved() {
    return !planned.light().place().equals(used.light().place());
  }

  /** Whether nothing was set, moved, metered or came out otherwise. */
  public boolean isAsPlanned() {
    Light was = planned.light();
    Light now = used.light();
    return !isOtherHead()
        && !isMoved()
        && was.stopsDown().equals(now.stopsDown())
        && planned.level().map(Level::known).equals(used.level().map(Level::known))
        && levelDifference().filter(by -> by.abs().value() >= SHOWN_STOPS).isEmpty();
  }
}
