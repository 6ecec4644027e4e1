package lampwright.gear.exchange;

import java.util.Optional;

/**
 * What is wrong with a line.
 *
 * @param column the table's column, from 1; absent where no column is to blame
 * @param pointer where in the gear's document, as a JSON Pointer; empty for all of it
 * @param message what is wrong and what to do
 */
public record LineFault(Optional<Integer> column, String pointer, String message) {

  static LineFault at(int column, String message) {
    return new LineFault(Optional.of(column), "", message);
  }

  static LineFault ofLine(String message) {
    return new LineFault(Optional.empty(), "", message);
  }
}
