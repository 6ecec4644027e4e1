package lampwright.tasks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.gear.KitId;
import lampwright.gear.stock.WrittenKit;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.Gear;
import lampwright.store.Kits;
import lampwright.store.StoredKit;
import lampwright.store.StudioTransaction;

/**
 * Keeps a studio's kits. Whoever changes one holds all kits and gear of the studio until it is
 * kept, so that it is a whole one with the gear as it is then.
 */
public final class KitKeeping {

  /** A studio has a dozen kits; more than this would be a mistake of somebody's script. */
  static final int MOST_KITS = 200;

  private final Database database;
  private final Ids ids;

  public KitKeeping(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  /**
   * The kit that an address names.
   *
   * @throws Refused NotFound where no kit can have that id
   */
  public static KitId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new KitId(text);
  }

  /** Keeps a new kit. */
  public KeptKit create(Caller caller, StudioId studio, WrittenKit kit, Once once) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_KITS);
          return once.make(
              in, ids, id -> create(in, new KitId(id), kit), id -> find(in, new KitId(id)));
        });
  }

  private static KeptKit create(StudioTransaction in, KitId id, WrittenKit kit) {
    new Gear(in).holdKitsAndGear();
    Stock.mustBeWhole(in, kit);
    Kits kits = new Kits(in);
    if (kits.count() >= MOST_KITS) {
      throw new Refused(
          new Refusal.Clash("The studio has " + MOST_KITS + " kits already. Delete one first."));
    }
    String json = StoredDocuments.print(WrittenKit.FORM, kit);
    return kept(in, kits.create(id, kit.name(), json, ""));
  }

  /** A kit as it is now. */
  public KeptKit get(Caller caller, StudioId studio, KitId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return get(in, id);
        });
  }

  static KeptKit get(StudioTransaction in, KitId id) {
    return find(in, id).orElseThrow(Refused::notFound);
  }

  static Optional<KeptKit> find(StudioTransaction in, KitId id) {
    return new Kits(in).find(id).map(stored -> kept(in, stored));
  }

  /** All kits of a studio, the last changed first. */
  public List<KeptKit> list(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return kept(in, new Kits(in).list(Optional.empty(), MOST_KITS).items());
        });
  }

  /** What the studio calls its kits, the last changed first, without a look at what is in them. */
  public Map<KitId, String> names(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return names(in);
        });
  }

  static Map<KitId, String> names(StudioTransaction in) {
    Map<KitId, String> names = new LinkedHashMap<>();
    new Kits(in)
        .list(Optional.empty(), MOST_KITS)
        .items()
        .forEach(kit -> names.put(kit.id(), kit.name()));
    return names;
  }

  /**
   * Puts another document in the place of the one that it was made from.
   *
   * @param basedOn the revision it was made from; empty replaces whatever is there
   */
  public KeptKit replace(
      Caller caller, StudioId studio, KitId id, Optional<Integer> basedOn, WrittenKit kit) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_KITS);
          new Gear(in).holdKitsAndGear();
          Stock.mustBeWhole(in, kit);
          int from = basedOn.orElseGet(() -> get(in, id).revision());
          String json = StoredDocuments.print(WrittenKit.FORM, kit);
          Cataloguing.mustBeSaved(new Kits(in).replace(id, from, kit.name(), json, ""));
          return get(in, id);
        });
  }

  /** Takes a kit away; its revisions are kept. */
  public void delete(Caller caller, StudioId studio, KitId id, Optional<Integer> basedOn) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_KITS);
          new Gear(in).holdKitsAndGear();
          int from = basedOn.orElseGet(() -> get(in, id).revision());
          return Cataloguing.mustBeSaved(new Kits(in).delete(id, from, ""));
        });
  }

  private static KeptKit kept(StudioTransaction in, StoredKit stored) {
    WrittenKit written = StoredDocuments.read(WrittenKit.FORM, stored.document());
    return Stock.of(in, List.of(written)).kept(stored, written);
  }

  /** Those that can be read, with one look at the gear of all. */
  private static List<KeptKit> kept(StudioTransaction in, List<StoredKit> kits) {
    Map<StoredKit, WrittenKit> written = new LinkedHashMap<>();
    for (StoredKit stored : kits) {
      StoredDocuments.find(WrittenKit.FORM, stored.document(), stored.id())
          .ifPresent(document -> written.put(stored, document));
    }
    Stock stock = Stock.of(in, written.values());
    return written.entrySet().stream()
        .map(kit -> stock.kept(kit.getKey(), kit.getValue()))
        .toList();
  }
}
