package lampwright.tasks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import lampwright.archive.Archive;
import lampwright.archive.ArchiveKind;
import lampwright.archive.Fingerprints;
import lampwright.archive.PictureFile;
import lampwright.archive.Summary;
import lampwright.archive.Thing;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.store.ArchivedAuthors;
import lampwright.store.ArchivedRows;
import lampwright.store.Members;
import lampwright.store.SetupHistory;
import lampwright.store.StudioTransaction;
import lampwright.tasks.ImportPlan.Fate;

/**
 * What becomes of each thing of an archive in a studio as it is at a moment.
 *
 * @param of by kind and id
 * @param lost pictures that do not come in, since their files are lost
 */
record Fates(Archive archive, Map<ArchiveKind, Map<String, Fate>> of, Set<String> lost) {

  private static final int MOST_ITEMS = 500;
  private static final Set<ArchiveKind> LOOKED_FOR =
      Set.of(
          ArchiveKind.SETUPS,
          ArchiveKind.LOCATIONS,
          ArchiveKind.KITS,
          ArchiveKind.GEAR,
          ArchiveKind.TRAILS);

  /** Compares an archive with what the transaction's studio holds now. */
  static Fates find(StudioTransaction in, Archive archive) {
    ArchivedRows rows = ArchivedRows.ofStudio(in);
    Map<ArchiveKind, Map<String, Fate>> of = new EnumMap<>(ArchiveKind.class);
    for (ArchiveKind kind : ArchiveKind.values()) {
      Archive.Held held = archive.of(kind);
      Fingerprints here = new Fingerprints(kind);
      rows.eachThing(
          kind,
          thing -> {
            if (held.things().containsKey(thing.id())) {
              here.add(thing);
            }
          });
      rows.eachVersion(kind, here::add);
      Map<String, String> known = here.byId();
      Map<String, Fate> fates = new HashMap<>();
      held.fingerprints()
          .forEach((id, print) -> fates.put(id, fate(print, Optional.ofNullable(known.get(id)))));
      of.put(kind, fates);
    }
    return new Fates(archive, of, archive.lostPictures());
  }

  /** The same as a member wants clashes to be settled. */
  static Fates find(StudioTransaction in, Archive archive, Importing.Clashes clashes) {
    Fates found = find(in, archive);
    return clashes == Importing.Clashes.KEEP ? found.keepingWhatIsHere() : found;
  }

  /** What clashes stays as it is here, and what hangs on such a setup does not come in either. */
  private Fates keepingWhatIsHere() {
    Set<String> clashing = clashingSetups();
    Map<ArchiveKind, Map<String, Fate>> kept = new EnumMap<>(ArchiveKind.class);
    of.forEach(
        (kind, fates) -> {
          Map<String, Fate> settled = new HashMap<>(fates);
          archive
              .of(kind)
              .things()
              .forEach(
                  (id, thing) -> {
                    boolean hangsOnOne = thing.setup().filter(clashing::contains).isPresent();
                    if (of(kind, id) == Fate.CLASHING || hangsOnOne) {
                      settled.put(id, Fate.SAME);
                    }
                  });
          kept.put(kind, settled);
        });
    return new Fates(archive, kept, lost);
  }

  private static Fate fate(String comes, Optional<String> here) {
    return here.map(print -> print.equals(comes) ? Fate.SAME : Fate.CLASHING).orElse(Fate.NEW);
  }

  Fate of(ArchiveKind kind, String id) {
    Fate fate = of.getOrDefault(kind, Map.of()).get(id);
    return fate == null ? Fate.NEW : fate;
  }

  /** Setups that clash, themselves or by what hangs on them: they can come in under other ids. */
  Set<String> clashingSetups() {
    Set<String> clashing = new HashSet<>();
    for (ArchiveKind kind : ArchiveKind.values()) {
      archive
          .of(kind)
          .things()
          .forEach(
              (id, thing) -> {
                if (of(kind, id) == Fate.CLASHING) {
                  if (kind == ArchiveKind.SETUPS) {
                    clashing.add(id);
                  }
                  thing.setup().ifPresent(clashing::add);
                }
              });
    }
    return clashing;
  }

