package lampwright.learning.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.language.Said;
import lampwright.wording.WordsForTests;

/** A drill as somebody reads it, in English: nothing but its words. */
record WrittenDrill(String text, List<String> options) {

  private static final String NUMBER = "([−+]?\\d[\\d,]*(?:\\.\\d+)?)";
  private static final Pattern TIME = Pattern.compile("(?:1/)?(\\d+(?:\\.\\d+)?)");
  private static final Pattern APERTURE =
      Pattern.compile("f/(\\d+(?:\\.\\d+)?)(?: \\+ 0\\.(\\d))?");

  static WrittenDrill of(Drill drill) {
    return new WrittenDrill(
        Stream.concat(drill.given().stream(), Stream.of(drill.question()))
            .map(WordsForTests::english)
            .collect(Collectors.joining("\n")),
        drill.answer() instanceof Answer.OfChoice choice
            ? choice.options().stream()
                .map(Answer.Option::text)
                .map(WordsForTests::english)
                .toList()
            : List.of());
  }

  static String say(Said said) {
    return WordsForTests.english(said);
  }

  boolean says(String words) {
    return text.contains(words);
  }

  /** The number at the place of "#" in a piece of the text; other numbers may stand at "*". */
  double number(String piece) {
    return number(text, piece);
  }

  static double number(String text, String piece) {
    return numeric(found(text, piece, NUMBER));
  }

  /** The time in seconds at the place of "#": "1/250 s", "0.5 s". */
  double seconds(String piece) {
    String shown = found(text, piece, "((?:1/)?\\d+(?:\\.\\d+)?)");
    Matcher time = TIME.matcher(shown);
    if (!time.matches()) {
      throw new AssertionError(shown);
    }
    double value = Double.parseDouble(time.group(1));
    return shown.startsWith("1/") ? 1 / value : value;
  }

  /** The light that an aperture or a reading at the place of "#" stands for, as its square. */
  double squaredAperture(String piece) {
    return squaredAperture(text, piece);
  }

  static double squaredAperture(String text, String piece) {
    Matcher aperture =
        APERTURE.matcher(found(text, piece, "(f/\\d+(?:\\.\\d+)?(?: \\+ 0\\.\\d)?)"));
    if (!aperture.matches()) {
      throw new AssertionError(text);
    }
    // Printed 5.6 stands for 5.657: full stops are powers of the root of two.
    double stops = 2 * Math.log(Double.parseDouble(aperture.group(1))) / Math.log(2);
    double exact = aperture.group(2) == null ? stops : Math.rint(stops);
    double tenths = aperture.group(2) == null ? 0 : Double.parseDouble(aperture.group(2));
    return Math.pow(2, exact + tenths / 10);
  }

  private static double numeric(String shown) {
    return Double.parseDouble(shown.replace('−', '-').replace("+", "").replace(",", ""));
  }

  private static String found(String text, String piece, String what) {
    List<String> literal = new ArrayList<>();
    for (String part : piece.split("#", -1)) {
      literal.add(
          Stream.of(part.split("\\*", -1)).map(Pattern::quote).collect(Collectors.joining(".*?")));
    }
    Matcher matcher = Pattern.compile(String.join(what, literal)).matcher(text);
    if (!matcher.find()) {
      throw new AssertionError("No \"" + piece + "\" in: " + text);
    }
    return matcher.group(1);
  }
}
