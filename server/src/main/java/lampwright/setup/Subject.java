package lampwright.setup;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.gear.GearForms;

/**
 * Whom or what the picture is of.
 *
 * @param facing where the face points, from the direction subject to camera, positive to
 *     camera-right
 * @param path the marks in the order in which they are walked; empty for a subject that stays
 */
public record Subject(
    String name,
    Point place,
    Degrees facing,
    Optional<Metres> height,
    List<Mark> path,
    Optional<Double> speedMPerS) {

  /**
   * Eye height as a share of stature, an average of adults standing upright: 0.936 (Drillis and
   * Contini 1966, as handbooks of biomechanics draw it; from memory).
   */
  public static final double EYES_SHARE = 0.936;

  /**
   * A named point on the ground.
   *
   * @param cue what the subject does there, where it looks
   */
  public record Mark(String name, Point at, Optional<String> cue) {

    private static final Field<Mark, String> NAME =
        required("name", SetupForms.line(), Mark::name, "start, cue, hit mark, end.");
    private static final Field<Mark, Point> AT =
        required("at", SetupForms.point(), Mark::at, "Where it is.");
    private static final Field<Mark, Optional<String>> CUE =
        optional(
            "cue",
            SetupForms.paragraph(),
            Mark::cue,
            "What the subject does there, where it looks.");

    static final ObjectForm<Mark> FORM =
        ObjectForm.of(
            "mark",
            "A named point on the ground.",
            values -> new Mark(values.get(NAME), values.get(AT), values.get(CUE)),
            List.of(NAME, AT, CUE));
  }

  private static final Field<Subject, String> NAME =
      required("name", SetupForms.line(), Subject::name, "Whom or what the picture is of.");
  private static final Field<Subject, Point> PLACE =
      required("place", SetupForms.point(), Subject::place, "Where the subject's feet are.");
  private static final Field<Subject, Degrees> FACING =
      usually(
          new Degrees(0),
          "facing_deg",
          Forms.number("°").atLeast(-180).atMost(180).maybe(0).as(Degrees::new, Degrees::value),
          Subject::facing,
          "Where the face points, from the direction subject to camera, positive to camera-right;"
              + " usually 0, at the camera.");
  private static final Field<Subject, Optional<Metres>> HEIGHT =
      optional("height_m", GearForms.length(100, 1.7), Subject::height, "How tall it is.");
  private static final Field<Subject, List<Mark>> PATH =
      list("path", Mark.FORM, 30, Subject::path, "The marks in the order they are walked.");
  private static final Field<Subject, Optional<Double>> SPEED =
      optional(
          "speed_m_per_s",
          Forms.number("m/s").atLeast(0).atMost(100).maybe(1.4),
          Subject::speedMPerS,
          "How fast it passes the hit mark.");

  static final ObjectForm<Subject> FORM =
      ObjectForm.of(
          "subject",
          "Whom or what the picture is of.",
          values ->
              new Subject(
                  values.get(NAME),
                  values.get(PLACE),
                  values.get(FACING),
                  values.get(HEIGHT),
                  values.get(PATH),
                  values.get(SPEED)),
          List.of(NAME, PLACE, FACING, HEIGHT, PATH, SPEED));

  /** How high its eyes are, where its height is known. */
  public Optional<Metres> eyes() {
    return height.map(high -> new Metres(high.value() * EYES_SHARE));
  }
}
