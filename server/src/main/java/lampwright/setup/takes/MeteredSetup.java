package lampwright.setup.takes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.document.Pointer;
import lampwright.document.Problem;
import lampwright.document.Problems;
import lampwright.document.Reading;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.MeterReading;
import lampwright.setup.SetupDocument;

/**
 * A setup whose lights carry the readings of a take, so that its figures follow the meter. A
 * reading is taken over only where it is still of the same light: the same heads, modifier, gels,
 * place, aim, target and power as in the revision that was shot, and for one that saw the ambient
 * the same time and ambient too. What tells of gear alone is another matter: {@link
 * ReadingsOfGear}.
 */
public final class MeteredSetup {

  private MeteredSetup() {}

  /**
   * The current setup with chosen readings of a take.
   *
   * @param lights whose readings are taken over
   * @return problems point into {@code /readings} of what was asked
   */
  public static Reading<SetupDocument> of(
      Take take, List<LightId> lights, SetupDocument shot, SetupDocument current) {
    Problems problems = new Problems();
    List<TakeReading> chosen = new ArrayList<>();
    for (int i = 0; i < lights.size(); i++) {
      Pointer at = Pointer.root().field("readings").item(i);
      LightId id = lights.get(i);
      Optional<TakeReading> reading =
          take.readings().stream().filter(of -> of.light().equals(id)).findFirst();
      Optional<String> trouble =
          reading.isEmpty()
              ? Optional.of("The take has no reading of light \"" + id + "\".")
              : trouble(reading.get(), shot, current);
      trouble.ifPresent(message -> problems.add(at, message));
      reading
          .map(of -> withIso(of, shot))
          .filter(of -> !chosen.contains(of))
          .ifPresent(chosen::add);
    }
    if (!problems.isEmpty()) {
      return new Reading.Faulty<>(problems.list());
    }
    return switch (ComparedReading.withReadings(chosen, current)) {
      case Reading.Sound<SetupDocument> sound -> sound;
      case Reading.Faulty<SetupDocument>(List<Problem> faults) ->
          new Reading.Faulty<>(
              faults.stream().map(fault -> new Problem("/readings", fault.message())).toList());
    };
  }

  private static Optional<String> trouble(
      TakeReading reading, SetupDocument shot, SetupDocument current) {
    Optional<Light> then = find(shot, reading.light());
    Optional<Light> now = find(current, reading.light());
    if (then.isEmpty() || now.isEmpty()) {
      return Optional.of("Light \"" + reading.light() + "\" is not one of the setup's lights.");
    }
    if (!isSame(then.get(), now.get())) {
      return Optional.of(
          "Light \""
              + reading.light()
              + "\" was changed since the revision that was shot; its reading is of another"
              + " light.");
    }
    boolean isOtherAmbient =
        !shot.ambient().equals(current.ambient())
            || !shot.exposure().time().equals(current.exposure().time());
    return reading.meter().includesAmbient() && isOtherAmbient
        ? Optional.of(
            "The reading of light \""
                + reading.light()
                + "\" saw the ambient, and time or ambient were changed since.")
        : Optional.empty();
  }

  private static Optional<Light> find(SetupDocument setup, LightId id) {
    return setup.lights().stream().filter(light -> light.id().equals(id)).findFirst();
  }

  private static boolean isSame(Light then, Light now) {
    return then.head().equals(now.head())
        && then.heads() == now.heads()
        && then.pops() == now.pops()
        && then.modifier().equals(now.modifier())
        && then.gels().equals(now.gels())
        && then.place().equals(now.place())
        && then.aim().equals(now.aim())
        && then.target().equals(now.target())
        && then.stopsDown().equals(now.stopsDown());
  }

  private static TakeReading withIso(TakeReading reading, SetupDocument shot) {
    MeterReading meter = reading.meter().withIsoOr(shot.exposure().iso());
    return new TakeReading(reading.light(), meter);
  }
}
