package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import lampwright.engine.match.Uses;
import lampwright.engine.unit.Seconds;
import lampwright.gear.Pack;
import lampwright.gear.Several;
import lampwright.gear.Stand;

/**
 * What the lights of a setup share of a kit: so many heads of a model, so many boxes, stands that
 * reach so high, outlets and energy of packs. Each has an index, as the optimiser wants it.
 *
 * <p>Stands are counted in classes: of each height, all that reach at least so high. A light takes
 * one of every class up to the one it needs, so that a high stand can serve a low light.
 */
final class Supplies {

  /** Lower than this a head stands on the ground or on anything. */
  private static final double WITHOUT_STAND_M = 0.3;

  private final double[] amounts;
  private final int firstModifier;
  private final int firstGel;
  private final int firstStand;
  private final int firstPack;
  private final double[] standHeights;

  Supplies(KitTonight kit, Pace pace) {
    List<Double> all = new ArrayList<>();
    kit.heads().forEach(model -> all.add((double) model.count()));
    firstModifier = all.size();
    kit.modifiers().forEach(several -> all.add((double) several.count()));
    firstGel = all.size();
    kit.gels().forEach(several -> all.add((double) several.count()));
    firstStand = all.size();
    TreeMap<Double, Integer> byHeight = new TreeMap<>();
    for (Several<Stand> several : kit.stands()) {
      byHeight.merge(several.item().highest().value(), several.count(), Integer::sum);
    }
    standHeights = byHeight.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    for (double height : standHeights) {
      all.add(
          (double) byHeight.tailMap(height).values().stream().mapToInt(Integer::intValue).sum());
    }
    firstPack = all.size();
    for (KitTonight.PackTonight pack : kit.packs()) {
      all.add((double) pack.pack().outlets());
      all.add(energyPerFrame(pack, pace));
    }
    amounts = all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * The energy that a pack can give for each frame: all it holds, or what pace and frames allow.
   */
  private static double energyPerFrame(KitTonight.PackTonight tonight, Pace pace) {
    Pack pack = tonight.pack();
    double energy = pack.energy().value();
    double most = energy;
    if (pace.betweenFrames().isPresent() && pack.recycle().isPresent()) {
      double full = pack.recycle().get().value();
      most = Math.min(most, energy * pace.betweenFrames().get().value() / full);
    }
    if (pace.frames().isPresent() && pack.flashesPerCharge().isPresent()) {
      double flashes = pack.flashesPerCharge().get() * tonight.charges();
      most = Math.min(most, energy * flashes / pace.frames().get());
    }
    return most;
  }

  /** The pace and the number of frames that are wished for. */
  record Pace(Optional<Seconds> betweenFrames, Optional<Integer> frames) {}

  double[] amounts() {
    return amounts.clone();
  }

  /** Asks whether some stand reaches so high, or none is needed. */
  boolean standReaches(double heightM) {
    return standHeights.length == 0
        || heightM <= WITHOUT_STAND_M
        || heightM <= standHeights[standHeights.length - 1];
  }

  /** The heights of the kit's stands, lowest first; none where it names no stands. */
  double[] standHeights() {
    return standHeights.clone();
  }

  /** Asks whether a head so high up needs a stand at all. */
  static boolean needsStandAt(double heightM) {
    return heightM > WITHOUT_STAND_M;
  }

  private boolean needsStand(double heightM) {
    return standHeights.length > 0 && needsStandAt(heightM);
  }

  /** Collects what one light takes, in rising order of the supplies. */
  final class Taking {
    private final TreeMap<Integer, Double> taken = new TreeMap<>();

    Taking head(int model, int count) {
      return take(model, count);
    }

    Taking modifier(int index, int count) {
      return take(firstModifier + index, count);
    }

    Taking gel(int index, int count) {
      return take(firstGel + index, count);
    }

    Taking stand(double heightM) {
      if (needsStand(heightM)) {
        for (int i = 0; i < standHeights.length; i++) {
          take(firstStand + i, 1);
          if (heightM <= standHeights[i]) {
            break;
          }
        }
      }
      return this;
    }

    Taking pack(int index, int outlets) {
      return take(firstPack + 2 * index, outlets);
    }

    Taking copy() {
      Taking copy = new Taking();
      copy.taken.putAll(taken);
      return copy;
    }

    Uses uses() {
      return Uses.of(
          taken.keySet().stream().mapToInt(Integer::intValue).toArray(),
          taken.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The same, and so much of a pack's energy for each frame. */
    Uses withEnergy(int pack, double wattSeconds) {
      TreeMap<Integer, Double> all = new TreeMap<>(taken);
      all.put(firstPack + 2 * pack + 1, wattSeconds);
      return Uses.of(
          all.keySet().stream().mapToInt(Integer::intValue).toArray(),
          all.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    private Taking take(int supply, double amount) {
      taken.merge(supply, amount, Double::sum);
      return this;
    }
  }
}
