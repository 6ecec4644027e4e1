package lampwright.web.pages;

import java.util.List;

/**
 * The part of a setup's page that shows it to somebody outside.
 *
 * @param action where a new link is asked for
 * @param usualDays how long one usually lasts
 * @param mostDays the longest that one can last
 * @param links those that are open, the newest first; may be empty
 */
public record SharePart(
    String action, String csrfToken, int usualDays, int mostDays, List<Open> links) {

  public static final String DAYS = "days";
  public static final String PICTURES = "shows_pictures";
  public static final String PLACE = "shows_place";

  public SharePart {
    links = List.copyOf(links);
  }

  /**
   * An open link.
   *
   * @param ends "Ends 18 May 2031"
   * @param shows what it shows, and who made it when
   * @param opened whether and when somebody followed it
   * @param withdrawal where it is withdrawn
   */
  public record Open(String ends, String shows, String opened, String withdrawal) {}
}
