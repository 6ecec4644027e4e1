package lampwright.tasks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import lampwright.archive.ArchiveKind;
import lampwright.archive.Fault;
import lampwright.archive.Summary;
import lampwright.document.Json;
import org.jspecify.annotations.Nullable;

/** Plan, faults and trouble of an import as text, in which one server tells the others of them. */
final class ImportText {

  private ImportText() {}

  static String ofPlan(ImportPlan plan) {
    Map<String, Object> counts = new LinkedHashMap<>();
    plan.counts()
        .forEach(
            (kind, of) -> counts.put(kind.name(), List.of(of.fresh(), of.same(), of.clashing())));
    return Json.print(
        Map.of(
            "what", plan.what().name(),
            "from", plan.from(),
            "made_at", plan.madeAt(),
            "counts", counts,
            "items",
                plan.items().stream()
                    .map(of -> List.of(of.kind().name(), of.id(), of.title(), of.fate().name()))
                    .toList(),
            "unknown_authors",
                plan.unknownAuthors().stream().map(of -> List.of(of.key(), of.name())).toList(),
            "left_out", plan.leftOut(),
            "orphans",
                plan.orphans().stream()
                    .map(of -> List.of(of.id(), of.revision(), of.title()))
                    .toList()));
  }

  static ImportPlan plan(String text) {
    Map<?, ?> plan = (Map<?, ?>) Json.parse(text);
    Map<ArchiveKind, ImportPlan.Counts> counts = new LinkedHashMap<>();
    if (plan.get("counts") instanceof Map<?, ?> kinds) {
      kinds.forEach(
          (kind, of) -> {
            List<?> numbers = (List<?>) of;
            counts.put(
                ArchiveKind.valueOf(String.valueOf(kind)),
                new ImportPlan.Counts(number(numbers, 0), number(numbers, 1), number(numbers, 2)));
          });
    }
    return new ImportPlan(
        Summary.What.valueOf(text(plan.get("what"))),
        text(plan.get("from")),
        text(plan.get("made_at")),
        counts,
        rows(plan.get("items")).stream()
            .map(
                of ->
                    new ImportPlan.Item(
                        ArchiveKind.valueOf(text(of.get(0))),
                        text(of.get(1)),
                        text(of.get(2)),
                        ImportPlan.Fate.valueOf(text(of.get(3)))))
            .toList(),
        rows(plan.get("unknown_authors")).stream()
            .map(of -> new Summary.Author(text(of.get(0)), text(of.get(1))))
            .toList(),
        list(plan.get("left_out")).stream().map(ImportText::text).toList(),
        rows(plan.get("orphans")).stream()
            .map(of -> new Summary.Named(text(of.get(0)), number(of, 1), text(of.get(2))))
            .toList());
  }

  static String ofFaults(List<Fault> faults) {
    return Json.print(
        faults.stream()
            .map(of -> List.of(of.file(), of.line(), of.pointer(), of.message()))
            .toList());
  }

  static List<Fault> faults(String text) {
    return rows(Json.parse(text)).stream()
        .map(of -> new Fault(text(of.get(0)), number(of, 1), text(of.get(2)), text(of.get(3))))
        .toList();
  }

  static String ofTrouble(ImportTrouble trouble) {
    return Json.print(List.of(trouble.why().name(), trouble.parts()));
  }

  /** Another server may be of another version, with reasons of its own. */
  static ImportTrouble trouble(String text) {
    try {
      List<?> row = list(Json.parse(text));
      return new ImportTrouble(
          ImportTrouble.Why.valueOf(text(row.getFirst())),
          list(row.getLast()).stream().map(ImportText::text).toList());
    } catch (Json.NotJson | IllegalArgumentException | NoSuchElementException e) {
      return ImportTrouble.of(ImportTrouble.Why.NOT_BROUGHT_IN);
    }
  }

  private static List<?> list(@Nullable Object of) {
    return of instanceof List<?> list ? list : List.of();
  }

  private static List<List<?>> rows(@Nullable Object of) {
    List<List<?>> rows = new ArrayList<>();
    list(of).forEach(row -> rows.add(list(row)));
    return rows;
  }

  private static int number(List<?> row, int at) {
    return row.get(at) instanceof Number number ? number.intValue() : 0;
  }

  private static String text(@Nullable Object of) {
    return String.valueOf(of);
  }
}
