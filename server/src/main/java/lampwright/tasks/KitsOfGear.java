package lampwright.tasks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.WholeKit;
import lampwright.gear.stock.WrittenKit;
import lampwright.store.Gear;
import lampwright.store.Kits;
import lampwright.store.StoredKit;
import lampwright.store.StudioTransaction;

/**
 * The kits that use some gear which is about to change. They must be held, see {@link
 * Gear#holdKitsAndGear}.
 */
final class KitsOfGear {

  /** More names than this make a message that nobody reads. */
  private static final int MOST_NAMES = 5;

  private final StudioTransaction in;
  private final Map<StoredKit, WrittenKit> kits = new LinkedHashMap<>();
  private final Stock stock;

  private KitsOfGear(StudioTransaction in, Collection<GearId> gear) {
    this.in = in;
    for (StoredKit stored : new Kits(in).listOf(new Gear(in).kitsThatUse(gear))) {
      StoredDocuments.find(WrittenKit.FORM, stored.document(), stored.id())
          .ifPresent(written -> kits.put(stored, written));
    }
    this.stock = Stock.of(in, kits.values());
  }

  /** Those that use any of it, with all of their gear as it is before the change. */
  static KitsOfGear of(StudioTransaction in, Collection<GearId> gear) {
    return new KitsOfGear(in, gear);
  }

  /**
   * Lets the kits follow a change: each that comes to something else gets a revision, so that its
   * ETag tells of it.
   *
   * @param changed the gear as it will be
   * @throws Refused Clash where a kit could not be kept with it
   */
  void follow(Map<GearId, GearItem> changed) {
    mustStayWhole(changed);
    Stock then = stock.with(changed);
    kits.forEach(
        (stored, written) -> {
          WholeKit before = stock.whole(written);
          if (!before.equals(then.whole(written))) {
            Cataloguing.mustBeSaved(
                new Kits(in).mark(stored.id(), stored.revision(), "The studio's gear changed."));
          }
        });
  }

  /**
   * Holds a change to the kits that use the gear.
   *
   * @throws Refused Clash where a kit could not be kept with it
   */
  void mustStayWhole(Map<GearId, GearItem> changed) {
    Stock then = stock.with(changed);
    List<String> broken = new ArrayList<>();
    kits.forEach(
        (stored, written) ->
            then.whole(written).problems().stream()
                .findFirst()
                .ifPresent(
                    problem ->
                        broken.add("\"%s\": %s".formatted(stored.name(), problem.message()))));
    if (!broken.isEmpty()) {
      throw new Refused(
          new Refusal.Clash("Kits that use it would be whole no more. " + listed(broken, " ")));
    }
  }

  /**
   * Asks that none uses it.
   *
   * @throws Refused Clash naming those that do
   */
  void mustBeNone() {
    if (!kits.isEmpty()) {
      List<String> names =
          kits.keySet().stream().map(kit -> "\"%s\"".formatted(kit.name())).toList();
      throw new Refused(
          new Refusal.Clash("Kits use it: " + listed(names, ", ") + " Take it out of them first."));
    }
  }

  private static String listed(List<String> all, String between) {
    String some = all.stream().limit(MOST_NAMES).collect(Collectors.joining(between));
    int more = all.size() - MOST_NAMES;
    return more > 0 ? some + " And " + more + " more." : some + (some.endsWith(".") ? "" : ".");
  }
}
