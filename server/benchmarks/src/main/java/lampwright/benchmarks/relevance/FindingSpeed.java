package lampwright.benchmarks.relevance;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import lampwright.meaning.Meaning;
import lampwright.meaning.Meanings;
import lampwright.meaning.SentenceModel;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.search.IndexEntry;
import lampwright.search.Packed;
import lampwright.search.Question;
import lampwright.search.Search;
import lampwright.search.SetupIndex;
import lampwright.search.filter.EarthPoint;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Trait;
import lampwright.search.filter.Traits;
import lampwright.setup.signature.BriefTones;
import lampwright.setup.signature.LightLikeness;
import lampwright.setup.signature.PackedLight;
import lampwright.setup.signature.PictureLikeness;
import lampwright.setup.signature.PictureSignature;

/**
 * How long searches take over very many setups, beside PostgreSQL's full text over the same texts
 * with the same counts, in one run and one thread. The setups are put together at random, with a
 * seed, from the sentences of our judged catalogue; their meanings are those of its setups, each
 * turned a little.
 *
 * <p>Arguments: how many setups, 100,000 where nothing is said; then a word, where only what has it
 * in its name is to be measured.
 */
public final class FindingSpeed {

  private static final int WARMING = 2_000;
  private static final int TIMED = 1_000;
  private static final int PAGE = 10;

  private static final String ANY_WORD =
      """
      select id from speed where words @@ to_tsquery('english', ?)
      order by ts_rank(words, to_tsquery('english', ?)) desc, id limit 10
      """;
  private static final String WITH_COUNTS =
      """
      with hit as materialized (
        select id, words, mood, place, kind, lights from speed
        where words @@ to_tsquery('english', ?)),
      top as (
        select 'top' as what, id as value, 0::bigint as many from hit
        order by ts_rank(words, to_tsquery('english', ?)) desc, id limit 10)
      select * from top
      union all select 'mood', mood, count(*) from hit group by mood
      union all select 'place', place, count(*) from hit group by place
      union all select 'kind', kind, count(*) from hit group by kind
      union all select 'lights', lights::text, count(*) from hit group by lights
      """;

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final Random random = new Random(20261127);
  private final List<IndexEntry> source;
  private final List<String> sentences;
  private final List<Packed> lights;

  /** What the names of those have in them that are measured. */
  private final String only;

  private FindingSpeed(List<IndexEntry> source, String only) {
    this.source = source;
    this.only = only;
    this.lights = source.stream().flatMap(entry -> entry.light().stream()).toList();
    this.sentences =
        source.stream()
            .flatMap(
                entry ->
                    Arrays.stream(
                        (entry.intent() + " " + String.join(" ", entry.written()))
                            .split("(?<=[.;:?!])\\s+")))
            .filter(sentence -> sentence.length() > 20)
            .toList();
  }

  public static void main(String[] arguments) throws Exception {
    int setups = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
    String only = arguments.length > 1 ? arguments[1] : "";
    Path data = Files.createTempDirectory("speed");
    Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwx--x--x"));
    try (SentenceModel model = SentenceModel.load();
        EmbeddedPostgres postgres = EmbeddedPostgres.start(data.resolve("postgres"));
        Connection connection =
            DriverManager.getConnection(
                postgres.jdbcUrl(EmbeddedPostgres.DATABASE),
                postgres.user(),
                postgres.password())) {
      JudgedSet own = OwnSet.read(Relevance.demoSetups());
      new FindingSpeed(own.entries(), only).measure(setups, data, model, connection);
    }
  }

