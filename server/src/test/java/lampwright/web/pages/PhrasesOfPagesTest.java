package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.engine.Known;
import lampwright.language.Language;
import lampwright.language.PhraseFiles;
import lampwright.place.AmbientReading;
import lampwright.setup.Ambient;
import lampwright.setup.Role;
import lampwright.wording.Wording;
import org.junit.jupiter.api.Test;

/** Every word of the templates comes from the files of phrases, and every phrase is said. */
class PhrasesOfPagesTest {

  private static final Path MAIN = Path.of("src/main");
  private static final Path TEMPLATES = MAIN.resolve("jte");

  /** What is the same in every language: the program's own name. */
  private static final Set<String> NAMES = Set.of("Lampwright");

  /** Keys that are put together, by how they begin, with how they may end. */
  private static final List<String> PUT_TOGETHER =
      Stream.of(
              names("wording.role.", Role.values()),
              names("wording.known.", Known.values()),
              names("wording.knownMeaning.", Known.values()),
              names("wording.source.", Ambient.Source.values()),
              names("wording.sky.", AmbientReading.Sky.values()),
              names("pages.takes.reason.", TakeReason.values()))
          .flatMap(List::stream)
          .toList();

  /** Where the rest of a key is a place in a document, a month, a unit or a state. */
  private static final List<String> OPEN_ENDED =
      List.of(
          "wording.missing.group.",
          "wording.missing.input.",
          "pages.changes.",
          "pages.month.",
          "pages.life.state.",
          "pages.plan.caption.",
          "pages.preferences.lengths.",
          "pages.preferences.stops.",
          "taking.reading.over.",
          "taking.reading.under.");

  private static final Pattern KEY =
      Pattern.compile(
          "\"((?:pages|wording|adapting|caution|comparing|figuring|finding|picture|problem"
              + "|reacting|sheet(?!\\.css)|signature|taking|without(?!\\.(?:css|js)))\\.[A-Za-z0-9_.]+)\"");

  private static List<String> names(String beginning, Enum<?>[] constants) {
    return Arrays.stream(constants).map(constant -> beginning + Wording.key(constant)).toList();
  }

  @Test
  void noTemplateHoldsBareWords() {
    List<String> bare =
        files(TEMPLATES, ".jte").flatMap(text -> bareWords(text).stream()).sorted().toList();
    assertEquals(List.of(), bare);
  }

  @Test
  void aBareWordWouldBeSeen() {
    assertEquals(
        List.of("Skip it"), bareWords("<p>Skip it</p>\n@if(a(\"b c\"))\n<b>${x}</b>@endif"));
    assertEquals(List.of("Find it"), bareWords("<a aria-label=\"Find it\" class=\"big one\">"));
    assertEquals(List.of("Show it"), bareWords("@template.parts.x(label = \"Show it\")\n"));
  }

  @Test
  void everyKeyThatIsSaidIsThere() {
    Set<String> there = PhraseFiles.read(Language.ENGLISH).keys();
    Set<String> missing = new TreeSet<>(said());
    missing.addAll(PUT_TOGETHER);
    missing.removeIf(
        key ->
            there.contains(key)
                || there.contains(key + ".one")
                || key.endsWith(".")
                || OPEN_ENDED.contains(key + "."));
    assertEquals(Set.of(), missing);
  }

  @Test
  void everyPhraseIsSaidSomewhere() {
    Set<String> said = new TreeSet<>(said());
    said.addAll(PUT_TOGETHER);
    Set<String> unsaid = new TreeSet<>();
    for (String key : PhraseFiles.read(Language.ENGLISH).keys()) {
      String plain = key.replaceFirst("\\.(one|other)$", "");
      boolean isOurs = key.startsWith("pages.") || key.startsWith("wording.");
      if (isOurs
          && !said.contains(key)
          && !said.contains(plain)
          && OPEN_ENDED.stream().noneMatch(key::startsWith)) {
        unsaid.add(key);
      }
    }
    assertEquals(Set.of(), unsaid);
    assertTrue(said.size() > 100, "nothing was read");
  }

  /** Every literal key in templates and in code. */
  private static Set<String> said() {
    return Stream.concat(files(TEMPLATES, ".jte"), files(MAIN.resolve("java"), ".java"))
        .flatMap(text -> KEY.matcher(text).results().map(found -> found.group(1)))
        .collect(Collectors.toSet());
  }

  private static Stream<String> files(Path folder, String ending) {
    try (Stream<Path> all = Files.walk(folder)) {
      return all
          .filter(file -> file.toString().endsWith(ending))
          .map(PhrasesOfPagesTest::text)
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static final Pattern OF_THE_LANGUAGE =
      Pattern.compile("(?m)^(@import|@param|!\\{).*$|@(else(?!if)|endif|endfor)|<!doctype html>");
  private static final Pattern SPOKEN_ATTRIBUTE =
      Pattern.compile("(?:aria-label|placeholder|alt|title|data-label)=\"([^\"]*)\"");
  private static final Pattern ARGUMENT = Pattern.compile("(?:label|name|hint) = \"([^\"]*)\"");
  private static final Pattern LETTERS = Pattern.compile("\\p{L}");

  /** What would be printed as it stands: text, spoken attributes, labels handed to parts. */
  private static List<String> bareWords(String template) {
    String markup = OF_THE_LANGUAGE.matcher(template).replaceAll("");
    List<String> found =
        new ArrayList<>(ARGUMENT.matcher(markup).results().map(PhrasesOfPagesTest::first).toList());
    for (String opening : List.of("$unsafe{", "${", "@if(", "@elseif(", "@for(")) {
      markup = without(markup, opening);
    }
    markup = markup.replaceAll("@template\\.layout\\([^`]*`", "");
    markup = without(markup, "@template.parts.");
    SPOKEN_ATTRIBUTE.matcher(markup).results().map(PhrasesOfPagesTest::first).forEach(found::add);
    for (String line : markup.replaceAll("<[^>]*>", "\n").split("\n", -1)) {
      found.add(line.strip());
    }
    found.removeIf(
        words ->
            !LETTERS.matcher(words).find()
                || NAMES.contains(words.replaceAll("[^\\p{L} ]", "").strip()));
    return found;
  }

  private static String first(MatchResult found) {
    return found.group(1);
  }

  /** Without what begins so and goes on to the bracket's end. */
  private static String without(String text, String opening) {
    StringBuilder left = new StringBuilder();
    int from = 0;
    for (int at = text.indexOf(opening); at >= 0; at = text.indexOf(opening, from)) {
      left.append(text, from, at);
      from = end(text, at + opening.length() - (opening.endsWith(".") ? 0 : 1));
    }
    return left.append(text.substring(from)).toString();
  }

  private static int end(String text, int from) {
    int depth = 0;
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '(' || c == '{') {
        depth++;
      } else if (c == ')' || c == '}') {
        depth--;
        if (depth == 0) {
          return i + 1;
        }
      }
    }
    return text.length();
  }
}
