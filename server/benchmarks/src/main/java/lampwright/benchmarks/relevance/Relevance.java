package lampwright.benchmarks.relevance;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.benchmarks.relevance.JudgedSet.Asked;
import lampwright.meaning.Meaning;
import lampwright.meaning.Meanings;
import lampwright.meaning.SentenceModel;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.search.IndexEntry;
import lampwright.search.SetupIndex;

/**
 * Measures how well searches find what was asked for: the product's own, by words alone, by meaning
 * alone, and PostgreSQL's full text, on the same texts and questions.
 *
 * <p>Arguments: folders of judged collections, or nothing for our own set only. {@code
 * seed-data/studio/setups} is expected in the working directory, or above it.
 */
public final class Relevance {

  private static final int PAGE = 10;
  private static final int RECALL_DEPTH = 20;

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final SentenceModel model;
  private final Connection connection;

  private Relevance(SentenceModel model, Connection connection) {
    this.model = model;
    this.connection = connection;
  }

  public static void main(String[] folders) throws Exception {
    Path data = Files.createTempDirectory("relevance");
    Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwx--x--x"));
    try (SentenceModel model = SentenceModel.load();
        EmbeddedPostgres postgres = EmbeddedPostgres.start(data.resolve("postgres"));
        Connection connection =
            DriverManager.getConnection(
                postgres.jdbcUrl(EmbeddedPostgres.DATABASE),
                postgres.user(),
                postgres.password())) {
      Relevance relevance = new Relevance(model, connection);
      List<JudgedSet> sets = new ArrayList<>();
      sets.add(OwnSet.read(demoSetups()));
      for (String folder : folders) {
        sets.add(Collections.read(Path.of(folder)));
      }
      for (JudgedSet set : sets) {
        relevance.measure(set, Files.createTempDirectory(data, set.name()));
      }
    }
  }

  static Path demoSetups() {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path setups = at.resolve("seed-data/studio/setups");
      if (Files.isDirectory(setups)) {
        return setups;
      }
    }
    throw new IllegalStateException("Run this in the project: it needs seed-data/studio/setups.");
  }

  private void measure(JudgedSet set, Path folder) throws IOException, SQLException {
    Map<String, Meaning> known = new HashMap<>();
    Map<String, Meaning> asked = new HashMap<>();
    Meanings meanings = text -> Optional.of(asked.computeIfAbsent(text, model::of));
    try (SetupIndex index = SetupIndex.open(folder, set.name())) {
      for (IndexEntry entry : set.entries()) {
        Meaning meaning = model.of(entry.about());
        known.put(entry.setup(), meaning);
        index.put(entry.with(meaning));
      }
      index.refresh();
      List<Ranker> rankers =
          List.of(
              Ours.of("ours", index, meanings),
              Ours.of("words alone", index, Meanings.NONE),
              new ByMeaningAlone(known, meanings),
              FullText.of(connection, set.entries()));
      Map<String, Map<String, List<String>>> rankings = new HashMap<>();
      for (Ranker ranker : rankers) {
        Map<String, List<String>> of = new HashMap<>();
        set.questions().forEach(one -> of.put(one.id(), ranker.rank(one.text())));
        rankings.put(ranker.name(), of);
      }
      report(set, rankers, rankings);
    }
  }

  private void report(
      JudgedSet set, List<Ranker> rankers, Map<String, Map<String, List<String>>> rankings) {
    out.printf("%n%s: %d setups, ", set.name(), set.entries().size());
    List<Asked> judged =
        set.questions().stream()
            .filter(one -> set.grades(one).values().stream().anyMatch(grade -> grade > 0))
            .toList();
    out.printf("%d judged questions%n", judged.size());
    for (String part : judged.stream().map(Asked::part).distinct().sorted().toList()) {
      List<Asked> some = judged.stream().filter(one -> one.part().equals(part)).toList();
      out.printf("  %s (%d)%n", part, some.size());
      for (Ranker ranker : rankers) {
        Map<String, List<String>> of = rankings.get(ranker.name());
        out.printf(
            "    %-14s nDCG@10 %.4f  recall@20 %.4f  without a right answer among 10: %d%n",
            ranker.name(),
            mean(some.stream().mapToDouble(one -> ndcg(set, one, of)).toArray()),
            mean(some.stream().mapToDouble(one -> recall(set, one, of, RECALL_DEPTH)).toArray()),
            some.stream().filter(one -> recall(set, one, of, PAGE) == 0).count());
      }
    }
    if (judged.stream().map(Asked::kind).distinct().count() > 1) {
      kinds(set, rankers, rankings, judged);
    }
    losses(set, rankings, judged);
  }

  private void kinds(
      JudgedSet set,
      List<Ranker> rankers,
      Map<String, Map<String, List<String>>> rankings,
      List<Asked> judged) {
    out.println("  nDCG@10 by kind of question");
    for (String kind : judged.stream().map(Asked::kind).distinct().toList()) {
      out.printf("    %-16s", kind);
      for (Ranker ranker : rankers) {
        Map<String, List<String>> of = rankings.get(ranker.name());
        out.printf(
            "%14s %.3f",
            ranker.name(),
            mean(
                judged.stream()
                    .filter(one -> one.kind().equals(kind))
                    .mapToDouble(one -> ndcg(set, one, of))
                    .toArray()));
      }
      out.println();
    }
  }

  /** Where ours is worse than words alone or than PostgreSQL, and where the first page is empty. */
  private void losses(
      JudgedSet set, Map<String, Map<String, List<String>>> rankings, List<Asked> judged) {
    out.println("  questions that lose more than 0.1 against words alone or PostgreSQL");
    for (Asked one : judged) {
      double ours = ndcg(set, one, rankings.get("ours"));
      double words = ndcg(set, one, rankings.get("words alone"));
      double postgres = ndcg(set, one, rankings.get("PostgreSQL"));
      boolean isEmpty = recall(set, one, rankings.get("ours"), PAGE) == 0;
      if (ours < Math.max(words, postgres) - 0.1 || isEmpty) {
        String text = one.text().length() > 70 ? one.text().substring(0, 70) + "…" : one.text();
        out.printf(
            "    %s ours %.2f, words %.2f, PostgreSQL %.2f%s: %s%n",
            one.id(), ours, words, postgres, isEmpty ? ", NOTHING RIGHT ON THE PAGE" : "", text);
      }
    }
  }

  private static double ndcg(JudgedSet set, Asked one, Map<String, List<String>> of) {
    return Measures.ndcg(of.getOrDefault(one.id(), List.of()), set.grades(one), PAGE);
  }

  /** In our own set only what would do is right (grade 2); outside any grade is. */
  private static double recall(JudgedSet set, Asked one, Map<String, List<String>> of, int depth) {
    int least = set.name().equals("own") ? 2 : 1;
    return Measures.recall(of.getOrDefault(one.id(), List.of()), set.grades(one), least, depth);
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).filter(value -> !Double.isNaN(value)).average().orElse(0);
  }
}
