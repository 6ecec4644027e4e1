package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.light.LightSum;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.language.Said;
import lampwright.setup.LightId;

/**
 * What one stop on a dial changes at the first target.
 *
 * @param light whose power is turned; absent for the camera's dials
 * @param turned -1 gives less light by this dial: a smaller aperture, a shorter time, a lower ISO,
 *     more neutral density, less power; +1 gives more
 * @param before the light at the target
 * @param after the light that would make the same picture without turning the dial
 * @param beyond why the gear cannot do it, or only in part; absent where it can
 */
public record DialStep(
    Dial dial,
    Optional<LightId> light,
    Stops turned,
    LightSum before,
    LightSum after,
    Optional<DialLimit> beyond) {

  /** What is turned. */
  public enum Dial {
    APERTURE,
    TIME,
    ISO,
    NEUTRAL_DENSITY,
    POWER
  }

  /** Why the gear cannot do it, in sentences; absent where it can. */
  public Optional<List<Said>> limit() {
    return beyond.map(DialLimit::inWords);
  }

  /** How the flash changes in the picture; absent where there is none. */
  public Optional<Stops> flash() {
    return change(before.flash(), after.flash());
  }

  /** How the ambient changes; absent where it is not known. */
  public Optional<Stops> ambient() {
    return change(before.ambient(), after.ambient());
  }

  /** How both together change. */
  public Optional<Stops> total() {
    return change(before.total(), after.total());
  }

  /** How the flash changes against the ambient; absent where one of them is missing. */
  public Optional<Stops> balance() {
    return flash().flatMap(f -> ambient().map(f::minus));
  }

  private static Optional<Stops> change(LuxSeconds before, LuxSeconds after) {
    return before.value() > 0 && after.value() > 0
        ? Optional.of(after.stopsOver(before))
        : Optional.empty();
  }

  /** The steps to the change of all the light; absent where there is none. */
  public Optional<Working> working() {
    return total()
        .map(
            change ->
                Working.of(
                    "change of all the light",
                    change.value(),
                    "stops",
                    "log2((F' + A') / (F + A))",
                    Source.DERIVED,
                    part("flash F'", after.flash()),
                    part("ambient A'", after.ambient()),
                    part("flash F", before.flash()),
                    part("ambient A", before.ambient())));
  }

  private static Working part(String name, LuxSeconds exposure) {
    return Working.given(name, exposure.value(), "lx·s", Known.COMPUTED);
  }
}
