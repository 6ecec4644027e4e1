package lampwright.search;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.LockObtainFailedException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The generations of an index on the disk, each in a numbered folder. A rebuild makes the next one,
 * and only its last commit calls it complete; so whenever the process dies, one complete generation
 * or none is left, never half of one that looks whole.
 */
final class Generations {

  private static final Logger LOG = LoggerFactory.getLogger(Generations.class);
  private static final String PREFIX = "generation-";

  private final Path folder;
  private final String identity;
  private final Opening files;
  private final Words words;

  /** Opens the files of one generation; handed in so that a test can let a disk be full. */
  interface Opening {
    Directory open(Path folder) throws IOException;
  }

  /**
   * What there is to work with.
   *
   * @param generation complete, or new and empty
   * @param reasonForRebuild why it is new and empty
   */
  record Found(Generation generation, Optional<String> reasonForRebuild) {}

  Generations(Path folder, String identity, Opening files, Words words) throws IOException {
    this.folder = folder;
    this.identity = identity;
    this.files = files;
    this.words = words;
    Files.createDirectories(folder);
  }

  /** Finds the newest generation that can be trusted, and clears away all others. */
  Found newestUsable() throws IOException {
    String reason = "it is not there";
    Optional<Generation> usable = Optional.empty();
    List<Path> onDisk = onDisk();
    for (Path candidate : onDisk) {
      Optional<String> fault = findFault(candidate);
      if (fault.isEmpty()) {
        usable = Optional.of(Generation.open(candidate, files.open(candidate), words));
        break;
      }
      reason = fault.get();
    }
    Optional<String> reasonForRebuild = usable.isPresent() ? Optional.empty() : Optional.of(reason);
    Generation chosen = usable.isPresent() ? usable.get() : create();
    for (Path other : onDisk) {
      if (!other.equals(chosen.folder())) {
        remove(other);
      }
    }
    return new Found(chosen, reasonForRebuild);
  }

  private Optional<String> findFault(Path candidate) throws IOException {
    try (Directory directory = files.open(candidate)) {
      Optional<String> damage = Generation.findDamage(directory);
      if (damage.isPresent()) {
        return damage;
      }
      CommitFacts facts = Generation.facts(directory);
      if (!facts.identity().equals(identity)) {
        return Optional.of("it is of another database");
      }
      CommitFacts wanted = CommitFacts.of(identity, true, facts.bookmark());
      if (facts.layout() != wanted.layout() || facts.analysis() != wanted.analysis()) {
        return Optional.of("it has an older layout");
      }
      return facts.complete() ? Optional.empty() : Optional.of("its making was cut short");
    } catch (LockObtainFailedException e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      // Whatever stands between us and the files, the database has it all.
      LOG.warn("The index cannot be read", e);
      return Optional.of("it cannot be read");
    }
  }

  /** Starts an empty one, behind all others. */
  Generation create() throws IOException {
    int highest = onDisk().stream().mapToInt(Generations::number).max().orElse(0);
    Path place = folder.resolve(PREFIX + (highest + 1));
    return Generation.create(
        place, files.open(place), words, CommitFacts.of(identity, false, Bookmark.START));
  }

  /** Closes one and takes it off the disk. */
  static void discard(Generation generation) throws IOException {
    generation.close();
    remove(generation.folder());
  }

  /** The generations on the disk, newest first. */
  private List<Path> onDisk() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(path -> number(path) >= 0)
          .sorted(Comparator.comparingInt(Generations::number).reversed())
          .toList();
    }
  }

  private static int number(Path path) {
    String name = path.getFileName().toString();
    return name.matches(PREFIX + "\\d{1,9}")
        ? Integer.parseInt(name.substring(PREFIX.length()))
        : -1;
  }

  private static void remove(Path generation) {
    try (Stream<Path> all = Files.walk(generation)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      // It is cleared away at the next start.
      LOG.warn("An old index could not be cleared away: {}", generation, e);
    }
  }
}
