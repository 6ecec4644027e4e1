package lampwright.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/** An archive that was found sound: every checksum, every document and whatever names another. */
public final class Archive implements AutoCloseable {

  private final BagFile bag;
  private final Limits limits;
  private final Summary summary;
  private final Map<ArchiveKind, Held> held;

  Archive(BagFile bag, Limits limits, Summary summary, Map<ArchiveKind, Held> held) {
    this.bag = bag;
    this.limits = limits;
    this.summary = summary;
    this.held = new EnumMap<>(held);
  }

  /**
   * The things of one kind.
   *
   * @param things by their ids, in the order of these
   * @param titles what each is called now
   * @param deleted those that are deleted now
   * @param fingerprints see {@link Fingerprints}
   */
  public record Held(
      Map<String, Thing> things,
      Map<String, String> titles,
      Set<String> deleted,
      Map<String, String> fingerprints) {}

  public Summary summary() {
    return summary;
  }

  /** What the studio that it comes from is called; may be empty. */
  public String studioName() {
    return bag.said("Source-Organization");
  }

  /** When it was made, as it says; may be empty. */
  public String madeAt() {
    return bag.said("Lampwright-Made-At");
  }

  public Held of(ArchiveKind kind) {
    Held of = held.get(kind);
    if (of == null) {
      throw new IllegalStateException("Every kind has been read");
    }
    return of;
  }

  /** The living pictures whose files the archive says are lost. */
  public Set<String> lostPictures() {
    Set<String> lost = new TreeSet<>();
    Held pictures = of(ArchiveKind.PICTURES);
    pictures
        .things()
        .forEach(
            (id, thing) -> {
              String hash = thing.file().orElseThrow().sha256();
              if (!pictures.deleted().contains(id) && !bag.has(PictureFile.path(hash))) {
                lost.add(id);
              }
            });
    return lost;
  }

  /** The hashes of the pictures' files that are in it. */
  public Set<String> pictureHashes() {
    Set<String> hashes = new TreeSet<>();
    for (String path : bag.payload()) {
      if (path.startsWith(Bag.PICTURES)) {
        hashes.add(path.substring(Bag.PICTURES.length()));
      }
    }
    return hashes;
  }

  /** What is done with the bytes of a picture. */
  public interface PictureUse<T> {
    T with(InputStream in) throws IOException;
  }

  /** Reads a picture's file. */
  public <T> T picture(String sha256, PictureUse<T> use) {
    try {
      return bag.read(PictureFile.path(sha256), use::with);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Unsound e) {
      throw new IllegalStateException("An archive has changed since it was checked", e);
    }
  }

  /** Hands out each revision of a kind's things, with its document as its form reads it. */
  public void eachVersion(ArchiveKind kind, BiConsumer<Version, Object> to) {
    try {
      bag.read(
          kind.versionsFile(),
          in -> {
            Lines lines = new Lines(kind.versionsFile(), in, limits);
            Faults faults = new Faults();
            for (var line = lines.next(kind.versions(), faults);
                line.isPresent();
                line = lines.next(kind.versions(), faults)) {
              Version version = line.get().value().orElseThrow();
              to.accept(version, kind.typed(version.document()));
            }
            return lines.number();
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Unsound e) {
      throw new IllegalStateException("An archive has changed since it was checked", e);
    }
  }

  @Override
  public void close() {
    try {
      bag.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
