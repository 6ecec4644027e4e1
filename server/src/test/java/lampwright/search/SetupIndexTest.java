package lampwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import lampwright.meaning.Meaning;
import lampwright.meaning.Meanings;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.FilterDirectory;
import org.apache.lucene.store.IOContext;
import org.apache.lucene.store.IndexOutput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SetupIndexTest {

  @TempDir Path folder;

  @Test
  void aMissingIndexAsksForARebuildAndKnowsNothing() {
    try (SetupIndex index = SetupIndex.open(folder.resolve("new"), "catalogue")) {
      assertTrue(index.needsRebuild().isPresent());
      assertEquals(Bookmark.START, index.bookmark());
      assertEquals(0, total(index, ""));
    }
  }

  @Test
  void aFinishedIndexIsKeptOverARestart() {
    build(folder, "catalogue");
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      assertTrue(index.needsRebuild().isEmpty());
      assertEquals(new Bookmark(7, 3), index.bookmark());
      assertEquals(1, total(index, "pier"));
    }
  }

  @Test
  void whatIsShownOfAStudioDiffersOnlyWhereSomethingOfItWasTakenIn() {
    build(folder, "catalogue");
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      String before = index.shown("demo");
      index.put(IndexEntry.of("rival", "s1", 1, "Barn").build());
      index.refresh();
      assertEquals(before, index.shown("demo"));
      index.put(IndexEntry.of("demo", "s9", 1, "Barn").build());
      assertEquals(before, index.shown("demo"), "not shown yet");
      index.refresh();
      String after = index.shown("demo");
      assertNotEquals(before, after);
      index.delete("demo", "s9", 2);
      index.refresh();
      assertNotEquals(after, index.shown("demo"));
    }
  }

  @Test
  void whatMatchesIsSettledOnceTheIndexIsBuiltAndTheModelIsLoaded() {
    Question words = Question.of("demo", "pier");
    Question nothing = Question.of("demo", "");
    Meanings loading =
        new Meanings() {
          @Override
          public boolean isLoading() {
            return true;
          }

          @Override
          public Optional<Meaning> find(String text) {
            return Optional.empty();
          }
        };
    try (SetupIndex index = SetupIndex.open(folder.resolve("new"), "catalogue")) {
      assertFalse(new Search(index, Meanings.NONE).matching(nothing, 10).isSettled());
    }
    build(folder, "catalogue");
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      assertTrue(new Search(index, Meanings.NONE).matching(words, 10).isSettled());
      assertTrue(new Search(index, loading).matching(nothing, 10).isSettled());
      assertFalse(new Search(index, loading).matching(words, 10).isSettled());
    }
  }

  @Test
  void anIndexOfAnotherDatabaseIsNotUsed() {
    build(folder, "catalogue");
    try (SetupIndex index = SetupIndex.open(folder, "restored")) {
      assertEquals("it is of another database", index.needsRebuild().orElseThrow());
      assertEquals(0, total(index, "pier"));
    }
  }

  @Test
  void aRebuildThatWasCutShortStartsAgain() {
    try (SetupIndex index = SetupIndex.open(folder, "catalogue");
        SetupIndex.Rebuild rebuild = index.startRebuild()) {
      rebuild.put(pier(1));
    }
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      assertTrue(index.needsRebuild().isPresent());
    }
  }

  @Test
  void anyFlippedByteIsNoticedWhenOpened() throws IOException {
    Path whole = folder.resolve("sound");
    build(whole, "catalogue");
    List<Path> files;
    try (Stream<Path> all = Files.walk(whole)) {
      files =
          all.filter(Files::isRegularFile)
              .filter(file -> !file.endsWith("write.lock"))
              .sorted()
              .toList();
    }
    for (Path file : files) {
      byte[] sound = Files.readAllBytes(file);
      for (int at : new int[] {0, sound.length / 2, sound.length - 1}) {
        byte[] damaged = sound.clone();
        damaged[at] ^= 0x20;
        Path copy = folder.resolve("damaged-" + file.getFileName() + "-" + at);
        copyTree(whole, copy);
        Files.write(copy.resolve(whole.relativize(file)), damaged);
        try (SetupIndex index = SetupIndex.open(copy, "catalogue")) {
          assertTrue(index.needsRebuild().isPresent(), () -> file + " at " + at);
          assertEquals(0, total(index, ""));
        }
      }
    }
  }

  @Test
  void aMissingFileIsNoticedWhenOpened() throws IOException {
    build(folder, "catalogue");
    try (Stream<Path> all = Files.walk(folder)) {
      Files.delete(
          all.filter(file -> file.toString().matches(".*\\.(cfs|fdt)")).findFirst().orElseThrow());
    }
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      assertTrue(index.needsRebuild().isPresent());
    }
  }

  @Test
  void anOlderRevisionNeverReplacesANewerOne() {
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      index.put(pier(3));
      index.put(IndexEntry.of("demo", "pier", 2, "Older crane").build());
      index.refresh();
      index.put(IndexEntry.of("demo", "pier", 1, "Oldest crane").build());
      index.refresh();
      assertEquals(0, total(index, "crane"));
      assertEquals(1, total(index, "pier"));
      index.put(IndexEntry.of("demo", "pier", 3, "Same revision, new note").build());
      index.refresh();
      assertEquals(1, total(index, "note"));
      assertEquals(OptionalInt.of(3), index.findRevision("demo", "pier"));
    }
  }

  @Test
  void aDeletionOutlivesLateChangesAndRestarts() {
    build(folder, "catalogue");
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      index.delete("demo", "pier", 2);
      index.refresh();
      index.commit(new Bookmark(8, 1));
    }
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      index.put(pier(1));
      index.put(pier(2));
      index.refresh();
      assertEquals(0, total(index, ""));
      index.delete("demo", "pier", 1);
      index.put(pier(3));
      index.delete("demo", "pier", 2);
      index.refresh();
      assertEquals(1, total(index, ""));
    }
  }

  @Test
  void whatWentWithItsHistoryMayBeginAnewUnderTheSameId() {
    build(folder, "catalogue");
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      index.put(pier(7));
      index.delete("demo", "pier", Change.ERASED);
      index.refresh();
      assertEquals(0, total(index, ""));
      index.put(pier(1));
      index.refresh();
      assertEquals(1, total(index, ""));
    }
  }

  @Test
  void whatWasNotCommittedIsGoneWithItsPlaceInTheLog() {
    build(folder, "catalogue");
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      index.put(IndexEntry.of("demo", "crane", 1, "Crane").build());
      index.refresh();
    }
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      assertEquals(new Bookmark(7, 3), index.bookmark());
      assertEquals(0, total(index, "crane"));
    }
  }

  @Test
  void aFolderInUseIsRefused() {
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      assertThrows(IndexFailure.InUse.class, () -> SetupIndex.open(folder, "catalogue"));
      assertEquals(0, total(index, ""));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", ".nothing"})
  void aFullDiskIsTypedAndHeals(String refused) {
    build(folder, "catalogue");
    AtomicBoolean full = new AtomicBoolean();
    try (SetupIndex index =
        SetupIndex.open(folder, "catalogue", place -> new Disk(place, full, refused))) {
      index.put(IndexEntry.of("demo", "crane", 1, "Crane").build());
      index.refresh();
      full.set(true);
      IndexFailure.NotWritten failure =
          assertThrows(IndexFailure.NotWritten.class, () -> index.commit(new Bookmark(9, 1)));
      assertTrue(String.valueOf(failure.getMessage()).contains("disk"));
      assertEquals(1, total(index, "crane"), "searches go on");
      full.set(false);
      index.reopen();
      assertTrue(index.needsRebuild().isEmpty());
      assertEquals(new Bookmark(7, 3), index.bookmark());
      assertEquals(0, total(index, "crane"));
      index.put(IndexEntry.of("demo", "crane", 1, "Crane").build());
      index.refresh();
      index.commit(new Bookmark(9, 1));
    }
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      assertEquals(new Bookmark(9, 1), index.bookmark());
      assertEquals(1, total(index, "crane"));
    }
  }

  @Test
  void searchesAreAnsweredWhileTheIndexIsBuiltAnew() {
    build(folder, "catalogue");
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      index.requireRebuild("a test wants it");
      try (SetupIndex.Rebuild rebuild = index.startRebuild()) {
        rebuild.put(IndexEntry.of("demo", "crane", 1, "Crane").build());
        assertEquals(1, total(index, "pier"));
        rebuild.finish(new Bookmark(9, 9));
      }
      assertEquals(0, total(index, "pier"));
      assertEquals(1, total(index, "crane"));
      assertFalse(index.needsRebuild().isPresent());
    }
    try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
      assertEquals(1, total(index, "crane"));
      assertEquals(new Bookmark(9, 9), index.bookmark());
    }
  }

  @Test
  void aKilledProcessLeavesAnIndexAtItsLastBookmark() throws Exception {
    for (int kill = 0; kill < 3; kill++) {
      Process process =
          new ProcessBuilder(
                  ProcessHandle.current().info().command().orElseThrow(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  KilledIndexing.class.getName(),
                  folder.toString())
              .redirectErrorStream(true)
              .start();
      int promised = 0;
      try (BufferedReader lines =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
        int seen = 0;
        for (String line = lines.readLine();
            line != null && seen < 5 + kill * 7;
            line = lines.readLine()) {
          if (line.startsWith("committed ")) {
            promised = Integer.parseInt(line.substring("committed ".length()));
            seen++;
          }
        }
        process.destroyForcibly();
        assertTrue(process.waitFor(30, TimeUnit.SECONDS));
      }
      assertTrue(promised > 0, "the process committed something before it was killed");
      try (SetupIndex index = SetupIndex.open(folder, "catalogue")) {
        assertTrue(index.needsRebuild().isEmpty());
        assertTrue(index.bookmark().seq() >= promised);
        assertEquals(index.bookmark().seq(), total(index, ""));
      }
    }
  }

  static IndexEntry pier(int revision) {
    return IndexEntry.of("demo", "pier", revision, "Pier").moods(List.of("calm")).build();
  }

  static long total(SetupIndex index, String text) {
    return assertInstanceOf(
            SearchResult.Answer.class,
            new Search(index, Meanings.NONE).search(Question.of("demo", text)))
        .total();
  }

  private static void build(Path folder, String identity) {
    try (SetupIndex index = SetupIndex.open(folder, identity);
        SetupIndex.Rebuild rebuild = index.startRebuild()) {
      rebuild.put(pier(1));
      rebuild.finish(new Bookmark(7, 3));
    }
  }

  private static void copyTree(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.toList()) {
        Files.copy(path, to.resolve(from.relativize(path)));
      }
    }
  }

  /**
   * A disk that may be full: then nothing reaches it for good, and files with the refused ending
   * are not even begun.
   */
  static final class Disk extends FilterDirectory {
    private final AtomicBoolean full;
    private final String refused;

    Disk(Path place, AtomicBoolean full, String refused) throws IOException {
      super(FSDirectory.open(place));
      this.full = full;
      this.refused = refused;
    }

    @Override
    public IndexOutput createOutput(String name, IOContext context) throws IOException {
      if (full.get() && name.endsWith(refused)) {
        throw new IOException("No space left on device");
      }
      return super.createOutput(name, context);
    }

    @Override
    public void sync(Collection<String> names) throws IOException {
      if (full.get()) {
        throw new IOException("No space left on device");
      }
      super.sync(names);
    }
  }
}
