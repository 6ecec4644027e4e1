package lampwright.setup.reacting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.power.PowerRange;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Weights;
import lampwright.setup.figures.ShutterComputation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A second path: every place of the camera's dials, every shutter time among them, with every
 * subset of the lights turned, each to every step; no other code of the search.
 */
class BruteForceTest {

  private static final double TOLERANCE = 1.0 / 3 + 1e-9;

  @ParameterizedTest
  @CsvSource({
    "a-goose-called-parcel, 1.4",
    "the-tallyman, 1.2",
    "heaving-line, -0.7",
    "dust-of-the-day, -1.6"
  })
  void nothingTurnsFewerDialsOrLosesLessWithAsFew(String name, double falls) {
    SetupDocument setup = new DemoSeeds().setup(name);
    Reaction reaction = Reactions.to(setup, new Happening.AmbientFalls(new Stops(falls)));
    List<Way> ways = ((Reaction.Turns) reaction).ways();
    assertTrue(ways.getFirst().holdsAll());
    double[] least = new Everything(setup, falls).leastByDials();
    int fewest = 0;
    while (least[fewest] == Double.POSITIVE_INFINITY) {
      fewest++;
    }
    assertEquals(fewest, ways.getFirst().dials());
    assertEquals(least[fewest], ways.getFirst().loss(), 1e-6);
    for (Way way : ways) {
      assertTrue(way.loss() >= least[way.dials()] - 1e-6, way.turns()::toString);
    }
  }

  /** All that there is. */
  private static final class Everything {

    private final SetupDocument setup;
    private final Levels before;
    private final double ambient;
    private final Weights weights = Weights.Preset.FEWEST_DIALS.weights();
    private final boolean moving;
    private final Body body;
    private final ShutterComputation shutter;
    private final double[] least;

    Everything(SetupDocument setup, double falls) {
      this.setup = setup;
      this.before = Levels.of(setup);
      this.ambient = -falls;
      this.moving = setup.subjects().stream().anyMatch(s -> s.speedMPerS().orElse(0.0) > 0);
      this.body = setup.camera().orElseThrow().body().orElseThrow();
      this.shutter = new ShutterComputation(body);
      this.least = new double[5 + setup.lights().size()];
      Arrays.fill(least, Double.POSITIVE_INFINITY);
    }

    double[] leastByDials() {
      ExposureSettings now = setup.exposure().settings();
      Lens lens = setup.camera().orElseThrow().lens().orElseThrow();
      List<Double> apertures = marks(MarkedScale.APERTURE_THIRD, now.aperture().value());
      apertures.removeIf(
          n -> n < lens.widest().value() - 1e-9 || n > lens.smallest().value() + 1e-9);
      List<Double> isos = marks(MarkedScale.ISO_THIRD, now.iso().value());
      isos.removeIf(
          s -> s < body.lowestIso().value() - 1e-9 || s > body.highestIso().value() + 1e-9);
      List<Double> times = marks(MarkedScale.SHUTTER_THIRD, now.time().seconds());
      times.removeIf(t -> t < Math.min(body.sync().seconds(), now.time().seconds()) * (1 - 1e-9));
      times.add(body.sync().seconds());
      for (double seconds : times) {
        double[][] misses = misses(new ShutterTime(seconds));
        for (double aperture : apertures) {
          for (double iso : isos) {
            take(now, new FNumber(aperture), new ShutterTime(seconds), new Iso(iso), misses);
          }
        }
      }
      return least;
    }

    private static List<Double> marks(MarkedScale scale, double now) {
      List<Double> all = new ArrayList<>(List.of(now));
      scale.marks().forEach(mark -> all.add(mark.exact()));
      return all;
    }

    /** By light: without turning it, then at each step; in stops, without the camera. */
    private double[][] misses(ShutterTime time) {
      double[][] all = new double[setup.lights().size()][];
      for (int i = 0; i < all.length; i++) {
        Light light = setup.lights().get(i);
        Stops now = light.stopsDown().orElseThrow();
        List<Stops> steps = new PowerRange(light.head().range(), light.head().step()).settings();
        all[i] = new double[steps.size() + 1];
        double lossNow = loss(light, now, setup.exposure().time());
        all[i][0] = lossNow - loss(light, now, time);
        for (int j = 0; j < steps.size(); j++) {
          all[i][j + 1] =
              now.minus(steps.get(j)).value() + lossNow - loss(light, steps.get(j), time);
        }
      }
      return all;
    }

    private static Stops step(Light light, int place) {
      return new PowerRange(light.head().range(), light.head().step()).settings().get(place - 1);
    }

    private double loss(Light light, Stops down, ShutterTime time) {
      return shutter.effect(light.head(), Optional.of(down), time).wholeFrameOrNone().value();
    }

    private void take(
        ExposureSettings now, FNumber aperture, ShutterTime time, Iso iso, double[][] misses) {
      double gain = now.aperture().stopsAbove(aperture).value() + iso.stopsOver(now.iso()).value();
      double longer = time.stopsOver(now.time()).value();
      double ambientMiss = ambient + gain + longer;
      if (Math.abs(ambientMiss) > TOLERANCE) {
        return;
      }
      double camera =
          weights.ambient() * Weights.ambientCount(ambientMiss)
              + weights.depth() * Math.abs(now.aperture().stopsAbove(aperture).value())
              + weights.iso() * Math.max(0, iso.stopsOver(now.iso()).value())
              + weights.ofTime(moving) * Math.abs(longer);
      int dials = turned(longer) + turned(iso.stopsOver(now.iso()).value());
      dials += turned(now.aperture().stopsAbove(aperture).value());
      int n = misses.length;
      double[] left = new double[n];
      double[] best = new double[n];
      for (int i = 0; i < n; i++) {
        Light light = setup.lights().get(i);
        boolean counts = before.ofLight(light.id()).isPresent();
        double weight = counts ? Weights.ofRole(light.role()) : 0;
        left[i] = held(weight, misses[i][0] + gain);
        best[i] = Double.POSITIVE_INFINITY;
        for (int j = 1; j < misses[i].length; j++) {
          double up = Math.max(0, light.stopsDown().orElseThrow().minus(step(light, j)).value());
          best[i] = Math.min(best[i], held(weight, misses[i][j] + gain) + Toll.POWER * up);
        }
      }
      for (int subset = 0; subset < (1 << n); subset++) {
        double loss = camera;
        for (int i = 0; i < n; i++) {
          loss += ((subset >> i) & 1) == 1 ? best[i] : left[i];
        }
        int all = dials + Integer.bitCount(subset);
        least[all] = Math.min(least[all], loss);
      }
    }

    private static int turned(double stops) {
      return Math.abs(stops) < 1e-9 ? 0 : 1;
    }

    private static double held(double weight, double miss) {
      return Math.abs(miss) <= TOLERANCE ? weight * Math.abs(miss) : Double.POSITIVE_INFINITY;
    }
  }
}
