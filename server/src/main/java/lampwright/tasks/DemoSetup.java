package lampwright.tasks;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.archive.ArchiveKind;
import lampwright.archive.PictureFile;
import lampwright.archive.Thing;
import lampwright.archive.Version;
import lampwright.document.MergePatch;
import lampwright.setup.Standing;

/**
 * One setup of the demo with its history: what it was before, its picture, the log of its day and
 * what was noted of it, each by who did it then.
 *
 * @param name its files' name, {@code last-boat-out}
 * @param document as it is now
 * @param history see {@code seed-data/README.md}
 * @param people the key in an archive of whom the history calls so
 */
record DemoSetup(String name, Map<?, ?> document, Map<?, ?> history, UnaryOperator<String> people) {

  /** A take is written down a little after the flash. */
  private static final Duration WRITTEN_DOWN = Duration.ofMinutes(2);

  /** The id of what is in files of this name. */
  static String id(String name) {
    return name.replace("-", "");
  }

  void addTo(DemoLines lines, Optional<PictureFile> picture) {
    List<Version> versions = versions();
    lines.add(
        ArchiveKind.SETUPS, thing(id(), versions, parent(), false, Optional.empty()), versions);
    picture.ifPresent(file -> addPicture(lines, file));
    addTakes(lines);
    addNotes(lines, picture.isPresent());
  }

  private String id() {
    return id(name);
  }

  private Optional<Thing.Origin> parent() {
    return history.get("parent") instanceof Map<?, ?> parent
        ? Optional.of(
            new Thing.Origin(
                id(DemoFiles.text(parent, "setup")), DemoFiles.number(parent, "revision")))
        : Optional.empty();
  }

  private Thing thing(
      String of,
      List<Version> versions,
      Optional<Thing.Origin> parent,
      boolean hangsOnIt,
      Optional<PictureFile> file) {
    return new Thing(
        of,
        versions.size(),
        versions.getFirst().changedAt(),
        versions.getFirst().changedBy(),
        parent,
        hangsOnIt ? Optional.of(id()) : Optional.empty(),
        Optional.empty(),
        file);
  }

  private List<Version> versions() {
    List<Version> versions = new ArrayList<>();
    for (Map<?, ?> revision : DemoFiles.objects(history, "revisions")) {
      Object was = revision.containsKey("was") ? revision.get("was") : Map.of();
      Standing standing = new Standing(Standing.State.of(DemoFiles.text(revision, "state")), false);
      versions.add(
          version(
              id(),
              versions.size() + 1,
              revision,
              Optional.of(standing),
              MergePatch.apply(document, was == null ? Map.of() : was)));
    }
    return versions;
  }

  private Version version(
      String of, int revision, Map<?, ?> said, Optional<Standing> standing, Object what) {
    return new Version(
        of,
        revision,
        Instant.parse(DemoFiles.text(said, "at")),
        people.apply(DemoFiles.text(said, "by")),
        said.get("message") instanceof String message ? message : "",
        false,
        standing,
        Optional.empty(),
        Optional.empty(),
        what);
  }

  private String pictureId() {
    return id() + "p";
  }

  private void addPicture(DemoLines lines, PictureFile file) {
    if (!(history.get("picture") instanceof Map<?, ?> said)) {
      throw new IllegalStateException("The history of " + name + " says nothing of its picture");
    }
    Map<String, Object> note = Map.of("kind", "final", "caption", DemoFiles.text(said, "caption"));
    Version only = version(pictureId(), 1, said, Optional.empty(), note);
    lines.add(
        ArchiveKind.PICTURES,
        thing(pictureId(), List.of(only), Optional.empty(), true, Optional.of(file)),
        List.of(only));
  }

  private void addTakes(DemoLines lines) {
    Map<LocalDate, Integer> ofDay = new HashMap<>();
    int count = 0;
    for (Map<?, ?> take : DemoFiles.objects(history, "takes")) {
      Map<?, ?> what = DemoFiles.object(take, "document");
      OffsetDateTime at = OffsetDateTime.parse(DemoFiles.text(what, "at"));
      int number = ofDay.merge(at.toLocalDate(), 1, Integer::sum);
      count++;
      Map<String, Object> said = new LinkedHashMap<>();
      said.put("by", DemoFiles.text(take, "by"));
      said.put("at", at.toInstant().plus(WRITTEN_DOWN).toString());
      Version only = version(id() + "t" + count, 1, said, Optional.empty(), what);
      Thing plain = thing(only.id(), List.of(only), Optional.empty(), true, Optional.empty());
      lines.add(
          ArchiveKind.TAKES,
          new Thing(
              plain.id(),
              plain.revision(),
              plain.createdAt(),
              plain.createdBy(),
              plain.parent(),
              plain.setup(),
              Optional.of(number),
              plain.file()),
          Collections.singletonList(only));
    }
  }

  private void addNotes(DemoLines lines, boolean hasPicture) {
    int count = 0;
    for (Map<?, ?> note : DemoFiles.objects(history, "notes")) {
      count++;
      Object what = pointed(DemoFiles.object(note, "document"), hasPicture);
      Version only = version(id() + "n" + count, 1, note, Optional.empty(), what);
      lines.add(
          ArchiveKind.NOTES,
          thing(only.id(), List.of(only), Optional.empty(), true, Optional.empty()),
          List.of(only));
    }
  }

  /** In the files a note points into the picture of its setup; which one that is, goes unsaid. */
  private Object pointed(Map<?, ?> note, boolean hasPicture) {
    if (!(note.get("about") instanceof Map<?, ?> about && "picture".equals(about.get("kind")))) {
      return note;
    }
    if (!hasPicture) {
      throw new IllegalStateException("A note of " + name + " points into no picture");
    }
    Map<Object, Object> pointing = new LinkedHashMap<>(about);
    pointing.put("picture", pictureId());
    Map<Object, Object> copy = new LinkedHashMap<>(note);
    copy.put("about", pointing);
    return copy;
  }
}
