package lampwright.benchmarks.relevance;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.search.IndexEntry;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.store.SetupOfStudio;
import lampwright.store.StoredSetup;
import lampwright.tasks.IndexedSetup;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The questions of our own, over the demo studio and a larger invented catalogue. */
final class OwnSet {

  static final String STUDIO = "studio";

  private static final JsonMapper JSON = JsonMapper.shared();

  private OwnSet() {}

  /**
   * @param setups the folder of the demo's setups
   */
  static JudgedSet read(Path setups) throws IOException {
    List<IndexEntry> entries = new ArrayList<>(demo(setups));
    for (String line : lines("catalogue.jsonl")) {
      entries.add(entry(JSON.readTree(line)));
    }
    List<JudgedSet.Asked> questions = new ArrayList<>();
    for (String line : lines("queries.tsv")) {
      String[] parts = line.split("\t");
      if (!parts[0].equals("query")) {
        questions.add(new JudgedSet.Asked(parts[0], parts[1], parts[2], parts[3]));
      }
    }
    Map<String, Map<String, Integer>> judgements = new HashMap<>();
    for (String line : lines("judgements.tsv")) {
      String[] parts = line.split("\t");
      if (!parts[0].equals("query")) {
        judgements
            .computeIfAbsent(parts[0], _ -> new HashMap<>())
            .put(parts[1], Integer.parseInt(parts[2].strip()));
      }
    }
    return new JudgedSet("own", entries, questions, judgements);
  }

  private static List<IndexEntry> demo(Path setups) throws IOException {
    try (Stream<Path> files = Files.list(setups)) {
      return files.sorted().flatMap(file -> demoEntry(file).stream()).toList();
    }
  }

  private static Optional<IndexEntry> demoEntry(Path file) {
    try {
      String document = Files.readString(file);
      String id = file.getFileName().toString().replace(".json", "").replace("-", "");
      StoredSetup stored =
          new StoredSetup(
              new SetupId(id),
              1,
              document,
              JSON.readTree(document).path("title").stringValue(),
              Instant.EPOCH,
              new PersonId("nobody"),
              Standing.PROVEN);
      return IndexedSetup.find(
          new SetupOfStudio(
              new StudioId(STUDIO),
              stored,
              new PersonId("nobody"),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static IndexEntry entry(JsonNode setup) {
    IndexEntry.Builder entry =
        IndexEntry.of(STUDIO, setup.path("id").stringValue(), 1, setup.path("title").stringValue())
            .intent(setup.path("intent").stringValue(""))
            .moods(texts(setup.path("moods")))
            .written(texts(setup.path("written")))
            .gear(texts(setup.path("gear")))
            .roles(texts(setup.path("roles")))
            .lightCount(setup.path("lights").intValue(0));
    text(setup.path("genre")).ifPresent(entry::genre);
    text(setup.path("place").path("name")).ifPresent(entry::placeName);
    text(setup.path("place").path("kind")).ifPresent(entry::placeKind);
    return entry.build();
  }

  private static Optional<String> text(JsonNode node) {
    return node.isString() ? Optional.of(node.stringValue()) : Optional.empty();
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(item -> texts.add(item.stringValue()));
    return texts;
  }

  private static List<String> lines(String name) throws IOException {
    try (InputStream in = OwnSet.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("The build has no " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }
}
