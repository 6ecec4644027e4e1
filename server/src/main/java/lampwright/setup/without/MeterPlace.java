package lampwright.setup.without;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightSum;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.LightId;
import lampwright.setup.figures.SpillFigures.Reach;

/**
 * A place at which a flat meter is held and not turned any more, whatever burns.
 *
 * @param at whose level it is
 * @param reaches what each light gives it, in the document's order; lights whose strength is not
 *     known are left out
 * @param ambient the same of the ambient; none where it is not known
 */
public record MeterPlace(
    Metered at, List<Reach> reaches, LuxSeconds ambient, ExposureSettings settings) {

  public MeterPlace {
    reaches = List.copyOf(reaches);
  }

  /** Everything that burns, added as light. */
  public LightSum sum(Burning burning) {
    return new LightSum(
        LuxSeconds.sum(
            reaches.stream()
                .filter(reach -> burning.burns(reach.light()))
                .map(Reach::exposure)
                .toList()),
        burning.ambient() ? ambient : LuxSeconds.NONE);
  }

  /** The same in stops from the shooting exposure; absent where it is dark. */
  public Optional<Stops> level(Burning burning) {
    return level(sum(burning));
  }

  private Optional<Stops> level(LightSum sum) {
    return sum.total().value() > 0
        ? Optional.of(sum.offset(settings, MeterConstant.FLAT))
        : Optional.empty();
  }

  /** The level before and after something was turned. */
  public Shift shift(Burning from, Burning to) {
    return new Shift(level(from), level(to));
  }

  /** What one light gives; none of one whose strength is not known. */
  public LuxSeconds of(LightId light) {
    return reaches.stream()
        .filter(reach -> reach.light().equals(light))
        .map(Reach::exposure)
        .findFirst()
        .orElse(LuxSeconds.NONE);
  }

  /** A light's share of everything that burns, 0 to 1; 0 where it is dark. */
  public double share(LightId light, Burning burning) {
    double total = sum(burning).total().value();
    return total > 0 && burning.burns(light) ? of(light).value() / total : 0;
  }
}
