package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/**
 * The log of the day of one setup, for one thumb.
 *
 * @param setupPath back to the setup
 * @param form where one logs the next; absent for who may not
 * @param takes the last on top; may be empty
 * @param nextPath to earlier ones; empty where there are none
 * @param notes the last on top; may be empty
 * @param noteForm where one writes a note; absent for who may not
 */
public record TakesPage(
    Layout layout,
    String setupTitle,
    String setupPath,
    Optional<TakeForm> form,
    List<TakeCard> takes,
    String nextPath,
    List<NoteCard> notes,
    Optional<NoteForm> noteForm) {

  public TakesPage {
    takes = List.copyOf(takes);
    notes = List.copyOf(notes);
  }

  /**
   * One take.
   *
   * @param id of its place on the page
   * @param label "Take 3"
   * @param when "19:13, 12 September 2025"
   * @param kept "Kept", "Not kept", "Not judged yet"
   * @param judge where one judges it; absent for who may not
   */
  public record TakeCard(
      String id,
      String label,
      String when,
      String kept,
      String why,
      String changed,
      List<ReadingLine> readings,
      Optional<Judge> judge) {

    public TakeCard {
      readings = List.copyOf(readings);
    }
  }

  /**
   * One reading beside what was expected.
   *
   * @param uncertainty "±0.3"; empty where none is known
   * @param sentence what is off, and what helps
   */
  public record ReadingLine(
      String light, String metered, String expected, String uncertainty, String sentence) {}

  /**
   * Where one take is judged.
   *
   * @param revision that was looked at
   */
  public record Judge(String action, String csrfToken, int revision, String why) {}

  /**
   * A note.
   *
   * @param by who wrote it, and when
   * @param about "On the light key"; empty where it is about the setup
   */
  public record NoteCard(String text, String by, String about) {}

  /** Where one writes a note. */
  public record NoteForm(String action, String csrfToken, String text, FormErrors errors) {}
}
