package lampwright.search.filter;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Everything that setups can be filtered by and counted by. A new one is a line here and its values
 * in {@link Traits}: index, brackets, counts and pages take it from both.
 *
 * <p>The limits of the ranges are judgements of what one can still look through: no source.
 */
// Its lists are unmodifiable ones and its steps records: nothing of it ever changes.
@SuppressWarnings("ImmutableEnumChecker")
public enum Trait {
  MOOD("mood", "Mood"),
  PLACE_KIND("place kind", "Kind of place"),
  PLACE("place", "Place"),
  STATE("state", "State", "draft", "proven"),
  GENRE("genre", "Genre"),
  AUTHOR("author", "Author"),
  GEAR("gear", "Gear"),
  ROLE("role", "Light for", "key", "fill", "back", "rim", "kicker", "hair", "background", "accent"),
  PATTERN("pattern", "Key pattern"),
  KEY_SIDE("key side", "Key from"),
  SOFTNESS("softness", "Softness"),
  FREEZING("freezing", "Movement"),
  SUN("sun", "Sun"),
  PICTURE_KEY("picture key", "Tones", "low key", "middle key", "high key"),
  CONTRAST("contrast", "Contrast", "low contrast", "normal contrast", "high contrast"),
  WARMTH("warmth", "Warmth", "cool", "neutral", "warm"),
  COLOUR("colour", "Colour"),
  SEASON("season", "Season", "spring", "summer", "autumn", "winter"),
  TIME_OF_DAY(
      "time of day", "Time of day", "dawn", "morning", "midday", "afternoon", "dusk", "night"),
  INSIDE("inside", "Inside or out", "indoors", "outdoors"),
  LEAD("lead", "What leads", "flash", "level", "ambient"),

  LIGHTS("lights", "Lights", "", 0, new Steps.Each(), "light", "lights"),
  RATIO("ratio", "Ratio", "stops", 1, new Steps.Every(1), "stop", "stops"),
  AMBIENT("ambient", "Ambient", "stops", 1, new Steps.Every(1), "stop", "stops"),
  ENERGY("energy", "Energy", "W·s", 0, new Steps.Doublings(25), "Ws", "W·s", "J"),
  MODIFIER("modifier", "Largest modifier", "m", 2, new Steps.Every(0.5), "m", "metres"),
  KEY_HEIGHT("key height", "Key height", "°", 0, new Steps.Every(15), "°", "degrees"),
  APERTURE(
      "aperture",
      "Aperture",
      "",
      2,
      new Steps.Marks(List.of(1.0, 1.4, 2.0, 2.8, 4.0, 5.6, 8.0, 11.0, 16.0, 22.0, 32.0))),
  ISO("iso", "ISO", "", 0, new Steps.Doublings(50)),
  YEAR("year", "Year", "", 0, new Steps.Each()),

  NEAR("within", "Distance", Kind.SPOT),
  BUILDABLE("buildable", "Buildable", Kind.KIT);

  /** What kind of value a trait has. */
  public enum Kind {
    /** One or several words or names. */
    WORDS,
    /** One number. */
    NUMBER,
    /** A point on earth. It is never counted: each setup has another. */
    SPOT,
    /** What a kit makes of it. The index does not know it: it is decided by who asks the index. */
    KIT
  }

  private final String word;
  private final String label;
  private final String unit;
  private final Kind kind;
  private final List<String> vocabulary;
  private final List<String> unitWords;
  private final int decimals;
  private final Steps steps;

  Trait(String word, String label, String... vocabulary) {
    this(word, label, Kind.WORDS, vocabulary);
  }

  Trait(String word, String label, Kind kind, String... vocabulary) {
    this.word = word;
    this.label = label;
    this.unit = "";
    this.kind = kind;
    this.vocabulary = List.of(vocabulary);
    this.unitWords = List.of();
    this.decimals = 0;
    this.steps = new Steps.Each();
  }

  Trait(String word, String label, String unit, int decimals, Steps steps, String... unitWords) {
    this.word = word;
    this.label = label;
    this.unit = unit;
    this.kind = Kind.NUMBER;
    this.vocabulary = List.of();
    this.unitWords = List.of(unitWords);
    this.decimals = decimals;
    this.steps = steps;
  }

  /** The trait as brackets name it: {@code place kind}. */
  public String word() {
    return word;
  }

  /** The trait as addresses and answers name it: {@code place_kind}. */
  public String name(char joint) {
    return word.replace(' ', joint);
  }

  /** What people read above its values. */
  public String label() {
    return label;
  }

  /** What its numbers are in; empty where they are counts, marks or years. */
  public String unit() {
    return unit;
  }

  public Kind kind() {
    return kind;
  }

  /** All words that it can have, in their natural order; empty where there are any number. */
  public List<String> vocabulary() {
    return vocabulary;
  }

  /** Whether its values can be counted. */
  public boolean isCounted() {
    return kind == Kind.WORDS || kind == Kind.NUMBER;
  }

  /** How its units may be written. */
  List<String> unitWords() {
    return unitWords;
  }

  /** A number as the index keeps it, so that what is read is what is filtered by. */
  public double rounded(double number) {
    // Adding zero makes the negative zero a plain one.
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).doubleValue() + 0.0;
  }

  /** The range in which a number is counted. */
  public Filter.Range rangeAround(double number) {
    return steps.around(this, number);
  }

  /** Whether its values are counted in their own order, not by how many there are. */
  public boolean isNaturallyOrdered() {
    return kind == Kind.NUMBER || !vocabulary.isEmpty();
  }

  /** The trait of a name, whether it is written with spaces or joints. */
  public static Optional<Trait> find(String name) {
    String plain = name.strip().toLowerCase(Locale.ROOT).replace('_', ' ');
    return Arrays.stream(values()).filter(trait -> trait.word.equals(plain)).findFirst();
  }

  /** All traits, those with the longest words first, so that "place kind" is not "place". */
  static List<Trait> longestFirst() {
    return Arrays.stream(values())
        .sorted(Comparator.comparingInt((Trait trait) -> trait.word.length()).reversed())
        .toList();
  }
}
