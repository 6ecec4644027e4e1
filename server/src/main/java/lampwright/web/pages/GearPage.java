package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.wording.Figure;

/**
 * One piece of gear: what is known of it, what was metered of it, which kits take it.
 *
 * @param kind as a heading says it
 * @param calibration what the readings say; absent for gear that is not metered
 * @param condition what was noticed of it, each with its day
 * @param kits that take it
 * @param revision "Revision 3, by …"
 * @param changePath where it is changed; empty for who may not
 */
public record GearPage(
    Layout layout,
    String kind,
    String name,
    String count,
    String facts,
    Optional<Calibrated> calibration,
    List<Noticed> condition,
    List<Link> kits,
    String revision,
    String listPath,
    String changePath) {

  static final String REVISION = "revision";

  public GearPage {
    condition = List.copyOf(condition);
    kits = List.copyOf(kits);
  }

  /** What was noticed, and when. */
  public record Noticed(String day, String note) {}

  /**
   * What the readings say.
   *
   * @param figures the fit's own figures; empty where there are no readings
   * @param plot of readings and fit; absent where there are no readings
   * @param readings one row for each; absent where there are none
   * @param sentences what is to be known beside: outliers, what is not determined, what was assumed
   * @param adopt the form that makes it the next revision; its action is empty where nothing can be
   *     adopted, or not by this member
   */
  public record Calibrated(
      List<Figure> figures,
      Optional<DrawingView> plot,
      Optional<FiguresTable> readings,
      List<String> sentences,
      Adopt adopt) {

    public Calibrated {
      figures = List.copyOf(figures);
      sentences = List.copyOf(sentences);
    }
  }

  /** The form. */
  public record Adopt(String action, String csrfToken, int revision) {}
}
