package lampwright.document;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong with a document while it is read. Belongs to one reading, one thread. */
public final class Problems {

  /** More than this helps nobody, and a hostile document must not make a long answer. */
  private static final int MOST = 50;

  private final List<Problem> found = new ArrayList<>();

  public void add(Pointer at, String message) {
    if (found.size() < MOST) {
      found.add(new Problem(at.toString(), message));
    }
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  public List<Problem> list() {
    return List.copyOf(found);
  }
}
