package lampwright.search.filter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.language.Filling;
import lampwright.language.Said;
import org.jspecify.annotations.Nullable;

/**
 * Reads the content of a bracket. Nothing that can be typed is an exception: it is a filter, or one
 * line says what is wrong with it.
 *
 * <pre>
 * mood lonely or cold          place kind quarry        without gear softbox
 * lights 2 to 4                ambient below -1         energy from 100 up to 400 Ws
 * f/8 to f/11                  within 20 km of Old pier within 5 km of 53.21, 0.29
 * buildable with The bag       buildable with The bag within 0.5 stops
 * </pre>
 *
 * <p>Words that hold brackets, quotation marks or " or " stand in quotation marks, in which a
 * quotation mark is written twice. A word of a fixed list needs no trait before it: {@code winter}.
 */
public final class FilterReader {

  private static final int LONGEST = 2_000;
  private static final int LONGEST_QUOTE = 40;
  private static final Pattern WITHIN =
      Pattern.compile("(?is)within\\s+(\\d{1,5}(?:[.,]\\d{1,3})?)\\s*km\\s+of\\s+(.+)");
  private static final Pattern POINT =
      Pattern.compile("([-−]?\\d{1,2}(?:\\.\\d{1,7})?)\\s*[, ]\\s*([-−]?\\d{1,3}(?:\\.\\d{1,7})?)");
  private static final Pattern BUILDABLE =
      Pattern.compile(
          "(?is)buildable\\s+with\\s+(.+?)"
              + "(?:\\s+within\\s+(\\d{1,5}(?:[.,]\\d{1,3})?)\\s*stops?|(\\s+however\\s+far))?");
  private static final Pattern WITHOUT = Pattern.compile("(?is)(?:without|not)\\s+(.+)");
  private static final Pattern WITH = Pattern.compile("(?is)with\\s+(.+)");
  private static final Pattern HOW_MANY = Pattern.compile("(?is)(.*\\d)\\s*lights?");
  private static final Pattern APERTURES =
      Pattern.compile("(?is)(?:(?:from|above|below|under|over|up\\s+to)\\s+)?f/\\s*\\d.*");

  private FilterReader() {}

  /** Reads what stands between the brackets. */
  public static ReadFilter read(String content) {
    if (content.length() > LONGEST) {
      return unclear("tooLong", Filling.number(content.length(), 0), Filling.number(LONGEST, 0));
    }
    String text = content.strip();
    if (text.isEmpty()) {
      return unclear("empty");
    }
    if (startsWithWord(text, "within")) {
      return near(text);
    }
    if (startsWithWord(text, Trait.BUILDABLE.word())) {
      return buildable(text);
    }
    Matcher without = WITHOUT.matcher(text);
    if (without.matches()) {
      return chosen(without.group(1), true);
    }
    Matcher with = WITH.matcher(text);
    if (with.matches()) {
      return chosen(with.group(1), false);
    }
    if (APERTURES.matcher(text).matches()) {
      return NumberReader.read(Trait.APERTURE, text);
    }
    Optional<Trait> named = traitAtStart(text);
    if (named.isPresent()) {
      return ofTrait(named.get(), rest(text, named.get()), false);
    }
    Matcher howMany = HOW_MANY.matcher(text);
    if (howMany.matches()) {
      return NumberReader.read(Trait.LIGHTS, howMany.group(1));
    }
    return findInVocabulary(text)
        .<ReadFilter>map(trait -> new ReadFilter.Understood(Filter.OneOf.of(trait, text)))
        .orElseGet(() -> new ReadFilter.Unclear(unknown(text)));
  }

