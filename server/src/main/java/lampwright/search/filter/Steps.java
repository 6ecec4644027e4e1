package lampwright.search.filter;

import java.util.List;
import java.util.Optional;

/** The fixed ranges in which numbers are counted. Each number lies in exactly one of them. */
sealed interface Steps {

  /** The range that a number lies in. */
  Filter.Range around(Trait trait, double number);

  /** Each number by itself. */
  record Each() implements Steps {
    @Override
    public Filter.Range around(Trait trait, double number) {
      return Filter.Range.exactly(trait, number);
    }
  }

  /** Ranges of one width, from zero both ways. */
  record Every(double width) implements Steps {
    @Override
    public Filter.Range around(Trait trait, double number) {
      double step = Math.floor(number / width);
      return Filter.Range.ofStep(trait, step * width, (step + 1) * width);
    }
  }

  /** Each range twice as wide as the one before; below the first is one more. */
  record Doublings(double first) implements Steps {
    @Override
    public Filter.Range around(Trait trait, double number) {
      if (number < first) {
        return Filter.Range.below(trait, first);
      }
      double from = first * Math.scalb(1.0, Math.getExponent(number / first));
      return Filter.Range.ofStep(trait, from, 2 * from);
    }
  }

  /** From each mark up to the next one. */
  record Marks(List<Double> marks) implements Steps {
    public Marks {
      marks = List.copyOf(marks);
    }

    @Override
    public Filter.Range around(Trait trait, double number) {
      Optional<Double> from = Optional.empty();
      for (double mark : marks) {
        if (number < mark) {
          return from.isPresent()
              ? Filter.Range.ofStep(trait, from.get(), mark)
              : Filter.Range.below(trait, mark);
        }
        from = Optional.of(mark);
      }
      return new Filter.Range(trait, from.map(Filter.Bound::including), Optional.empty());
    }
  }
}
