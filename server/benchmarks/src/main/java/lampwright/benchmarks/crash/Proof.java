package lampwright.benchmarks.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What must hold after every round, by the names of {@code server/docs/benchmarks.md}. Each check
 * throws {@link Lost} with what it found.
 *
 * <p>One is not here: I12 (alerts are delivered), for saved searches are looked at and nothing is
 * sent. I14 (a backup brings all of it back) is {@link KilledBackup}'s.
 */
final class Proof {

  private static final int TOP = 10;

  private final Api owner;
  private final Api reader;
  private final String setups;
  private final String studio;
  private final Path pictures;

  Proof(Api owner, Api reader, String studio, Path pictures) {
    this.owner = owner;
    this.reader = reader;
    this.studio = studio;
    this.setups = studio + "/setups";
    this.pictures = pictures;
  }

  private static void must(boolean holds, String invariant, String what) {
    if (!holds) {
      throw new Lost(invariant, what);
    }
  }

  /** Settles what is in doubt, then holds everything against what was acknowledged. */
  void everythingOf(Writer writer) throws IOException {
    for (Thing thing : writer.things()) {
      settle(writer, thing);
      if (!thing.isMade()) {
        continue;
      }
      if (thing.isDeleted) {
        deletedStaysAway(thing);
      } else {
        livesAsAcknowledged(thing);
        found(thing, 1);
        noReaderSees(thing);
        besideIsThere(thing);
      }
      versionsGrow(thing);
      auditHasAll(thing);
    }
  }

  /** I3 and I6: what was not answered is wholly there or not at all, and once. */
  private void settle(Writer writer, Thing thing) throws IOException {
    if (thing.doubt.isEmpty()) {
      return;
    }
    String title = thing.doubt.get().title();
    if (!thing.isMade()) {
      if (thing.key.isPresent()) {
        Api.Answer again = writer.create(owner, thing, title);
        must(again.status() == 201, "I6", "again " + thing.word + ": " + again.text());
        Writer.made(thing, again, title);
        return;
      }
      List<?> items = search(owner, thing.word);
      must(items.size() <= 1, "I3", thing.word + " is there " + items.size() + " times");
      if (items.size() == 1) {
        thing.address = setups + "/" + field(items.getFirst(), "id");
        thing.acknowledged.put(1, title);
      }
    } else {
      Api.Answer now = owner.get(thing.address);
      if (title.isEmpty()) {
        must(now.status() == 200 || now.status() == 404, "I3", thing.word + ": " + now.status());
        thing.isDeleted = now.status() == 404;
      } else {
        must(now.status() == 200, "I1", thing.word + " in doubt: " + now.status());
        int revision = now.number("revision");
        must(
            revision == thing.revision() || revision == thing.revision() + 1,
            "I3",
            thing.word + " is at " + revision + " and was at " + thing.revision());
        if (revision == thing.revision() + 1) {
          must(title(now).equals(title), "I3", thing.word + " became " + title(now));
          thing.acknowledged.put(revision, title);
        }
      }
    }
    thing.doubt = Optional.empty();
  }

  /** I1: the acknowledged content is there. I3: with what is worked out beside it. */
  private void livesAsAcknowledged(Thing thing) throws IOException {
    Api.Answer now = owner.get(thing.address);
    must(now.status() == 200, "I1", thing.word + " is gone: " + now.status());
    must(
        now.number("revision") == thing.revision() && title(now).equals(thing.title()),
        "I1",
        "%s is %s (%d) and must be %s (%d)"
            .formatted(
                thing.word, title(now), now.number("revision"), thing.title(), thing.revision()));
    must(
        owner.get(thing.address + "/signature").status() == 200,
        "I3",
        thing.word + " has no signature");
  }

  /** I2: what was deleted is nowhere. */
  private void deletedStaysAway(Thing thing) throws IOException {
    must(owner.get(thing.address).status() == 404, "I2", thing.word + " is there again");
    found(thing, 0);
  }

  /** I7: a search for its word finds it so many times. */
  private void found(Thing thing, int times) throws IOException {
    List<?> items = search(owner, thing.word);
    must(
        items.size() == times,
        "I7",
        "%s is found %d times and must be %d".formatted(thing.word, items.size(), times));
    if (times == 1) {
      must(
          thing.address.endsWith("/" + field(items.getFirst(), "id"))
              && field(items.getFirst(), "revision").equals(Integer.toString(thing.revision())),
          "I7",
          thing.word + " is found as " + items.getFirst());
    }
  }

  /** I9: a draft is not there for readers. */
  private void noReaderSees(Thing thing) throws IOException {
    must(reader.get(thing.address).status() == 404, "I9", "A reader reads " + thing.word);
    must(search(reader, thing.word).isEmpty(), "I9", "A reader finds " + thing.word);
  }

  /** I1 of takes and notes; I10: the bytes of each picture have the hash of its row. */
  private void besideIsThere(Thing thing) throws IOException {
    for (String address : thing.beside) {
      must(owner.get(address).status() == 200, "I1", address + " is gone");
    }
    for (Map.Entry<String, String> picture : thing.pictures.entrySet()) {
      Api.Answer bytes = owner.get(thing.address + "/pictures/" + picture.getKey() + "/original");
      must(
          bytes.status() == 200 && sha256(bytes.bytes()).equals(picture.getValue()),
          "I10",
          "A picture of " + thing.word + " is not what it was: " + bytes.status());
    }
  }

