package lampwright.tasks;

import java.util.List;
import java.util.Map;
import lampwright.archive.ArchiveKind;
import lampwright.archive.Summary;

/**
 * What bringing an archive in would do.
 *
 * @param what the archive is of
 * @param from the studio that it comes from, as it says
 * @param madeAt when it was made, as it says
 * @param counts of every kind
 * @param items what people look for: setups, locations, kits; of very many the first
 * @param unknownAuthors whose names come in without being members here
 * @param leftOut pictures whose files the archive lacks
 * @param orphans setups that come in without what they were made from
 */
public record ImportPlan(
    Summary.What what,
    String from,
    String madeAt,
    Map<ArchiveKind, Counts> counts,
    List<Item> items,
    List<Summary.Author> unknownAuthors,
    List<String> leftOut,
    List<Summary.Named> orphans) {

  public ImportPlan {
    counts = Map.copyOf(counts);
    items = List.copyOf(items);
    unknownAuthors = List.copyOf(unknownAuthors);
    leftOut = List.copyOf(leftOut);
    orphans = List.copyOf(orphans);
  }

  /** What becomes of a thing. */
  public enum Fate {
    /** It is not here, and comes in. */
    NEW,
    /** It is here with the same history, and stays. */
    SAME,
    /** Another thing, or the same with another history, is here under its id. */
    CLASHING
  }

  /** How many there are of each fate. */
  public record Counts(int fresh, int same, int clashing) {}

  /** One thing. */
  public record Item(ArchiveKind kind, String id, String title, Fate fate) {}

  /** Whether anything clashes. */
  boolean clashes() {
    return counts.values().stream().anyMatch(count -> count.clashing() > 0);
  }
}
