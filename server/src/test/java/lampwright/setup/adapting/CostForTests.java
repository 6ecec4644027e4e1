package lampwright.setup.adapting;

import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.Iso;
import lampwright.engine.unit.Seconds;
import lampwright.gear.Body;
import lampwright.gear.Head;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;

/**
 * The stated cost of an adaptation, worked out anew from the document that came out of it: what
 * {@link Weights} says, in as few steps as possible. Setups with an ambient only.
 */
final class CostForTests {

  private CostForTests() {}

  static double of(SetupDocument setup, Adaptation adaptation) {
    Weights weights = Weights.Preset.CLOSEST_LOOK.weights();
    Figures before = FiguresComputation.of(setup);
    Figures after = FiguresComputation.of(adaptation.document());
    double cost = 0;
    for (Light light : setup.lights()) {
      double role = Weights.ofRole(light.role());
      if (adaptation.document().lights().stream().noneMatch(l -> l.id().equals(light.id()))) {
        cost += role * Weights.GIVEN_UP_STOPS;
        continue;
      }
      var was = before.get(light.id()).level().orElseThrow().fromShooting();
      var now = after.get(light.id());
      Head head = now.light().head();
      double energyShare = now.light().stopsDown().orElseThrow().negated().toFactor();
      cost +=
          role * Math.abs(now.level().orElseThrow().fromShooting().minus(was).value())
              + weights.carryPerKg() * head.weightKg().orElse(0.0)
              + weights.pacePerSecond()
                  * head.recycle().map(Seconds::value).orElse(0.0)
                  * energyShare;
    }
    ExposureSettings old = setup.exposure().settings();
    ExposureSettings now = adaptation.settings();
    double ambient =
        after.ambient().orElseThrow().offset().value()
            - before.ambient().orElseThrow().offset().value();
    double diagonals =
        adaptation
            .body()
            .flatMap(b -> setup.camera().flatMap(c -> c.body()).map(o -> diagonal(b) / diagonal(o)))
            .orElse(1.0);
    double depth = 2 * log2(now.aperture().value() / (old.aperture().value() * diagonals));
    boolean moves =
        setup.subjects().stream().anyMatch(s -> s.speedMPerS().filter(v -> v > 0).isPresent());
    Iso lowest = adaptation.body().map(Body::lowestIso).orElse(Iso.HUNDRED);
    return cost
        + weights.ambient() * (Math.abs(ambient) + Math.max(0, Math.abs(ambient) - 1.5))
        + weights.depth() * Math.abs(depth)
        + weights.time()
            * (moves ? 3 : 1)
            * Math.abs(log2(now.time().seconds() / old.time().seconds()))
        + weights.iso() * Math.max(0, log2(now.iso().value() / lowest.value()));
  }

  private static double diagonal(Body body) {
    return Math.hypot(body.width().value(), body.height().value());
  }

  private static double log2(double ratio) {
    return StrictMath.log(ratio) / StrictMath.log(2);
  }
}