  /** I4: revisions count on from 1, and each that was acknowledged says what it said. */
  private void versionsGrow(Thing thing) throws IOException {
    Api.Answer list = owner.get(thing.address + "/revisions?limit=100");
    must(list.status() == 200, "I4", thing.word + " tells no revisions: " + list.text());
    List<Integer> numbers =
        list.items().stream().map(one -> Integer.valueOf(field(one, "revision"))).toList();
    for (int i = 0; i < numbers.size(); i++) {
      must(numbers.get(i) == numbers.size() - i, "I4", thing.word + " has revisions " + numbers);
    }
    int last = thing.revision() + (thing.isDeleted ? 1 : 0);
    must(numbers.size() == last, "I4", thing.word + " has " + numbers + " and must have " + last);
  }

  /** I13: each acknowledged change of it is in the audit trail. */
  private void auditHasAll(Thing thing) throws IOException {
    String id = thing.address.substring(thing.address.lastIndexOf('/') + 1);
    Api.Answer trail = owner.get(studio + "/audit?limit=100&subject=" + id);
    must(trail.status() == 200, "I13", "The audit trail is not told: " + trail.text());
    int lines = trail.items().size();
    int changes = thing.revision() + (thing.isDeleted ? 1 : 0);
    must(
        lines >= changes,
        "I13",
        thing.word + " has " + lines + " lines for " + changes + " changes");
  }

  /** I5: each revision of what everybody changes is of the one who was told so. */
  void oneWinnerEach(String shared, ConcurrentMap<Integer, String> winners) throws IOException {
    for (Map.Entry<Integer, String> won : winners.entrySet()) {
      Api.Answer revision = owner.get(shared + "/revisions/" + won.getKey());
      must(
          revision.status() == 200 && title(revision).equals(won.getValue()),
          "I5",
          "Revision %d is %s and was given to %s"
              .formatted(won.getKey(), revision.text(), won.getValue()));
    }
  }

  /** I8: what is counted is what is there. */
  void countsAreRight(long living) throws IOException {
    Api.Answer all = owner.get(setups + "?facets=state,mood&limit=1");
    must(all.number("total") == living, "I8", all.number("total") + " found of " + living);
    long counted = 0;
    if (all.at("facets") instanceof Map<?, ?> facets
        && facets.get("state") instanceof Map<?, ?> states) {
      counted = states.values().stream().mapToLong(many -> ((Number) many).longValue()).sum();
    }
    must(counted == living, "I8", counted + " counted by state of " + living);
  }

  /**
   * I10: no row without a file, and no file without a row but of an upload that was not
   * acknowledged since the last start. A start takes those away too, so right after one there is
   * none: {@link Writer#loose} is empty then.
   */
  void filesEqualRows(List<Writer> writers) throws IOException {
    Set<String> rows = new TreeSet<>();
    for (Writer writer : writers) {
      for (Thing thing : writer.things()) {
        if (thing.isMade() && !thing.isDeleted) {
          Api.Answer list = owner.get(thing.address + "/pictures?limit=100");
          must(list.status() == 200, "I10", "Pictures are not told: " + list.text());
          list.items().forEach(one -> rows.add(field(one, "sha256")));
        } else {
          // The pictures of what is deleted stay for its revisions.
          rows.addAll(thing.pictures.values());
        }
      }
    }
    Set<String> files;
    try (Stream<Path> tree = Files.exists(pictures) ? Files.walk(pictures) : Stream.empty()) {
      files =
          tree.filter(Files::isRegularFile)
              .map(file -> String.valueOf(file.getFileName()))
              .filter(name -> name.matches("[0-9a-f]{64}.*"))
              .map(name -> name.substring(0, 64))
              .collect(Collectors.toCollection(TreeSet::new));
    }
    Set<String> missing = new TreeSet<>(rows);
    missing.removeAll(files);
    must(missing.isEmpty(), "I10", "Rows without a file: " + missing);
    Set<String> orphans = new TreeSet<>(files);
    orphans.removeAll(rows);
    writers.forEach(writer -> orphans.removeAll(writer.loose()));
    must(orphans.isEmpty(), "I10", "Files without a row: " + orphans);
  }

  /** The first of what some searches find, to be compared (I11). */
  List<String> tops() throws IOException {
    List<String> found = new java.util.ArrayList<>();
    for (String words : List.of("written", "changed+quiet", "battery+head", "everybody")) {
      found.add(
          owner.get(setups + "?limit=" + TOP + "&q=" + words).items().stream()
              .map(one -> field(one, "id"))
              .collect(Collectors.joining(" ")));
    }
    return found;
  }

  private List<?> search(Api asker, String word) throws IOException {
    Api.Answer answer = asker.get(setups + "?facets=none&q=" + word);
    must(answer.status() == 200, "I7", "A search is answered by " + answer.status());
    return answer.items().stream()
        .filter(item -> (field(item, "title") + " ").contains(word + " "))
        .toList();
  }

  private static String title(Api.Answer answer) {
    return answer.at("document") instanceof Map<?, ?> document
        ? String.valueOf(document.get("title"))
        : "";
  }

  private static String field(Object item, String name) {
    Object value = item instanceof Map<?, ?> map ? map.get(name) : "";
    return value instanceof Number number
        ? Long.toString(number.longValue())
        : String.valueOf(value);
  }

  static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
