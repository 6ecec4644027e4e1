package lampwright.setup.buildable;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.setup.adapting.KitOffer;

/**
 * What one body can be set to with all of a kit's lenses and filters. Only two numbers of a setting
 * count: the light that it asks of the heads, in EV100 at a second, and its time.
 *
 * @param levels what settings ask of the heads, in stops, rising; of 1 s in EV100
 * @param clearTimes whose shutter takes nothing, in stops above 1 s, rising
 * @param otherTimes the rest, in stops above 1 s
 * @param shutters of the rest
 */
record CameraReach(
    List<Double> levels,
    List<Double> clearTimes,
    List<Double> otherTimes,
    List<ShutterReach> shutters) {

  /** What a setting of 0 EV100 at a second asks of the heads, in stops above 1 lx·s. */
  static final double ZERO_LEVEL =
      Stops.ofRatio(
              ExposureSettings.of(new FNumber(1), new ShutterTime(1), Iso.HUNDRED)
                  .requiredExposure(MeterConstant.FLAT)
                  .value())
          .value();

  /** Nearer than this two settings are one. */
  private static final double ROUNDING = 1e-10;

  /** What a camera's levels are made of. */
  record Marks(List<FNumber> apertures, List<Iso> isos, List<Stops> filters) {

    static Marks of(KitOffer.Camera camera) {
      return new Marks(camera.apertures(), camera.isos(), camera.filters());
    }
  }

  /** Primitive copies of the lists, for the loop over all setups. */
  static final class Packed {
    final double[] levels;
    final double[] clearTimes;
    final double[] otherTimes;
    final ShutterReach[] shutters;

    private Packed(CameraReach reach) {
      levels = numbers(reach.levels);
      clearTimes = numbers(reach.clearTimes);
      otherTimes = numbers(reach.otherTimes);
      shutters = reach.shutters.toArray(ShutterReach[]::new);
    }

    private static double[] numbers(List<Double> list) {
      return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
  }

  Packed packed() {
    return new Packed(this);
  }

  /**
   * All settings of cameras with the same body.
   *
   * @param shutter what the shutter does at a time
   * @param levelsOf keeps the levels of marks that it has seen
   */
  static CameraReach of(
      List<KitOffer.Camera> sameBody,
      BiFunction<Body, ShutterTime, ShutterReach> shutter,
      Function<Marks, List<Double>> levelsOf) {
    TreeSet<Double> levels = new TreeSet<>();
    for (KitOffer.Camera camera : sameBody) {
      levels.addAll(levelsOf.apply(Marks.of(camera)));
    }
    TreeSet<Double> clear = new TreeSet<>();
    Map<Double, ShutterReach> others = new TreeMap<>();
    KitOffer.Camera camera = sameBody.getFirst();
    Optional<Body> body = camera.body();
    for (ShutterTime time : camera.times()) {
      double stops = Stops.ofRatio(time.seconds()).value();
      Optional<ShutterReach> reach = body.map(b -> shutter.apply(b, time));
      if (reach.filter(r -> !r.clear()).isEmpty()) {
        clear.add(stops);
      } else {
        others.put(stops, reach.get());
      }
    }
    return new CameraReach(
        distinct(levels),
        distinct(clear),
        List.copyOf(others.keySet()),
        List.copyOf(others.values()));
  }

  /** The levels of all settings, rising. */
  static List<Double> levels(Marks marks) {
    List<Double> filters = new ArrayList<>();
    filters.add(0.0);
    marks.filters().forEach(filter -> filters.add(filter.value()));
    TreeSet<Double> levels = new TreeSet<>();
    for (Iso iso : marks.isos()) {
      double speed = iso.stopsOver(Iso.HUNDRED).value();
      for (FNumber aperture : marks.apertures()) {
        double open = aperture.toApertureValue() - speed;
        filters.forEach(filter -> levels.add(open + filter));
      }
    }
    return distinct(levels);
  }

  private static List<Double> distinct(TreeSet<Double> rising) {
    List<Double> distinct = new ArrayList<>();
    for (double value : rising) {
      if (distinct.isEmpty() || value - distinct.getLast() > ROUNDING) {
        distinct.add(value);
      }
    }
    return distinct;
  }
}
