package lampwright.archive;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.WholeKit;
import lampwright.gear.stock.WrittenKit;
import lampwright.learning.trail.Trail;
import lampwright.setup.Occasion;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.takes.Take;

/** What the things of an archive name: it must all be in the archive, and can be so only once. */
final class Relations {

  private final Summary summary;
  private final Faults faults;
  private final Set<String> authors = new HashSet<>();
  private final Map<ArchiveKind, Map<String, Thing>> things = new EnumMap<>(ArchiveKind.class);
  private final Map<ArchiveKind, Integer> revisions = new EnumMap<>(ArchiveKind.class);
  private final Map<GearId, GearItem> livingGear = new HashMap<>();
  private final Map<String, Take> firstTakes = new HashMap<>();
  private final Set<String> numbers = new HashSet<>();
  private final Set<String> clientKeys = new HashSet<>();

  Relations(Summary summary, Faults faults) {
    this.summary = summary;
    this.faults = faults;
    for (Summary.Author author : summary.authors()) {
      if (!authors.add(author.key())) {
        faults.add(Fault.ofFile(Bag.SUMMARY, "The author " + author.key() + " stands twice."));
      }
    }
  }

  void of(ArchiveKind kind, Map<String, Thing> all) {
    things.put(kind, all);
    int line = 0;
    for (Thing thing : all.values()) {
      line++;
      String file = kind.thingsFile();
      mustBeAuthor(thing.createdBy(), file, line, "/created_by");
      if (thing.setup().filter(setup -> !ids(ArchiveKind.SETUPS).contains(setup)).isPresent()) {
        faults.add(new Fault(file, line, "/setup", "The setup is not in the archive."));
      }
      int number = line;
      thing.parent().ifPresent(parent -> mustBeThere(parent, all, file, number));
    }
  }

  private void mustBeThere(Thing.Origin parent, Map<String, Thing> setups, String file, int line) {
    Thing there = setups.get(parent.id());
    boolean isNamed =
        summary.parents().stream()
            .anyMatch(
                named -> named.id().equals(parent.id()) && named.revision() == parent.revision());
    boolean isThere = there != null && parent.revision() <= there.revision();
    if (!isThere && !(isNamed && there == null && summary.what() == Summary.What.SETUP)) {
      faults.add(new Fault(file, line, "/parent", "What it was made from is not in the archive."));
    }
  }

  private void mustBeAuthor(String key, String file, int line, String pointer) {
    if (!authors.contains(key)) {
      faults.add(
          new Fault(file, line, pointer, "The author is not among those of data/archive.json."));
    }
  }

  private Set<String> ids(ArchiveKind kind) {
    return things.getOrDefault(kind, Map.of()).keySet();
  }

  /** Looks at one revision and what its document names. */
  void add(ArchiveKind kind, Thing thing, Version version, Object document, int line) {
    revisions.merge(kind, 1, Integer::sum);
    mustBeAuthor(version.changedBy(), kind.versionsFile(), line, "/changed_by");
    switch (document) {
      case GearItem gear -> gear(thing, version, gear);
      case WrittenKit kit -> mustHaveGear(thing, version, kit, line);
      case SetupDocument setup -> mustHaveLocation(setup, line);
      case Trail trail -> mustHaveSetups(trail, line);
      case Take take -> mustBeOneTake(thing, version, take, line);
      default -> {}
    }
  }

  private void gear(Thing thing, Version version, GearItem gear) {
    if (version.revision() == thing.revision() && !version.deleted()) {
      livingGear.put(new GearId(thing.id()), gear);
    }
  }

  /** What a kit uses is in the archive; and a living kit is a whole one with it. */
  private void mustHaveGear(Thing thing, Version version, WrittenKit kit, int line) {
    String file = ArchiveKind.KITS.versionsFile();
    for (int i = 0; i < kit.gear().size(); i++) {
      if (!ids(ArchiveKind.GEAR).contains(kit.gear().get(i).id().text())) {
        faults.add(
            new Fault(
                file, line, "/document/gear/" + i + "/id", "The gear is not in the archive."));
        return;
      }
    }
    if (version.revision() == thing.revision() && !version.deleted()) {
      WholeKit.of(kit, livingGear)
          .problems()
          .forEach(
              problem ->
                  faults.add(
                      new Fault(file, line, "/document" + problem.pointer(), problem.message())));
    }
  }

  private void mustHaveSetups(Trail trail, int line) {
    for (SetupId setup : trail.setups()) {
      if (!ids(ArchiveKind.SETUPS).contains(setup.text())) {
        faults.add(
            new Fault(
                ArchiveKind.TRAILS.versionsFile(),
                line,
                "/document/stages",
                "The setup %s is not in the archive.".formatted(setup)));
      }
    }
  }

