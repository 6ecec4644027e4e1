package lampwright.tasks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;
import lampwright.people.FormerName;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.Gear;
import lampwright.store.Kits;
import lampwright.store.Page;
import lampwright.store.Revision;
import lampwright.store.StoredGear;
import lampwright.store.StudioTransaction;

/**
 * Keeps a studio's gear, which its kits share. Who may change kits may change it. No change is kept
 * that would break a kit; whoever makes one holds all kits and gear of the studio until it is kept.
 */
public final class GearKeeping {

  /** A hire house's shelves; more than this would be a mistake of somebody's script. */
  static final int MOST_GEAR = 1_000;

  private final Database database;
  private final Ids ids;

  public GearKeeping(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  /**
   * The gear that an address names.
   *
   * @throws Refused NotFound where no gear can have that id
   */
  public static GearId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new GearId(text);
  }

  /** Keeps new gear. */
  public KeptGear create(
      Caller caller, StudioId studio, GearItem item, Message message, Once once) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_KITS);
          return once.make(
              in,
              ids,
              id -> create(in, new GearId(id), item, message),
              id -> new Gear(in).find(new GearId(id)).map(stored -> kept(in, stored)));
        });
  }

  private static KeptGear create(StudioTransaction in, GearId id, GearItem item, Message message) {
    Gear gear = new Gear(in);
    gear.holdKitsAndGear();
    mustHaveRoom(gear.count() + 1);
    String json = StoredDocuments.print(GearItem.FORM, item);
    return kept(in, gear.create(id, item.name(), json, message.text()));
  }

  static void mustHaveRoom(int wanted) {
    if (wanted > MOST_GEAR) {
      throw new Refused(
          new Refusal.Clash(
              "The studio would have %d pieces of gear, and %d are the most. Delete some first."
                  .formatted(wanted, MOST_GEAR)));
    }
  }

  /** Gear as it is now. */
  public KeptGear get(Caller caller, StudioId studio, GearId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return get(in, id);
        });
  }

  static KeptGear get(StudioTransaction in, GearId id) {
    return kept(in, new Gear(in).find(id).orElseThrow(Refused::notFound));
  }

  /**
   * What of a studio's gear is wanted.
   *
   * @param kind only of it
   * @param named only what has this in its name
   */
  public record Wish(Optional<GearKind> kind, Optional<String> named) {}

  /** At most so much gear, the last changed first. */
  public Listed<KeptGear> list(Caller caller, StudioId studio, Wish wish, Listed.Wish part) {
    Optional<Page.Place> after = PageCursor.read(part.cursor());
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          Page<StoredGear> page = new Gear(in).list(wish.kind(), wish.named(), after, part.limit());
          return PageCursor.listed(new Page<>(readable(in, page.items()), page.next()));
        });
  }

  /** All of a studio's gear, by kind, name and id; for who may read it. */
  public List<KeptGear> listAll(Caller caller, StudioId studio, Optional<GearKind> kind) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          return readable(in, new Gear(in).listAll(kind));
        });
  }

  /** The living kits that use it, by name. */
  public List<KitOfGear> kits(Caller caller, StudioId studio, GearId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          get(in, id);
          return new Kits(in)
              .listOf(new Gear(in).kitsThatUse(List.of(id))).stream()
                  .map(kit -> new KitOfGear(kit.id(), kit.name()))
                  .toList();
        });
  }

  /**
   * Puts another document in the place of the one that it was made from.
   *
   * @param basedOn the revision it was made from; empty replaces whatever is there
   * @throws Refused Invalid at {@code /kind} for another kind, Clash where a kit that uses it would
   *     be whole no more
   */
  public KeptGear replace(
      Caller caller,
      StudioId studio,
      GearId id,
      Optional<Integer> basedOn,
      GearItem item,
      Message message) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_KITS);
          new Gear(in).holdKitsAndGear();
          KeptGear before = get(in, id);
          save(in, before, basedOn.orElse(before.revision()), item, message);
          return get(in, id);
        });
  }

  /** Saves what is held already, and lets its kits follow. */
  static void save(
      StudioTransaction in, KeptGear before, int basedOn, GearItem item, Message message) {
    mustStayOfItsKind(before, item);
    KitsOfGear kits = KitsOfGear.of(in, List.of(before.id()));
    String json = StoredDocuments.print(GearItem.FORM, item);
    Cataloguing.mustBeSaved(
        new Gear(in).replace(before.id(), basedOn, item.name(), json, message.text()));
    kits.follow(Map.of(before.id(), item));
  }

  private static void mustStayOfItsKind(KeptGear before, GearItem item) {
    if (before.document().kind() != item.kind()) {
      throw Refused.invalid(
          "/kind",
          "Kind (\"%s\") must stay \"%s\". Keep other gear as new gear."
              .formatted(item.kind().word(), before.document().kind().word()));
    }
  }

  /**
   * Takes gear away; its revisions are kept.
   *
   * @throws Refused Clash where kits use it
   */
  public void delete(
      Caller caller, StudioId studio, GearId id, Optional<Integer> basedOn, Message message) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_KITS);
          Gear gear = new Gear(in);
          gear.holdKitsAndGear();
          int from = basedOn.orElseGet(() -> get(in, id).revision());
          int saved = Cataloguing.mustBeSaved(gear.delete(id, from, message.text()));
          KitsOfGear.of(in, List.of(id)).mustBeNone();
          return saved;
        });
  }

  /**
   * Every change of living gear, the newest first, without documents.
   *
   * @throws Refused NotFound where there is no such gear
   */
  public List<PastGear> revisions(Caller caller, StudioId studio, GearId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          get(in, id);
          Map<PersonId, String> names = Cataloguing.names(in);
          return new Gear(in)
              .listRevisions(id).stream().map(line -> past(line, names, Optional.empty())).toList();
        });
  }

  /**
   * One revision of living gear with its document.
   *
   * @throws Refused NotFound where there is none
   */
  public PastGear revision(Caller caller, StudioId studio, GearId id, int number) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.READ_SETUPS);
          get(in, id);
          return new Gear(in)
              .findRevision(id, number)
              .map(
                  found ->
                      past(
                          found.revision(),
                          Cataloguing.names(in),
                          Optional.of(StoredDocuments.read(GearItem.FORM, found.document()))))
              .orElseThrow(Refused::notFound);
        });
  }

  private static PastGear past(
      Revision line, Map<PersonId, String> names, Optional<GearItem> document) {
    return new PastGear(
        line.number(),
        line.changedAt(),
        names.getOrDefault(line.changedBy(), FormerName.UNNAMED),
        line.message(),
        line.deleted(),
        document);
  }

  static List<KeptGear> readable(StudioTransaction in, List<StoredGear> gear) {
    Map<PersonId, String> names = Cataloguing.names(in);
    return gear.stream()
        .flatMap(
            stored ->
                StoredDocuments.find(GearItem.FORM, stored.document(), stored.id())
                    .map(item -> kept(stored, names, item))
                    .stream())
        .toList();
  }

  private static KeptGear kept(StudioTransaction in, StoredGear stored) {
    return kept(
        stored, Cataloguing.names(in), StoredDocuments.read(GearItem.FORM, stored.document()));
  }

  private static KeptGear kept(StoredGear stored, Map<PersonId, String> names, GearItem item) {
    return new KeptGear(
        stored.id(),
        stored.revision(),
        stored.changedAt(),
        names.getOrDefault(stored.changedBy(), FormerName.UNNAMED),
        item);
  }
}
