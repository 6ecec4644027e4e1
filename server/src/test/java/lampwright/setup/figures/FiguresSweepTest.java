package lampwright.setup.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import lampwright.Sweep;
import lampwright.engine.Working;
import lampwright.setup.RandomDocuments;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** Random valid documents at the ends of all bounds give figures, never an error, never NaN. */
class FiguresSweepTest {

  private static final int SETUPS = Sweep.cases(500);

  @Test
  void everyValidSetupHasFigures() {
    int withLevel = 0;
    int grazed = 0;
    int suns = 0;
    int winds = 0;
    int mains = 0;
    int paths = 0;
    for (int seed = 0; seed < SETUPS; seed++) {
      SetupDocument setup = RandomDocuments.setup(new Random(seed));
      Figures figures;
      try {
        figures = FiguresComputation.of(setup);
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed, e);
      }
      check(setup, figures, "seed " + seed);
      checkAll(figures, "seed " + seed);
      withLevel += (int) figures.lights().stream().filter(l -> l.level().isPresent()).count();
      grazed += (int) figures.lights().stream().filter(l -> l.atTarget().cosine() == 0).count();
      suns += figures.sun().isPresent() ? 1 : 0;
      winds += figures.winds().size();
      mains += figures.power().mains().isPresent() ? 1 : 0;
      paths += figures.paths().size();
      assertEquals(figures, FiguresComputation.of(setup), "seed " + seed);
    }
    assertTrue(
        withLevel > SETUPS / 2 && grazed > 100, withLevel + " levels, " + grazed + " grazed");
    assertTrue(
        suns > 30 && winds > 5 && mains > 50 && paths > 50,
        suns + " suns, " + winds + " winds, " + mains + " mains, " + paths + " paths");
  }

  private static void check(SetupDocument setup, Figures figures, String where) {
    assertEquals(setup.lights().size(), figures.lights().size(), where);
    for (int i = 0; i < figures.lights().size(); i++) {
      LightFigures light = figures.lights().get(i);
      light.level().ifPresent(level -> check(level, where));
      light.fromKey().ifPresent(stops -> finite(stops.value(), where));
      light.energy().ifPresent(energy -> finite(energy.value(), where));
      finite(light.angularSize().value(), where);
      finite(light.penumbra(LightFigures.USUAL_GAP).value(), where);
      light.fallOffAcross(LightFigures.USUAL_WIDTH).ifPresent(s -> finite(s.value(), where));
      assertTrue(light.level().isPresent() || !light.needs().isEmpty(), where);
    }
    for (TargetFigures target : figures.targets()) {
      finite(target.offset().value(), where);
      finite(target.reading().value(), where);
      finite(target.working(), where);
      double shares = target.spill().sums().towardCamera().ambientShare();
      for (SpillFigures.Reach reach : target.spill().reaches()) {
        target.spill().fromShooting(reach).ifPresent(s -> finite(s.value(), where));
        shares += target.spill().share(reach);
      }
      assertEquals(1, shares, 1e-9, where);
      Working spill = target.spill().working().orElseThrow();
      double total = target.spill().sums().towardCamera().total().value();
      assertEquals(total, spill.parts().getFirst().value(), 1e-9 * total, where);
      target.sums().domeOffset().ifPresent(s -> finite(s.value(), where));
      target.sums().towardKeyOffset().ifPresent(s -> finite(s.value(), where));
    }
    for (UnlitTarget target : figures.unlit()) {
      assertEquals(0, target.spill().sums().towardCamera().ambient().value(), where);
      for (SpillFigures.Reach reach : target.spill().reaches()) {
        target.spill().fromShooting(reach).ifPresent(s -> finite(s.value(), where));
      }
    }
    for (PathFigures path : figures.paths()) {
      for (PathFigures.Station station : path.stations()) {
        path.fromHit(station).ifPresent(s -> finite(s.value(), where));
        path.fromShooting(station).ifPresent(s -> finite(s.value(), where));
        path.working(station)
            .ifPresent(
                working -> {
                  double there = station.sum().total().value();
                  assertEquals(there, working.parts().getFirst().value(), 1e-9 * there, where);
                });
      }
    }
    assertEquals(setup.ambient().isEmpty(), figures.needs().contains("/ambient"), where);
  }

  /** Every number of every record prints itself; every working refuses what is not finite. */
  private static void checkAll(Figures figures, String where) {
    String all = figures.toString();
    assertFalse(all.contains("NaN") || all.contains("Infinity"), where + " " + all);
    List<Working> workings = new ArrayList<>(figures.power().workings());
    workings.addAll(figures.colour().workings());
    figures.winds().forEach(wind -> workings.addAll(wind.workings()));
    figures.optics().ifPresent(optics -> workings.addAll(optics.workings()));
    figures.movements().forEach(movement -> workings.addAll(movement.workings()));
    figures.dials().forEach(step -> step.working().ifPresent(workings::add));
    figures.againstAmbient().ifPresent(balance -> workings.add(balance.working()));
    figures.ambient().ifPresent(ambient -> workings.add(ambient.working()));
    figures.lights().stream()
        .flatMap(light -> light.shutter().stream())
        .forEach(shutter -> workings.addAll(shutter.workings()));
    workings.forEach(working -> finite(working, where));
    assertEquals(figures.needs().size(), Set.copyOf(figures.needs()).size(), where);
  }

  private static void check(Level level, String where) {
    finite(level.exposure().value(), where);
    finite(level.fromShooting().value(), where);
    finite(level.working(), where);
    finite(level.budget().working(), where);
    assertTrue(level.uncertainty().value() > 0, where);
  }

  private static void finite(Working working, String where) {
    finite(working.value(), where + working);
    working.parts().forEach(part -> finite(part, where));
  }

  private static void finite(double value, String where) {
    assertTrue(Double.isFinite(value), where);
  }
}
