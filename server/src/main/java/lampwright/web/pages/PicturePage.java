package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;
import lampwright.wording.Figure;

/**
 * One picture.
 *
 * @param allPath to the setup's other pictures
 * @param points numbered discs over it, where notes are about points in it
 * @param notes of those points, in the order of their numbers
 * @param settings what the file says beside what the setup says
 * @param sentences where they disagree
 * @param tones its tones; absent for what has none
 * @param file "JPEG, 4000 × 3000 pixels, 5.2 MB"
 * @param place whether the file tells where it was taken, and who gets that; may be empty
 * @param originalPath where the file itself is
 * @param revision "Revision 2, by …, 4 May 2031"
 * @param form where one says something else of it; absent for who may not
 * @param removePath where the form to take it away goes
 */
public record PicturePage(
    Layout layout,
    String setupTitle,
    String setupPath,
    String allPath,
    PictureTile picture,
    Optional<Svg> points,
    List<PointNote> notes,
    List<Setting> settings,
    List<String> sentences,
    Tones tones,
    String file,
    String place,
    String originalPath,
    String revision,
    Optional<PictureForm> form,
    String removePath) {

  public PicturePage {
    notes = List.copyOf(notes);
    settings = List.copyOf(settings);
    sentences = List.copyOf(sentences);
  }

  /** A note at a point. */
  public record PointNote(int number, String text, String by) {}

  /**
   * One setting.
   *
   * @param file as cameras print it
   * @param setup as cameras print it
   * @param differs whether they disagree
   */
  public record Setting(String name, String file, String setup, boolean differs) {}

  /**
   * Tones and colours.
   *
   * @param facts in figures
   * @param colours each with its share
   */
  public record Tones(Svg scale, Svg strip, List<Figure> facts, List<Colour> colours) {

    public Tones {
      facts = List.copyOf(facts);
      colours = List.copyOf(colours);
    }
  }

  /** A main colour: "#c08040", "41 %". */
  public record Colour(String hex, String share) {}
}
