package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;
import lampwright.wording.Deviation;

/**
 * The log of the day of one setup, for one thumb.
 *
 * @param setupPath back to the setup
 * @param remark what was just done; empty for nothing
 * @param last the take that was logged last; absent where none is, and among earlier ones
 * @param form where one logs the next; absent for who may not
 * @param takes those before it, the last on top; may be empty
 * @param nextPath to earlier ones; empty where there are none
 * @param notes the last on top; may be empty
 * @param noteForm where one writes a note; absent for who may not
 */
public record TakesPage(
    Layout layout,
    String setupTitle,
    String setupPath,
    String remark,
    Optional<TakeCard> last,
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
   * @param kept "Kept", "Not kept", "Not judged yet"; empty for a run-through, which is not judged
   * @param isKept whether it is marked as what counts
   * @param correction where one corrects it; absent for who may not
   * @param keeping where its readings are kept; absent for who may not, and where there are none
   */
  public record TakeCard(
      String id,
      String label,
      String when,
      String kept,
      boolean isKept,
      String why,
      String changed,
      List<ReadingLine> readings,
      Optional<Correction> correction,
      Optional<KeepingForm> keeping) {

    public TakeCard {
      readings = List.copyOf(readings);
    }
  }

  /**
   * One reading beside what was expected.
   *
   * @param uncertainty "±0.3"; empty where none is known
   * @param off by how much it is off; absent where that cannot be said
   * @param ruler an open dot where it was metered, a bar where it was expected
   * @param sentence what is off, and what helps; empty where nothing is off
   */
  public record ReadingLine(
      String light,
      String metered,
      String expected,
      String uncertainty,
      Optional<Deviation> off,
      Svg ruler,
      String sentence) {}

  /**
   * Where one take is corrected, or taken back.
   *
   * @param revision that was looked at
   * @param withdrawal where it is taken back; empty for who may not
   * @param isAgain whether it was refused as it was sent
   */
  public record Correction(
      String action,
      String csrfToken,
      int revision,
      String why,
      List<MeterField> lights,
      String withdrawal,
      boolean isAgain,
      FormErrors errors) {

    public Correction {
      lights = List.copyOf(lights);
    }
  }

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
