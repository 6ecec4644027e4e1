package lampwright.web.pages;

import java.util.List;

/**
 * Taking out one's data, and the way to leave for good.
 *
 * @param dataPath where the data is
 * @param ownedAlone studios that would have no owner, each with the page of its people
 * @param questionPath where one is asked once more; empty for who cannot leave
 */
public record LeavingPage(
    Layout layout, String dataPath, List<Link> ownedAlone, String questionPath) {

  public LeavingPage {
    ownedAlone = List.copyOf(ownedAlone);
  }
}
