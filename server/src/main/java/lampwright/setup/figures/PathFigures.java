package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.LightSum;
import lampwright.engine.light.Point;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Stops;
import lampwright.language.Said;
import lampwright.setup.LightId;

/**
 * The light along the way of a subject, on a flat meter toward the camera.
 *
 * @param lift of the metered point above the marks
 * @param lights whose strength is known, in the document's order
 * @param stations the marks and equal steps between them, as they are walked
 * @param hit which station is the hit mark
 * @param assumptions in words
 */
public record PathFigures(
    String subject,
    Metres lift,
    List<LightId> lights,
    List<Station> stations,
    int hit,
    ExposureSettings settings,
    List<Said> assumptions) {

  /**
   * One place on the way.
   *
   * @param mark its name; absent between the marks
   * @param at the metered point
   * @param gone along the way from its start
   * @param sum all the light there
   * @param exposures of each light, in the order of {@link PathFigures#lights}
   * @param focus absent where the camera's place, lens or focus is not known
   */
  public record Station(
      Optional<String> mark,
      Point at,
      Metres gone,
      LightSum sum,
      List<LuxSeconds> exposures,
      Optional<Focus> focus) {

    public Station {
      exposures = List.copyOf(exposures);
    }
  }

  /**
   * How sharp a place is.
   *
   * @param toCamera straight from the lens
   * @param depth along the lens's axis, which decides the focus
   * @param isSharp whether it lies within the depth of field by the usual circle
   * @param blur of a point there on the sensor
   */
  public record Focus(Metres toCamera, Metres depth, boolean isSharp, Millimetres blur) {}

  public PathFigures {
    lights = List.copyOf(lights);
    stations = List.copyOf(stations);
    assumptions = List.copyOf(assumptions);
  }

  /** A light against itself at the hit mark; absent where it does not get to one of them. */
  public Optional<Stops> fromHit(Station station, int light) {
    return over(station.exposures().get(light), stations.get(hit).exposures().get(light));
  }

  /** All the light against that at the hit mark. */
  public Optional<Stops> fromHit(Station station) {
    return over(station.sum().total(), stations.get(hit).sum().total());
  }

  /** All the light against the shooting exposure. */
  public Optional<Stops> fromShooting(Station station) {
    return over(station.sum().total(), settings.requiredExposure(MeterConstant.FLAT));
  }

  /** The steps from the hit mark's light to a station's; absent where one of them is dark. */
  public Optional<Working> working(Station station) {
    return fromHit(station)
        .map(
            change ->
                Working.of(
                    "light at " + station.mark().orElse("a step of the way") + " over the hit mark",
                    change.value(),
                    "stops",
                    "log2(H / H_hit)",
                    Source.DERIVED,
                    sum(station, "all the light there"),
                    sum(stations.get(hit), "all the light at the hit mark")));
  }

  private Working sum(Station station, String what) {
    List<Working> parts = new ArrayList<>();
    for (int i = 0; i < lights.size(); i++) {
      double exposure = station.exposures().get(i).value();
      parts.add(Working.given(lights.get(i).text(), exposure, "lx·s", Known.COMPUTED));
    }
    double ambient = station.sum().ambient().value();
    parts.add(Working.given("ambient", ambient, "lx·s", Known.COMPUTED));
    return LightSum.working(what, parts);
  }

  private static Optional<Stops> over(LuxSeconds one, LuxSeconds other) {
    return one.value() > 0 && other.value() > 0
        ? Optional.of(one.stopsOver(other))
        : Optional.empty();
  }
}
