package lampwright.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.setup.figures.PathFigures;

/** The light along the way of a subject. */
record PathJson(
    String subject, double liftM, int hit, List<StationJson> stations, List<String> assumptions) {

  static PathJson of(PathFigures path, FiguresJson.Detail detail) {
    return new PathJson(
        path.subject(),
        path.lift().value(),
        path.hit(),
        path.stations().stream().map(station -> StationJson.of(path, station, detail)).toList(),
        InEnglish.say(path.assumptions()));
  }

  /** A place in metres. */
  record PlaceJson(double xM, double yM, double zM) {

    static PlaceJson of(Point point) {
      return new PlaceJson(point.x(), point.y(), point.z());
    }
  }

  /** One place on the way. */
  record StationJson(
      Optional<String> mark,
      PlaceJson at,
      double goneM,
      double flashLxS,
      double ambientLxS,
      Optional<Double> fromShootingStops,
      Optional<Double> fromHitStops,
      List<LightThereJson> lights,
      Optional<FocusJson> focus,
      Optional<WorkingJson> working) {

    static StationJson of(
        PathFigures path, PathFigures.Station station, FiguresJson.Detail detail) {
      List<LightThereJson> lights = new ArrayList<>();
      for (int i = 0; i < path.lights().size(); i++) {
        lights.add(
            new LightThereJson(
                path.lights().get(i).text(),
                station.exposures().get(i).value(),
                path.fromHit(station, i).map(Stops::value)));
      }
      return new StationJson(
          station.mark(),
          PlaceJson.of(station.at()),
          station.gone().value(),
          station.sum().flash().value(),
          station.sum().ambient().value(),
          path.fromShooting(station).map(Stops::value),
          path.fromHit(station).map(Stops::value),
          lights,
          station.focus().map(FocusJson::of),
          path.working(station).flatMap(working -> detail.tell(() -> working)));
    }
  }

  /** One light there. */
  record LightThereJson(String light, double exposureLxS, Optional<Double> fromHitStops) {}

  /** How sharp it is there. */
  record FocusJson(double toCameraM, double depthM, boolean sharp, double blurMm) {

    static FocusJson of(PathFigures.Focus focus) {
      return new FocusJson(
          focus.toCamera().value(), focus.depth().value(), focus.isSharp(), focus.blur().value());
    }
  }
}