  /** Whether a thing comes in, under its own id or another. */
  boolean comes(ArchiveKind kind, Thing thing, Set<String> copiedSetups) {
    if (kind == ArchiveKind.PICTURES && lost.contains(thing.id())) {
      return false;
    }
    boolean isCopied =
        thing.setup().map(copiedSetups::contains).orElse(false)
            || (kind == ArchiveKind.SETUPS && copiedSetups.contains(thing.id()));
    return isCopied || of(kind, thing.id()) != Fate.SAME;
  }

  /** The hashes of the files that come in. */
  Set<String> hashes(Set<String> copiedSetups) {
    Archive.Held pictures = archive.of(ArchiveKind.PICTURES);
    Set<String> hashes = new TreeSet<>();
    pictures
        .things()
        .forEach(
            (id, thing) -> {
              if (!pictures.deleted().contains(id)
                  && comes(ArchiveKind.PICTURES, thing, copiedSetups)) {
                thing.file().map(PictureFile::sha256).ifPresent(hashes::add);
              }
            });
    return hashes;
  }

  ImportPlan plan(StudioTransaction in) {
    Map<ArchiveKind, ImportPlan.Counts> counts = new EnumMap<>(ArchiveKind.class);
    List<ImportPlan.Item> items = new ArrayList<>();
    for (ArchiveKind kind : ArchiveKind.values()) {
      Map<Fate, Integer> each = new EnumMap<>(Fate.class);
      for (Thing thing : archive.of(kind).things().values()) {
        Fate fate = of(kind, thing.id());
        each.merge(fate, 1, Integer::sum);
        if (LOOKED_FOR.contains(kind) || fate == Fate.CLASHING) {
          String title = archive.of(kind).titles().getOrDefault(thing.id(), "");
          items.add(new ImportPlan.Item(kind, thing.id(), title, fate));
        }
      }
      counts.put(
          kind,
          new ImportPlan.Counts(
              each.getOrDefault(Fate.NEW, 0),
              each.getOrDefault(Fate.SAME, 0),
              each.getOrDefault(Fate.CLASHING, 0)));
    }
    items.sort(Comparator.comparing((ImportPlan.Item item) -> item.fate() != Fate.CLASHING));
    return new ImportPlan(
        archive.summary().what(),
        archive.studioName(),
        archive.madeAt(),
        counts,
        items.subList(0, Math.min(items.size(), MOST_ITEMS)),
        unknown(in),
        List.copyOf(new TreeSet<>(lost)),
        orphans(in));
  }

  private List<Summary.Author> unknown(StudioTransaction in) {
    Set<String> known =
        believed(in).stream().map(PersonId::text).collect(Collectors.toCollection(HashSet::new));
    known.addAll(new ArchivedAuthors(in).keys().values());
    return archive.summary().authors().stream()
        .filter(author -> !known.contains(author.key()))
        .toList();
  }

  private List<Summary.Named> orphans(StudioTransaction in) {
    return archive.summary().parents().stream().filter(parent -> !isHere(in, parent)).toList();
  }

  private static boolean isHere(StudioTransaction in, Summary.Named parent) {
    return new SetupHistory(in).find(new SetupId(parent.id()), parent.revision()).isPresent();
  }

  /**
   * Whom an archive may make the author of something: any member where an owner brings it in, who
   * answers for the studio; else only who brings it in, so that nobody puts words into the mouth of
   * another.
   */
  private static Set<PersonId> believed(StudioTransaction in) {
    return Leave.ask(in, Permission.WRITE_SETUPS).may(Permission.MOVE_STUDIO)
        ? new Members(in)
            .list().stream().map(member -> member.person().id()).collect(Collectors.toSet())
        : Set.of(in.person());
  }

  /** Who an archive's authors are here: whom it is believed by their ids, others by name only. */
  static Map<String, PersonId> authors(
      StudioTransaction in, Archive archive, Supplier<PersonId> ids) {
    Map<String, PersonId> authors = new HashMap<>();
    Set<PersonId> believed = believed(in);
    ArchivedAuthors archived = new ArchivedAuthors(in);
    for (Summary.Author author : archive.summary().authors()) {
      PersonId same = new PersonId(author.key());
      authors.put(
          author.key(),
          believed.contains(same) ? same : archived.ensure(ids.get(), author.key(), author.name()));
    }
    return authors;
  }
}
