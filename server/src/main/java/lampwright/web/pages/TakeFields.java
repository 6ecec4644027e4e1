package lampwright.web.pages;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.setup.LightId;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.takes.Take;
import lampwright.wording.Wording;

/** The fields of the form that logs a take: filled for a page, and read when they come back. */
final class TakeFields {

  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT);

  private final Figures figures;
  private final Wording words;

  TakeFields(Figures figures, Wording words) {
    this.figures = figures;
    this.words = words;
  }

  /** An empty form, for a take now. */
  TakeForm form(
      String action, String csrfToken, String clientKey, int setupRevision, OffsetDateTime now) {
    Map<String, String> filled =
        Map.of(
            TakeForm.CLIENT_KEY, clientKey,
            TakeForm.SETUP_REVISION, Integer.toString(setupRevision),
            TakeForm.AT, LOCAL.format(now.truncatedTo(ChronoUnit.MINUTES)),
            TakeForm.OFFSET, written(now.getOffset()));
    return form(
        action,
        csrfToken,
        setupRevision,
        field -> filled.getOrDefault(field, ""),
        FormErrors.none());
  }

  /** The form as it was sent. */
  TakeForm form(
      String action,
      String csrfToken,
      int setupRevision,
      UnaryOperator<String> typed,
      FormErrors errors) {
    return new TakeForm(
        action,
        csrfToken,
        typed.apply(TakeForm.CLIENT_KEY),
        setupRevision,
        typed.apply(TakeForm.AT),
        typed.apply(TakeForm.OFFSET),
        typed.apply(TakeForm.KIND).equals("run_through"),
        typed.apply(TakeForm.WHY),
        typed.apply(TakeForm.CHANGED),
        figures.lights().stream().map(light -> field(light, typed)).toList(),
        errors);
  }

  private TakeForm.LightField field(LightFigures light, UnaryOperator<String> typed) {
    LightId id = light.light().id();
    return new TakeForm.LightField(
        reading(id),
        name(id),
        typed.apply(reading(id)),
        light
            .level()
            .map(Level::reading)
            .map(of -> words.say("pages.used.expected", words.reading(of)))
            .orElse(""));
  }

  private static String reading(LightId light) {
    return "reading-" + light;
  }

  /** "Rim left" for the light {@code rim-left}. */
  static String name(LightId light) {
    return Wording.capital(light.text().replace('-', ' '));
  }

  /** What was sent, as a take; the same forms read it that read what programs send. */
  Reading<Take> read(UnaryOperator<String> typed) {
    Map<String, Object> take = new LinkedHashMap<>();
    put(take, "kind", typed.apply(TakeForm.KIND));
    String at = typed.apply(TakeForm.AT).strip();
    take.put("at", (at.length() == 16 ? at + ":00" : at) + typed.apply(TakeForm.OFFSET));
    String revision = typed.apply(TakeForm.SETUP_REVISION);
    take.put("setup_revision", revision.matches("\\d{1,9}") ? Double.valueOf(revision) : revision);
    put(take, "kept", typed.apply(TakeForm.KEPT));
    put(take, "why", typed.apply(TakeForm.WHY).strip());
    put(take, "changed", typed.apply(TakeForm.CHANGED).strip());
    List<Object> readings = new ArrayList<>();
    for (LightId light : told(typed)) {
      Map<String, Object> reading =
          new LinkedHashMap<>(UsedFields.metered(typed.apply(reading(light)).strip()));
      reading.put("light", light.text());
      readings.add(reading);
    }
    take.put("readings", readings);
    take.put("client_key", typed.apply(TakeForm.CLIENT_KEY));
    return Take.FORM.read(take);
  }

  private List<LightId> told(UnaryOperator<String> typed) {
    return figures.lights().stream()
        .map(of -> of.light().id())
        .filter(light -> !typed.apply(reading(light)).isBlank())
        .toList();
  }

  private static void put(Map<String, Object> take, String field, String typed) {
    if (!typed.isEmpty()) {
      take.put(field, typed);
    }
  }

  /** What is wrong, at the fields of the page. */
  FormErrors errors(List<Problem> problems, UnaryOperator<String> typed) {
    List<LightId> told = told(typed);
    return new FormErrors(
        problems.stream()
            .map(
                problem -> {
                  String[] parts = problem.pointer().split("/", -1);
                  String field =
                      parts.length > 2 && parts[1].equals("readings")
                          ? reading(told.get(Integer.parseInt(parts[2])))
                          : parts.length > 1 ? shown(parts[1]) : "";
                  return new FormErrors.FormError(field, problem.message());
                })
            .toList());
  }

  private static String shown(String field) {
    return switch (field) {
      case "at" -> TakeForm.AT;
      case "why" -> TakeForm.WHY;
      case "changed" -> TakeForm.CHANGED;
      default -> "";
    };
  }

  private static String written(ZoneOffset offset) {
    return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
  }
}
