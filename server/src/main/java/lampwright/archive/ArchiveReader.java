package lampwright.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lampwright.document.Json;
import lampwright.document.Pointer;
import lampwright.document.Problems;

/**
 * Reads an archive that a stranger may have made, and believes nothing of it: the ZIP's directory
 * first, then the manifests, then every line by its form, then what names what, then every picture.
 * It holds the lines' things in memory, not their revisions, and one picture at a time on the disk.
 */
public final class ArchiveReader {

  private final BagFile bag;
  private final Limits limits;
  private final Pictures pictures;
  private final Watch watch;
  private final Faults faults = new Faults();
  private int lines;
  private int done;

  private ArchiveReader(BagFile bag, Limits limits, Pictures pictures, Watch watch) {
    this.bag = bag;
    this.limits = limits;
    this.pictures = pictures;
    this.watch = watch;
  }

  /** Tells of a file whether it is the picture that it is said to be. */
  public interface Pictures {

    /** A sentence where it is not. */
    Optional<String> fault(Path file, PictureFile said);

    /** A folder for one file at a time. */
    Path folder();
  }

  /** Is told how far the reading is, and may end it by an exception. */
  public interface Watch {
    void step(int done, int total);
  }

  /**
   * Reads it.
   *
   * @return what is in it; to be closed
   * @throws Unsound where anything is wrong
   */
  public static Archive read(Path zip, Limits limits, Pictures pictures, Watch watch)
      throws Unsound {
    try {
      BagFile bag = BagFile.open(zip, limits);
      boolean sound = false;
      try {
        Archive archive = new ArchiveReader(bag, limits, pictures, watch).read();
        sound = true;
        return archive;
      } finally {
        if (!sound) {
          bag.close();
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Archive read() throws IOException, Unsound {
    Summary summary = summary();
    Map<ArchiveKind, Archive.Held> held = new EnumMap<>(ArchiveKind.class);
    Relations relations = new Relations(summary, faults);
    for (ArchiveKind kind : ArchiveKind.values()) {
      Map<String, Thing> things = things(kind);
      relations.of(kind, things);
      held.put(kind, versions(kind, things, relations));
      faults.throwAny();
    }
    relations.mustHold(held);
    Archive archive = new Archive(bag, limits, summary, held);
    Map<String, PictureFile> needed = needed(held);
    mustBeNeeded(summary, needed);
    faults.throwAny();
    for (Map.Entry<String, PictureFile> file : needed.entrySet()) {
      if (bag.has(PictureFile.path(file.getKey()))) {
        check(file.getValue());
      }
    }
    faults.throwAny();
    return archive;
  }

  private Summary summary() throws IOException, Unsound {
    Object json;
    try {
      json = Json.parse(bag.summary());
    } catch (Json.NotJson e) {
      throw new Unsound(Fault.ofFile(Bag.SUMMARY, "The file is not JSON. " + e.getMessage()));
    }
    Problems problems = new Problems();
    Optional<Summary> summary = Summary.FORM.read(json, Pointer.root(), problems);
    faults.add(Bag.SUMMARY, 0, problems);
    step();
    faults.throwAny();
    return summary.orElseThrow();
  }

  private Map<String, Thing> things(ArchiveKind kind) throws IOException, Unsound {
    String file = kind.thingsFile();
    Map<String, Thing> things = new TreeMap<>();
    if (kind.mayBeMissing() && !bag.has(file)) {
      step();
      return things;
    }
    bag.read(
        file,
        in -> {
          Lines all = new Lines(file, in, limits);
          String last = "";
          for (var line = all.next(kind.things(), faults);
              line.isPresent();
              line = all.next(kind.things(), faults)) {
            count(file, all.number());
            if (line.get().value().isPresent()) {
              Thing thing = line.get().value().get();
              if (thing.id().compareTo(last) <= 0) {
                throw new Unsound(
                    Fault.ofLine(file, all.number(), "The things must stand once each, by id."));
              }
              last = thing.id();
              things.put(thing.id(), thing);
            }
          }
          return all.number();
        });
    step();
    faults.throwAny();
    return things;
  }

  private Archive.Held versions(ArchiveKind kind, Map<String, Thing> things, Relations relations)
      throws IOException, Unsound {
    String file = kind.versionsFile();
    VersionChecks checks = new VersionChecks(kind, things, relations, faults);
    if (kind.mayBeMissing() && !bag.has(file)) {
      checks.end();
      step();
      return checks.held();
    }
    bag.read(
        file,
        in -> {
          Lines all = new Lines(file, in, limits);
          for (var line = all.next(kind.versions(), faults);
              line.isPresent();
              line = all.next(kind.versions(), faults)) {
            count(file, all.number());
            if (line.get().value().isPresent()) {
              checks.add(line.get().value().get(), all.number());
            }
          }
          return all.number();
        });
    checks.end();
    step();
    return checks.held();
  }

  private void count(String file, int number) throws Unsound {
    lines++;
    if (lines > limits.lines()) {
      throw new Unsound(
          Fault.ofLine(file, number, "An archive has at most " + limits.lines() + " lines."));
    }
    if (faults.isFull()) {
      faults.throwAny();
    }
  }

  private static Map<String, PictureFile> needed(Map<ArchiveKind, Archive.Held> held) {
    Map<String, PictureFile> needed = new TreeMap<>();
    Archive.Held all = held.get(ArchiveKind.PICTURES);
    if (all != null) {
      all.things()
          .forEach(
              (id, thing) -> {
                if (!all.deleted().contains(id)) {
                  PictureFile file = thing.file().orElseThrow();
                  needed.put(file.sha256(), file);
                }
              });
    }
    return needed;
  }

  private void mustBeNeeded(Summary summary, Map<String, PictureFile> needed) {
    Set<String> known = new HashSet<>(List.of(Bag.SUMMARY));
    for (ArchiveKind kind : ArchiveKind.values()) {
      known.add(kind.thingsFile());
      known.add(kind.versionsFile());
    }
    Set<String> missing = new HashSet<>(summary.missingPictures());
    needed
        .keySet()
        .forEach(
            hash -> {
              String path = PictureFile.path(hash);
              known.add(path);
              if (!bag.has(path) && !missing.contains(hash)) {
                faults.add(Fault.ofFile(path, "A picture needs this file, and it is not there."));
              }
            });
    for (String path : bag.payload()) {
      if (!known.contains(path)) {
        faults.add(Fault.ofFile(path, "Nothing in the archive needs this file."));
      }
    }
  }

  /** The bytes go to a file of their own, since a picture is read more than once. */
  private void check(PictureFile said) throws IOException, Unsound {
    String path = PictureFile.path(said.sha256());
    if (bag.bytes(path) != said.bytes()) {
      faults.add(Fault.ofFile(path, "The file has another size than the picture says."));
      return;
    }
    Path file = Files.createTempFile(pictures.folder(), "picture", "");
    try {
      byte[] hash =
          bag.read(
              path,
              in -> {
                var digest = Bag.sha256();
                try (var out = new DigestOutputStream(Files.newOutputStream(file), digest)) {
                  in.transferTo(out);
                }
                return digest.digest();
              });
      if (!HexFormat.of().formatHex(hash).equals(said.sha256())) {
        faults.add(Fault.ofFile(path, "The file is not called by its own SHA-256."));
        return;
      }
      pictures.fault(file, said).ifPresent(fault -> faults.add(Fault.ofFile(path, fault)));
    } finally {
      Files.deleteIfExists(file);
    }
    step();
    if (faults.isFull()) {
      faults.throwAny();
    }
  }

  private void step() {
    done++;
    watch.step(done, bag.payload().size());
  }
}
