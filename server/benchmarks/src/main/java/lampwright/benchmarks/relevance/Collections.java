package lampwright.benchmarks.relevance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lampwright.search.IndexEntry;

/**
 * A judged collection from outside, as a folder of {@code docs.tsv} (id, text), {@code queries.tsv}
 * (id, text) and {@code qrels.tsv} (query, document, grade). Such collections are for measuring
 * only and no part of this project.
 */
final class Collections {

  private static final int TITLE = 100;

  private Collections() {}

  static JudgedSet read(Path folder) throws IOException {
    List<IndexEntry> entries = new ArrayList<>();
    for (String line : Files.readAllLines(folder.resolve("docs.tsv"))) {
      String[] parts = line.split("\t", 2);
      String text = parts[1].replace('\t', ' ').strip();
      if (!text.isEmpty()) {
        // As somebody would bring it in: the beginning is the title, all of it the text.
        entries.add(
            IndexEntry.of(OwnSet.STUDIO, parts[0], 1, beginning(text)).intent(text).build());
      }
    }
    List<JudgedSet.Asked> questions = new ArrayList<>();
    for (String line : Files.readAllLines(folder.resolve("queries.tsv"))) {
      String[] parts = line.split("\t", 2);
      questions.add(new JudgedSet.Asked(parts[0], "held", "outside", parts[1]));
    }
    Map<String, Map<String, Integer>> judgements = new HashMap<>();
    for (String line : Files.readAllLines(folder.resolve("qrels.tsv"))) {
      String[] parts = line.split("\t");
      judgements
          .computeIfAbsent(parts[0], _ -> new HashMap<>())
          .put(parts[1], Integer.parseInt(parts[2].strip()));
    }
    return new JudgedSet(folder.getFileName().toString(), entries, questions, judgements);
  }

  private static String beginning(String text) {
    if (text.length() <= TITLE) {
      return text;
    }
    int space = text.lastIndexOf(' ', TITLE);
    return text.substring(0, space > 0 ? space : TITLE);
  }
}
