package lampwright.setup.adapting;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ambient;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.light.Point;
import lampwright.engine.light.UnitVector;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Lens;
import lampwright.gear.Modifier;
import lampwright.gear.Pack;
import lampwright.gear.Several;
import lampwright.setup.Light;
import lampwright.setup.Role;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.ShutterEffect;

/**
 * The stated cost of an adaptation, worked out anew from the document that came out of it and that
 * document's figures: what {@link Weights} says, matter by matter, in as few steps as possible. It
 * takes nothing from the search but its document.
 */
final class CostForTests {

  private static final double ROUNDING = 1e-9;

  private final SetupDocument setup;
  private final Figures before;
  private final Weights weights;

  CostForTests(SetupDocument setup, Figures before, Weights weights) {
    this.setup = setup;
    this.before = before;
    this.weights = weights;
  }

  /** By the weights of the closest look, of heads that hang on no pack. */
  static double of(SetupDocument setup, Adaptation adaptation) {
    return of(setup, adaptation, List.of(), Weights.Preset.CLOSEST_LOOK.weights());
  }

  /** By any weights; a document does not say what the packs are that its heads hang on. */
  static double of(SetupDocument setup, Adaptation adaptation, Kit kit, Weights weights) {
    return of(setup, adaptation, kit.packs(), weights);
  }

  private static double of(
      SetupDocument setup, Adaptation adaptation, List<Several<Pack>> packs, Weights weights) {
    return new CostForTests(setup, FiguresComputation.of(setup), weights)
        .of(adaptation.document(), packs);
  }

  private double of(SetupDocument document, List<Several<Pack>> packs) {
    Figures after = FiguresComputation.of(document);
    double cost = 0;
    double longestWaitS = 0;
    for (Light old : setup.lights()) {
      Optional<LightFigures> now =
          after.lights().stream().filter(l -> l.light().id().equals(old.id())).findFirst();
      if (now.isEmpty()) {
        cost += role(old.role()) * weights.givenUp();
        continue;
      }
      LightFigures was = before.get(old.id());
      Light light = now.get().light();
      Stops level = stopsInPicture(now.get(), after);
      Stops edge =
          now.get()
              .shutter()
              .flatMap(ShutterEffect::worstEdge)
              .filter(loss -> loss.value() >= 0.05)
              .orElse(Stops.ZERO);
      cost +=
          role(old.role()) * Math.abs(level.minus(stopsInPicture(was, before)).value())
              + weights.evenness() * role(old.role()) * edge.value()
              + making(
                  was,
                  light.head(),
                  light.modifierOrStandard(),
                  light.heads(),
                  light.pops(),
                  light.gels(),
                  light.place())
              + (isPowerUntouched(old, light.head(), light.stopsDown().orElseThrow())
                  ? 0
                  : weights.touch());
      double share = light.stopsDown().orElseThrow().negated().toFactor() * light.pops();
      if (light.head().pack().isPresent()) {
        cost += pacePerWs(pack(light.head(), packs)) * now.get().energy().orElseThrow().value();
      } else {
        longestWaitS = Math.max(longestWaitS, share * recycleS(light.head().recycle()));
      }
    }
    Optional<Body> body = document.camera().flatMap(camera -> camera.body());
    Optional<Lens> lens = document.camera().flatMap(camera -> camera.lens());
    return cost
        + weights.pacePerSecond() * longestWaitS
        + camera(
            body, lens, document.exposure().settings(), document.ambient().map(a -> a.level()));
  }

  private static Stops stopsInPicture(LightFigures light, Figures figures) {
    return light.inPicture().orElseThrow().stopsOver(figures.shootingExposure());
  }

  private static Pack pack(Head head, List<Several<Pack>> packs) {
    return packs.stream()
        .map(Several::item)
        .filter(pack -> head.pack().filter(pack.name()::equals).isPresent())
        .findFirst()
        .orElseThrow();
  }

  static double recycleS(Optional<Seconds> recycle) {
    return recycle.map(Seconds::value).orElse(0.0);
  }

  /** What a watt-second of a pack costs, whose whole energy takes its recycle time. */
  double pacePerWs(Pack pack) {
    return weights.pacePerSecond() * recycleS(pack.recycle()) / pack.energy().value();
  }

  /** A stop of the key counts three, of a fill one and a half, of an accent three quarters. */
  static double role(Role role) {
    return switch (role) {
      case KEY -> 3;
      case FILL -> 1.5;
      case ACCENT -> 0.75;
      default -> 1;
    };
  }

  static boolean isPowerUntouched(Light old, Head head, Stops down) {
    return head.equals(old.head())
        && old.stopsDown().filter(o -> Math.abs(o.minus(down).value()) < ROUNDING).isPresent();
  }

