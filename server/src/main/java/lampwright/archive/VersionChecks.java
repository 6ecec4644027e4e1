package lampwright.archive;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Pointer;
import lampwright.document.Problems;

/** Holds the revisions of one kind's things to what a history is like: complete and in order. */
final class VersionChecks {

  private static final Pointer DOCUMENT = Pointer.root().field("document");

  private final ArchiveKind kind;
  private final Map<String, Thing> things;
  private final Relations relations;
  private final Faults faults;
  private final Map<String, String> titles = new HashMap<>();
  private final Set<String> deleted = new HashSet<>();
  private final Fingerprints fingerprints;
  private String last = "";
  private int revision;

  VersionChecks(ArchiveKind kind, Map<String, Thing> things, Relations relations, Faults faults) {
    this.kind = kind;
    this.things = things;
    this.relations = relations;
    this.faults = faults;
    this.fingerprints = new Fingerprints(kind);
    things.values().forEach(fingerprints::add);
  }

  void add(Version version, int line) throws Unsound {
    Thing thing = things.get(version.id());
    if (thing == null) {
      throw new Unsound(at(line, "The revision is of a thing that is not in the archive."));
    }
    mustFollow(version, thing, line);
    for (Optional<Integer> earlier : List.of(version.planned(), version.restoredFrom())) {
      if (earlier.filter(number -> number >= version.revision()).isPresent()) {
        faults.add(at(line, "A revision can name only earlier ones."));
      }
    }
    Problems problems = new Problems();
    Optional<?> document = kind.readDocument(version.document(), DOCUMENT, problems);
    faults.add(kind.versionsFile(), line, problems);
    if (document.isEmpty()) {
      return;
    }
    relations.add(kind, thing, version, document.get(), line);
    fingerprints.add(version);
    if (version.revision() == thing.revision()) {
      titles.put(version.id(), kind.title(document.get(), thing));
      if (version.deleted()) {
        deleted.add(version.id());
      }
    }
  }

  private void mustFollow(Version version, Thing thing, int line) throws Unsound {
    boolean isNext = version.id().equals(last);
    if (!isNext) {
      end();
      if (version.id().compareTo(last) < 0) {
        throw new Unsound(at(line, "The revisions must stand by the ids of their things."));
      }
      last = version.id();
      revision = 0;
    }
    if (version.revision() != revision + 1 || version.revision() > thing.revision()) {
      throw new Unsound(
          at(
              line,
              "Revision %d of %s must follow revision %d, up to %d."
                  .formatted(version.revision(), version.id(), revision, thing.revision())));
    }
    revision = version.revision();
  }

  /** After the last of a thing. */
  void end() throws Unsound {
    Thing thing = things.get(last);
    if (thing != null && revision != thing.revision()) {
      throw new Unsound(
          Fault.ofFile(
              kind.versionsFile(),
              "Of %s there must be %d revisions.".formatted(last, thing.revision())));
    }
  }

  Archive.Held held() {
    for (String id : things.keySet()) {
      if (!titles.containsKey(id) && faults.isEmpty()) {
        faults.add(Fault.ofFile(kind.versionsFile(), "Of " + id + " there is no revision."));
      }
    }
    return new Archive.Held(things, titles, deleted, fingerprints.byId());
  }

  private Fault at(int line, String message) {
    return Fault.ofLine(kind.versionsFile(), line, message);
  }
}
