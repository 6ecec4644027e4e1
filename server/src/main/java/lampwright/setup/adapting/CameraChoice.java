package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Camera;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;

/**
 * The camera that a kit makes of a setup's: the body and lens that frame most alike, and every
 * setting that they allow.
 *
 * @param framingChange see {@link Adaptation}
 * @param wantedAperture the f-number with the setup's depth of field on this format
 * @param longBurst whether some head of the kit can do times shorter than sync
 * @param morePops whether lights may fire more often than in the setup, which takes longer times
 * @param own what the setup was shot with
 */
record CameraChoice(
    Optional<Body> body,
    Optional<Lens> lens,
    Optional<Double> framingChange,
    FNumber wantedAperture,
    List<NeutralDensity> filters,
    boolean longBurst,
    boolean morePops,
    Own own) {

  /** Shutter times farther than this from the setup's, in stops, make another picture. */
  private static final double FARTHEST_TIME_STOPS = 4;

  /** Far below a third of a stop, far above what rounding does to an exact mark. */
  private static final double ROUNDING = 1e-6;

  /** What focal-plane shutters go down to; common practice, no source. */
  private static final ShutterTime SHORTEST_BURST = ShutterTime.parse("1/8000");

  /**
   * The setup's own settings; a setting that is on no scale can be made again where body or lens is
   * the same, or is not known.
   */
  record Own(ShootingExposure exposure, boolean sameBody, boolean sameLens) {}

  /** A setting and the filter it needs. */
  record Setting(ExposureSettings exposure, Optional<NeutralDensity> filter) {}

  /**
   * Every camera that a kit and the limits allow, the one that frames most alike first; empty where
   * the limits name a body or a lens that the kit has not.
   */
  static List<CameraChoice> all(SetupDocument setup, Kit kit, Limits limits) {
    boolean morePops = limits.popsPerLight().isPresent() && !Gathering.isMoving(setup);
    return all(KitOffer.Shot.of(setup), morePops, kit, limits);
  }

  /**
   * The same of what was shot with.
   *
   * @param morePops see {@link CameraChoice}
   */
  static List<CameraChoice> all(KitOffer.Shot shot, boolean morePops, Kit kit, Limits limits) {
    Optional<Body> oldBody = shot.body();
    Optional<Lens> oldLens = shot.lens();
    boolean longBurst =
        kit.heads().stream().anyMatch(head -> head.item().longBurstEfficiency().isPresent());
    List<CameraChoice> all = new ArrayList<>();
    for (Optional<Body> body : named(orOwn(kit.bodies(), oldBody), Body::name, limits.body())) {
      for (Optional<Lens> lens : named(orOwn(kit.lenses(), oldLens), Lens::name, limits.lens())) {
        all.add(
            new CameraChoice(
                body,
                lens,
                framingChange(oldBody, oldLens, body, lens),
                wantedAperture(shot.exposure().fNumber(), oldBody, body),
                filters(kit, shot.exposure().neutralDensity()),
                longBurst,
                morePops,
                new Own(
                    shot.exposure(),
                    body.isEmpty() || body.equals(oldBody),
                    lens.isEmpty() || lens.equals(oldLens))));
      }
    }
    all.sort(Comparator.comparingDouble(choice -> Math.abs(choice.framingDoublings())));
    return all;
  }

  /** The kit's filters; the setup's own for a kit of lights only. */
  private static List<NeutralDensity> filters(Kit kit, Stops own) {
    boolean lightsOnly = kit.bodies().isEmpty() && kit.neutralDensities().isEmpty();
    return lightsOnly && own.value() > 0
        ? List.of(new NeutralDensity("the setup's own grey filter", own))
        : kit.neutralDensities();
  }

  /** What of the limits no camera of a kit can fulfil, in words. */
  static List<Said> contradictions(SetupDocument setup, Kit kit, Limits limits) {
    List<Said> found = new ArrayList<>();
    Optional<Body> oldBody = setup.camera().flatMap(Camera::body);
    Optional<Lens> oldLens = setup.camera().flatMap(Camera::lens);
    if (named(orOwn(kit.bodies(), oldBody), Body::name, limits.body()).isEmpty()) {
      found.add(Said.of("adapting.cannot.noSuchBody", Filling.text(limits.body().orElse(""))));
    }
    if (named(orOwn(kit.lenses(), oldLens), Lens::name, limits.lens()).isEmpty()) {
      found.add(Said.of("adapting.cannot.noSuchLens", Filling.text(limits.lens().orElse(""))));
    }
    List<CameraChoice> all = all(setup, kit, limits);
    boolean some = all.stream().anyMatch(camera -> camera.contradictions(limits).isEmpty());
    if (found.isEmpty() && !some) {
      found.addAll(all.getFirst().contradictions(limits));
    }
    return found;
  }

  private static <G> List<Optional<G>> named(
      List<Optional<G>> pieces, Function<G, String> name, Optional<String> wanted) {
    return pieces.stream()
        .filter(
            piece ->
                wanted.isEmpty()
                    || piece.filter(g -> name.apply(g).equals(wanted.get())).isPresent())
        .toList();
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

  /** By how many doublings the picture takes in more than the setup's; 0 where not known. */
  double framingDoublings() {
    return framingChange.map(change -> Stops.ofRatio(1 + change).value()).orElse(0.0);
  }

  /** Equal depth of field at equal framing: the f-number goes with the format's diagonal. */
  private static FNumber wantedAperture(FNumber old, Optional<Body> oldBody, Optional<Body> body) {
    if (oldBody.isEmpty() || body.isEmpty()) {
      return old;
    }
    return new FNumber(old.value() * diagonalMm(body.get()) / diagonalMm(oldBody.get()));
  }

  /** Every setting at an aperture and a time: each ISO, without a filter and with each one. */
  List<Setting> settings(FNumber aperture, ShutterTime time, Limits limits) {
    List<Setting> settings = new ArrayList<>();
    for (Iso iso : isos(limits)) {
      ExposureSettings open = ExposureSettings.of(aperture, time, iso);
      settings.add(new Setting(open, Optional.empty()));
      for (NeutralDensity filter : filters) {
        settings.add(new Setting(open.withNeutralDensity(filter.loss()), Optional.of(filter)));
      }
    }
    return settings;
  }

  /** What makes the limits impossible for this camera; empty where some setting fulfils them. */
  List<Said> contradictions(Limits limits) {
    List<Said> found = new ArrayList<>();
    limits
        .isoAtMost()
        .filter(most -> isos(limits).isEmpty())
        .ifPresent(
            most ->
                found.add(
                    Said.of(
                        "adapting.cannot.lowestIso",
                        Filling.shown(most),
                        bodyName(),
                        Filling.shown(lowestIso()))));
    limits
        .keepFNumber()
        .filter(kept -> apertures(limits).isEmpty())
        .ifPresent(
            kept ->
                found.add(
                    Said.of(
                        "adapting.cannot.aperture",
                        Filling.shown(kept),
                        nameOr(lens.map(Lens::name), "adapting.theLens"),
                        Filling.shown(widest()),
                        Filling.shown(smallest()))));
    limits
        .keepTime()
        .filter(kept -> times(limits).isEmpty())
        .ifPresent(
            kept ->
                found.add(
                    Said.of(
                        "adapting.cannot.time",
                        Filling.shown(kept),
                        bodyName(),
                        Filling.shown(shortestTime()))));
    return found;
  }

  private Filling bodyName() {
    return nameOr(body.map(Body::name), "adapting.theCamera");
  }

  private static Filling nameOr(Optional<String> name, String key) {
    return name.map(Filling::text).orElseGet(() -> Said.of(key).asFilling());
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
  Iso lowestIso() {
    return body.map(Body::lowestIso).orElse(new Iso(Math.min(100, own.exposure().iso().value())));
  }

  private Iso highestIso() {
    return body.map(Body::highestIso)
        .orElse(new Iso(Math.max(6_400, own.exposure().iso().value())));
  }

  /** The shortest time that a flash can be used with. */
  private ShutterTime shortestTime() {
    boolean burst =
        longBurst && body.filter(b -> b.shutter() == Body.Shutter.FOCAL_PLANE).isPresent();
    return burst ? SHORTEST_BURST : body.map(Body::sync).orElse(own.exposure().time());
  }

  /** The lens's own ends count even where they are between the marks, as f/1.7 is. */
  List<FNumber> apertures(Limits limits) {
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

  List<ShutterTime> times(Limits limits) {
    ShutterTime old = own.exposure().time();
    double shortest = shortestTime().seconds() * (1 - ROUNDING);
    if (limits.keepTime().isPresent()) {
      ShutterTime kept = limits.keepTime().get();
      return kept.seconds() >= shortest ? List.of(kept) : List.of();
    }
    Set<ShutterTime> times = new LinkedHashSet<>();
    times.add(shortestTime());
    body.map(Body::sync).ifPresent(times::add);
    MarkedScale.SHUTTER_THIRD.marks().stream()
        .map(mark -> new ShutterTime(mark.exact()))
        .forEach(times::add);
    if (own.sameBody()) {
      times.add(old);
    }
    List<ShutterTime> near =
        times.stream()
            .filter(time -> time.seconds() >= shortest)
            .filter(time -> isNear(time.stopsOver(old).value()))
            .toList();
    return near.isEmpty() ? List.of(shortestTime()) : near;
  }

  private boolean isNear(double stopsLonger) {
    return stopsLonger >= -FARTHEST_TIME_STOPS && (morePops || stopsLonger <= FARTHEST_TIME_STOPS);
  }

  List<Iso> isos(Limits limits) {
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
