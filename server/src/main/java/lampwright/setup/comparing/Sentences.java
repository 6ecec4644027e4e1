package lampwright.setup.comparing;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;
import lampwright.setup.used.PlannedAgainstUsed;

/** Puts changes that are not of one light into words. */
final class Sentences {

  private Sentences() {}

  static Said of(
      About.Kind kind,
      String field,
      Optional<Object> before,
      Optional<Object> after,
      SetupDocument from,
      SetupDocument to) {
    String unit = Phrases.unit(field);
    return switch (kind) {
      case EXPOSURE -> exposure(field, before, after, from, to);
      case CAMERA, AMBIENT, SUBJECT, OCCASION, PLAN ->
          Phrases.fromTo(name(kind, field), before, after, unit);
      default -> Phrases.fromTo(Phrases.part("comparing.of." + field), before, after, unit);
    };
  }

  private static Said exposure(
      String field,
      Optional<Object> before,
      Optional<Object> after,
      SetupDocument from,
      SetupDocument to) {
    Said told =
        Phrases.told(
            Phrases.part("comparing.exposure." + field),
            usual(field, before).isPresent(),
            usual(field, before).flatMap(value -> shown(field, value)),
            usual(field, after).isPresent(),
            usual(field, after).flatMap(value -> shown(field, value)));
    return effect(told, field, from.exposure(), to.exposure());
  }

  private static Filling name(About.Kind kind, String field) {
    String of = "comparing.kind." + kind.word();
    return field.startsWith(kind.word())
        ? Phrases.part(of)
        : Phrases.part("comparing.named", Phrases.part(of), Phrases.field(field));
  }

  /** No filter is written as nothing. */
  private static Optional<Object> usual(String field, Optional<Object> value) {
    return field.equals("neutral_density_stops") ? value.or(() -> Optional.of(0.0)) : value;
  }

  private static Optional<Filling> shown(String field, Object value) {
    Optional<Filling> shown = Phrases.value(value, Phrases.unit(field));
    return field.equals("f_number")
        ? shown.map(number -> Phrases.part("comparing.fNumber", number))
        : shown;
  }

  /** What another setting does to the picture; plus is brighter. */
  private static Said effect(Said told, String field, ShootingExposure from, ShootingExposure to) {
    PlannedAgainstUsed both = new PlannedAgainstUsed(from, to, List.of());
    return switch (field) {
      case "f_number" -> told(told, both.apertureDifference(), "comparing.forAll");
      case "iso" -> told(told, both.isoDifference(), "comparing.forAll");
      case "neutral_density_stops" ->
          told(told, both.neutralDensityDifference(), "comparing.forAll");
      case "time" -> told(told, both.timeDifference(), "comparing.forAmbient");
      default -> told;
    };
  }

  private static Said told(Said told, Stops stops, String key) {
    return Phrases.shows(stops) ? Said.of(key, told.asFilling(), Phrases.moreOrLess(stops)) : told;
  }
}
