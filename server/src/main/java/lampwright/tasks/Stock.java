package lampwright.tasks;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearUse;
import lampwright.gear.stock.WholeKit;
import lampwright.gear.stock.WrittenKit;
import lampwright.store.Gear;
import lampwright.store.StoredGear;
import lampwright.store.StoredKit;
import lampwright.store.StudioTransaction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Puts kits together with the studio's gear as it is in a transaction. */
final class Stock {

  private static final Logger LOG = LoggerFactory.getLogger(Stock.class);

  private final Map<GearId, GearItem> items;

  private Stock(Map<GearId, GearItem> items) {
    this.items = Map.copyOf(items);
  }

  /** All that some kits take. */
  static Stock of(StudioTransaction in, Collection<WrittenKit> kits) {
    List<GearId> wanted =
        kits.stream().flatMap(kit -> kit.gear().stream()).map(GearUse::id).distinct().toList();
    Map<GearId, GearItem> found = new HashMap<>();
    if (!wanted.isEmpty()) {
      for (StoredGear gear : new Gear(in).listOf(wanted)) {
        StoredDocuments.find(GearItem.FORM, gear.document(), gear.id())
            .ifPresent(item -> found.put(gear.id(), item));
      }
    }
    return new Stock(found);
  }

  /** The same with other gear in the place of some. */
  Stock with(Map<GearId, GearItem> others) {
    Map<GearId, GearItem> all = new HashMap<>(items);
    all.putAll(others);
    return new Stock(all);
  }

  WholeKit whole(WrittenKit kit) {
    return WholeKit.of(kit, items);
  }

  /**
   * A kit that is about to be kept.
   *
   * @throws Refused Invalid where it is not a whole one
   */
  static WholeKit mustBeWhole(StudioTransaction in, WrittenKit kit) {
    WholeKit whole = of(in, List.of(kit)).whole(kit);
    if (!whole.problems().isEmpty()) {
      throw Refused.invalid(whole.problems());
    }
    return whole;
  }

  KeptKit kept(StoredKit stored, WrittenKit written) {
    WholeKit whole = whole(written);
    if (!whole.problems().isEmpty()) {
      LOG.error("Kit {} is no whole one: {}", stored.id(), whole.problems());
    }
    return new KeptKit(
        stored.id(), stored.revision(), stored.changedAt(), written, whole.kit(), whole.missing());
  }
}
