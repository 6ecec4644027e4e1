package lampwright.setup.comparing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;
import lampwright.setup.used.PlannedAgainstUsed;

/** Puts changes that are not of one light into words. */
final class Sentences {

  private static final Map<String, String> EXPOSURE =
      Map.of(
          "f_number", "Aperture",
          "time", "Time",
          "iso", "ISO",
          "neutral_density_stops", "Grey filter",
          "white_balance_k", "White balance");

  private Sentences() {}

  static String of(
      About.Kind kind,
      String field,
      Optional<Object> before,
      Optional<Object> after,
      SetupDocument from,
      SetupDocument to) {
    String unit = Phrases.unit(field);
    return switch (kind) {
      case EXPOSURE ->
          EXPOSURE.getOrDefault(field, Phrases.capital(Phrases.words(field)))
              + Phrases.fromTo(
                  usual(field, before).map(value -> shown(field, value)),
                  usual(field, after).map(value -> shown(field, value)),
                  unit)
              + effect(field, from.exposure(), to.exposure());
      case CAMERA, AMBIENT, SUBJECT, OCCASION, PLAN ->
          name(kind, field) + Phrases.fromTo(before, after, unit);
      default -> Phrases.capital(Phrases.words(field)) + Phrases.fromTo(before, after, unit);
    };
  }

  private static String name(About.Kind kind, String field) {
    String of = Phrases.capital(kind.word());
    return field.startsWith(kind.word()) ? of : of + ": " + Phrases.words(field);
  }

  /** No filter is written as nothing. */
  private static Optional<Object> usual(String field, Optional<Object> value) {
    return field.equals("neutral_density_stops") ? value.or(() -> Optional.of(0.0)) : value;
  }

  private static Object shown(String field, Object value) {
    return field.equals("f_number") ? "f/" + Phrases.value(value, "") : value;
  }

  /** What another setting does to the picture; plus is brighter. */
  private static String effect(String field, ShootingExposure from, ShootingExposure to) {
    PlannedAgainstUsed both = new PlannedAgainstUsed(from, to, List.of());
    return switch (field) {
      case "f_number" -> forAll(both.apertureDifference());
      case "iso" -> forAll(both.isoDifference());
      case "neutral_density_stops" -> forAll(both.neutralDensityDifference());
      case "time" -> told(both.timeDifference(), " for the ambient, the flashes stay");
      default -> "";
    };
  }

  private static String forAll(Stops stops) {
    return told(stops, " for everything, ambient too");
  }

  private static String told(Stops stops, String whom) {
    return Phrases.shows(stops) ? ": " + Phrases.moreOrLess(stops) + whom : "";
  }
}
