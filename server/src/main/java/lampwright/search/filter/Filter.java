package lampwright.search.filter;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a setup must be like to be found. */
public sealed interface Filter {

  /** More words than anybody lists. */
  int MOST_WORDS = 20;

  /** Names and mood words are no longer than this. */
  int LONGEST_WORDS = 200;

  /** Half around the earth, on the sphere that distances are computed on. */
  double LONGEST_KM = 20_016;

  /** The shortest distance: a metre. */
  double SHORTEST_KM = 0.001;

  /** Numbers beyond this say nothing of a setup. */
  double LARGEST_NUMBER = 10_000_000;

  /** What is filtered by. */
  Trait trait();

  /**
   * It has one of these words.
   *
   * @param words 1 to 20, compared without regard to capitals
   */
  record OneOf(Trait trait, List<String> words) implements Filter {
    public OneOf {
      words = checked(trait, words);
    }

    public static OneOf of(Trait trait, String... words) {
      return new OneOf(trait, List.of(words));
    }
  }

  /** It has none of these words; see {@link OneOf}. */
  record NoneOf(Trait trait, List<String> words) implements Filter {
    public NoneOf {
      words = checked(trait, words);
    }

    public static NoneOf of(Trait trait, String... words) {
      return new NoneOf(trait, List.of(words));
    }
  }

  /**
   * Its number lies between two bounds, of which one may be left out.
   *
   * <p>Bounds that exclude each other are no error: nothing is found.
   */
  record Range(Trait trait, Optional<Bound> from, Optional<Bound> to) implements Filter {
    public Range {
      require(trait, Trait.Kind.NUMBER);
      if (from.isEmpty() && to.isEmpty()) {
        throw new IllegalArgumentException("A range of " + trait.word() + " must have a bound.");
      }
    }

    public static Range exactly(Trait trait, double number) {
      return between(trait, number, number);
    }

    /** From one number to another, both of them included. */
    public static Range between(Trait trait, double from, double to) {
      return new Range(trait, Optional.of(Bound.including(from)), Optional.of(Bound.including(to)));
    }

    public static Range below(Trait trait, double to) {
      return new Range(trait, Optional.empty(), Optional.of(Bound.excluding(to)));
    }

    static Range ofStep(Trait trait, double from, double below) {
      return new Range(
          trait, Optional.of(Bound.including(from)), Optional.of(Bound.excluding(below)));
    }

    /** Whether it means one number. */
    public boolean isExact() {
      return from.isPresent() && from.equals(to) && from.get().included();
    }

    /** The smallest number that passes. */
    public double least() {
      return from.map(b -> b.included() ? b.number() : Math.nextUp(b.number()))
          .orElse(Double.NEGATIVE_INFINITY);
    }

    /** The largest number that passes. */
    public double most() {
      return to.map(b -> b.included() ? b.number() : Math.nextDown(b.number()))
          .orElse(Double.POSITIVE_INFINITY);
    }
  }

  /** One end of a range. */
  record Bound(double number, boolean included) {
    public Bound {
      if (!(Math.abs(number) <= LARGEST_NUMBER)) {
        throw new IllegalArgumentException("Bound (" + number + ") must be a number of a setup.");
      }
      number = rounded(number, 1e6);
    }

    public static Bound including(double number) {
      return new Bound(number, true);
    }

    public static Bound excluding(double number) {
      return new Bound(number, false);
    }
  }

  /**
   * It was made within a distance of a place. Distances are great circles on a sphere (haversine,
   * mean earth radius 6,371.0088 km), within 0.6 % of those on the WGS 84 ellipsoid.
   *
   * @param km more than 0
   */
  record Near(double km, Spot spot) implements Filter {
    public Near {
      if (!(km > 0 && km <= LONGEST_KM)) {
        throw new IllegalArgumentException("Distance (" + km + " km) must be more than 0.");
      }
      km = Math.max(SHORTEST_KM, rounded(km, 1e3));
    }

    @Override
    public Trait trait() {
      return Trait.NEAR;
    }

    public Near withKm(double other) {
      return new Near(other, spot);
    }
  }

  /**
   * A kit of the studio makes it, every light and the ambient within so many stops of theirs.
   *
   * @param kit its name
   * @param stops 0 to 64, in hundredths
   */
  record Buildable(String kit, double stops) implements Filter {

    /**
     * Where nothing else is said: one setting of a dial in thirds; common practice, no source.
     * Hundredths: 1/3 is 0.33.
     */
    public static final double USUAL_STOPS = 0.33;

    /** No gear is so far off. */
    public static final double MOST_STOPS = 64;

    public Buildable {
      kit = words(kit);
      if (kit.isEmpty()) {
        throw new IllegalArgumentException("A kit must have a name.");
      }
      if (!(stops >= 0 && stops <= MOST_STOPS)) {
        throw new IllegalArgumentException("Stops (" + stops + ") must be 0 to 64.");
      }
      stops = rounded(stops, 1e2);
    }

    @Override
    public Trait trait() {
      return Trait.BUILDABLE;
    }

    public Buildable withStops(double others) {
      return new Buildable(kit, others);
    }
  }

  /** Where distances are measured from. */
  sealed interface Spot {

    /** A point on earth. */
    record At(EarthPoint point) implements Spot {}

    /**
     * One of the studio's locations.
     *
     * @param name as it was written
     * @param point where it is; absent until somebody looked it up
     */
    record Location(String name, Optional<EarthPoint> point) implements Spot {
      public Location {
        name = words(name);
        if (name.isEmpty()) {
          throw new IllegalArgumentException("A location must have a name.");
        }
      }
    }

    /** Where it is, if that is known. */
    default Optional<EarthPoint> whereabouts() {
      return switch (this) {
        case At at -> Optional.of(at.point());
        case Location location -> location.point();
      };
    }
  }

  /** The same filter as a bracket's content: {@code place kind quarry}. */
  default String bracket() {
    return FilterWriter.bracket(this);
  }

  /** How words are compared: composed, in small letters. */
  static String key(String words) {
    return Normalizer.normalize(words(words), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
  }

  /** Words as they are kept: in one line, not too long. */
  static String words(String written) {
    StringBuilder line = new StringBuilder();
    boolean gap = false;
    for (int at = 0; at < written.length(); at++) {
      char letter = written.charAt(at);
      if (Character.isWhitespace(letter) || Character.isISOControl(letter) || letter == '\u00a0') {
        gap = !line.isEmpty();
      } else {
        if (gap) {
          line.append(' ');
        }
        gap = false;
        line.append(letter);
      }
    }
    if (line.length() > LONGEST_WORDS) {
      line.setLength(
          Character.isHighSurrogate(line.charAt(LONGEST_WORDS - 1))
              ? LONGEST_WORDS - 1
              : LONGEST_WORDS);
    }
    return line.toString().stripTrailing();
  }

  /** Adding zero makes the negative zero a plain one. */
  private static double rounded(double number, double parts) {
    return Math.round(number * parts) / parts + 0.0;
  }

  private static List<String> checked(Trait trait, List<String> words) {
    require(trait, Trait.Kind.WORDS);
    List<String> kept =
        words.stream().map(Filter::words).filter(word -> !word.isEmpty()).distinct().toList();
    if (kept.isEmpty() || kept.size() > MOST_WORDS) {
      throw new IllegalArgumentException(
          trait.word() + " (" + kept.size() + " words) must have 1 to " + MOST_WORDS + ".");
    }
    return kept;
  }

  private static void require(Trait trait, Trait.Kind kind) {
    if (trait.kind() != kind) {
      throw new IllegalArgumentException(trait.word() + " has no such values.");
    }
  }
}
