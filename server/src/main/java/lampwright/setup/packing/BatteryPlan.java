package lampwright.setup.packing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lampwright.setup.LightId;

/**
 * Which batteries a day empties. Counts are for new batteries; what age and stand-by take nobody
 * knows beforehand.
 *
 * @param feeds each head, or pack, with a battery of its own
 * @param unknown lights on batteries whose flashes to a charge, or power, nobody wrote down
 * @param onMains what each setup draws from the mains, those that draw some
 */
public record BatteryPlan(List<Feed> feeds, List<Unknown> unknown, List<MainsNeed> onMains) {

  /** Share of a charge that is kept back: common practice, no source. */
  public static final double KEPT_BACK = 0.2;

  /**
   * What a battery gives at 0 °C of what it gives when warm: the careful end of common practice, a
   * fifth to two fifths less.
   */
  public static final double LEFT_IN_THE_COLD = 0.6;

  /** Frames where a setup plans none: common practice, no source. */
  public static final int USUAL_FRAMES = 60;

  /** A light that cannot be counted. */
  public record Unknown(int setup, LightId light) {}

  /**
   * One battery feed.
   *
   * @param name of the head or pack
   * @param number which of its kind, from 1
   * @param there charged batteries that go with it, the one within included
   */
  public record Feed(String name, int number, int there, List<Use> uses, List<Change> changes) {

    public Feed {
      uses = List.copyOf(uses);
      changes = List.copyOf(changes);
    }

    /** Batteries that the day takes, the one within included; all charged the night before. */
    public int batteries() {
      return 1 + changes.size();
    }

    /** How many charged batteries are missing. */
    public int lacking() {
      return Math.max(0, batteries() - there);
    }

    /** Full charges that are used in all, nothing kept back. */
    public double charges() {
      return uses.stream().mapToDouble(Use::charges).sum();
    }
  }

  /**
   * What one setup takes from a feed.
   *
   * @param framesPlanned whether the setup says how many frames; else it is {@link #USUAL_FRAMES}
   * @param testPops flashes while it is built and run through
   * @param energyWs of one flash of one head
   * @param charges of a full battery, unrounded
   */
  public record Use(
      int setup,
      LightId light,
      int frames,
      boolean framesPlanned,
      int testPops,
      double energyWs,
      double charges) {}

  /**
   * When a battery is changed.
   *
   * @param setup in which setup, from 0
   * @param afterFrame 0 for before the setup is built
   */
  public record Change(int setup, int afterFrame) {}

  public BatteryPlan {
    feeds = List.copyOf(feeds);
    unknown = List.copyOf(unknown);
    onMains = List.copyOf(onMains);
  }

  /** What must be charged the night before, by the name of what it feeds. */
  public Map<String, Integer> toCharge() {
    Map<String, Integer> charged = new TreeMap<>();
    feeds.forEach(feed -> charged.merge(feed.name(), feed.batteries(), Integer::sum));
    return charged;
  }

  /** Batteries beyond those within, by the name of what they feed. */
  public Map<String, Integer> spares() {
    Map<String, Integer> spares = new TreeMap<>();
    feeds.stream()
        .filter(feed -> !feed.changes().isEmpty())
        .forEach(feed -> spares.merge(feed.name(), feed.changes().size(), Integer::sum));
    return spares;
  }
}