  private void measure(int setups, Path data, SentenceModel model, Connection connection)
      throws Exception {
    List<Meaning> meanings = source.stream().map(entry -> model.of(entry.about())).toList();
    try (SetupIndex index = SetupIndex.open(data.resolve("index"), "speed")) {
      long started = System.nanoTime();
      fill(setups, meanings, index, connection);
      out.printf(
          "%,d setups in PostgreSQL and in the index after %.0f s%n",
          setups, (System.nanoTime() - started) / 1e9);
      List<List<String>> asked = questions();
      Search words = new Search(index, Meanings.NONE);
      Search both = new Search(index, text -> Optional.of(model.of(text)));
      Set<Trait> four = EnumSet.of(Trait.MOOD, Trait.PLACE, Trait.PLACE_KIND, Trait.LIGHTS);
      Filter near = new Filter.Near(100, new Filter.Spot.At(new EarthPoint(53.2, 0.3)));
      try (PreparedStatement any = connection.prepareStatement(ANY_WORD);
          PreparedStatement counted = connection.prepareStatement(WITH_COUNTS)) {
        time("PostgreSQL, any word", asked, one -> run(any, one));
        time("PostgreSQL, any word, four counts", asked, one -> run(counted, one));
      }
      time("words", asked, one -> words.search(question(one, Set.of(), List.of())));
      time("words, four counts", asked, one -> words.search(question(one, four, List.of())));
      time(
          "words, within 100 km",
          asked,
          one -> words.search(question(one, Set.of(), List.of(near))));
      time(
          "words and meaning of an unseen question",
          asked,
          one -> both.search(question(one, Set.of(), List.of())));
      time(
          "words and meaning, four counts",
          asked,
          one -> both.search(question(one, four, List.of())));
      Map<String, Integer> offs = new HashMap<>();
      for (int i = 0; i < setups; i += 2) {
        offs.put("s" + i, i % 97);
      }
      time(
          "words, of half that a kit makes, least off",
          asked,
          one ->
              words.search(
                  question(one, Set.of(), List.of())
                      .withOnlyThese(offs.keySet())
                      .withOffs(offs)
                      .withOrder(Question.Order.OFF)));
      Question all = Question.of(OwnSet.STUDIO, "").withLimit(PAGE).withFacets(Set.of());
      time("light like a setup's", asked, _ -> words.search(all.withLike(likeLight())));
      time("like a picture", asked, _ -> words.search(all.withLike(likePicture())));
      time("the meaning of a question alone", asked, one -> model.of(String.join(" ", one)));
    }
  }

  private static Question question(List<String> words, Set<Trait> facets, List<Filter> filters) {
    return Question.of(OwnSet.STUDIO, String.join(" ", words))
        .withLimit(PAGE)
        .withFacets(facets)
        .withFilters(filters);
  }

