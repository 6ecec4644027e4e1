package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.gear.NeutralDensity;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;

/**
 * Where each dial of a camera can stand: its own marks within its own bounds. The first of each is
 * where it stands now. A body or lens that is not known has the usual bounds of a document's; the
 * time of an unknown body is not shortened, because its sync time is not known.
 */
record CameraSettings(
    List<FNumber> apertures, List<ShutterTime> times, List<Iso> isos, List<Stops> filters) {

  private static final double ROUNDING = 1e-9;
  private static final FNumber USUAL_WIDEST = FNumber.ofMark(2.8);
  private static final FNumber USUAL_SMALLEST = FNumber.ofMark(22);
  private static final Iso USUAL_LOWEST = Iso.ofMark(100);
  private static final Iso USUAL_HIGHEST = Iso.ofMark(6400);

  /** The shortest time of a long burst: where the scale of marks ends. */
  private static final ShutterTime SHORTEST_BURST = ShutterTime.ofMark(1.0 / 8000);

  static CameraSettings of(SetupDocument setup, Means means) {
    ExposureSettings now = setup.exposure().settings();
    Optional<Body> body = setup.camera().flatMap(Camera::body);
    Optional<Lens> lens = setup.camera().flatMap(Camera::lens);
    Set<CameraDial> kept = means.kept();
    return new CameraSettings(
        kept.contains(CameraDial.APERTURE)
            ? List.of(now.aperture())
            : apertures(now.aperture(), lens),
        kept.contains(CameraDial.TIME) ? List.of(now.time()) : times(setup, now.time(), body),
        kept.contains(CameraDial.ISO) ? List.of(now.iso()) : isos(now.iso(), body),
        kept.contains(CameraDial.FILTER)
            ? List.of(now.neutralDensity())
            : filters(now.neutralDensity(), means.filters()));
  }

  private static List<FNumber> apertures(FNumber now, Optional<Lens> lens) {
    FNumber widest = lens.map(Lens::widest).orElse(USUAL_WIDEST);
    FNumber smallest = lens.map(Lens::smallest).orElse(USUAL_SMALLEST);
    Set<FNumber> all = new LinkedHashSet<>();
    all.add(now);
    all.add(widest);
    MarkedScale.APERTURE_THIRD
        .marksBetween(widest.value(), smallest.value())
        .forEach(mark -> all.add(new FNumber(mark.exact())));
    all.add(smallest);
    return List.copyOf(all);
  }

  private static List<ShutterTime> times(
      SetupDocument setup, ShutterTime now, Optional<Body> body) {
    double shortest = shortest(setup, now, body).seconds() * (1 - ROUNDING);
    Set<ShutterTime> all = new LinkedHashSet<>();
    all.add(now);
    body.map(Body::sync).ifPresent(all::add);
    MarkedScale.SHUTTER_THIRD.marks().stream()
        .map(mark -> new ShutterTime(mark.exact()))
        .filter(time -> time.seconds() >= shortest)
        .forEach(all::add);
    return List.copyOf(all);
  }

  /** Sync, where not every head has a burst that lasts as long as the curtains travel. */
  private static ShutterTime shortest(SetupDocument setup, ShutterTime now, Optional<Body> body) {
    boolean allBurst =
        body.filter(b -> b.shutter() == Body.Shutter.FOCAL_PLANE).isPresent()
            && setup.lights().stream()
                .map(Light::head)
                .allMatch(head -> head.longBurstEfficiency().isPresent());
    return allBurst ? SHORTEST_BURST : body.map(Body::sync).orElse(now);
  }

  private static List<Iso> isos(Iso now, Optional<Body> body) {
    Iso lowest = body.map(Body::lowestIso).orElse(USUAL_LOWEST);
    Iso highest = body.map(Body::highestIso).orElse(USUAL_HIGHEST);
    Set<Iso> all = new LinkedHashSet<>();
    all.add(now);
    all.add(lowest);
    MarkedScale.ISO_THIRD
        .marksBetween(lowest.value(), highest.value())
        .forEach(mark -> all.add(new Iso(mark.exact())));
    all.add(highest);
    return List.copyOf(all);
  }

  private static List<Stops> filters(Stops now, List<NeutralDensity> spare) {
    Set<Stops> all = new LinkedHashSet<>();
    all.add(now);
    all.add(Stops.ZERO);
    spare.forEach(filter -> all.add(filter.loss()));
    return List.copyOf(all);
  }

  /** The settings with each dial at one of its places. */
  ExposureSettings at(Places places) {
    return new ExposureSettings(
        apertures.get(places.aperture()),
        times.get(places.time()),
        isos.get(places.iso()),
        filters.get(places.filter()));
  }

  /** A dial's places by their numbers; 0 is where it stands now. */
  record Places(int aperture, int time, int iso, int filter) {

    static final Places NOW = new Places(0, 0, 0, 0);

    /** How many dials do not stand where they stood. */
    int turned() {
      return one(aperture) + one(time) + one(iso) + one(filter);
    }

    /** Which dials do not stand where they stood, a bit each. */
    int dials() {
      return one(time) + 2 * one(aperture) + 4 * one(iso) + 8 * one(filter);
    }

    private static int one(int place) {
      return place == 0 ? 0 : 1;
    }
  }

  /** By how many stops each aperture lets in more light than now. */
  double[] apertureGains() {
    List<Double> gains = new ArrayList<>();
    for (FNumber aperture : apertures) {
      gains.add(apertures.getFirst().stopsAbove(aperture).value());
    }
    return numbers(gains);
  }

  /** By how many stops each time lets in more ambient than now. */
  double[] timeGains() {
    return numbers(times.stream().map(time -> time.stopsOver(times.getFirst()).value()).toList());
  }

  /** By how many stops each speed is more sensitive than now. */
  double[] isoGains() {
    return numbers(isos.stream().map(iso -> iso.stopsOver(isos.getFirst()).value()).toList());
  }

  /** By how many stops each filter takes less light than now. */
  double[] filterGains() {
    return numbers(filters.stream().map(loss -> filters.getFirst().minus(loss).value()).toList());
  }

  private static double[] numbers(List<Double> list) {
    double[] numbers = new double[list.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = list.get(i);
    }
    return numbers;
  }
}
