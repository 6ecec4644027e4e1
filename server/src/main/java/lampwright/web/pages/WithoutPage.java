package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.Svg;
import lampwright.wording.Figure;

/**
 * A setup whose lights are turned off one by one.
 *
 * @param title the setup's
 * @param path of this page
 * @param plan the levels of what burns
 * @param flat why there are no lines; empty where there are
 * @param switches what can burn, in build order, the ambient last
 * @param state what burns, in words
 * @param allPath where everything burns
 * @param stages the setup growing
 * @param sides the two sides of the face; absent without a key
 * @param changed what changed; absent where everything burns
 * @param rows what each one does
 */
public record WithoutPage(
    Layout layout,
    String title,
    String setupPath,
    String path,
    PlanView plan,
    String flat,
    List<Switch> switches,
    String state,
    String allPath,
    Stages stages,
    Optional<Sides> sides,
    Optional<Changed> changed,
    List<Row> rows) {

  /** The names of what a form sends: lights and the ambient that burn, and that it was a form. */
  public static final String ON = "on";

  public static final String AMBIENT = "ambient";
  public static final String FORM = "form";

  /** The names of what an address says: lights that are off, and how far the setup has grown. */
  static final String OFF = "off";

  static final String STAGE = "stage";

  public WithoutPage {
    switches = List.copyOf(switches);
    rows = List.copyOf(rows);
  }

  /**
   * What can be turned off.
   *
   * @param id of the control
   * @param field its name, and the value that it sends
   * @param number as on the plan; 0 for the ambient
   */
  public record Switch(
      String id, String field, String value, int number, String name, boolean burns) {}

  /**
   * The setup growing from the ambient.
   *
   * @param begin leads to the first stage
   * @param now where it stands in its growth; absent where one turns lights as one likes
   */
  public record Stages(Link begin, Optional<Stage> now) {}

  /**
   * One stage.
   *
   * @param place "2 of 6"
   * @param came what came with it
   * @param lines what it does
   * @param previous may lead nowhere
   * @param next may lead nowhere
   */
  public record Stage(String place, String came, List<String> lines, String previous, String next) {

    public Stage {
      lines = List.copyOf(lines);
    }
  }

  /** The two sides of the face, as figures. */
  public record Sides(String heading, List<Figure> figures) {

    public Sides {
      figures = List.copyOf(figures);
    }
  }

  /**
   * What changed.
   *
   * @param rulerHead what stands on the rulers
   * @param beforeHead what it is compared with
   * @param levels where a meter shows it
   * @param same for whom it shows nothing; may be empty
   */
  public record Changed(String rulerHead, String beforeHead, List<Level> levels, String same) {

    public Changed {
      levels = List.copyOf(levels);
    }
  }

  /**
   * A level that changed.
   *
   * @param number of the light that the meter is held for; 0 for a subject
   * @param name of it
   * @param where its target
   */
  public record Level(
      int number, String name, String where, Svg ruler, String before, String now, String change) {}

  /**
   * What one light does in the whole setup.
   *
   * @param id of the part, to which a link may lead
   * @param number 0 for the ambient
   * @param isFor its target; may be empty
   * @param reason why it is there; may be empty
   * @param ruler absent where its level is not known, and for the ambient
   * @param with the level with it; empty where there is no ruler
   * @param without the level without it
   * @param lines what it does
   */
  public record Row(
      String id,
      int number,
      String name,
      String isFor,
      String reason,
      Optional<Svg> ruler,
      String with,
      String without,
      List<String> lines,
      boolean burns,
      String onlyPath,
      String butPath) {

    public Row {
      lines = List.copyOf(lines);
    }
  }
}