  /** Shape, colour, weight, handling and dials of a way to make a light, whatever its power. */
  double making(
      LightFigures was,
      Head head,
      Modifier modifier,
      int heads,
      int pops,
      List<Gel> gels,
      Point place) {
    Light old = was.light();
    Modifier own = old.modifierOrStandard();
    Point target = old.target().at();
    boolean moved = !place.equals(old.place());
    Degrees size = modifier.face().angularSize(place.distanceTo(target));
    double shape =
        weights.softness() * Math.abs(log2(atLeastOne(size) / atLeastOne(was.angularSize())))
            + (modifier.kind() == own.kind() ? 0 : 0.5)
            + (modifier.grid() == own.grid() ? 0 : 0.5);
    if (modifier.spread().isPresent() && own.spread().isPresent()) {
      shape += 0.3 * Math.abs(log2(modifier.spread().get().value() / own.spread().get().value()));
    }
    if (moved) {
      UnitVector from = UnitVector.between(target, old.place());
      shape += 0.05 * from.angleTo(UnitVector.between(target, place)).value();
    }
    boolean bare = modifier.equals(Modifier.standardReflector());
    int copies = bare ? 0 : (int) Math.ceil(heads / (double) modifier.takesHeads());
    double kg = heads * head.weightKg().orElse(0.0) + copies * modifier.weightKg().orElse(0.0);
    int more = Math.max(0, heads - old.heads()) + (pops - old.pops()) + count(moved);
    int touched =
        count(!head.equals(old.head()) || heads != old.heads())
            + count(!modifier.equals(own))
            + count(!gels.equals(old.gels()))
            + count(moved)
            + count(pops != old.pops());
    return role(old.role()) * shape
        + weights.colour() * Math.abs(mired(gels) - mired(old.gels())) / 100
        + weights.carryPerKg() * kg
        + weights.handling() * more
        + weights.touch() * touched;
  }

  private static double atLeastOne(Degrees size) {
    return Math.max(1, size.value());
  }

  private static int count(boolean isSo) {
    return isSo ? 1 : 0;
  }

  static double mired(List<Gel> gels) {
    return gels.stream().mapToDouble(gel -> gel.shift().value()).sum();
  }

  /** Ambient, depth, time, ISO, framing and the camera's dials. */
  double camera(
      Optional<Body> body, Optional<Lens> lens, ExposureSettings now, Optional<Ev100> ambient) {
    ExposureSettings old = setup.exposure().settings();
    Optional<Body> oldBody = setup.camera().flatMap(camera -> camera.body());
    Optional<Lens> oldLens = setup.camera().flatMap(camera -> camera.lens());
    double formats = 1;
    if (body.isPresent() && oldBody.isPresent()) {
      formats = diagonalMm(body.get()) / diagonalMm(oldBody.get());
    }
    double framing = 1;
    if (body.isPresent() && oldBody.isPresent() && lens.isPresent() && oldLens.isPresent()) {
      framing = formats * oldLens.get().focalLength().value() / lens.get().focalLength().value();
    }
    boolean moves =
        setup.subjects().stream().anyMatch(s -> s.speedMPerS().filter(v -> v > 0).isPresent());
    double lowestIso =
        body.map(b -> b.lowestIso().value()).orElse(Math.min(100, old.iso().value()));
    int touched =
        count(!now.aperture().equals(old.aperture()))
            + count(!now.time().equals(old.time()))
            + count(!now.iso().equals(old.iso()))
            + count(!now.neutralDensity().equals(old.neutralDensity()));
    double away = Math.abs(ambientStops(now, ambient));
    return weights.ambient() * (away + Math.max(0, away - 1.5))
        + weights.depth()
            * Math.abs(2 * log2(now.aperture().value() / (old.aperture().value() * formats)))
        + weights.time()
            * (moves ? 3 : 1)
            * Math.abs(log2(now.time().seconds() / old.time().seconds()))
        + weights.iso() * Math.max(0, log2(now.iso().value() / lowestIso))
        + weights.framing() * Math.abs(log2(framing))
        + weights.touch() * touched;
  }

  /** How far the ambient's offset is from the setup's; where it is not known, how far the EV is. */
  double ambientStops(ExposureSettings now, Optional<Ev100> ambient) {
    if (ambient.isEmpty() || before.ambient().isEmpty()) {
      return now.ev100().minus(before.ev100()).value();
    }
    Stops offset = Ambient.of(ambient.get()).offset(now);
    return offset.minus(before.ambient().get().offset()).value();
  }

  static double diagonalMm(Body body) {
    return Math.hypot(body.width().value(), body.height().value());
  }

  static double log2(double ratio) {
    return StrictMath.log(ratio) / StrictMath.log(2);
  }
}
