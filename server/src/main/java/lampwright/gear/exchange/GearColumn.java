package lampwright.gear.exchange;

import java.util.List;

/**
 * A column of a table of gear.
 *
 * @param steps the keys of the document that lead to its value
 */
record GearColumn(List<String> steps, Holds holds) {

  /** What stands in its cells. */
  enum Holds {
    TEXT,
    NUMBER,
    FLAG,
    /** A list, as JSON. */
    LIST
  }

  GearColumn {
    steps = List.copyOf(steps);
  }

  /** The keys with dots between them. */
  String name() {
    return String.join(".", steps);
  }
}
