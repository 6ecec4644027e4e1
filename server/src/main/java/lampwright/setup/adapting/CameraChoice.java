package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Kit;
import lampwright.gear.Lens;
import lampwright.gear.NeutralDensity;
import lampwright.setup.Camera;
import lampwright.setup.SetupDocument;

/**
 * The camera that a kit makes of a setup's: the body and lens that frame most alike, and every
 * setting that they allow.
 *
 * @param framingChange see {@link Adaptation}
 * @param wantedAperture the f-number with the setup's depth of field on this format
 */
record CameraChoice(
    Optional<Body> body,
    Optional<Lens> lens,
    Optional<Double> framingChange,
    FNumber wantedAperture,
    List<NeutralDensity> filters) {

  /** Shutter times farther than this from the setup's, in stops, make another picture. */
  private static final double FARTHEST_TIME_STOPS = 4;

  /** Far below a third of a stop, far above what rounding does to an exact mark. */
  private static final double ROUNDING = 1e-6;

  /** A setting and the filter it needs. */
  record Setting(ExposureSettings exposure, Optional<NeutralDensity> filter) {}

  static CameraChoice of(SetupDocument setup, Kit kit) {
    Optional<Body> oldBody = setup.camera().flatMap(Camera::body);
    Optional<Lens> oldLens = setup.camera().flatMap(Camera::lens);
    CameraChoice best = null;
    for (Optional<Body> body : orOwn(kit.bodies(), oldBody)) {
      for (Optional<Lens> lens : orOwn(kit.lenses(), oldLens)) {
        CameraChoice choice =
            new CameraChoice(
                body,
                lens,
                framingChange(oldBody, oldLens, body, lens),
                wantedAperture(setup.exposure().fNumber(), oldBody, body),
                kit.neutralDensities());
        if (best == null || choice.framingMiss() < best.framingMiss()) {
          best = choice;
        }
      }
    }
    return java.util.Objects.requireNonNull(best, "orOwn() never gives an empty list");
  }

  /** The kit's pieces; the setup's own where the kit has none, for a kit of lights only. */
  private static <G> List<Optional<G>> orOwn(List<G> kit, Optional<G> own) {
    return kit.isEmpty() ? List.of(own) : kit.stream().map(Optional::of).toList();
  }

  private static double diagonalMm(Body body) {
    double width = body.width().value();
    double height = body.height().value();
    return Math.sqrt(width * width + height * height);
  }

  private static Optional<Double> framingChange(
      Optional<Body> oldBody, Optional<Lens> oldLens, Optional<Body> body, Optional<Lens> lens) {
    if (oldBody.isEmpty() || oldLens.isEmpty() || body.isEmpty() || lens.isEmpty()) {
      return Optional.empty();
    }
    double wide = diagonalMm(body.get()) / lens.get().focalLength().value();
    double oldWide = diagonalMm(oldBody.get()) / oldLens.get().focalLength().value();
    return Optional.of(wide / oldWide - 1);
  }

  private double framingMiss() {
    return framingChange.map(change -> Math.abs(Stops.ofRatio(1 + change).value())).orElse(0.0);
  }

  /** Equal depth of field at equal framing: the f-number goes with the format's diagonal. */
  private static FNumber wantedAperture(FNumber old, Optional<Body> oldBody, Optional<Body> body) {
    if (oldBody.isEmpty() || body.isEmpty()) {
      return old;
    }
    return new FNumber(old.value() * diagonalMm(body.get()) / diagonalMm(oldBody.get()));
  }

  /** Every setting that the camera and the limits allow. */
  List<Setting> settings(ShutterTime oldTime, Limits limits) {
    List<Setting> settings = new ArrayList<>();
    for (FNumber aperture : apertures(limits)) {
      for (ShutterTime time : times(oldTime, limits)) {
        for (Iso iso : isos(limits)) {
          ExposureSettings open = ExposureSettings.of(aperture, time, iso);
          settings.add(new Setting(open, Optional.empty()));
          for (NeutralDensity filter : filters) {
            settings.add(new Setting(open.withNeutralDensity(filter.loss()), Optional.of(filter)));
          }
        }
      }
    }
    return settings;
  }

  /** What makes the limits impossible for this camera; empty where some setting fulfils them. */
  List<String> contradictions(ShutterTime oldTime, Limits limits) {
    List<String> found = new ArrayList<>();
    if (isos(limits).isEmpty()) {
      found.add(
          limits.isoAtMost().orElseThrow()
              + " at most is asked for, but the lowest of "
              + bodyName()
              + " is "
              + lowestIso()
              + ".");
    }
    if (apertures(limits).isEmpty()) {
      found.add(
          limits.keepFNumber().orElseThrow()
              + " is to be kept, but "
              + lens.map(Lens::name).orElse("the lens")
              + " goes from "
              + widest()
              + " to "
              + smallest()
              + ".");
    }
    if (times(oldTime, limits).isEmpty()) {
      found.add(
          limits.keepTime().map(time -> time + " is to be kept").orElse("No shutter time fits")
              + ", but "
              + bodyName()
              + " takes flash at "
              + body.map(b -> b.sync().toString()).orElse("the setup's own time")
              + " at the shortest.");
    }
    return found;
  }

  private String bodyName() {
    return body.map(Body::name).orElse("the camera");
  }

  private FNumber widest() {
    return lens.map(Lens::widest).orElse(new FNumber(1));
  }

  private FNumber smallest() {
    return lens.map(Lens::smallest).orElse(new FNumber(64));
  }

  private Iso lowestIso() {
    return body.map(Body::lowestIso).orElse(Iso.HUNDRED);
  }

  private Iso highestIso() {
    return body.map(Body::highestIso).orElse(new Iso(6_400));
  }

  private List<FNumber> apertures(Limits limits) {
    if (limits.keepFNumber().isPresent()) {
      FNumber kept = limits.keepFNumber().get();
      boolean possible =
          kept.stopsAbove(widest()).value() > -ROUNDING
              && kept.stopsAbove(smallest()).value() < ROUNDING;
      return possible ? List.of(kept) : List.of();
    }
    return MarkedScale.APERTURE_THIRD.marksBetween(widest().value(), smallest().value()).stream()
        .map(mark -> new FNumber(mark.exact()))
        .toList();
  }

  private List<ShutterTime> times(ShutterTime old, Limits limits) {
    double shortest = body.map(b -> b.sync().seconds()).orElse(old.seconds()) * (1 - ROUNDING);
    if (limits.keepTime().isPresent()) {
      ShutterTime kept = limits.keepTime().get();
      return kept.seconds() >= shortest ? List.of(kept) : List.of();
    }
    List<ShutterTime> times =
        new ArrayList<>(
            MarkedScale.SHUTTER_THIRD.marks().stream()
                .map(mark -> new ShutterTime(mark.exact()))
                .filter(time -> time.seconds() >= shortest)
                .filter(time -> Math.abs(time.stopsOver(old).value()) <= FARTHEST_TIME_STOPS)
                .toList());
    if (times.isEmpty() && body.isPresent()) {
      times.add(body.get().sync());
    }
    return times;
  }

  private List<Iso> isos(Limits limits) {
    double highest =
        limits
            .isoAtMost()
            .map(Iso::value)
            .filter(v -> v < highestIso().value())
            .orElse(highestIso().value());
    return MarkedScale.ISO_THIRD.marksBetween(lowestIso().value(), highest).stream()
        .map(mark -> new Iso(mark.exact()))
        .toList();
  }
}
