package lampwright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.unit.Metres;
import lampwright.gear.Head;
import lampwright.gear.Modifier;

/**
 * The cautions that a setup calls for by what stands in it, before the author's own. They are
 * common practice of the trade, no source, and never permission: local codes, the makers'
 * instructions and licensed practice come first.
 */
public final class Cautions {

  /** From this speed a subject cannot stop for a cable; a jog. */
  private static final double RUNNING_M_PER_S = 2;

  /** A face this large catches wind like a sail. */
  private static final double SAIL_M = 0.55;

  private static final double HIGH_M = 2.2;
  private static final double NEAR_EYES_M = 1;

  private Cautions() {}

  /** The cautions of a setup, the gravest first, the author's own last. */
  public static List<Caution> of(SetupDocument setup) {
    List<Caution> cautions = new ArrayList<>();
    boolean mains = setup.lights().stream().anyMatch(l -> l.head().feed() == Head.Feed.MAINS);
    boolean wet = isWet(setup);
    boolean outdoors = isOutdoors(setup);
    if (mains && (wet || outdoors)) {
      cautions.add(new Caution.Of(Danger.MAINS_OUTDOORS));
    } else if (wet) {
      cautions.add(new Caution.Of(Danger.WET));
    }
    if (outdoors && setup.lights().stream().anyMatch(Cautions::catchesWind)) {
      cautions.add(new Caution.Of(Danger.STANDS_IN_WIND));
    }
    if (setup.lights().stream().anyMatch(light -> light.place().z() > HIGH_M)) {
      cautions.add(new Caution.Of(Danger.HEADS_OVERHEAD));
    }
    if (setup.subjects().stream().anyMatch(Cautions::isRunning)) {
      cautions.add(new Caution.Of(Danger.RUNNING_SUBJECT));
    }
    if (setup.lights().stream().anyMatch(Cautions::isNearEyes)) {
      cautions.add(new Caution.Of(Danger.HEADS_NEAR_EYES));
    }
    cautions.add(new Caution.Of(Danger.STORED_CHARGE));
    setup.cautions().forEach(text -> cautions.add(new Caution.Own(text)));
    return List.copyOf(cautions);
  }

  /** Those that one light of a setup calls for, while it is set up. */
  public static List<Caution> ofLight(SetupDocument setup, Light light) {
    List<Caution> cautions = new ArrayList<>();
    boolean outdoors = isOutdoors(setup);
    if (light.head().feed() == Head.Feed.MAINS && (outdoors || isWet(setup))) {
      cautions.add(new Caution.Of(Danger.MAINS_OUTDOORS));
    }
    if (outdoors && catchesWind(light)) {
      cautions.add(new Caution.Of(Danger.STANDS_IN_WIND));
    }
    if (light.place().z() > HIGH_M) {
      cautions.add(new Caution.Of(Danger.HEADS_OVERHEAD));
    }
    if (isNearEyes(light)) {
      cautions.add(new Caution.Of(Danger.HEADS_NEAR_EYES));
    }
    return List.copyOf(cautions);
  }

  private static boolean isOutdoors(SetupDocument setup) {
    Optional<Boolean> indoors =
        setup.occasion().flatMap(Occasion::place).flatMap(Occasion.Place::indoors);
    return indoors.isPresent() && !indoors.get();
  }

  private static boolean isWet(SetupDocument setup) {
    String weather =
        setup.occasion().flatMap(Occasion::weather).orElse("").toLowerCase(Locale.ROOT);
    return List.of("rain", "wet", "drizzle", "snow", "sleet", "spray", "dew").stream()
        .anyMatch(weather::contains);
  }

  private static boolean catchesWind(Light light) {
    Modifier modifier = light.modifierOrStandard();
    Metres size = modifier.face().largestDimension();
    return size.value() >= SAIL_M;
  }

  private static boolean isRunning(Subject subject) {
    return subject.speedMPerS().filter(speed -> speed >= RUNNING_M_PER_S).isPresent();
  }

  private static boolean isNearEyes(Light light) {
    boolean atSomebody = light.target().held() != Target.Held.ON_SURFACE;
    return atSomebody && light.place().distanceTo(light.target().at()).value() < NEAR_EYES_M;
  }
}
