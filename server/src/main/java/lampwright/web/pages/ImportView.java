package lampwright.web.pages;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.archive.ArchiveKind;
import lampwright.language.Notation;
import lampwright.tasks.ImportPlan;
import lampwright.tasks.Importing;
import lampwright.wording.Wording;

/** An import in words. */
record ImportView(Notation notation, Importing.Told told) {

  private static final int MOST_ITEMS = 200;

  String state() {
    return notation.say("studio.import.state." + word(told.state()));
  }

  String sentence() {
    return told.trouble()
        .map(trouble -> new Wording(notation).say(trouble.said()))
        .orElseGet(
            () ->
                isBlocked()
                    ? notation.say("studio.import.blocked")
                    : notation.say("studio.import.means." + word(told.state())));
  }

  /** Whether things clash and are not to be copied or left as they are. */
  boolean isBlocked() {
    return told.state() == Importing.State.PLANNED
        && told.clashes() == Importing.Clashes.REFUSE
        && told.plan().stream()
            .flatMap(plan -> plan.counts().values().stream())
            .anyMatch(counts -> counts.clashing() > 0);
  }

  boolean isAtWork() {
    return switch (told.state()) {
      case CHECKING, RUNNING, COMMITTING -> true;
      case PLANNED, FAULTY, FAILED, IMPORTED -> false;
    };
  }

  boolean canStart() {
    return told.state() == Importing.State.PLANNED && !isBlocked();
  }

  boolean canBeDiscarded() {
    return told.state() != Importing.State.IMPORTED && told.state() != Importing.State.COMMITTING;
  }

  /**
   * What is being done.
   *
   * @param address where programs ask how far it is
   */
  Optional<ImportPage.Work> work(String address) {
    return isAtWork()
        ? Optional.of(
            new ImportPage.Work(
                told.done(),
                told.total(),
                told.total() == 0
                    ? notation.say("studio.import.beginning")
                    : notation.say("studio.import.steps", told.done(), told.total()),
                notation.say("studio.import.steps", "{0}", "{1}"),
                address))
        : Optional.empty();
  }

  Optional<ImportPage.Plan> plan() {
    return told.plan()
        .map(
            plan ->
                new ImportPage.Plan(
                    notation.say(
                        "studio.import.from." + word(plan.what()), plan.from(), madeAt(plan)),
                    Stream.of(ArchiveKind.values())
                        .filter(plan.counts()::containsKey)
                        .map(kind -> row(kind, plan))
                        .toList(),
                    remarks(plan),
                    plan.items().stream()
                        .sorted(
                            Comparator.comparing(item -> item.fate() != ImportPlan.Fate.CLASHING))
                        .limit(MOST_ITEMS)
                        .map(this::item)
                        .toList()));
  }

  /** As it says itself; what is no moment is shown as it stands. */
  private String madeAt(ImportPlan plan) {
    try {
      return new DayWords(new Wording(notation)).day(Instant.parse(plan.madeAt()));
    } catch (DateTimeParseException e) {
      return plan.madeAt();
    }
  }

  private ImportPage.Row row(ArchiveKind kind, ImportPlan plan) {
    ImportPlan.Counts counts = plan.counts().getOrDefault(kind, new ImportPlan.Counts(0, 0, 0));
    return new ImportPage.Row(kinds(kind), counts.fresh(), counts.same(), counts.clashing());
  }

  private List<String> remarks(ImportPlan plan) {
    Stream<String> names =
        plan.unknownAuthors().isEmpty()
            ? Stream.of()
            : Stream.of(
                notation.say(
                    "studio.import.authors",
                    String.join(
                        ", ",
                        plan.unknownAuthors().stream().map(author -> author.name()).toList())));
    Stream<String> pictures =
        plan.leftOut().isEmpty()
            ? Stream.of()
            : Stream.of(notation.count("studio.import.left_out", plan.leftOut().size()));
    Stream<String> orphans =
        plan.orphans().stream().map(orphan -> notation.say("studio.import.orphan", orphan.title()));
    return Stream.of(names, pictures, orphans).flatMap(lines -> lines).toList();
  }

  private ImportPage.Item item(ImportPlan.Item item) {
    return new ImportPage.Item(
        item.title(),
        notation.say("studio.import.kind." + item.kind().word()),
        notation.say(
            "studio.import.fate."
                + word(item.fate())
                + (item.fate() == ImportPlan.Fate.CLASHING ? "." + word(told.clashes()) : "")),
        item.fate() == ImportPlan.Fate.CLASHING);
  }

  private String kinds(ArchiveKind kind) {
    return notation.say("studio.import.kinds." + kind.word());
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
