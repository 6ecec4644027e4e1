package lampwright.web.pages;

import java.util.List;

/**
 * What the head of a page shows to a member.
 *
 * @param studioName the studio they are in
 * @param studioPath the studio's first page
 * @param studiosPath where one changes to another studio; empty for who has one only
 * @param memberName their own name
 * @param signOutPath where the sign-out form posts to
 * @param csrfToken what the form must carry
 * @param findPath where the search box asks
 * @param links the studio's other pages, the current one included
 * @param saved the page of their kept searches
 * @param newSetupPath where they make a setup; empty for who may not
 * @param here the path among the links that is this page, or empty
 */
public record SignedIn(
    String studioName,
    String studioPath,
    String studiosPath,
    String memberName,
    String signOutPath,
    String csrfToken,
    String findPath,
    List<Link> links,
    Saved saved,
    String newSetupPath,
    String here) {

  /**
   * The searches that they keep.
   *
   * @param news how many setups are new to them in these
   */
  public record Saved(String path, int news) {}

  public SignedIn {
    links = List.copyOf(links);
  }
}
