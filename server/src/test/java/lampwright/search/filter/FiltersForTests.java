package lampwright.search.filter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Filters of every kind with any words and numbers, from a seed. */
public final class FiltersForTests {

  private static final List<String> PIECES =
      List.of(
          "lonely",
          "or",
          "OR",
          "kind",
          "within",
          "without",
          "to",
          "2",
          "-1",
          "f/8",
          "km",
          "of",
          "\"",
          "\"\"",
          "[",
          "]",
          "“",
          "”",
          "\\",
          ",",
          ".",
          ":",
          "·",
          "°",
          "'",
          "é",
          "e\u0301",
          "漢字",
          "\ud83d\ude00",
          "\u202e",
          "Old pier",
          "side",
          "height",
          "key",
          "day",
          "  ",
          "\t",
          "\u0000",
          "\u00a0",
          "x");

  private final Random random;

  public FiltersForTests(long seed) {
    random = new Random(seed);
  }

  public Filter next() {
    return switch (random.nextInt(5)) {
      case 0 -> new Filter.OneOf(trait(Trait.Kind.WORDS), words());
      case 1 -> new Filter.NoneOf(trait(Trait.Kind.WORDS), words());
      case 2 -> range();
      case 3 -> buildable();
      default -> new Filter.Near(0.001 + random.nextInt(20_000_000) / 1e3, spot());
    };
  }

  private Filter buildable() {
    double stops = random.nextInt(8) == 0 ? 64 : random.nextInt(6_401) / 1e2;
    return new Filter.Buildable(words().getFirst(), stops);
  }

  private Trait trait(Trait.Kind kind) {
    List<Trait> open =
        Arrays.stream(Trait.values())
            .filter(trait -> trait.kind() == kind && trait.vocabulary().isEmpty())
            .toList();
    return open.get(random.nextInt(open.size()));
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(4); i++) {
      words.add(word());
    }
    return words;
  }

  private String word() {
    StringBuilder word = new StringBuilder();
    for (int i = 0; i <= random.nextInt(4); i++) {
      word.append(PIECES.get(random.nextInt(PIECES.size())))
          .append(random.nextBoolean() ? " " : "");
    }
    return Filter.words(word.toString()).isEmpty() ? word() : word.toString();
  }

  private Filter range() {
    Trait trait = trait(Trait.Kind.NUMBER);
    double from = number();
    double to = from + random.nextInt(3_000_000) / 1e6;
    return switch (random.nextInt(4)) {
      case 0 -> Filter.Range.exactly(trait, from);
      case 1 -> new Filter.Range(trait, Optional.of(bound(from)), Optional.empty());
      case 2 -> new Filter.Range(trait, Optional.empty(), Optional.of(bound(to)));
      default -> new Filter.Range(trait, Optional.of(bound(from)), Optional.of(bound(to)));
    };
  }

  private Filter.Bound bound(double number) {
    return new Filter.Bound(number, random.nextBoolean());
  }

  private double number() {
    double scale = Math.pow(10, random.nextInt(7));
    return Math.round((random.nextDouble() - 0.5) * scale * 1e6) / 1e6;
  }

  private Filter.Spot spot() {
    return random.nextBoolean()
        ? new Filter.Spot.Location(word(), Optional.empty())
        : new Filter.Spot.At(
            new EarthPoint((random.nextDouble() - 0.5) * 180, (random.nextDouble() - 0.5) * 360));
  }
}