  private void mustHaveLocation(SetupDocument setup, int line) {
    setup
        .occasion()
        .flatMap(Occasion::place)
        .flatMap(Occasion.Place::location)
        .filter(location -> !ids(ArchiveKind.LOCATIONS).contains(location.text()))
        .ifPresent(
            _ ->
                faults.add(
                    new Fault(
                        ArchiveKind.SETUPS.versionsFile(),
                        line,
                        "/document/occasion/place/location",
                        "The location is not in the archive.")));
  }

  private void mustBeOneTake(Thing thing, Version version, Take take, int line) {
    String file = ArchiveKind.TAKES.versionsFile();
    String setup = thing.setup().orElseThrow();
    Thing of = things.getOrDefault(ArchiveKind.SETUPS, Map.of()).get(setup);
    if (of == null || take.setupRevision() > of.revision()) {
      faults.add(
          new Fault(file, line, "/document/setup_revision", "The setup has no such revision."));
    }
    Take first = firstTakes.computeIfAbsent(thing.id(), _ -> take);
    if (!first.at().equals(take.at()) || !first.clientKey().equals(take.clientKey())) {
      faults.add(new Fault(file, line, "/document", "When a take was, and its key, must stay."));
    }
    if (version.revision() == 1) {
      if (!numbers.add(setup + " " + take.day() + " " + thing.number().orElseThrow())) {
        faults.add(new Fault(file, line, "/document", "Another take of its day has its number."));
      }
      if (!clientKeys.add(setup + " " + take.clientKey())) {
        faults.add(new Fault(file, line, "/document/client_key", "Another take has this key."));
      }
    }
  }

  /** After everything has been read. */
  void mustHold(Map<ArchiveKind, Archive.Held> held) {
    for (ArchiveKind kind : ArchiveKind.values()) {
      Optional<Summary.Count> count =
          summary.counts().stream().filter(one -> one.kind() == kind).findFirst();
      if (count.isEmpty()
          || count.get().things() != ids(kind).size()
          || count.get().revisions() != revisions.getOrDefault(kind, 0)) {
        faults.add(
            Fault.ofFile(
                Bag.SUMMARY, "It tells another number of " + kind.word() + " than are there."));
      }
    }
    mustNotGoRound(things.getOrDefault(ArchiveKind.SETUPS, Map.of()));
    mustNotBeTooMany(held);
    if (summary.what() == Summary.What.SETUP
        && (ids(ArchiveKind.SETUPS).size() != 1
            || !ids(ArchiveKind.KITS).isEmpty()
            || !ids(ArchiveKind.GEAR).isEmpty())) {
      faults.add(
          Fault.ofFile(Bag.SUMMARY, "An archive of a setup holds one setup, no kits and no gear."));
    }
  }

  private void mustNotGoRound(Map<String, Thing> setups) {
    Set<String> sound = new HashSet<>();
    for (String start : setups.keySet()) {
      Set<String> way = new HashSet<>();
      String at = start;
      while (!sound.contains(at) && setups.containsKey(at)) {
        if (!way.add(at)) {
          faults.add(
              Fault.ofFile(
                  ArchiveKind.SETUPS.thingsFile(), "The setup " + at + " was made from itself."));
          return;
        }
        at = parentOf(setups, at);
      }
      sound.addAll(way);
    }
  }

  private static String parentOf(Map<String, Thing> setups, String id) {
    return Optional.ofNullable(setups.get(id))
        .flatMap(Thing::parent)
        .map(Thing.Origin::id)
        .orElse("");
  }

  private void mustNotBeTooMany(Map<ArchiveKind, Archive.Held> held) {
    Archive.Held pictures = held.get(ArchiveKind.PICTURES);
    if (pictures == null) {
      return;
    }
    Map<String, Integer> ofSetup = new HashMap<>();
    for (Thing picture : List.copyOf(pictures.things().values())) {
      if (!pictures.deleted().contains(picture.id())) {
        ofSetup.merge(picture.setup().orElseThrow(), 1, Integer::sum);
      }
    }
    ofSetup.forEach(
        (setup, count) -> {
          if (count > PictureNote.MOST_OF_A_SETUP) {
            faults.add(
                Fault.ofFile(
                    ArchiveKind.PICTURES.thingsFile(),
                    "The setup %s has %d pictures; at most %d are kept."
                        .formatted(setup, count, PictureNote.MOST_OF_A_SETUP)));
          }
        });
  }
}
