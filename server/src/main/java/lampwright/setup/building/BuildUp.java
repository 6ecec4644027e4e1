package lampwright.setup.building;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;

/**
 * What the meter gives while a setup is built. After each light the assistant meters it alone, and
 * then, without turning the meter, everything that burns by then and the ambient: the second is
 * never less than the first. Stops add as light, not as stops.
 */
public final class BuildUp {

  private BuildUp() {}

  /**
   * The state after one light was set.
   *
   * @param light that came last
   * @param together of all lights so far and the ambient at that light's target, on a flat meter
   *     held as for this light alone; absent where the level of one of them is not known
   */
  public record Step(LightFigures light, Optional<Together> together) {}

  /**
   * A reading.
   *
   * @param reading at the shooting ISO
   * @param fromShooting in stops from the shooting exposure
   */
  public record Together(FNumber reading, Stops fromShooting) {}

  /** The steps in build order. */
  public static List<Step> of(SetupDocument setup, Figures figures) {
    List<Step> steps = new ArrayList<>();
    List<LightFigures> burning = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      LightFigures last = figures.get(light.id());
      steps.add(new Step(last, together(last, burning, figures, setup.exposure().settings())));
      burning.add(last);
    }
    return List.copyOf(steps);
  }

  private static Optional<Together> together(
      LightFigures last, List<LightFigures> before, Figures figures, ExposureSettings settings) {
    Optional<LuxSeconds> flash = last.level().map(Level::exposure);
    Receptor held = held(last.atTarget());
    for (LightFigures other : before) {
      flash = flash.flatMap(sum -> reaching(other, last.atTarget(), held).map(sum::plus));
    }
    LuxSeconds ambient = figures.ambient().map(AmbientFigures::exposure).orElse(LuxSeconds.NONE);
    return flash
        .map(sum -> new LightSum(sum, ambient))
        .map(
            sum ->
                new Together(
                    sum.reading(settings, MeterConstant.FLAT),
                    sum.offset(settings, MeterConstant.FLAT)));
  }

  /** The meter as it is held for a light alone: where it points does not change any more. */
  private static Receptor held(LightAtTarget light) {
    return light.receptor() instanceof Receptor.TowardSource
        ? new Receptor.Flat(UnitVector.between(light.at(), light.pose().place()))
        : light.receptor();
  }

  /**
   * A light's level is known at its own target; from there the model carries it to another's meter.
   */
  private static Optional<LuxSeconds> reaching(
      LightFigures other, LightAtTarget where, Receptor held) {
    LightAtTarget own = other.atTarget();
    double geometry = own.geometry();
    double there = own.withPoint(where.at()).withReceptor(held).geometry();
    return other
        .level()
        .filter(_ -> geometry > 0)
        .map(level -> new LuxSeconds(level.exposure().value() / geometry * there));
  }
}
