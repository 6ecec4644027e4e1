package lampwright.store;

import static lampwright.schema.generated.Tables.GEAR;
import static lampwright.schema.generated.Tables.KIT_GEAR;
import static lampwright.schema.generated.Tables.STUDIO;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.gear.KitId;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearKind;
import org.jooq.Condition;
import org.jooq.impl.DSL;

/** The gear of the studio that the transaction is in, and which kits use it. */
public final class Gear {

  private final StudioTransaction in;
  private final Documents documents;

  public Gear(StudioTransaction in) {
    this.in = in;
    this.documents = new Documents(in, Shelf.ALL_GEAR);
  }

  /**
   * Makes who changes the studio's kits or gear wait until the transaction ends. A kit is right or
   * wrong by several rows at once, so a lock on each row that is read would let two pass one
   * another, or hold one another up for ever.
   */
  public void holdKitsAndGear() {
    in.sql()
        .select(STUDIO.ID)
        .from(STUDIO)
        .where(STUDIO.ID.eq(in.studio().text()))
        .forNoKeyUpdate()
        .fetch();
  }

  /**
   * Keeps new gear as its revision 1.
   *
   * @param document JSON, checked before
   */
  public StoredGear create(GearId id, String name, String document, String message) {
    return gear(documents.create(id.text(), name, document, message, Map.of()));
  }

  public Optional<StoredGear> find(GearId id) {
    return documents.find(id.text()).map(Gear::gear);
  }

  /** Those of some gear that are there, in no order. */
  public List<StoredGear> listOf(Collection<GearId> ids) {
    return documents.listOf(ids.stream().map(GearId::text).toList()).stream()
        .map(Gear::gear)
        .toList();
  }

  /**
   * At most so much gear, the last changed first, from the start or from where a page ended.
   *
   * @param kind only of it
   * @param named only what has this in its name, in small letters or capitals
   */
  public Page<StoredGear> list(
      Optional<GearKind> kind, Optional<String> named, Optional<Page.Place> after, int limit) {
    Condition wanted =
        kind.map(k -> GEAR.KIND.eq(k.word()))
            .orElse(DSL.noCondition())
            .and(named.map(GEAR.NAME::containsIgnoreCase).orElse(DSL.noCondition()));
    Page<Documents.Stored> page = documents.list(wanted, after, limit);
    return new Page<>(page.items().stream().map(Gear::gear).toList(), page.next());
  }

  /** All of it, by kind, name and id. */
  public List<StoredGear> listAll(Optional<GearKind> kind) {
    List<String> ids =
        in.sql()
            .select(GEAR.ID)
            .from(GEAR)
            .where(GEAR.STUDIO_ID.eq(in.studio().text()))
            .and(GEAR.DELETED_AT.isNull())
            .and(kind.map(k -> GEAR.KIND.eq(k.word())).orElse(DSL.noCondition()))
            .orderBy(GEAR.KIND, GEAR.NAME, GEAR.ID)
            .fetch(GEAR.ID);
    Map<String, StoredGear> byId =
        documents.listOf(ids).stream().collect(Collectors.toMap(Documents.Stored::id, Gear::gear));
    return ids.stream().flatMap(id -> Optional.ofNullable(byId.get(id)).stream()).toList();
  }

  public int count() {
    return documents.count();
  }

  /** Which living kits use some of it. */
  public Set<KitId> kitsThatUse(Collection<GearId> gear) {
    return in
        .sql()
        .selectDistinct(KIT_GEAR.KIT_ID)
        .from(KIT_GEAR)
        .where(KIT_GEAR.STUDIO_ID.eq(in.studio().text()))
        .and(KIT_GEAR.GEAR_ID.in(gear.stream().map(GearId::text).toList()))
        .fetchSet(KIT_GEAR.KIT_ID)
        .stream()
        .map(KitId::new)
        .collect(Collectors.toSet());
  }

  /** Puts another document in the place of the revision that it was made from. */
  public Saving replace(GearId id, int basedOn, String name, String document, String message) {
    return documents.replace(id.text(), basedOn, name, document, message, Map.of());
  }

  /** Takes it away; its revisions stay, and the deletion becomes one. */
  public Saving delete(GearId id, int basedOn, String message) {
    return documents.delete(id.text(), basedOn, message);
  }

  /** Every change, the last first; of deleted gear too. Empty where there never was any. */
  public List<Revision> listRevisions(GearId id) {
    return documents.revisions().list(id.text());
  }

  /** Gear as it once was; deleted gear too. */
  public Optional<StoredRevision> findRevision(GearId id, int number) {
    return documents.revisions().find(id.text(), number);
  }

  private static StoredGear gear(Documents.Stored stored) {
    return new StoredGear(
        new GearId(stored.id()),
        stored.revision(),
        stored.document(),
        stored.label(),
        stored.changedAt(),
        stored.changedBy());
  }
}
