package lampwright.search.filter;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.language.Filling;
import org.jspecify.annotations.Nullable;

/** Reads a number or its bounds: {@code 2}, {@code 2 to 4}, {@code above -2 up to 1 stops}. */
final class NumberReader {

  private static final String LEAST = "from|at\\s+least|>=|≥";
  private static final String MORE = "above|over|more\\s+than|>";
  private static final String MOST = "up\\s+to|at\\s+most|to|<=|≤";
  private static final String LESS = "below|under|less\\s+than|<";

  private NumberReader() {}

  static ReadFilter read(Trait trait, String text) {
    String number = "(?:f/?\\s*)?([-−+]?\\d{1,7}(?:[.,]\\d{1,6})?)" + units(trait);
    Matcher between =
        Pattern.compile("(?is)(?:between\\s+)?" + number + "\\s*(?:to|and|–|…)\\s*" + number)
            .matcher(text.strip());
    if (between.matches()) {
      return ordered(
          trait,
          Filter.Bound.including(value(between.group(1))),
          Filter.Bound.including(value(between.group(2))));
    }
    Matcher exact = Pattern.compile("(?is)" + number).matcher(text.strip());
    if (exact.matches()) {
      return new ReadFilter.Understood(Filter.Range.exactly(trait, value(exact.group(1))));
    }
    Matcher bounds =
        Pattern.compile(
                "(?is)(?:("
                    + LEAST
                    + ")\\s*|("
                    + MORE
                    + ")\\s*)"
                    + number
                    + "(?:\\s*(?:and\\s+)?(?:("
                    + MOST
                    + ")|("
                    + LESS
                    + "))\\s*"
                    + number
                    + ")?")
            .matcher(text.strip());
    if (bounds.matches()) {
      Filter.Bound from = new Filter.Bound(value(bounds.group(3)), bounds.group(1) != null);
      @Nullable String upper = bounds.group(6);
      return upper == null
          ? new ReadFilter.Understood(new Filter.Range(trait, Optional.of(from), Optional.empty()))
          : ordered(trait, from, new Filter.Bound(value(upper), bounds.group(4) != null));
    }
    Matcher below =
        Pattern.compile("(?is)(?:(" + MOST + ")|(" + LESS + "))\\s*" + number)
            .matcher(text.strip());
    if (below.matches()) {
      Filter.Bound to = new Filter.Bound(value(below.group(3)), below.group(1) != null);
      return new ReadFilter.Understood(new Filter.Range(trait, Optional.empty(), Optional.of(to)));
    }
    String mark = trait == Trait.APERTURE ? "f/" : "";
    return FilterReader.unclear("needsNumber", Filling.text(trait.word()), Filling.text(mark));
  }

  private static ReadFilter ordered(Trait trait, Filter.Bound from, Filter.Bound to) {
    if (from.number() > to.number()) {
      return FilterReader.unclear(
          "holdsNothing",
          Filling.text(FilterWriter.number(from.number())),
          Filling.text(FilterWriter.number(to.number())));
    }
    return new ReadFilter.Understood(new Filter.Range(trait, Optional.of(from), Optional.of(to)));
  }

  private static String units(Trait trait) {
    String all =
        Stream.concat(trait.unitWords().stream(), Stream.of(trait.unit()))
            .filter(unit -> !unit.isEmpty())
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));
    return all.isEmpty() ? "" : "(?:\\s*(?:" + all + ")(?![\\p{L}\\p{N}]))?";
  }

  private static double value(String written) {
    return Double.parseDouble(written.replace('−', '-').replace(',', '.'));
  }
}
