package lampwright.engine.match;

import java.util.List;

/**
 * One choice for each row, within the supplies.
 *
 * @param choiceOfRow the index of each row's choice
 * @param cost the sum of the choices' costs and the price of the longest wait
 * @param atLeast what no allotment can cost less than; equal to {@code cost} where this one is
 *     proved to be the best
 */
public record Allotment(List<Integer> choiceOfRow, double cost, double atLeast) {

  /** Copies the list. */
  public Allotment {
    choiceOfRow = List.copyOf(choiceOfRow);
  }

  /** Asks whether nothing better exists. */
  public boolean isProved() {
    return atLeast >= cost;
  }
}
