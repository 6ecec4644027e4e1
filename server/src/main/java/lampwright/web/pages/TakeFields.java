package lampwright.web.pages;

import static java.time.format.DateTimeFormatter.ISO_OFFSET_DATE_TIME;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.setup.LightId;
import lampwright.setup.figures.Figures;
import lampwright.setup.takes.Take;
import lampwright.setup.takes.TakeReading;
import lampwright.wording.Wording;

/**
 * The fields of the forms that log a take and correct one: filled, and read when they come back.
 */
final class TakeFields {

  private static final String READINGS = "readings";

  private final Figures figures;
  private final Wording words;

  /**
   * @param figures of the revision that was shot
   */
  TakeFields(Figures figures, Wording words) {
    this.figures = figures;
    this.words = words;
  }

  /** Where a form goes, and what it says without being asked. */
  record Frame(
      String action,
      String csrfToken,
      int number,
      String clientKey,
      int setupRevision,
      ZoneOffset offset) {}

  /** A form with what was typed into it, which may be nothing. */
  TakeForm form(Frame frame, UnaryOperator<String> typed, FormErrors errors) {
    return new TakeForm(
        frame.action(),
        frame.csrfToken(),
        frame.number(),
        frame.clientKey(),
        frame.setupRevision(),
        typed.apply(TakeForm.AT),
        written(frame.offset()),
        typed.apply(TakeForm.KIND).equals("run_through"),
        typed.apply(TakeForm.WHY),
        typed.apply(TakeForm.CHANGED),
        TakeReason.choices(true, typed, words),
        TakeReason.choices(false, typed, words),
        meters("", typed),
        errors);
  }

  /**
   * A field for each light.
   *
   * @param place what tells this form from others on its page
   */
  List<MeterField> meters(String place, UnaryOperator<String> typed) {
    return figures.lights().stream()
        .map(light -> MeterField.of(light, place, typed, words))
        .toList();
  }

  /** "Rim left" for the light {@code rim-left}. */
  static String name(LightId light) {
    return Wording.capital(light.text().replace('-', ' '));
  }

  /**
   * What was sent, as a take; the same forms read it that read what programs send.
   *
   * @param now when it was taken, where the form does not say
   */
  Reading<Take> read(UnaryOperator<String> typed, OffsetDateTime now) {
    Map<String, Object> take = new LinkedHashMap<>();
    put(take, "kind", typed.apply(TakeForm.KIND));
    String at = typed.apply(TakeForm.AT).strip();
    take.put(
        "at",
        at.isEmpty()
            ? ISO_OFFSET_DATE_TIME.format(now.truncatedTo(ChronoUnit.SECONDS))
            : (at.length() == 16 ? at + ":00" : at) + typed.apply(TakeForm.OFFSET));
    String revision = typed.apply(TakeForm.SETUP_REVISION);
    take.put("setup_revision", revision.matches("\\d{1,9}") ? Double.valueOf(revision) : revision);
    put(take, "kept", typed.apply(TakeForm.KEPT));
    put(take, "why", TakeReason.why(typed, typed.apply(TakeForm.WHY).strip(), words));
    put(take, "changed", typed.apply(TakeForm.CHANGED).strip());
    List<Object> readings = new ArrayList<>();
    told(typed).forEach(light -> readings.add(MeterField.read(light, typed)));
    take.put(READINGS, readings);
    take.put("client_key", typed.apply(TakeForm.CLIENT_KEY));
    return Take.FORM.read(take);
  }

  /** A take with another judgement, and the readings as they are typed now. */
  Reading<Take> corrected(Take old, UnaryOperator<String> typed) {
    Map<String, Object> take = new LinkedHashMap<>(Take.FORM.writeObject(old));
    put(take, "kept", typed.apply(TakeForm.KEPT));
    take.remove("why");
    put(take, "why", typed.apply(TakeForm.WHY).strip());
    List<Object> readings = new ArrayList<>();
    for (LightId light : told(typed)) {
      // What kind of meter it was stays as it was told.
      Map<String, Object> reading = new LinkedHashMap<>(metered(take, light));
      reading.remove("tenths");
      reading.putAll(MeterField.read(light, typed));
      readings.add(reading);
    }
    take.put(READINGS, readings);
    return Take.FORM.read(take);
  }

  private static Map<String, Object> metered(Map<String, Object> take, LightId light) {
    Map<String, Object> found = new LinkedHashMap<>();
    if (take.get(READINGS) instanceof List<?> readings) {
      readings.stream()
          .filter(
              reading -> reading instanceof Map<?, ?> of && light.text().equals(of.get("light")))
          .forEach(
              reading ->
                  ((Map<?, ?>) reading).forEach((key, of) -> found.put(String.valueOf(key), of)));
    }
    return found;
  }

  /** What the form that corrects a take would send of it as it is. */
  UnaryOperator<String> written(Take take) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (TakeReading reading : take.readings()) {
      fields.putAll(MeterField.written(reading, words));
    }
    fields.put(TakeForm.WHY, take.why().orElse(""));
    return field -> fields.getOrDefault(field, "");
  }

  private List<LightId> told(UnaryOperator<String> typed) {
    return figures.lights().stream()
        .map(of -> of.light().id())
        .filter(light -> MeterField.isTold(light, typed))
        .toList();
  }

  private static void put(Map<String, Object> take, String field, String typed) {
    if (!typed.isEmpty()) {
      take.put(field, typed);
    }
  }

  /**
   * What is wrong, at the fields of the page.
   *
   * @param place what tells this form from others on its page
   */
  FormErrors errors(String place, List<Problem> problems, UnaryOperator<String> typed) {
    List<LightId> told = told(typed);
    return new FormErrors(
        problems.stream()
            .map(
                problem -> {
                  String[] parts = problem.pointer().split("/", -1);
                  String field =
                      parts.length > 2 && parts[1].equals(READINGS)
                          ? MeterField.mark(told.get(Integer.parseInt(parts[2]))) + place
                          : parts.length > 1 ? shown(parts[1], place) : "";
                  return new FormErrors.FormError(field, problem.message());
                })
            .toList());
  }

  private static String shown(String field, String place) {
    return switch (field) {
      case "why" -> TakeForm.WHY + place;
      case "at" -> place.isEmpty() ? TakeForm.AT : "";
      case "changed" -> place.isEmpty() ? TakeForm.CHANGED : "";
      default -> "";
    };
  }

  private static String written(ZoneOffset offset) {
    return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
  }
}
