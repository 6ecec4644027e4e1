package lampwright.engine;

import java.util.List;
import lampwright.engine.unit.Bounds;

/**
 * One step of an answer: what was computed, its value and unit, the formula, where that comes from,
 * and the steps that went into it. Pages and JSON show it, so that a photographer can argue with
 * the number.
 *
 * @param quantity what it is, in the trade's words: "light of the key at the face"
 * @param value the number, unrounded
 * @param unit its unit's sign, empty for a ratio
 * @param formula in plain signs, such as "N = √(H S / C)"; empty for a given number
 * @param source where the formula or number comes from
 * @param known whether it was metered, set, estimated or computed from its parts
 * @param parts the steps that it was computed from, in the order of the formula
 */
public record Working(
    String quantity,
    double value,
    String unit,
    String formula,
    Source source,
    Known known,
    List<Working> parts) {

  /** Copies the parts and refuses numbers that are none. */
  public Working {
    Bounds.requireFinite(quantity, value, unit);
    parts = List.copyOf(parts);
  }

  /** Makes a number that was computed from its parts. */
  public Working(
      String quantity,
      double value,
      String unit,
      String formula,
      Source source,
      List<Working> parts) {
    this(quantity, value, unit, formula, source, Known.COMPUTED, parts);
  }

  /** Returns a number that somebody set, or a constant of the trade. */
  public static Working given(String quantity, double value, String unit) {
    return given(quantity, value, unit, Known.SET);
  }

  /** Returns a number that comes from outside, and how it is known. */
  public static Working given(String quantity, double value, String unit, Known known) {
    return new Working(quantity, value, unit, "", Source.GIVEN, known, List.of());
  }

  /** Returns a computed number and its parts. */
  public static Working of(
      String quantity, double value, String unit, String formula, Source source, Working... parts) {
    return new Working(quantity, value, unit, formula, source, Known.COMPUTED, List.of(parts));
  }

  /** Returns the steps as an indented tree, one line a step. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    append(text, "");
    return text.toString();
  }

  private void append(StringBuilder text, String indent) {
    text.append(indent).append(quantity).append(" = ").append(Bounds.rounded(value, 4));
    if (!unit.isEmpty()) {
      text.append(' ').append(unit);
    }
    if (!formula.isEmpty()) {
      text.append(", ").append(formula);
    }
    text.append(" [").append(source.key()).append("]\n");
    for (Working part : parts) {
      part.append(text, indent + "  ");
    }
  }
}
