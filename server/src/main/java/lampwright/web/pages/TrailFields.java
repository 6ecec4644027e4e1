package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.trail.Stage;
import lampwright.learning.trail.Trail;
import lampwright.tasks.Refused;
import lampwright.web.http.FormFields;

/** A trail as a form holds it: a row for each stage, in the order of their numbers. */
final class TrailFields {

  /** More can be added by keeping the form and opening it again. */
  private static final int EMPTY_ROWS = 3;

  private static final int MOST_ROWS = 80;

  private TrailFields() {}

  /** The rows of a trail, with empty ones after them. */
  static List<TrailEditPage.Row> rows(List<Stage> stages) {
    List<TrailEditPage.Row> rows = new ArrayList<>();
    stages.forEach(stage -> rows.add(row(rows.size(), stage)));
    IntStream.range(0, EMPTY_ROWS)
        .forEach(_ -> rows.add(row(rows.size(), "", "reading", "", "", "", List.of(), "3")));
    return rows;
  }

  private static TrailEditPage.Row row(int at, Stage stage) {
    String id = stage.id().text();
    String title = stage.title();
    return switch (stage) {
      case Stage.ToRead read -> row(at, id, "reading", title, read.text(), "", List.of(), "3");
      case Stage.ToStudy study ->
          row(at, id, "study", title, study.lookAt(), study.setup().text(), List.of(), "3");
      case Stage.ToBuild build ->
          row(at, id, "build", title, build.task(), build.setup().text(), List.of(), "3");
      case Stage.ToAnswer drills ->
          row(
              at,
              id,
              "drills",
              title,
              "",
              "",
              drills.kinds().stream().map(DrillKind::word).toList(),
              String.valueOf(drills.right()));
    };
  }

  private static TrailEditPage.Row row(
      int at,
      String id,
      String kind,
      String title,
      String text,
      String setup,
      List<String> chosen,
      String right) {
    return new TrailEditPage.Row(
        "stage-" + at, id, String.valueOf(at + 1), kind, title, text, setup, chosen, right);
  }

  /** The rows as they were sent. */
  static List<TrailEditPage.Row> rows(FormFields sent) {
    List<TrailEditPage.Row> rows = new ArrayList<>();
    for (int i = 0; i < MOST_ROWS && sent.names().contains("stage-" + i + "-title"); i++) {
      String field = "stage-" + i;
      rows.add(
          new TrailEditPage.Row(
              field,
              sent.get(field + "-id").strip(),
              sent.get(field + "-place").strip(),
              sent.get(field + "-kind"),
              sent.get(field + "-title").strip(),
              sent.get(field + "-text").strip(),
              sent.get(field + "-setup"),
              Arrays.stream(DrillKind.values())
                  .map(DrillKind::word)
                  .filter(word -> !sent.get(field + "-ask-" + word).isEmpty())
                  .toList(),
              sent.get(field + "-right").strip()));
    }
    return rows;
  }

  /**
   * Reads a form; a stage without a title is none.
   *
   * @throws Refused Invalid, with pointers into the trail, see {@link #field}
   */
  static Trail read(FormFields sent) {
    List<TrailEditPage.Row> rows = walked(sent);
    Map<String, Object> plain = new LinkedHashMap<>();
    plain.put("name", sent.get(TrailEditPage.NAME).strip());
    put(plain, "about", sent.get(TrailEditPage.ABOUT));
    put(plain, "clears_for", sent.get(TrailEditPage.CLEARS_FOR));
    Set<String> ids = new HashSet<>();
    rows.forEach(row -> ids.add(row.id()));
    plain.put("stages", rows.stream().map(row -> stage(row, ids)).toList());
    return switch (Trail.FORM.read(plain)) {
      case Reading.Sound<Trail>(Trail trail) -> trail;
      case Reading.Faulty<Trail> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** The rows that are stages, in the order in which they are walked. */
  private static List<TrailEditPage.Row> walked(FormFields sent) {
    return rows(sent).stream()
        .filter(row -> !row.isEmpty())
        .sorted(Comparator.comparingInt(TrailFields::place))
        .toList();
  }

  private static int place(TrailEditPage.Row row) {
    return row.place().matches("\\d{1,4}") ? Integer.parseInt(row.place()) : Integer.MAX_VALUE;
  }

  private static void put(Map<String, Object> plain, String name, String typed) {
    if (!typed.isBlank()) {
      plain.put(name, typed.strip());
    }
  }

  private static Map<String, Object> stage(TrailEditPage.Row row, Set<String> ids) {
    Map<String, Object> stage = new LinkedHashMap<>();
    stage.put("kind", row.kind());
    stage.put("id", row.id().isEmpty() ? newId(row.title(), ids) : row.id());
    stage.put("title", row.title());
    switch (row.kind()) {
      case "study" -> {
        stage.put("setup", row.setup());
        stage.put("look_at", row.text());
      }
      case "build" -> {
        stage.put("setup", row.setup());
        stage.put("task", row.text());
      }
      case "drills" -> {
        stage.put("kinds", row.chosen());
        stage.put(
            "right",
            row.right().matches("\\d{1,3}") ? Double.valueOf(row.right()) : (Object) row.right());
      }
      default -> stage.put("text", row.text());
    }
    return stage;
  }

  /** Of the title's letters; what members did on a stage hangs on its id, so that it stays. */
  private static String newId(String title, Set<String> taken) {
    String plain =
        title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String base = plain.isEmpty() ? "stage" : plain.substring(0, Math.min(30, plain.length()));
    String id = base.replaceAll("-$", "");
    for (int i = 2; !taken.add(id); i++) {
      id = base.replaceAll("-$", "") + "-" + i;
    }
    return id;
  }

  /** The field that a problem of a trail that was sent is about. */
  static String field(Problem problem, FormFields sent) {
    List<TrailEditPage.Row> rows = walked(sent);
    String[] parts = problem.pointer().split("/", -1);
    if (parts.length < 3 || !parts[1].equals("stages") || !parts[2].matches("\\d{1,3}")) {
      return parts.length > 1 ? parts[1] : "";
    }
    String part =
        parts.length < 4
            ? "title"
            : switch (parts[3]) {
              case "look_at", "task", "text" -> "text";
              case "setup" -> "setup";
              case "kinds" -> "asks";
              case "right" -> "right";
              default -> "title";
            };
    return rows.get(Integer.parseInt(parts[2])).field() + "-" + part;
  }
}
