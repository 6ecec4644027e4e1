package lampwright.setup;

import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.stream.IntStream;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.Forms.Kind;
import lampwright.document.ObjectForm;
import lampwright.engine.light.Point;
import lampwright.engine.map.MapPlane;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.GearForms;

/**
 * What a reading map is to show.
 *
 * @param levels for which contours are drawn, in stops from the shooting exposure
 * @param eachLight whether the levels of each light by itself are told too
 */
public record MapQuestion(
    Over over, int columns, int rows, Held held, List<Stops> levels, boolean eachLight) {

  /** How the meter is held at each point of the plane. */
  public enum Held {
    /** A flat receptor, all of them the same way: from the middle of the plane to the camera. */
    TOWARD_CAMERA,
    /** A dome, held the same way. */
    DOME_TOWARD_CAMERA,
    /** A flat receptor pointed at each light in turn; the ambient counts as it was metered. */
    TOWARD_EACH_LIGHT,
    /** A flat receptor that looks up, as the ground does. */
    UP
  }

  /** Which plane is looked at. */
  public sealed interface Over {

    /** As a grid of so many points. */
    MapPlane plane(int columns, int rows);
  }

  /**
   * A level plane, seen from above.
   *
   * @param corner at its height, nearest the camera at camera left
   * @param depth away from the camera
   */
  public record Level(Point corner, Metres width, Metres depth) implements Over {

    private static final Field<Level, Point> CORNER =
        required(
            "corner",
            SetupForms.point(),
            Level::corner,
            "The corner nearest the camera at camera-left, at the plane's height.");
    private static final Field<Level, Metres> WIDTH =
        required("width_m", GearForms.length(200, 10), Level::width, "To camera-right.");
    private static final Field<Level, Metres> DEPTH =
        required("depth_m", GearForms.length(200, 10), Level::depth, "Away from the camera.");

    static final ObjectForm<Level> FORM =
        ObjectForm.of(
            "level_plane",
            "A level plane, seen from above.",
            values -> new Level(values.get(CORNER), values.get(WIDTH), values.get(DEPTH)),
            List.of(CORNER, WIDTH, DEPTH));

    @Override
    public MapPlane plane(int columns, int rows) {
      return MapPlane.plan(corner, width, depth, columns, rows);
    }
  }

  /**
   * An upright plane.
   *
   * @param corner its low corner where the rows begin
   * @param bearing the way of a row: 0 runs to camera-right, 90 away from the camera
   */
  public record Upright(Point corner, Degrees bearing, Metres width, Metres height)
      implements Over {

    private static final Field<Upright, Point> CORNER =
        required("corner", SetupForms.point(), Upright::corner, "The low corner where rows begin.");
    private static final Field<Upright, Degrees> BEARING =
        usually(
            new Degrees(0),
            "bearing_deg",
            Forms.number("°").atLeast(-180).atMost(180).maybe(0).as(Degrees::new, Degrees::value),
            Upright::bearing,
            "The way of a row: 0 runs to camera-right, 90 away from the camera; usually 0.");
    private static final Field<Upright, Metres> WIDTH =
        required("width_m", GearForms.length(200, 10), Upright::width, "Along a row.");
    private static final Field<Upright, Metres> HEIGHT =
        required("height_m", GearForms.length(100, 3), Upright::height, "Upward.");

    static final ObjectForm<Upright> FORM =
        ObjectForm.of(
            "upright_plane",
            "An upright plane.",
            values ->
                new Upright(
                    values.get(CORNER), values.get(BEARING), values.get(WIDTH), values.get(HEIGHT)),
            List.of(CORNER, BEARING, WIDTH, HEIGHT));

    @Override
    public MapPlane plane(int columns, int rows) {
      return MapPlane.upright(corner, bearing, width, height, columns, rows);
    }
  }

  private static final int MOST_POINTS_A_SIDE = 200;
  private static final int MOST_LEVELS = 40;

  private static final Field<MapQuestion, Over> OVER =
      required(
          "over",
          Forms.<Over>oneOf(
              "plane",
              List.of(
                  new Kind<>("level", Level.class, Level.FORM),
                  new Kind<>("upright", Upright.class, Upright.FORM))),
          MapQuestion::over,
          "Where the levels are taken.");
  private static final Field<MapQuestion, Integer> COLUMNS =
      usually(
          80,
          "columns",
          Forms.count(2, MOST_POINTS_A_SIDE),
          MapQuestion::columns,
          "Points in a row; usually 80.");
  private static final Field<MapQuestion, Integer> ROWS =
      usually(
          80,
          "rows",
          Forms.count(2, MOST_POINTS_A_SIDE),
          MapQuestion::rows,
          "How many rows; usually 80.");
  private static final Field<MapQuestion, Held> HELD =
      usually(
          Held.TOWARD_CAMERA,
          "held",
          Forms.choice(Held.values()),
          MapQuestion::held,
          "How the meter is held at each point; usually flat, toward the camera.");
  private static final Field<MapQuestion, List<Stops>> LEVELS =
      usually(
          IntStream.rangeClosed(-6, 4).mapToObj(Stops::new).toList(),
          "contours_at_stops",
          Forms.list(GearForms.stops(-20, 20), 0, MOST_LEVELS),
          MapQuestion::levels,
          "Levels from the shooting exposure that get a contour; usually each from -6 to 4.");
  private static final Field<MapQuestion, Boolean> EACH =
      usually(
          false,
          "each_light",
          Forms.flag(),
          MapQuestion::eachLight,
          "Whether each light's own levels are told too; usually not.");

  /** The question as it stands in a body. */
  public static final ObjectForm<MapQuestion> FORM =
      ObjectForm.of(
          "reading_map_request",
          "What a reading map is to show.",
          values ->
              new MapQuestion(
                  values.get(OVER),
                  values.get(COLUMNS),
                  values.get(ROWS),
                  values.get(HELD),
                  values.get(LEVELS),
                  values.get(EACH)),
          List.of(OVER, COLUMNS, ROWS, HELD, LEVELS, EACH));

  /** Copies the levels. */
  public MapQuestion {
    levels = List.copyOf(levels);
  }

  /** The grid of points. */
  public MapPlane plane() {
    return over.plane(columns, rows);
  }
}
