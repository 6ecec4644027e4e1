package lampwright.search.filter;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one setup is like, as far as it is known: what the index filters by and counts.
 *
 * @param words by trait; a trait without words is left out
 * @param numbers by trait, rounded as {@link Trait#rounded} does
 * @param point where it was made
 */
public record Traits(
    Map<Trait, List<String>> words, Map<Trait, Double> numbers, Optional<EarthPoint> point) {

  /** More words of one trait tell nothing of a setup; it bounds what a document can cost. */
  private static final int MOST_WORDS = 500;

  /** Nothing is known. */
  public static final Traits NONE = new Traits(Map.of(), Map.of(), Optional.empty());

  public Traits {
    words = Map.copyOf(words);
    numbers = Map.copyOf(numbers);
  }

  public static Builder builder() {
    return new Builder();
  }

  /** Whether a setup with these traits passes a filter whose place has been looked up. */
  public boolean pass(Filter filter) {
    return switch (filter) {
      case Filter.OneOf one -> hasAny(one.trait(), one.words());
      case Filter.NoneOf none -> !hasAny(none.trait(), none.words());
      case Filter.Range range ->
          numbers.containsKey(range.trait())
              && numbers.get(range.trait()) >= range.least()
              && numbers.get(range.trait()) <= range.most();
      case Filter.Buildable _ ->
          throw new IllegalArgumentException("What a kit makes is decided elsewhere.");
      case Filter.Near near ->
          point.isPresent()
              && near.spot().whereabouts().isPresent()
              && GreatCircle.km(point.get(), near.spot().whereabouts().get()) <= near.km();
    };
  }

  private boolean hasAny(Trait trait, List<String> wanted) {
    List<String> keys = wanted.stream().map(Filter::key).toList();
    return words.getOrDefault(trait, List.of()).stream().map(Filter::key).anyMatch(keys::contains);
  }

  /** Gathers traits; what cannot be one (blank words, no number) is left out. */
  public static final class Builder {
    private final Map<Trait, List<String>> words = new EnumMap<>(Trait.class);
    private final Map<Trait, Double> numbers = new EnumMap<>(Trait.class);
    private Optional<EarthPoint> point = Optional.empty();

    private Builder() {}

    public Builder words(Trait trait, String... values) {
      return words(trait, List.of(values));
    }

    /** Adds words; those that are there, in whatever capitals, are not added again. */
    public Builder words(Trait trait, List<String> values) {
      if (trait.kind() != Trait.Kind.WORDS) {
        throw new IllegalArgumentException(trait.word() + " has no words.");
      }
      List<String> kept = new ArrayList<>(words.getOrDefault(trait, List.of()));
      for (String value : values) {
        String line = Filter.words(value);
        String key = Filter.key(line);
        if (!line.isEmpty()
            && kept.size() < MOST_WORDS
            && kept.stream().noneMatch(other -> Filter.key(other).equals(key))) {
          kept.add(line);
        }
      }
      if (!kept.isEmpty()) {
        words.put(trait, List.copyOf(kept));
      }
      return this;
    }

    public Builder number(Trait trait, double value) {
      if (trait.kind() != Trait.Kind.NUMBER) {
        throw new IllegalArgumentException(trait.word() + " has no number.");
      }
      if (Math.abs(value) <= Filter.LARGEST_NUMBER) {
        numbers.put(trait, trait.rounded(value));
      }
      return this;
    }

    public Builder point(double latitudeDeg, double longitudeDeg) {
      point = Optional.of(new EarthPoint(latitudeDeg, longitudeDeg));
      return this;
    }

    public Builder point(EarthPoint where) {
      point = Optional.of(where);
      return this;
    }

    public Traits build() {
      return new Traits(words, numbers, point);
    }
  }
}
