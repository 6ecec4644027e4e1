package lampwright.setup.takes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.document.Reading;
import lampwright.engine.exposure.Iso;
import lampwright.engine.unit.Metres;
import lampwright.gear.Modifier;
import lampwright.gear.calibration.CalibrationReading;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Target;

/**
 * What a take's readings tell of the gear alone. On location a reading tells of its head only where
 * nothing else was in it: one head and one pop without a gel, aimed at the meter that pointed back
 * at it, the ambient taken out, the power known. What the ground and the walls gave back is in it
 * all the same; the fit that weighs many readings shows it as scatter.
 */
public final class ReadingsOfGear {

  /** Nearer than this to its target, a head is aimed at it: a judgement. */
  private static final Metres AIMED = new Metres(0.1);

  private ReadingsOfGear() {}

  /**
   * The chosen readings of a take as readings of gear, in the order in which they were chosen.
   *
   * @param lights whose readings are wanted
   * @return problems point into {@code /readings} of what was asked
   */
  public static Reading<List<CalibrationReading>> of(
      Take take, List<LightId> lights, SetupDocument shot) {
    Problems problems = new Problems();
    List<CalibrationReading> readings = new ArrayList<>();
    for (int i = 0; i < lights.size(); i++) {
      LightId id = lights.get(i);
      Pointer at = Pointer.root().field("readings").item(i);
      Optional<TakeReading> reading =
          take.readings().stream().filter(of -> of.light().equals(id)).findFirst();
      Optional<Light> light = shot.lights().stream().filter(of -> of.id().equals(id)).findFirst();
      if (reading.isEmpty() || light.isEmpty()) {
        problems.add(at, "The take has no reading of light \"" + id + "\".");
        continue;
      }
      trouble(reading.get(), light.get())
          .ifPresentOrElse(
              trouble -> problems.add(at, "The reading of light \"%s\" %s.".formatted(id, trouble)),
              () -> readings.add(reading(reading.get(), light.get(), shot.exposure().iso())));
    }
    return problems.isEmpty()
        ? new Reading.Sound<>(List.copyOf(readings))
        : new Reading.Faulty<>(problems.list());
  }

  private static Optional<String> trouble(TakeReading reading, Light light) {
    if (reading.meter().includesAmbient()) {
      return Optional.of("saw the ambient too");
    }
    if (!light.gels().isEmpty()) {
      return Optional.of("was taken through a gel");
    }
    if (light.heads() > 1 || light.pops() > 1) {
      return Optional.of("is of several heads or pops together");
    }
    if (light.stopsDown().isEmpty()) {
      return Optional.of("is of a power that the setup does not tell");
    }
    if (light.target().held() != Target.Held.TOWARD_LIGHT) {
      return Optional.of("was not taken toward the light");
    }
    boolean isBeside =
        light
            .aim()
            .filter(aim -> aim.distanceTo(light.target().at()).compareTo(AIMED) > 0)
            .isPresent();
    return isBeside ? Optional.of("was taken beside the light's axis") : Optional.empty();
  }

  private static CalibrationReading reading(TakeReading reading, Light light, Iso shootingIso) {
    return new CalibrationReading(
        light.head().name(),
        light.modifier().map(Modifier::name),
        reading.meter().printed(),
        reading.meter().tenths(),
        reading.meter().iso().orElse(shootingIso),
        light.place().distanceTo(light.target().at()),
        light.stopsDown().orElseThrow(),
        reading.meter().receptor().constant());
  }
}
