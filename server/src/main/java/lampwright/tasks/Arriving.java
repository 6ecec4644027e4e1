package lampwright.tasks;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lampwright.archive.Archive;
import lampwright.archive.ArchiveKind;
import lampwright.archive.PictureFile;
import lampwright.archive.Thing;
import lampwright.archive.Version;
import lampwright.people.Ids;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.store.ArchiveArrival;
import lampwright.store.SetupHistory;
import lampwright.store.StoredPicture;
import lampwright.store.StudioTransaction;
import lampwright.tasks.ImportPlan.Fate;

/**
 * Writes what comes in of an archive into one transaction; the pictures' files are there already.
 */
final class Arriving {

  private final StudioTransaction in;
  private final Fates fates;
  private final Set<String> copied;
  private final Map<String, StoredPicture.File> files;
  private final Ids ids;
  private final Runnable each;
  private final Map<ArchiveKind, Map<String, String>> renamed = new EnumMap<>(ArchiveKind.class);

  /**
   * @param copied setups that come in under other ids
   * @param files of the living pictures that come in, by hash
   * @param each is called for each thing, and may end it all by an exception
   */
  Arriving(
      StudioTransaction in,
      Fates fates,
      Set<String> copied,
      Map<String, StoredPicture.File> files,
      Ids ids,
      Runnable each) {
    this.in = in;
    this.fates = fates;
    this.copied = copied;
    this.files = files;
    this.ids = ids;
    this.each = each;
  }

  /**
   * Writes it.
   *
   * @return the living setups that have come in, with their revisions
   */
  Map<SetupId, Integer> write() {
    Archive archive = fates.archive();
    Map<String, PersonId> authors = Fates.authors(in, archive, () -> new PersonId(ids.next()));
    ArchiveArrival arrival =
        new ArchiveArrival(
            in,
            key ->
                Optional.ofNullable(authors.get(key))
                    .orElseThrow(() -> new IllegalStateException("An author was not checked")));
    rename(archive);
    Map<SetupId, Integer> setups = new LinkedHashMap<>();
    for (ArchiveKind kind : ArchiveKind.values()) {
      Archive.Held held = archive.of(kind);
      Map<String, Thing> coming = coming(kind, held);
      archive.eachVersion(
          kind,
          (version, document) -> {
            Thing thing = coming.get(version.id());
            if (thing != null) {
              add(arrival, kind, held, thing, version);
            }
          });
      if (kind == ArchiveKind.SETUPS) {
        coming.forEach(
            (id, thing) -> {
              if (!held.deleted().contains(id)) {
                setups.put(new SetupId(thing.id()), thing.revision());
              }
            });
      }
    }
    arrival.end();
    return setups;
  }

  private void rename(Archive archive) {
    for (ArchiveKind kind : ArchiveKind.values()) {
      Map<String, String> names = new HashMap<>();
      for (Thing thing : archive.of(kind).things().values()) {
        boolean ofCopied = thing.setup().map(copied::contains).orElse(false);
        boolean isCopied =
            switch (kind) {
              case SETUPS -> copied.contains(thing.id());
              case PICTURES, TAKES, NOTES -> ofCopied;
              case GEAR, KITS, LOCATIONS, TRAILS -> fates.of(kind, thing.id()) == Fate.CLASHING;
            };
        if (isCopied) {
          names.put(thing.id(), ids.next());
        }
      }
      renamed.put(kind, names);
    }
  }

  private String name(ArchiveKind kind, String id) {
    return renamed.getOrDefault(kind, Map.of()).getOrDefault(id, id);
  }

  /** By the ids of the archive, as they are called here. */
  private Map<String, Thing> coming(ArchiveKind kind, Archive.Held held) {
    Map<String, Thing> coming = new TreeMap<>();
    for (Thing thing : held.things().values()) {
      if (fates.comes(kind, thing, copied)) {
        coming.put(
            thing.id(),
            thing.renamed(
                name(kind, thing.id()),
                thing.parent().flatMap(this::parent),
                thing.setup().map(setup -> name(ArchiveKind.SETUPS, setup))));
      }
    }
    return coming;
  }

  /** What is neither in the archive nor here is no longer told. */
  private Optional<Thing.Origin> parent(Thing.Origin origin) {
    boolean comesToo = fates.archive().of(ArchiveKind.SETUPS).things().containsKey(origin.id());
    if (comesToo) {
      return Optional.of(
          new Thing.Origin(name(ArchiveKind.SETUPS, origin.id()), origin.revision()));
    }
    return new SetupHistory(in).find(new SetupId(origin.id()), origin.revision()).isPresent()
        ? Optional.of(origin)
        : Optional.empty();
  }

  private void add(
      ArchiveArrival arrival, ArchiveKind kind, Archive.Held held, Thing thing, Version version) {
    Version here = version.renamed(thing.id(), document(kind, version.document()));
    Optional<StoredPicture.File> file =
        thing.file().map(said -> file(said, held.deleted().contains(version.id())));
    arrival.add(kind, thing, here, kind.typed(here.document()), file);
    if (version.revision() == thing.revision()) {
      each.run();
    }
  }

  /** Of a deleted picture nothing but its row is kept. */
  private StoredPicture.File file(PictureFile said, boolean isDeleted) {
    if (isDeleted) {
      return new StoredPicture.File(
          said.sha256(), said.bytes(), said.mediaType(), said.width(), said.height(), "{}", "{}");
    }
    return Optional.ofNullable(files.get(said.sha256()))
        .orElseThrow(() -> new IllegalStateException("A picture's file was not put in its place"));
  }

  private Object document(ArchiveKind kind, Object document) {
    return switch (kind) {
      case SETUPS ->
          replaced(document, List.of("occasion", "place", "location"), ArchiveKind.LOCATIONS);
      case NOTES -> replaced(document, List.of("about", "picture"), ArchiveKind.PICTURES);
      case KITS -> each(document, "gear", List.of("id"), ArchiveKind.GEAR);
      case TRAILS -> each(document, "stages", List.of("setup"), ArchiveKind.SETUPS);
      case GEAR, LOCATIONS, PICTURES, TAKES -> document;
    };
  }

  /** A document in whose list each object names something. */
  private Object each(Object json, String list, List<String> path, ArchiveKind names) {
    if (!(json instanceof Map<?, ?> object && object.get(list) instanceof List<?> all)) {
      return json;
    }
    Map<Object, Object> copy = new LinkedHashMap<>(object);
    copy.put(list, all.stream().map(one -> replaced(one, path, names)).toList());
    return copy;
  }

  private Object replaced(Object json, List<String> path, ArchiveKind names) {
    if (path.isEmpty()) {
      return json instanceof String id ? name(names, id) : json;
    }
    if (json instanceof Map<?, ?> object && object.containsKey(path.getFirst())) {
      Map<Object, Object> copy = new LinkedHashMap<>(object);
      Object inner = object.get(path.getFirst());
      if (inner != null) {
        copy.put(path.getFirst(), replaced(inner, path.subList(1, path.size()), names));
      }
      return copy;
    }
    return json;
  }
}
