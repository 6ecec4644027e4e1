package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * Where a setup stands, and how it came there.
 *
 * @param standing "Draft", "Proven, archived"
 * @param meaning what that means for who sees it
 * @param last the last few revisions
 * @param historyPath to all of them
 * @param form where one says how it stands from now on; absent for who may not
 */
public record LifePart(
    String standing,
    String meaning,
    List<PastLine> last,
    String historyPath,
    String auditPath,
    Optional<StandingForm> form) {

  public LifePart {
    last = List.copyOf(last);
  }

  /**
   * Buttons that say where it stands.
   *
   * @param action where the form goes
   * @param csrfToken what it must carry
   * @param revision that is looked at
   */
  public record StandingForm(
      String action, String csrfToken, int revision, boolean isProven, boolean isArchived) {

    public static final String REVISION = "revision";
    public static final String STATE = "state";
    public static final String ARCHIVED = "archived";
  }
}
