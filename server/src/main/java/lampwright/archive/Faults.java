package lampwright.archive;

import java.util.ArrayList;
import java.util.List;
import lampwright.document.Problem;
import lampwright.document.Problems;

/** Collects what is wrong with an archive while it is read. */
final class Faults {

  /** More than this helps nobody, and a hostile archive must not make a long answer. */
  private static final int MOST = 50;

  private final List<Fault> found = new ArrayList<>();

  void add(Fault fault) {
    if (found.size() < MOST) {
      found.add(fault);
    }
  }

  void add(String file, int line, Problems problems) {
    for (Problem problem : problems.list()) {
      add(new Fault(file, line, problem.pointer(), problem.message()));
    }
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  boolean isFull() {
    return found.size() >= MOST;
  }

  void throwAny() throws Unsound {
    if (!found.isEmpty()) {
      throw new Unsound(found);
    }
  }
}