  private void fill(int setups, List<Meaning> meanings, SetupIndex index, Connection connection)
      throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("set jit = off");
      statement.execute(
          "create table speed (id text primary key, words tsvector, mood text, place text,"
              + " kind text, lights integer)");
    }
    connection.setAutoCommit(false);
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into speed values (?, setweight(to_tsvector('english', ?), 'A') ||"
                + " setweight(to_tsvector('english', ?), 'B'), ?, ?, ?, ?)")) {
      for (int i = 0; i < setups; i++) {
        IndexEntry entry = entry(i, meanings);
        index.put(entry);
        insert.setString(1, entry.setup());
        insert.setString(2, entry.title() + " " + String.join(" ", entry.moods()));
        insert.setString(3, entry.intent());
        insert.setString(4, entry.moods().getFirst());
        insert.setString(5, entry.placeName().orElse(""));
        insert.setString(6, entry.placeKind().orElse(""));
        insert.setInt(7, entry.lightCount());
        insert.addBatch();
        if (i % 1_000 == 999) {
          insert.executeBatch();
        }
      }
      insert.executeBatch();
    }
    connection.commit();
    connection.setAutoCommit(true);
    index.refresh();
    try (Statement statement = connection.createStatement()) {
      statement.execute("create index speed_words on speed using gin (words)");
      statement.execute("vacuum analyze speed");
    }
  }

  private IndexEntry entry(int number, List<Meaning> meanings) {
    IndexEntry like = source.get(random.nextInt(source.size()));
    StringBuilder text = new StringBuilder();
    while (text.length() < 240) {
      text.append(sentences.get(random.nextInt(sentences.size()))).append(' ');
    }
    IndexEntry.Builder entry =
        IndexEntry.of(OwnSet.STUDIO, "s" + number, 1, like.title() + " " + number)
            .intent(text.toString())
            .moods(List.of(like.moods().isEmpty() ? "plain" : like.moods().getFirst()))
            .placeName("Place " + random.nextInt(200))
            .placeKind("kind " + random.nextInt(12))
            .lightCount(1 + random.nextInt(8))
            .traits(
                Traits.builder()
                    .point(40 + 20 * random.nextDouble(), -10 + 30 * random.nextDouble())
                    .build());
    entry.light(lights.get(random.nextInt(lights.size())));
    entry.picture(Packed.of(anyTones().toBytes()));
    return entry.build().with(turned(meanings.get(random.nextInt(meanings.size()))));
  }

  /** Of no picture, but as much to compare as of one. */
  private BriefTones anyTones() {
    List<PictureSignature.Shade> shades =
        random
            .ints(BriefTones.MOST_SHADES, 0, 1 << 24)
            .mapToObj(rgb -> new PictureSignature.Shade(rgb, 1.0 / BriefTones.MOST_SHADES))
            .toList();
    return BriefTones.of(
        random.doubles(BriefTones.PERCENTILES, 0, 100).sorted().boxed().toList(), shades);
  }

  private Question.Like likeLight() {
    Packed asked = lights.get(random.nextInt(lights.size()));
    byte[] numbers = asked.toBytes();
    PackedLight light = PackedLight.ofBytes(numbers, 0, numbers.length);
    return new Question.Like(
        Optional.empty(),
        Question.Facts.LIGHT,
        asked,
        (bytes, at, length) -> LightLikeness.rank(light, PackedLight.ofBytes(bytes, at, length)));
  }

  private Question.Like likePicture() {
    byte[] asked = anyTones().toBytes();
    return new Question.Like(
        Optional.empty(),
        Question.Facts.PICTURE,
        Packed.of(asked),
        (bytes, at, length) -> PictureLikeness.rank(asked, bytes, at, length));
  }

  private Meaning turned(Meaning meaning) {
    float[] numbers = meaning.direction();
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] += (float) (0.03 * random.nextGaussian());
    }
    return Meaning.of(numbers);
  }

  /** Two to four words that stand in the texts, none of the commonest. */
  private List<List<String>> questions() {
    List<String> words =
        sentences.stream()
            .flatMap(sentence -> Arrays.stream(sentence.toLowerCase(Locale.ROOT).split("[^a-z]+")))
            .filter(word -> word.length() > 4)
            .toList();
    List<List<String>> questions = new ArrayList<>();
    for (int i = 0; i < WARMING + TIMED; i++) {
      List<String> question = new ArrayList<>();
      for (int j = 2 + random.nextInt(3); j > 0; j--) {
        question.add(words.get(random.nextInt(words.size())));
      }
      questions.add(question);
    }
    return questions;
  }

  /** Something to be timed. */
  private interface Work {
    Object of(List<String> words) throws SQLException;
  }

  private void time(String what, List<List<String>> questions, Work work) throws SQLException {
    if (!what.contains(only)) {
      return;
    }
    int warming = what.startsWith("PostgreSQL") ? 200 : WARMING;
    for (List<String> question : questions.subList(0, warming)) {
      work.of(question);
    }
    double[] milliseconds = new double[TIMED];
    for (int i = 0; i < TIMED; i++) {
      long from = System.nanoTime();
      work.of(questions.get(WARMING + i));
      milliseconds[i] = (System.nanoTime() - from) / 1e6;
    }
    Arrays.sort(milliseconds);
    out.printf(
        "%-42s p50 %8.3f ms   p99 %8.3f ms%n",
        what, milliseconds[TIMED / 2], milliseconds[TIMED * 99 / 100]);
  }

  private static int run(PreparedStatement select, List<String> words) throws SQLException {
    String asked = String.join(" | ", words);
    select.setString(1, asked);
    select.setString(2, asked);
    int rows = 0;
    try (ResultSet found = select.executeQuery()) {
      while (found.next()) {
        rows++;
      }
    }
    return rows;
  }
}
