package lampwright.archive;

import java.util.List;

/** An archive that cannot be believed; nothing of it may be kept. */
public final class Unsound extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  Unsound(List<Fault> faults) {
    super("An archive is unsound", null, false, false);
    this.faults = List.copyOf(faults);
  }

  Unsound(Fault fault) {
    this(List.of(fault));
  }

  /** What is wrong, at least one thing; of very many the first. */
  public List<Fault> faults() {
    return faults;
  }
}
