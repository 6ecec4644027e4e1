package lampwright.store;

import java.util.Optional;
import lampwright.setup.Standing;

/**
 * One line of a setup's history.
 *
 * @param title that the document had
 * @param standing where the setup stood
 * @param planned the revision that was planned, where this one tells what was really used of it
 * @param restoredFrom the revision that was brought back by this one
 */
public record SetupRevision(
    Revision revision,
    String title,
    Standing standing,
    Optional<Integer> planned,
    Optional<Integer> restoredFrom) {

  /** Its number. */
  public int number() {
    return revision.number();
  }
}
