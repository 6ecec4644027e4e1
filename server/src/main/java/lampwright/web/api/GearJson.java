package lampwright.web.api;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.gear.stock.GearItem;
import lampwright.tasks.KeptGear;
import lampwright.tasks.KitOfGear;
import lampwright.tasks.PastGear;

/** A studio's gear, as the API tells it. */
final class GearJson {

  private GearJson() {}

  /** One as it is now. */
  record One(String id, int revision, Instant changedAt, String changedBy, Object document) {

    static One of(KeptGear gear) {
      return new One(
          gear.id().text(),
          gear.revision(),
          gear.changedAt(),
          gear.changedBy(),
          GearItem.FORM.write(gear.document()));
    }
  }

  /** One in a list. */
  record Item(
      String id,
      String kind,
      String name,
      int count,
      int outOfOrder,
      int readings,
      int revision,
      Instant changedAt) {

    static Item of(KeptGear gear) {
      GearItem item = gear.document();
      return new Item(
          gear.id().text(),
          item.kind().word(),
          item.name(),
          item.count(),
          item.outOfOrder(),
          item.readings().size(),
          gear.revision(),
          gear.changedAt());
    }
  }

  /** Part of them. */
  record Part(List<Item> items, Optional<String> next) {}

  /** A line of a history. */
  record Line(
      int revision,
      Instant changedAt,
      String changedBy,
      String message,
      boolean deleted,
      Optional<Object> document) {

    static Line of(PastGear past) {
      return new Line(
          past.revision(),
          past.changedAt(),
          past.changedBy(),
          past.message(),
          past.deleted(),
          past.document().map(GearItem.FORM::write));
    }
  }

  /** A whole history. */
  record Lines(List<Line> items) {}

  /** A kit that uses it. */
  record KitItem(String id, String name) {

    static KitItem of(KitOfGear kit) {
      return new KitItem(kit.id().text(), kit.name());
    }
  }

  /** All kits that use it. */
  record Kits(List<KitItem> items) {}
}
