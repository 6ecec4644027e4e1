package lampwright.learning.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.gear.Kit;
import lampwright.setup.DemoSeeds;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A thousand drills of each kind, from all setups and kits of the demo studio. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DrillsTest {

  private static final int EACH = 1_000;

  private final List<Material> materials = materials();

  private final Map<DrillKind, List<Made>> made = new EnumMap<>(DrillKind.class);

  private static List<Material> materials() {
    DemoSeeds seeds = new DemoSeeds();
    List<Kit> kits = seeds.named("kits").stream().map(seeds::kit).toList();
    List<Material> all = new ArrayList<>();
    seeds
        .setups()
        .values()
        .forEach(
            setup -> all.add(Material.of(setup, Optional.of(kits.get(all.size() % kits.size())))));
    return all;
  }

  /** A drill with where it came from. */
  private record Made(Drill drill, String from) {}

  private List<Made> made(DrillKind kind) {
    return made.computeIfAbsent(kind, this::make);
  }

  private List<Made> make(DrillKind kind) {
    List<Made> all = new ArrayList<>();
    for (long seed = 1; all.size() < EACH && seed < 1_000; seed++) {
      for (int i = 0; i < materials.size() && all.size() < EACH; i++) {
        Material material = materials.get(i);
        String from = kind + ", seed " + seed + ", " + material.setup().title();
        Drills.make(kind, material, seed).ifPresent(drill -> all.add(new Made(drill, from)));
      }
    }
    assertEquals(EACH, all.size(), kind + " can be made often enough");
    return all;
  }

  @ParameterizedTest
  @EnumSource
  void whoReadsNothingButTheWordsComesToTheEnginesAnswer(DrillKind kind) {
    for (Made made : made(kind)) {
      WrittenDrill written = WrittenDrill.of(made.drill());
      double answer = new Assistant(written).answer(kind);
      String where = made.from() + "\n" + written + "\n" + answer;
      switch (made.drill().answer()) {
        case Answer.OfNumber number ->
            assertInstanceOf(
                Answer.Verdict.Right.class, number.judge(answer), where + " for " + number.value());
        case Answer.OfChoice choice -> assertEquals(choice.right(), (int) answer, where);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void thereIsNeverASecondRightAnswer(DrillKind kind) {
    for (Made made : made(kind)) {
      switch (made.drill().answer()) {
        case Answer.OfNumber number -> {
          assertInstanceOf(Answer.Verdict.Right.class, number.judge(number.value()), made.from());
          for (Answer.Slip slip : number.slips()) {
            assertEquals(
                new Answer.Verdict.Wrong(Optional.of(slip.why())),
                number.judge(slip.value()),
                made.from());
          }
        }
        case Answer.OfChoice choice -> {
          List<String> options = WrittenDrill.of(made.drill()).options();
          Set<String> different = new HashSet<>(options);
          assertTrue(options.size() >= 2, made.from());
          assertEquals(options.size(), different.size(), made.from() + options);
          for (int i = 0; i < options.size(); i++) {
            assertEquals(
                i == choice.right(), choice.judge(i) instanceof Answer.Verdict.Right, made.from());
          }
        }
      }
    }
  }

  /** Common practice, no source: what hands set, stands reach and people read. */
  @ParameterizedTest
  @EnumSource
  void nothingIsAskedThatNobodyCouldSetOrRead(DrillKind kind) {
    for (Made made : made(kind)) {
      if (made.drill().answer() instanceof Answer.OfNumber number) {
        double value = number.value();
        String where = made.from() + ": " + value;
        boolean isSane =
            switch (number.measure()) {
              case STOPS_SET, STOPS_COUNTED -> Math.abs(value) <= 6;
              case LIGHT_DISTANCE_M -> value >= 0.4 && value <= 13;
              case GROUND_LENGTH_M -> value >= 0.1 && value <= 30;
              case MOVED_MM -> value >= 0.3 && value <= 900;
              case FRAMES -> value >= 20 && value <= 6_000;
              case SHIFT_MIRED -> Math.abs(value) >= 25 && Math.abs(value) <= 220;
            };
        assertTrue(isSane, where);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void theSameSeedMakesTheSameDrillAndAnotherMakesOthers(DrillKind kind) {
    Set<Drill> different = new HashSet<>();
    for (Material material : materials.subList(0, 12)) {
      for (long seed = 1; seed <= 20; seed++) {
        Optional<Drill> drill = Drills.make(kind, material, seed);
        assertEquals(drill, Drills.make(kind, material, seed));
        drill.ifPresent(different::add);
      }
    }
    assertTrue(different.size() > 12, kind + ": " + different.size());
  }
}
