package lampwright.web.pages;

import java.util.List;

/**
 * What happened with a person's own account, day by day.
 *
 * @param accountPath where it leads back to
 * @param days the newest first; may be empty
 * @param earlier to the next older lines; empty on the last part
 */
public record AccountEventsPage(
    Layout layout, String accountPath, List<AuditPage.Day> days, String earlier) {

  public AccountEventsPage {
    days = List.copyOf(days);
  }
}
