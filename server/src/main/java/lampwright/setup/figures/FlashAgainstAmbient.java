package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Lux;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.language.Said;
import lampwright.setup.Target;

/**
 * The identity that decides most conversions, at the first target: {@code flash : ambient = H_flash
 * / (E_ambient t)}. It holds neither aperture, ISO nor neutral density: only the time, the flash's
 * output and distance, and the ambient itself change the balance.
 *
 * @param flash of all lights at the target, as it reaches the sensor
 * @param ambient light on the target
 * @param time that the shutter is open
 * @param balance flash over ambient
 */
public record FlashAgainstAmbient(
    Target target,
    LuxSeconds flash,
    Lux ambient,
    Known ambientKnown,
    ShutterTime time,
    Stops balance) {

  /** What changes the balance, in words. */
  public static final Said IN_WORDS = Said.of("figuring.balance");

  static Optional<FlashAgainstAmbient> of(
      Optional<AmbientFigures> ambient, List<TargetFigures> targets) {
    if (ambient.isEmpty() || targets.isEmpty()) {
      return Optional.empty();
    }
    TargetFigures first = targets.getFirst();
    AmbientFigures a = ambient.get();
    return first
        .flashOverAmbient()
        .map(
            balance ->
                new FlashAgainstAmbient(
                    first.target(),
                    first.sum().flash(),
                    Ambient.of(a.ambient().level()).toLux(MeterConstant.FLAT),
                    a.ambient().known(),
                    a.settings().time(),
                    balance));
  }

  /** The steps to the balance. */
  public Working working() {
    return Working.of(
        "flash over ambient",
        balance.value(),
        "stops",
        "log2(H_flash / (E_ambient · t))",
        Source.DERIVED,
        Working.given("flash " + target.where(), flash.value(), "lx·s", Known.COMPUTED),
        Working.given("ambient", ambient.value(), "lx", ambientKnown),
        Working.given("time", time.seconds(), "s"));
  }
}
