package lampwright.search;

import java.nio.file.Path;
import java.util.Locale;

/** A process that indexes and commits until it is killed. */
final class KilledIndexing {

  private KilledIndexing() {}

  public static void main(String[] arguments) {
    SetupIndex index = SetupIndex.open(Path.of(arguments[0]), "catalogue");
    if (index.needsRebuild().isPresent()) {
      try (SetupIndex.Rebuild rebuild = index.startRebuild()) {
        rebuild.finish(Bookmark.START);
      }
    }
    for (int next = Math.toIntExact(index.bookmark().seq()) + 1; next < 100_000; next++) {
      index.put(
          IndexEntry.of("demo", String.format(Locale.ROOT, "s%06d", next), 1, "Pier " + next)
              .build());
      if (next % 3 == 0) {
        index.refresh();
      }
      index.commit(new Bookmark(next, next));
      System.out.println("committed " + next);
    }
  }
}
