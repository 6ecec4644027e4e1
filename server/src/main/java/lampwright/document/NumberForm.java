package lampwright.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A finite number within bounds; made by {@link Forms#number}. */
public final class NumberForm extends Form<Double> {

  private final String unit;
  private final OptionalDouble atLeast;
  private final OptionalDouble moreThan;
  private final OptionalDouble atMost;
  private final OptionalDouble suggestion;
  private final boolean whole;

  NumberForm(
      String unit,
      OptionalDouble atLeast,
      OptionalDouble moreThan,
      OptionalDouble atMost,
      OptionalDouble suggestion,
      boolean whole) {
    this.unit = unit;
    this.atLeast = atLeast;
    this.moreThan = moreThan;
    this.atMost = atMost;
    this.suggestion = suggestion;
    this.whole = whole;
  }

  /**
   * Nothing below the bound; it may go together with {@link #moreThan}, whose message comes first.
   */
  public NumberForm atLeast(double bound) {
    return new NumberForm(unit, OptionalDouble.of(bound), moreThan, atMost, suggestion, whole);
  }

  /** Nothing at or below the bound. */
  public NumberForm moreThan(double bound) {
    return new NumberForm(unit, atLeast, OptionalDouble.of(bound), atMost, suggestion, whole);
  }

  /** Nothing above the bound. */
  public NumberForm atMost(double bound) {
    return new NumberForm(unit, atLeast, moreThan, OptionalDouble.of(bound), suggestion, whole);
  }

  /** A likely value, offered in messages: "Maybe 2 m?". */
  public NumberForm maybe(double value) {
    return new NumberForm(unit, atLeast, moreThan, atMost, OptionalDouble.of(value), whole);
  }

  NumberForm wholeOnly() {
    return new NumberForm(unit, atLeast, moreThan, atMost, suggestion, true);
  }

  @Override
  public Optional<Double> read(Object json, Pointer at, Problems problems) {
    if (!(json instanceof Number number)) {
      problems.add(
          at,
          Words.label(at)
              + " ("
              + Words.shown(json)
              + ") must be a number"
              + inUnit()
              + "."
              + maybe());
      return Optional.empty();
    }
    double value = number.doubleValue();
    String bound = brokenBound(value);
    if (!bound.isEmpty()) {
      problems.add(
          at, Words.label(at) + " (" + quantity(value) + ") must be " + bound + "." + maybe());
      return Optional.empty();
    }
    return Optional.of(value + 0.0); // no negative zero, which is equal to nothing but itself
  }

  private String brokenBound(double value) {
    if (!Double.isFinite(value)) {
      return "a finite number";
    }
    if (whole && value != Math.rint(value)) {
      return "a whole number";
    }
    if (moreThan.isPresent() && value <= moreThan.getAsDouble()) {
      return "more than " + quantity(moreThan.getAsDouble());
    }
    if (atLeast.isPresent() && value < atLeast.getAsDouble()) {
      return "at least " + quantity(atLeast.getAsDouble());
    }
    if (atMost.isPresent() && value > atMost.getAsDouble()) {
      return "at most " + quantity(atMost.getAsDouble());
    }
    return "";
  }

  private String quantity(double value) {
    return Words.quantity(value, unit);
  }

  private String inUnit() {
    return unit.isEmpty() ? "" : " in " + unit;
  }

  private String maybe() {
    return suggestion.isPresent() ? " Maybe " + quantity(suggestion.getAsDouble()) + "?" : "";
  }

  @Override
  public Object write(Double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return (long) value.doubleValue();
    }
    return value;
  }

  @Override
  public Map<String, Object> schema(Definitions definitions) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("type", whole ? "integer" : "number");
    // Of two lower bounds only the higher one says anything.
    double excluded = moreThan.orElse(Double.NEGATIVE_INFINITY);
    if (atLeast.isPresent() && atLeast.getAsDouble() > excluded) {
      schema.put("minimum", write(atLeast.getAsDouble()));
    } else if (moreThan.isPresent()) {
      schema.put("exclusiveMinimum", write(excluded));
    }
    atMost.ifPresent(bound -> schema.put("maximum", write(bound)));
    suggestion.ifPresent(value -> schema.put("examples", List.of(write(value))));
    return schema;
  }
}
