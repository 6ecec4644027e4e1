package lampwright.learning.drill;

import java.util.Map;
import java.util.Optional;

/** Makes drills. The same kind, material and seed always make the same drill. */
public final class Drills {

  /** So often the dice are thrown before a setup counts as having nothing for a kind. */
  private static final int THROWS = 60;

  private static final Map<DrillKind, Maker> MAKERS =
      Map.ofEntries(
          Map.entry(DrillKind.STOPS_BETWEEN, new StopsBetween()),
          Map.entry(DrillKind.LIGHTS_ADD, new LightsAdd()),
          Map.entry(DrillKind.POWER_AFTER_MOVE, new PowerAfterMove()),
          Map.entry(DrillKind.DISTANCE_FOR_RATIO, new DistanceForRatio()),
          Map.entry(DrillKind.AMBIENT_CHANGE, new AmbientChange()),
          Map.entry(DrillKind.LIGHT_OF_SHADOW, new LightOfShadow()),
          Map.entry(DrillKind.LIGHT_OF_READING, new LightOfReading()),
          Map.entry(DrillKind.BLUR, new MovedWhileLit()),
          Map.entry(DrillKind.APERTURE_FOR_DEPTH, new ApertureForDepth()),
          Map.entry(DrillKind.FRAMES_FROM_BATTERY, new FramesFromBattery()),
          Map.entry(DrillKind.SYNC, new FasterThanSync()),
          Map.entry(DrillKind.GEL_SHIFT, new GelShift()),
          Map.entry(DrillKind.SUN_DIRECTION, new SunDirection()),
          Map.entry(DrillKind.UNSAFE, new Unsafe()));

  private Drills() {}

  /** A drill; empty where the material has nothing for the kind. */
  public static Optional<Drill> make(DrillKind kind, Material material, long seed) {
    Maker maker = MAKERS.get(kind);
    Dice dice = new Dice(seed);
    Optional<Drill> made = Optional.empty();
    for (int i = 0; i < THROWS && made.isEmpty() && maker != null; i++) {
      made = maker.make(material, dice);
    }
    return made;
  }
}
