package lampwright.setup.reacting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.random.RandomGenerator;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Documents;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** What holds of every way, for all demo setups and happenings by dice. */
class ReactionsEverywhereTest {

  private static final long SEED = 90_210;
  private static final double ROUNDING = 1e-6;

  private static final Map<String, SetupDocument> SETUPS = new DemoSeeds().setups();

  private static Happening happening(SetupDocument setup, RandomGenerator dice) {
    Light light = setup.lights().get(dice.nextInt(setup.lights().size()));
    Point at = light.place();
    return switch (dice.nextInt(4)) {
      case 0 -> new Happening.AmbientFalls(new Stops(dice.nextDouble(-2, 4)));
      case 1 ->
          new Happening.AmbientReads(
              setup.ambient().orElseThrow().level().plus(new Stops(dice.nextDouble(-3, 2))));
      case 2 ->
          new Happening.LightMoved(
              light.id(),
              new Point(
                  at.x() + dice.nextDouble(-1, 1),
                  at.y() + dice.nextDouble(-1, 1),
                  at.z() + dice.nextDouble(-0.5, 1)));
      default -> new Happening.HeadDead(light.id());
    };
  }

  @Test
  void everyWayIsASetupThatCanBeSavedAndHoldsWhatItClaims() {
    Random dice = new Random(SEED);
    int told = 0;
    for (SetupDocument setup : SETUPS.values()) {
      Happening happening = happening(setup, dice);
      String where = setup.title() + ", " + happening + ", seed " + SEED;
      Reaction reaction = Reactions.to(setup, happening);
      if (!(reaction instanceof Reaction.Turns turns)) {
        continue;
      }
      Levels before = Levels.of(setup);
      for (Way way : turns.ways()) {
        told++;
        SetupDocument saved = Documents.setup(SetupDocument.FORM.write(way.document()));
        assertEquals(
            SetupDocument.FORM.write(way.document()), SetupDocument.FORM.write(saved), where);
        double carried = way.givenUp().isEmpty() || isMoved(way) ? ROUNDING : loss(before, way) / 2;
        assertEquals(loss(before, way) - carried, way.loss(), carried + ROUNDING, where);
        assertTrue(way.holdsAll() || way.loss() < reaction.untouched().loss(), where);
        assertTrue(way.dials() > 0, where);
        Levels after = Levels.of(saved);
        for (Light light : setup.lights()) {
          if (!way.givenUp().contains(light.id()) && before.ofLight(light.id()).isPresent()) {
            double off =
                after.ofLight(light.id()).orElseThrow().value()
                    - before.ofLight(light.id()).orElseThrow().value();
            assertTrue(!way.holdsAll() || Math.abs(off) <= 1.0 / 3 + 0.01, where);
          }
        }
      }
      orderIsKept(turns.ways(), where);
    }
    assertTrue(told > 50, "only " + told + " ways");
  }

  /** A head was put elsewhere; else a neighbour may carry a dead light's share for less. */
  private static boolean isMoved(Way way) {
    return way.turns().stream().anyMatch(turn -> turn instanceof Turn.Replacement);
  }

  private static void orderIsKept(List<Way> ways, String where) {
    for (int i = 1; i < ways.size(); i++) {
      Way one = ways.get(i - 1);
      Way next = ways.get(i);
      if (one.holdsAll()) {
        assertTrue(
            one.dials() < next.dials()
                || (one.dials() == next.dials() && one.loss() <= next.loss() + ROUNDING),
            where);
      } else {
        assertTrue(one.loss() <= next.loss() + ROUNDING, where);
      }
    }
  }

  /** The loss once more, from the figures of the changed document alone. */
  private static double loss(Levels before, Way way) {
    Toll toll = Toll.of(before.setup());
    double loss =
        toll.time(way.price().longer().value())
            + toll.depth(way.price().deeper().value())
            + toll.noise(way.price().noisier().value())
            + toll.ambient(way.ambientMiss().map(Stops::value).orElse(0.0));
    for (Light light : before.setup().lights()) {
      if (way.givenUp().contains(light.id())) {
        loss += toll.givenUp(light.role());
      }
    }
    for (Miss miss : way.misses()) {
      if (miss.light().isPresent()) {
        Light light = before.figures().get(miss.light().get()).light();
        loss += Toll.ofRole(light.role()) * Math.abs(miss.stops().value());
      }
    }
    for (Turn turn : way.turns()) {
      if (turn instanceof Turn.Power power) {
        loss += Toll.POWER * Math.max(0, power.from().minus(power.to()).value());
      }
    }
    return loss;
  }

  @Test
  void theOppositeHappeningLeadsBack() {
    int told = 0;
    for (SetupDocument setup : SETUPS.values()) {
      Reaction fall = Reactions.to(setup, new Happening.AmbientFalls(Stops.ONE));
      Way down = assertInstanceOf(Reaction.Turns.class, fall, setup.title()).ways().getFirst();
      if (!(down.turns().getFirst() instanceof Turn.Time)) {
        continue; // The longest time that shutters mark is reached already.
      }
      told++;
      Reaction rise = Reactions.to(down.document(), new Happening.AmbientFalls(new Stops(-1)));
      Way up = assertInstanceOf(Reaction.Turns.class, rise, setup.title()).ways().getFirst();
      ExposureSettings back = up.document().exposure().settings();
      assertEquals(setup.exposure().settings(), back, setup.title());
    }
    assertTrue(told > 60, "only " + told);
  }

  @Test
  void aDeeperFallIsNeverCheaper() {
    for (SetupDocument setup : SETUPS.values().stream().limit(12).toList()) {
      List<Way> best = new ArrayList<>();
      for (int stops = 1; stops <= 4; stops++) {
        Reaction reaction = Reactions.to(setup, new Happening.AmbientFalls(new Stops(stops)));
        best.add(assertInstanceOf(Reaction.Turns.class, reaction).ways().getFirst());
      }
      for (int i = 1; i < best.size(); i++) {
        Way less = best.get(i - 1);
        Way more = best.get(i);
        assertTrue(
            less.dials() < more.dials()
                || (less.dials() == more.dials() && less.loss() <= more.loss() + ROUNDING),
            setup.title() + ", " + (i + 1) + " stops");
      }
    }
  }
}
