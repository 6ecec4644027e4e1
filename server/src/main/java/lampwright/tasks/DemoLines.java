package lampwright.tasks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lampwright.archive.ArchiveKind;
import lampwright.archive.Thing;
import lampwright.archive.Version;

/** The things of the demo with their revisions, as they are gathered for its archive. */
final class DemoLines {

  private final Map<ArchiveKind, List<Thing>> things = new EnumMap<>(ArchiveKind.class);
  private final Map<ArchiveKind, List<Version>> versions = new EnumMap<>(ArchiveKind.class);

  /** Adds a thing with all its revisions, the first one first. */
  void add(ArchiveKind kind, Thing thing, List<Version> revisions) {
    things.computeIfAbsent(kind, _ -> new ArrayList<>()).add(thing);
    versions.computeIfAbsent(kind, _ -> new ArrayList<>()).addAll(revisions);
  }

  /** By their ids, as an archive has them. */
  List<Thing> things(ArchiveKind kind) {
    return things.getOrDefault(kind, List.of()).stream()
        .sorted(Comparator.comparing(Thing::id))
        .toList();
  }

  /** By the ids of their things, each thing's in order. */
  List<Version> versions(ArchiveKind kind) {
    return versions.getOrDefault(kind, List.of()).stream()
        .sorted(Comparator.comparing(Version::id).thenComparingInt(Version::revision))
        .toList();
  }

  /** The keys of everybody who wrote something. */
  Set<String> authors() {
    Set<String> authors = new TreeSet<>();
    things.values().forEach(of -> of.forEach(thing -> authors.add(thing.createdBy())));
    versions.values().forEach(of -> of.forEach(version -> authors.add(version.changedBy())));
    return authors;
  }
}
