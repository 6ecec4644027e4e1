package lampwright.web.api;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.light.Point;
import lampwright.setup.LightId;
import lampwright.setup.MapQuestion;
import lampwright.setup.figures.SetupMap;

/**
 * A reading map, as the API tells it. Levels are in stops from the shooting exposure, row by row,
 * to the hundredth; -20 stands for that and anything darker.
 *
 * @param unknown lights that are not in the map, because nothing tells their strength
 */
record ReadingMapJson(
    int columns,
    int rows,
    PointJson firstPoint,
    PointJson lastPoint,
    List<Double> levelsStops,
    Optional<List<LightLevelsJson>> lights,
    List<ContourJson> contours,
    List<String> unknown,
    List<String> leftOut) {

  private static final List<String> LEFT_OUT =
      List.of(
          "Shadows: nothing stands in a light's way.",
          "Light that walls, ground and clothes give back.");

  static ReadingMapJson of(SetupMap map, MapQuestion question) {
    Optional<List<LightLevelsJson>> lights =
        question.eachLight()
            ? Optional.of(
                IntStream.range(0, map.lights().size())
                    .mapToObj(i -> LightLevelsJson.of(map, i))
                    .toList())
            : Optional.empty();
    return new ReadingMapJson(
        question.columns(),
        question.rows(),
        PointJson.of(map.map().plane().at(0, 0)),
        PointJson.of(map.map().plane().at(question.columns() - 1, question.rows() - 1)),
        hundredths(map.levels()),
        lights,
        map.contours(question.levels()).stream().map(ContourJson::of).toList(),
        map.unknown().stream().map(LightId::text).toList(),
        LEFT_OUT);
  }

  private static List<Double> hundredths(double[] levels) {
    return IntStream.range(0, levels.length)
        .mapToObj(i -> Math.round(levels[i] * 100) / 100.0)
        .toList();
  }

  /** One light by itself. */
  record LightLevelsJson(String light, List<Double> levelsStops) {

    static LightLevelsJson of(SetupMap map, int light) {
      return new LightLevelsJson(map.lights().get(light).text(), hundredths(map.levels(light)));
    }
  }

  /** A line of one level; a closed one does not repeat its first point. */
  record ContourJson(double levelStops, boolean closed, List<PointJson> points) {

    static ContourJson of(SetupMap.Line line) {
      return new ContourJson(
          line.level().value(), line.closed(), line.points().stream().map(PointJson::of).toList());
    }
  }

  /** A point of the setup's frame. */
  record PointJson(double xM, double yM, double zM) {

    static PointJson of(Point point) {
      return new PointJson(point.x(), point.y(), point.z());
    }
  }
}
