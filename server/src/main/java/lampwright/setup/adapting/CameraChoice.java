package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
import lampwright.setup.ShootingExposure;

/**
 * The camera that a kit makes of a setup's: the body and lens that frame most alike, and every
 * setting that they allow.
 *
 * @param framingChange see {@link Adaptation}
 * @param wantedAperture the f-number with the setup's depth of field on this format
 * @param own what the setup was shot with
 */
record CameraChoice(
    Optional<Body> body,
    Optional<Lens> lens,
    Optional<Double> framingChange,
    FNumber wantedAperture,
    List<NeutralDensity> filters,
    Own own) {

  /** Shutter times farther than this from the setup's, in stops, make another picture. */
  private static final double FARTHEST_TIME_STOPS = 4;

  /** Far below a third of a stop, far above what rounding does to an exact mark. */
  private static final double ROUNDING = 1e-6;

  /**
   * The setup's own settings; a setting that is on no scale can be made again where body or lens is
   * the same, or is not known.
   */
  record Own(ShootingExposure exposure, boolean sameBody, boolean sameLens) {}

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
                kit.neutralDensities(),
                new Own(
                    setup.exposure(),
                    body.isEmpty() || body.equals(oldBody),
                    lens.isEmpty() || lens.equals(oldLens)));
        if (best == null || choice.framingMiss() < best.framingMiss()) {
          best = choice;
        }
      }
    }
    return Objects.requireNonNull(best, "orOwn() never gives an empty list");
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
  List<Setting> settings(Limits limits) {
    List<Setting> settings = new ArrayList<>();
    for (FNumber aperture : apertures(limits)) {
      for (ShutterTime time : times(limits)) {
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
  List<String> contradictions(Limits limits) {
    List<String> found = new ArrayList<>();
    limits
        .isoAtMost()
        .filter(most -> isos(limits).isEmpty())
        .ifPresent(
            most ->
                found.add(
                    most
                        + " at most is asked for, but the lowest of "
                        + bodyName()
                        + " is "
                        + lowestIso()
                        + "."));
    limits
        .keepFNumber()
        .filter(kept -> apertures(limits).isEmpty())
        .ifPresent(
            kept ->
                found.add(
                    kept
                        + " is to be kept, but "
                        + lens.map(Lens::name).orElse("the lens")
                        + " goes from "
                        + widest()
                        + " to "
                        + smallest()
                        + "."));
    limits
        .keepTime()
        .filter(kept -> times(limits).isEmpty())
        .ifPresent(
            kept ->
                found.add(
                    kept
                        + " is to be kept, but "
                        + bodyName()
                        + " takes flash at "
                        + shortestTime()
                        + " at the shortest."));
    return found;
  }

  private String bodyName() {
    return body.map(Body::name).orElse("the camera");
  }

  /** An unknown lens has an ordinary range, and the setup's own aperture in any case. */
  private FNumber widest() {
    return lens.map(Lens::widest)
        .orElse(new FNumber(Math.min(1, own.exposure().fNumber().value())));
  }

  private FNumber smallest() {
    return lens.map(Lens::smallest)
        .orElse(new FNumber(Math.max(64, own.exposure().fNumber().value())));
  }

  /** An unknown body has an ordinary range, and the setup's own speed in any case. */
  private Iso lowestIso() {
    return body.map(Body::lowestIso).orElse(new Iso(Math.min(100, own.exposure().iso().value())));
  }

  private Iso highestIso() {
    return body.map(Body::highestIso)
        .orElse(new Iso(Math.max(6_400, own.exposure().iso().value())));
  }

  private ShutterTime shortestTime() {
    return body.map(Body::sync).orElse(own.exposure().time());
  }

  /** The lens's own ends count even where they are between the marks, as f/1.7 is. */
  private List<FNumber> apertures(Limits limits) {
    if (limits.keepFNumber().isPresent()) {
      FNumber kept = limits.keepFNumber().get();
      return isWithin(kept) ? List.of(kept) : List.of();
    }
    Set<FNumber> apertures = new LinkedHashSet<>();
    apertures.add(widest());
    MarkedScale.APERTURE_THIRD.marksBetween(widest().value(), smallest().value()).stream()
        .map(mark -> new FNumber(mark.exact()))
        .forEach(apertures::add);
    apertures.add(smallest());
    if (own.sameLens() && isWithin(own.exposure().fNumber())) {
      apertures.add(own.exposure().fNumber());
    }
    return List.copyOf(apertures);
  }

  private boolean isWithin(FNumber aperture) {
    return aperture.stopsAbove(widest()).value() > -ROUNDING
        && aperture.stopsAbove(smallest()).value() < ROUNDING;
  }

  private List<ShutterTime> times(Limits limits) {
    ShutterTime old = own.exposure().time();
    double shortest = shortestTime().seconds() * (1 - ROUNDING);
    if (limits.keepTime().isPresent()) {
      ShutterTime kept = limits.keepTime().get();
      return kept.seconds() >= shortest ? List.of(kept) : List.of();
    }
    Set<ShutterTime> times = new LinkedHashSet<>();
    times.add(shortestTime());
    MarkedScale.SHUTTER_THIRD.marks().stream()
        .map(mark -> new ShutterTime(mark.exact()))
        .forEach(times::add);
    if (own.sameBody()) {
      times.add(old);
    }
    List<ShutterTime> near =
        times.stream()
            .filter(time -> time.seconds() >= shortest)
            .filter(time -> Math.abs(time.stopsOver(old).value()) <= FARTHEST_TIME_STOPS)
            .toList();
    return near.isEmpty() ? List.of(shortestTime()) : near;
  }

  private List<Iso> isos(Limits limits) {
    Set<Iso> isos = new LinkedHashSet<>();
    isos.add(lowestIso());
    MarkedScale.ISO_THIRD.marksBetween(lowestIso().value(), highestIso().value()).stream()
        .map(mark -> new Iso(mark.exact()))
        .forEach(isos::add);
    if (own.sameBody()) {
      isos.add(own.exposure().iso());
    }
    double most =
        Math.min(limits.isoAtMost().map(Iso::value).orElse(Double.MAX_VALUE), highestIso().value());
    return isos.stream()
        .filter(iso -> iso.value() >= lowestIso().value() * (1 - ROUNDING))
        .filter(iso -> iso.value() <= most * (1 + ROUNDING))
        .toList();
  }
}
