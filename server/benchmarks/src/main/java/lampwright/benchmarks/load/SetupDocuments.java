package lampwright.benchmarks.load;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.setup.SetupDocument;

/**
 * Draws setups by a seed. Each is a setup of the demo, with all its lights, gear and figures, that
 * has a title and a text of its own: of the demo's own words, as often as they stand there, so a
 * catalogue of many has common words and rare ones as texts of people have.
 */
final class SetupDocuments {

  private static final String FOLDER = "/lampwright/seed-data/";
  private static final int TITLE_WORDS = 5;
  private static final int SHORTEST_TEXT = 30;
  private static final int LONGEST_TEXT = 90;
  private static final int MOODS = 4;
  private static final List<Integer> ISO = List.of(100, 125, 160, 200, 250, 320, 400);
  private static final LocalDate FIRST_DAY = LocalDate.of(2015, 1, 1);
  private static final int DAYS = 4_000;

  private final List<Map<String, Object>> originals = new ArrayList<>();
  private final List<String> words = new ArrayList<>();
  private final List<String> moods = new ArrayList<>();
  private final Random random;

  /**
   * One that was drawn.
   *
   * @param like the original's number
   * @param json as it is stored
   */
  record Drawn(int like, String title, String intent, SetupDocument setup, String json) {}

  SetupDocuments(long seed) {
    random = new Random(seed);
    if (!(read("studio.json").get("setups") instanceof List<?> names)) {
      throw new IllegalStateException("The demo lists no setups.");
    }
    for (Object name : names) {
      Map<String, Object> original = read("setups/" + name + ".json");
      originals.add(original);
      words.addAll(
          Arrays.stream(
                  (original.get("title") + " " + original.getOrDefault("intent", ""))
                      .split("[^\\p{L}]+", -1))
              .filter(word -> word.length() > 1)
              .toList());
      if (original.get("moods") instanceof List<?> some) {
        some.forEach(mood -> moods.add(mood.toString()));
      }
    }
  }

  private static Map<String, Object> read(String file) {
    try (InputStream in = SetupDocuments.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException("The server was packed without " + FOLDER + file);
      }
      return object(Json.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, Object> object(Object json) {
    Map<String, Object> object = new LinkedHashMap<>();
    if (json instanceof Map<?, ?> map) {
      map.forEach((key, value) -> object.put(key.toString(), value));
    }
    return object;
  }

  /** How many setups the drawn ones are like. */
  int originals() {
    return originals.size();
  }

  /** The next one. */
  Drawn next() {
    int like = random.nextInt(originals.size());
    Map<String, Object> document = new LinkedHashMap<>(originals.get(like));
    String title = capital(text(TITLE_WORDS));
    String intent =
        capital(text(SHORTEST_TEXT + random.nextInt(LONGEST_TEXT - SHORTEST_TEXT))) + ".";
    document.put("title", title);
    document.put("intent", intent);
    document.put(
        "moods", random.ints(MOODS, 0, moods.size()).mapToObj(moods::get).distinct().toList());
    Map<String, Object> exposure = object(document.getOrDefault("exposure", Map.of()));
    if (exposure.containsKey("iso")) {
      exposure.put("iso", ISO.get(random.nextInt(ISO.size())));
      document.put("exposure", exposure);
    }
    Map<String, Object> occasion = object(document.getOrDefault("occasion", Map.of()));
    if (!occasion.isEmpty()) {
      occasion.put("date", FIRST_DAY.plusDays(random.nextInt(DAYS)).toString());
      Map<String, Object> place = object(occasion.getOrDefault("place", Map.of()));
      // The studio that is drawn keeps no locations.
      place.remove("location");
      if (!place.isEmpty()) {
        occasion.put("place", place);
      }
      document.put("occasion", occasion);
    }
    if (SetupDocument.FORM.read(document)
        instanceof Reading.Sound<SetupDocument>(SetupDocument setup)) {
      return new Drawn(like, title, intent, setup, Json.print(SetupDocument.FORM.write(setup)));
    }
    throw new IllegalStateException("A drawn setup is not sound: " + Json.print(document));
  }

  /** Two to four words to search for, of those that stand in the texts. */
  String question() {
    List<String> asked = new ArrayList<>();
    while (asked.size() < 2 + random.nextInt(3)) {
      String word = words.get(random.nextInt(words.size())).toLowerCase(Locale.ROOT);
      if (word.length() > 4 && word.chars().allMatch(c -> c >= 'a' && c <= 'z')) {
        asked.add(word);
      }
    }
    return String.join(" ", asked);
  }

  private String text(int count) {
    return String.join(" ", random.ints(count, 0, words.size()).mapToObj(words::get).toList())
        .toLowerCase(Locale.ROOT);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
