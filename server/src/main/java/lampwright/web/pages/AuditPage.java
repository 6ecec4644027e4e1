package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * Who did what to what in the studio, and when, day by day.
 *
 * @param action where the form of the filters leads
 * @param people whose deeds can be asked for, everybody first
 * @param kinds what can be asked for, everything first
 * @param setup the only setup that it is about; absent where it is about everything
 * @param from the first day, as a date field writes it; may be empty
 * @param until the last day; may be empty
 * @param isFiltered whether some lines may be left out by the filters
 * @param days the newest first; may be empty
 * @param earlier to the next older lines; empty on the last part
 */
public record AuditPage(
    Layout layout,
    String action,
    List<Choice> people,
    List<Choice> kinds,
    Optional<OneSetup> setup,
    String from,
    String until,
    boolean isFiltered,
    List<Day> days,
    String earlier) {

  static final String PERSON = "person";
  static final String KIND = "kind";
  static final String SETUP = "setup";
  static final String FROM = "from";
  static final String UNTIL = "until";

  public AuditPage {
    people = List.copyOf(people);
    kinds = List.copyOf(kinds);
    days = List.copyOf(days);
  }

  /**
   * The setup that all is about.
   *
   * @param said that it is so, with its title
   * @param path to its page
   */
  public record OneSetup(String id, String said, String path) {}

  /** One of a choice. */
  public record Choice(String value, String words, boolean isChosen) {}

  /** What was done on one day. */
  public record Day(String name, List<Line> lines) {

    public Day {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One deed.
   *
   * @param at the time of day
   * @param moment for programs that read the page, such as {@code 2031-05-04T14:05:00Z}
   * @param said the whole sentence
   * @param more a small fact beside it; may be empty
   */
  public record Line(String at, String moment, String said, String more) {}
}