  private static ReadFilter near(String text) {
    Matcher within = WITHIN.matcher(text);
    if (!within.matches()) {
      return unclear("within");
    }
    double km = Double.parseDouble(within.group(1).replace(',', '.'));
    if (!(km > 0 && km <= Filter.LONGEST_KM)) {
      return unclear("distance", Filling.shown(within.group(1)));
    }
    String where = within.group(2).strip();
    Matcher point = POINT.matcher(where);
    if (point.matches()) {
      double latitude = Double.parseDouble(point.group(1).replace('−', '-'));
      double longitude = Double.parseDouble(point.group(2).replace('−', '-'));
      if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) {
        return unclear("swapped");
      }
      return new ReadFilter.Understood(
          new Filter.Near(km, new Filter.Spot.At(new EarthPoint(latitude, longitude))));
    }
    return switch (WordList.read(where)) {
      case WordList.Of(List<String> names) when names.size() == 1 ->
          new ReadFilter.Understood(
              new Filter.Near(km, new Filter.Spot.Location(names.getFirst(), Optional.empty())));
      case WordList.Of(List<String> names) -> unclear("onePlace", Filling.number(names.size(), 0));
      case WordList.Faulty(Said line) -> new ReadFilter.Unclear(line);
    };
  }

  private static ReadFilter buildable(String text) {
    Matcher buildable = BUILDABLE.matcher(text);
    if (!buildable.matches()) {
      return unclear("buildable");
    }
    @Nullable String written = buildable.group(2);
    double unwritten =
        buildable.group(3) == null ? Filter.Buildable.USUAL_STOPS : Filter.Buildable.MOST_STOPS;
    double stops = written == null ? unwritten : Double.parseDouble(written.replace(',', '.'));
    if (stops > Filter.Buildable.MOST_STOPS) {
      return unclear("stops", Filling.text(written == null ? "" : written));
    }
    return switch (WordList.read(buildable.group(1))) {
      case WordList.Of(List<String> names) when names.size() == 1 ->
          new ReadFilter.Understood(new Filter.Buildable(names.getFirst(), stops));
      case WordList.Of(List<String> names) -> unclear("oneKit", Filling.number(names.size(), 0));
      case WordList.Faulty(Said line) -> new ReadFilter.Unclear(line);
    };
  }

  /** What stands behind "with" or "without": a trait with words, or words of a list, or gear. */
  private static ReadFilter chosen(String text, boolean none) {
    String plain = text.strip();
    return traitAtStart(plain)
        .filter(trait -> trait.kind() == Trait.Kind.WORDS && !rest(plain, trait).isEmpty())
        .map(trait -> ofTrait(trait, rest(plain, trait), none))
        .orElseGet(() -> ofTrait(findInVocabulary(plain).orElse(Trait.GEAR), plain, none));
  }

  private static ReadFilter ofTrait(Trait trait, String values, boolean none) {
    if (trait.kind() == Trait.Kind.NUMBER) {
      return NumberReader.read(trait, values);
    }
    if (values.isEmpty()) {
      String example = trait.vocabulary().isEmpty() ? "some words" : trait.vocabulary().getFirst();
      return unclear("needsWords", Filling.text(trait.word()), Filling.text(example));
    }
    return switch (WordList.read(values)) {
      case WordList.Faulty(Said line) -> new ReadFilter.Unclear(line);
      case WordList.Of(List<String> words) -> {
        Optional<String> strange =
            trait.vocabulary().isEmpty()
                ? Optional.empty()
                : words.stream()
                    .filter(word -> !trait.vocabulary().contains(Filter.key(word)))
                    .findFirst();
        yield strange
            .<ReadFilter>map(word -> new ReadFilter.Unclear(unknownValue(trait, word)))
            .orElseGet(
                () ->
                    new ReadFilter.Understood(
                        none ? new Filter.NoneOf(trait, words) : new Filter.OneOf(trait, words)));
      }
    };
  }

  private static Said unknownValue(Trait trait, String word) {
    return Said.of(
        "finding.fault.noSuchValue",
        Filling.text(trait.word()),
        quoted(word),
        maybe(Nearest.find(Filter.key(word), trait.vocabulary()), trait.vocabulary()));
  }

  /** What may be meant, or what is known. */
  private static Filling maybe(Optional<String> near, List<String> known) {
    return near.map(one -> Said.of("finding.fault.maybe", Filling.text(one)))
        .orElseGet(() -> Said.of("finding.fault.known", Filling.text(String.join(", ", known))))
        .asFilling();
  }

  private static Said unknown(String text) {
    List<String> marks = new ArrayList<>(List.of("within", "without"));
    for (Trait trait : Trait.values()) {
      if (trait != Trait.NEAR) {
        marks.add(trait.word());
      }
    }
    List<String> known = new ArrayList<>(marks);
    for (Trait trait : Trait.values()) {
      known.addAll(trait.vocabulary());
    }
    String[] words = text.toLowerCase(Locale.ROOT).split("\\s+", 4);
    StringBuilder start = new StringBuilder();
    Optional<String> meant = Optional.empty();
    for (int i = 0; i < Math.min(3, words.length); i++) {
      start.append(i == 0 ? "" : " ").append(words[i]);
      Optional<String> near = Nearest.find(start.toString(), known);
      // A longer start that is near a known mark says more.
      meant = near.isPresent() ? near : meant;
    }
    return Said.of("finding.fault.noSuchMark", quoted(words[0]), maybe(meant, marks));
  }

  private static Optional<Trait> findInVocabulary(String text) {
    String key = Filter.key(text);
    for (Trait trait : Trait.values()) {
      if (trait.vocabulary().contains(key)) {
        return Optional.of(trait);
      }
    }
    return Optional.empty();
  }

  private static Optional<Trait> traitAtStart(String text) {
    return Trait.longestFirst().stream()
        .filter(trait -> startsWithWord(text, trait.word()))
        .findFirst();
  }

  /** Whether a text begins with a name, written with spaces or joints, and the name ends there. */
  static boolean startsWithWord(String text, String name) {
    if (text.length() < name.length()) {
      return false;
    }
    String start = text.substring(0, name.length()).toLowerCase(Locale.ROOT).replace('_', ' ');
    return start.equals(name)
        && (text.length() == name.length()
            || !Character.isLetterOrDigit(text.charAt(name.length())));
  }

  private static String rest(String text, Trait trait) {
    String values = text.substring(trait.word().length()).strip();
    return values.startsWith(":") ? values.substring(1).strip() : values;
  }

  /** What was typed, shortened. */
  static Filling quoted(String text) {
    String line = Filter.words(text);
    return Filling.text(
        line.length() > LONGEST_QUOTE
            ? line.substring(0, LONGEST_QUOTE).stripTrailing() + "…"
            : line);
  }

  static ReadFilter unclear(String fault, Filling... parts) {
    return new ReadFilter.Unclear(Said.of("finding.fault." + fault, parts));
  }
}
