package lampwright.web.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.light.Remedy;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.figures.Level;
import lampwright.setup.takes.ComparedReading;
import lampwright.setup.takes.Take;
import lampwright.tasks.LoggedTake;

/** Takes as the API tells them. */
final class TakeJson {

  private TakeJson() {}

  /**
   * A take as it is now.
   *
   * @param readings each reading of the document, in its order, against what was expected
   */
  record One(
      String id,
      int revision,
      int number,
      String label,
      String day,
      Instant changedAt,
      String loggedBy,
      Map<String, Object> document,
      List<ComparedJson> readings) {

    static One of(LoggedTake take) {
      return new One(
          take.id().text(),
          take.revision(),
          take.number(),
          take.label(),
          take.document().day().toString(),
          take.changedAt(),
          take.loggedBy(),
          Take.FORM.writeObject(take.document()),
          take.readings().stream().map(ComparedJson::of).toList());
    }
  }

  /** Part of the list. */
  record All(List<One> items, Optional<String> next) {}

  /** One reading against what was expected. */
  record ComparedJson(
      String light,
      Optional<LevelJson> expected,
      Optional<LevelJson> metered,
      Optional<Double> overStops,
      Optional<Double> uncertaintyStops,
      Optional<RemedyJson> remedy,
      String sentence) {

    static ComparedJson of(ComparedReading compared) {
      return new ComparedJson(
          compared.reading().light().text(),
          compared.expected().map(LevelJson::of),
          compared.metered().map(LevelJson::of),
          compared.over().map(Stops::value),
          compared.uncertainty().map(Stops::value),
          compared.remedy().map(RemedyJson::of),
          InEnglish.say(compared.sentence()));
    }
  }

  /** What a light alone gives at its target, at the ISO of the revision that was shot. */
  record LevelJson(
      @JsonProperty("f_number") double fNumber,
      double fromShootingStops,
      double uncertaintyStops,
      String known) {

    static LevelJson of(Level level) {
      return new LevelJson(
          level.reading().value(),
          level.fromShooting().value(),
          level.uncertainty().value(),
          level.known().name().toLowerCase(Locale.ROOT));
    }
  }

  /** What would bring it back; each way alone. */
  record RemedyJson(Optional<Double> distanceM, Optional<Double> stopsDown) {

    static RemedyJson of(Remedy remedy) {
      return new RemedyJson(
          remedy.distance().map(Metres::value), remedy.stopsDown().map(Stops::value));
    }
  }
}
