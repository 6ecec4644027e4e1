package lampwright.web.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.archive.ArchiveKind;
import lampwright.archive.Fault;
import lampwright.archive.Summary;
import lampwright.tasks.ImportPlan;
import lampwright.tasks.ImportTrouble;
import lampwright.tasks.Importing;

/** An import as programs read it. */
record ImportJson(
    String id,
    String state,
    String clashes,
    Instant begunAt,
    Steps steps,
    Optional<Plan> plan,
    List<FaultView> faults,
    Optional<String> trouble) {

  /** How many of how many steps are done. */
  record Steps(int done, int total) {}

  /** One thing that is wrong. */
  record FaultView(String file, int line, String pointer, String message) {

    static FaultView of(Fault fault) {
      return new FaultView(fault.file(), fault.line(), fault.pointer(), fault.message());
    }
  }

  /** What it would do. */
  record Plan(
      String what,
      String from,
      String madeAt,
      Map<String, Counts> counts,
      List<Item> items,
      List<Author> unknownAuthors,
      List<String> picturesLeftOut,
      List<Parent> parentsNotHere) {

    static Plan of(ImportPlan plan) {
      Map<String, Counts> counts = new LinkedHashMap<>();
      for (ArchiveKind kind : ArchiveKind.values()) {
        ImportPlan.Counts of = plan.counts().get(kind);
        if (of != null) {
          counts.put(kind.word(), new Counts(of.fresh(), of.same(), of.clashing()));
        }
      }
      return new Plan(
          word(plan.what()),
          plan.from(),
          plan.madeAt(),
          counts,
          plan.items().stream().map(Item::of).toList(),
          plan.unknownAuthors().stream().map(Author::of).toList(),
          plan.leftOut(),
          plan.orphans().stream().map(Parent::of).toList());
    }
  }

  /** How many there are of a kind. */
  record Counts(@JsonProperty("new") int fresh, int same, int clashing) {}

  /** One thing. */
  record Item(String kind, String id, String title, String fate) {

    static Item of(ImportPlan.Item item) {
      return new Item(item.kind().word(), item.id(), item.title(), word(item.fate()));
    }
  }

  /** Whose name comes in. */
  record Author(String key, String name) {

    static Author of(Summary.Author author) {
      return new Author(author.key(), author.name());
    }
  }

  /** What a setup was made from. */
  record Parent(String id, int revision, String title) {

    static Parent of(Summary.Named named) {
      return new Parent(named.id(), named.revision(), named.title());
    }
  }

  static ImportJson of(Importing.Told told) {
    return new ImportJson(
        told.id(),
        word(told.state()),
        word(told.clashes()),
        told.begun(),
        new Steps(told.done(), told.total()),
        told.plan().map(Plan::of),
        told.faults().stream().map(FaultView::of).toList(),
        told.trouble().map(ImportTrouble::said).map(InEnglish::say));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
