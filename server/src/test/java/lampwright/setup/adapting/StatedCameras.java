package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Kit;
import lampwright.gear.Lens;
import lampwright.setup.Camera;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;

/** Every camera setting that a kit and the limits allow, written down plainly. */
final class StatedCameras {

  private static final double ROUNDING = 1e-6;

  private final SetupDocument setup;
  private final Kit kit;
  private final Limits limits;
  private final Optional<Body> oldBody;
  private final Optional<Lens> oldLens;

  /** A body with a lens; the setup's own where the kit has none, perhaps unknown. */
  record Pair(Optional<Body> body, Optional<Lens> lens) {}

  /**
   * A setting.
   *
   * @param pair which body and lens
   * @param cost of all that is the camera's
   */
  record Setting(int pair, Optional<Body> body, ExposureSettings exposure, double cost) {}

  StatedCameras(SetupDocument setup, Kit kit, Limits limits) {
    this.setup = setup;
    this.kit = kit;
    this.limits = limits;
    this.oldBody = setup.camera().flatMap(Camera::body);
    this.oldLens = setup.camera().flatMap(Camera::lens);
  }

  List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    List<Optional<Body>> bodies =
        kit.bodies().isEmpty()
            ? List.of(oldBody)
            : kit.bodies().stream().map(Optional::of).toList();
    List<Optional<Lens>> lenses =
        kit.lenses().isEmpty()
            ? List.of(oldLens)
            : kit.lenses().stream().map(Optional::of).toList();
    for (Optional<Body> body : bodies) {
      for (Optional<Lens> lens : lenses) {
        boolean wanted =
            (limits.body().isEmpty() || limits.body().equals(body.map(Body::name)))
                && (limits.lens().isEmpty() || limits.lens().equals(lens.map(Lens::name)));
        if (wanted) {
          pairs.add(new Pair(body, lens));
        }
      }
    }
    return pairs;
  }

  List<Setting> settings(Figures before, Optional<Ev100> ambient, Weights weights) {
    CostForTests costs = new CostForTests(setup, before, weights);
    List<Setting> settings = new ArrayList<>();
    List<Pair> pairs = pairs();
    List<Stops> densities = new ArrayList<>(List.of(Stops.ZERO));
    kit.neutralDensities().forEach(filter -> densities.add(filter.loss()));
    for (int p = 0; p < pairs.size(); p++) {
      Pair pair = pairs.get(p);
      for (FNumber aperture : apertures(pair)) {
        for (ShutterTime time : times(pair)) {
          for (Iso iso : isos(pair)) {
            for (Stops density : densities) {
              ExposureSettings now = new ExposureSettings(aperture, time, iso, density);
              double away = Math.abs(costs.ambientStops(now, ambient));
              if (limits.ambientWithin().filter(most -> away > most.value() + 1e-9).isEmpty()) {
                double cost = costs.camera(pair.body(), pair.lens(), now, ambient);
                settings.add(new Setting(p, pair.body(), now, cost));
              }
            }
          }
        }
      }
    }
    return settings;
  }

  /** The lens's ends, the third-stop marks between, and the setup's own on the setup's lens. */
  private List<FNumber> apertures(Pair pair) {
    FNumber own = setup.exposure().fNumber();
    FNumber widest = pair.lens().map(Lens::widest).orElse(new FNumber(Math.min(1, own.value())));
    FNumber smallest =
        pair.lens().map(Lens::smallest).orElse(new FNumber(Math.max(64, own.value())));
    List<FNumber> all = new ArrayList<>();
    if (limits.keepFNumber().isPresent()) {
      all.add(limits.keepFNumber().get());
    } else {
      all.add(widest);
      all.add(smallest);
      MarkedScale.APERTURE_THIRD.marks().forEach(mark -> all.add(new FNumber(mark.exact())));
      if (pair.lens().isEmpty() || pair.lens().equals(oldLens)) {
        all.add(own);
      }
    }
    return all.stream()
        .filter(f -> f.value() >= widest.value() * (1 - ROUNDING / 4))
        .filter(f -> f.value() <= smallest.value() * (1 + ROUNDING / 4))
        .distinct()
        .toList();
  }

  /**
   * From sync, or from what a long burst can do, four stops either way of the setup's own; any
   * longer where several flashes must fit in.
   */
  private List<ShutterTime> times(Pair pair) {
    ShutterTime own = setup.exposure().time();
    boolean burst =
        kit.heads().stream().anyMatch(head -> head.item().longBurstEfficiency().isPresent())
            && pair.body().filter(b -> b.shutter() == Body.Shutter.FOCAL_PLANE).isPresent();
    ShutterTime shortest =
        burst ? ShutterTime.parse("1/8000") : pair.body().map(Body::sync).orElse(own);
    double fromS = shortest.seconds() * (1 - ROUNDING);
    if (limits.keepTime().isPresent()) {
      return limits.keepTime().stream().filter(time -> time.seconds() >= fromS).toList();
    }
    boolean still =
        setup.subjects().stream().noneMatch(s -> s.speedMPerS().filter(v -> v > 0).isPresent());
    boolean longer = limits.popsPerLight().isPresent() && still;
    List<ShutterTime> all = new ArrayList<>(List.of(shortest));
    pair.body().map(Body::sync).ifPresent(all::add);
    MarkedScale.SHUTTER_THIRD.marks().forEach(mark -> all.add(new ShutterTime(mark.exact())));
    if (pair.body().isEmpty() || pair.body().equals(oldBody)) {
      all.add(own);
    }
    List<ShutterTime> near =
        all.stream()
            .filter(time -> time.seconds() >= fromS)
            .filter(time -> time.stopsOver(own).value() >= -4)
            .filter(time -> longer || time.stopsOver(own).value() <= 4)
            .distinct()
            .toList();
    return near.isEmpty() ? List.of(shortest) : near;
  }

  private List<Iso> isos(Pair pair) {
    Iso own = setup.exposure().iso();
    double lowest = pair.body().map(b -> b.lowestIso().value()).orElse(Math.min(100, own.value()));
    double highest =
        pair.body().map(b -> b.highestIso().value()).orElse(Math.max(6_400, own.value()));
    double most = limits.isoAtMost().map(iso -> Math.min(iso.value(), highest)).orElse(highest);
    List<Iso> all = new ArrayList<>(List.of(new Iso(lowest)));
    MarkedScale.ISO_THIRD.marks().forEach(mark -> all.add(new Iso(mark.exact())));
    if (pair.body().isEmpty() || pair.body().equals(oldBody)) {
      all.add(own);
    }
    return all.stream()
        .filter(iso -> iso.value() >= lowest * (1 - ROUNDING))
        .filter(iso -> iso.value() <= most * (1 + ROUNDING))
        .distinct()
        .toList();
  }
}
