package lampwright.search.filter;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes a filter: as the content of a bracket, and as people read it. */
public final class FilterWriter {

  /** Words that need no quotation marks. */
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} .,·×°/'’&+-]*[\\p{L}\\p{N}.°])?");

  private static final Pattern OR = Pattern.compile("(?i)(?<![^ ])or(?![^ ])");

  private static final Pattern WITHIN = Pattern.compile("(?i)(?<![^ ])within(?![^ ])");

  private FilterWriter() {}

  /** What {@link FilterReader} reads as the same filter: {@code place kind quarry}. */
  static String bracket(Filter filter) {
    return switch (filter) {
      case Filter.OneOf one -> one.trait().word() + " " + words(one.trait(), one.words());
      case Filter.NoneOf none ->
          "without " + none.trait().word() + " " + words(none.trait(), none.words());
      case Filter.Range range -> range.trait().word() + " " + bounds(range);
      case Filter.Near near -> "within " + number(near.km()) + " km of " + spot(near.spot());
      case Filter.Buildable buildable ->
          "buildable with " + name(buildable.kit()) + tolerance(buildable.stops());
    };
  }

  /** The bounds of a range without its trait: {@code 2 to 4}, {@code from -2 below -1}. */
  public static String bounds(Filter.Range range) {
    String mark = range.trait() == Trait.APERTURE ? "f/" : "";
    if (range.isExact()) {
      return mark + number(range.from().orElseThrow().number());
    }
    boolean both =
        range.from().filter(Filter.Bound::included).isPresent()
            && range.to().filter(Filter.Bound::included).isPresent();
    if (both) {
      return mark
          + number(range.from().orElseThrow().number())
          + " to "
          + mark
          + number(range.to().orElseThrow().number());
    }
    String from =
        range
            .from()
            .map(b -> (b.included() ? "from " : "above ") + mark + number(b.number()))
            .orElse("");
    String to =
        range
            .to()
            .map(b -> (b.included() ? "up to " : "below ") + mark + number(b.number()))
            .orElse("");
    return (from + " " + to).strip();
  }

  /** A filter by itself: {@code Mood: lonely or cold}, {@code 2 to 4 lights}. */
  public static String words(Filter filter) {
    return switch (filter) {
      case Filter.OneOf one -> one.trait().label() + ": " + String.join(" or ", one.words());
      case Filter.NoneOf none ->
          none.trait().label() + ": not " + String.join(" or ", none.words());
      case Filter.Range range when range.trait() == Trait.LIGHTS -> lights(range);
      case Filter.Range range -> range.trait().label() + " " + boundsWithUnit(range);
      case Filter.Near near ->
          "Within " + forPeople(number(near.km())) + " km of " + spotForPeople(near.spot());
      case Filter.Buildable buildable -> "B" + phrase(buildable).substring(1);
    };
  }

  /** A filter in a sentence about setups: {@code with 2 lights}, {@code within 20 km of …}. */
  public static String phrase(Filter filter) {
    return switch (filter) {
      case Filter.OneOf one ->
          "with " + one.trait().word() + " " + String.join(" or ", one.words());
      case Filter.NoneOf none ->
          "without " + none.trait().word() + " " + String.join(" or ", none.words());
      case Filter.Range range when range.trait() == Trait.LIGHTS -> "with " + lights(range);
      case Filter.Range range -> "with " + range.trait().word() + " " + boundsWithUnit(range);
      case Filter.Near near ->
          "within " + forPeople(number(near.km())) + " km of " + spotForPeople(near.spot());
      case Filter.Buildable buildable ->
          "buildable with "
              + buildable.kit()
              + (buildable.stops() == Filter.Buildable.MOST_STOPS
                  ? ", however far off"
                  : " within " + stops(buildable.stops()));
    };
  }

  private static String tolerance(double stops) {
    if (stops == Filter.Buildable.USUAL_STOPS) {
      return "";
    }
    return stops == Filter.Buildable.MOST_STOPS
        ? " however far"
        : " within " + number(stops) + " stops";
  }

  /** A number of stops: {@code ⅓ stop}, {@code 2 stops}. */
  public static String stops(double stops) {
    return stops == Filter.Buildable.USUAL_STOPS
        ? "⅓ stop"
        : number(stops) + (stops > 1 || stops == 0 ? " stops" : " stop");
  }

  /** A range under its trait's heading: {@code −2 to −1}, {@code below 25}. */
  public static String choice(Filter.Range range) {
    boolean isStep = range.from().isPresent() && range.to().isPresent();
    String mark = range.trait() == Trait.APERTURE ? "f/" : "";
    return forPeople(
        isStep && !range.isExact()
            ? mark
                + number(range.from().get().number())
                + " to "
                + mark
                + number(range.to().get().number())
            : bounds(range));
  }

  private static String lights(Filter.Range range) {
    boolean isOne = range.isExact() && range.least() == 1;
    return forPeople(bounds(range)) + (isOne ? " light" : " lights");
  }

  private static String boundsWithUnit(Filter.Range range) {
    String unit = range.trait().unit();
    String gap = unit.isEmpty() || unit.equals("°") ? "" : " ";
    return forPeople(bounds(range)) + gap + unit;
  }

  private static String forPeople(String numbers) {
    return numbers.replace('-', '−');
  }

  /** Where a distance is measured from, as people read it. */
  public static String spotForPeople(Filter.Spot spot) {
    return switch (spot) {
      case Filter.Spot.At at -> forPeople(spot(at));
      case Filter.Spot.Location location -> location.name();
    };
  }

  private static String spot(Filter.Spot spot) {
    return switch (spot) {
      case Filter.Spot.At at ->
          number(at.point().latitudeDeg()) + ", " + number(at.point().longitudeDeg());
      case Filter.Spot.Location location -> name(location.name());
    };
  }

  /** A name that could not be taken for a point, a word list or another part of the bracket. */
  private static String name(String name) {
    return Character.isLetter(name.isEmpty() ? ' ' : name.charAt(0))
            && PLAIN.matcher(name).matches()
            && !OR.matcher(name).find()
            && !WITHIN.matcher(name).find()
        ? name
        : quoted(name);
  }

  private static String words(Trait trait, List<String> words) {
    return words.stream()
        .map(word -> isPlain(trait, word) ? word : quoted(word))
        .collect(Collectors.joining(" or "));
  }

  private static boolean isPlain(Trait trait, String word) {
    String whole = trait.word() + " " + word;
    return PLAIN.matcher(word).matches()
        && !OR.matcher(word).find()
        && Trait.longestFirst().stream()
            .filter(other -> other.word().length() > trait.word().length())
            .noneMatch(longer -> FilterReader.startsWithWord(whole, longer.word()));
  }

  private static String quoted(String word) {
    return '"' + word.replace("\"", "\"\"") + '"';
  }

  /** A number without needless noughts. */
  public static String number(double number) {
    String plain = BigDecimal.valueOf(number).toPlainString();
    return plain.endsWith(".0") ? plain.substring(0, plain.length() - 2) : plain;
  }
}
