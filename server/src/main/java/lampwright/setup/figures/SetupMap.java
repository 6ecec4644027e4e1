package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.Point;
import lampwright.engine.light.Receptor;
import lampwright.engine.light.UnitVector;
import lampwright.engine.map.Contour;
import lampwright.engine.map.MapPlane;
import lampwright.engine.map.MappedLight;
import lampwright.engine.map.ReadingMap;
import lampwright.engine.unit.CandelaSeconds;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.MapQuestion;
import lampwright.setup.SetupDocument;

/**
 * The reading map of a setup: what a meter would read all over a plane, in stops from the shooting
 * exposure. A light's own reading calibrates it, as in the figures; nothing throws a shadow.
 *
 * @param lights whose levels the map holds, in its order
 * @param unknown lights whose strength nothing tells; they are not in the map
 * @param required what the shooting exposure asks for
 */
public record SetupMap(
    ReadingMap map, List<LightId> lights, List<LightId> unknown, LuxSeconds required) {

  /** Copies the lists. */
  public SetupMap {
    lights = List.copyOf(lights);
    unknown = List.copyOf(unknown);
  }

  /** The map that answers a question; deterministic. */
  public static SetupMap of(SetupDocument setup, MapQuestion question) {
    return of(setup, question, Burning.ALL);
  }

  /** The map of what burns; of what does not it knows nothing. */
  public static SetupMap of(SetupDocument setup, MapQuestion question, Burning burning) {
    MapPlane plane = question.plane();
    ExposureSettings settings = setup.exposure().settings();
    LightComputation computation = new LightComputation(setup);
    List<MappedLight> mapped = new ArrayList<>();
    List<LightId> lights = new ArrayList<>();
    List<LightId> unknown = new ArrayList<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      Light light = setup.lights().get(i);
      if (!burning.burns(light.id())) {
        continue;
      }
      PlacedLight placed = computation.placed(light);
      ShiningLight shining =
          ShiningLight.of(computation.figures(light, placed, "/lights/" + i), placed);
      if (shining.isKnown()) {
        mapped.add(
            new MappedLight(
                placed.atTarget().source(), new CandelaSeconds(shining.intensityCdS())));
        lights.add(light.id());
      } else {
        unknown.add(light.id());
      }
    }
    LuxSeconds ambient =
        setup
            .ambient()
            .filter(_ -> burning.ambient())
            .map(a -> Ambient.of(a.level()).exposure(settings.time(), MeterConstant.FLAT))
            .orElse(LuxSeconds.NONE);
    ReadingMap map = ReadingMap.of(plane, mapped, ambient, receptor(setup, plane, question.held()));
    return new SetupMap(map, lights, unknown, settings.requiredExposure(MeterConstant.FLAT));
  }

  private static Receptor receptor(SetupDocument setup, MapPlane plane, MapQuestion.Held held) {
    return switch (held) {
      case TOWARD_CAMERA -> new Receptor.Flat(towardCamera(setup, plane));
      case DOME_TOWARD_CAMERA -> new Receptor.Dome(towardCamera(setup, plane));
      case TOWARD_EACH_LIGHT -> new Receptor.TowardSource();
      case UP -> new Receptor.Flat(UnitVector.of(0, 0, 1));
    };
  }

  private static UnitVector towardCamera(SetupDocument setup, MapPlane plane) {
    Point middle =
        plane
            .corner()
            .moved(plane.along(), plane.length().value() / 2)
            .moved(plane.up(), plane.height().value() / 2);
    return LightComputation.towardCamera(setup, middle);
  }

  /** The levels of everything together, in stops from the shooting exposure, row by row. */
  public double[] levels() {
    return map.levelsInStops(required);
  }

  /** The levels of one of the map's lights likewise. */
  public double[] levels(int light) {
    return map.levelsInStops(light, required);
  }

  /**
   * The lines along which everything together has a level.
   *
   * @param at in stops from the shooting exposure
   */
  public List<Line> contours(List<Stops> at) {
    MapPlane plane = map.plane();
    double across = plane.length().value() / (plane.columns() - 1);
    double upward = plane.height().value() / (plane.rows() - 1);
    return map.contours(required, at).stream()
        .map(contour -> line(contour, plane, across, upward))
        .toList();
  }

  /** Of a contour in columns and rows. */
  private static Line line(Contour contour, MapPlane plane, double acrossM, double upwardM) {
    List<Point> points =
        contour.vertices().stream()
            .map(
                node ->
                    plane
                        .corner()
                        .moved(plane.along(), node.xM() * acrossM)
                        .moved(plane.up(), node.yM() * upwardM))
            .toList();
    return new Line(new Stops(contour.level()), contour.closed(), points);
  }

  /**
   * A line of one level.
   *
   * @param closed whether it runs back to its first point, which is not repeated
   * @param points in the setup's frame
   */
  public record Line(Stops level, boolean closed, List<Point> points) {

    /** Copies the points. */
    public Line {
      points = List.copyOf(points);
    }
  }
}
