package lampwright.store;

import static lampwright.schema.generated.Tables.LOCATION;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import lampwright.place.LocationId;

/** The locations of the studio that the transaction is in. */
public final class Locations {

  private final StudioTransaction in;
  private final Documents documents;

  public Locations(StudioTransaction in) {
    this.in = in;
    this.documents = new Documents(in, Shelf.LOCATIONS);
  }

  /**
   * Keeps a new location as its revision 1.
   *
   * @param document JSON, checked before
   */
  public StoredLocation create(LocationId id, String name, String document, String message) {
    return location(documents.create(id.text(), name, document, message, Map.of()));
  }

  public Optional<StoredLocation> find(LocationId id) {
    return documents.find(id.text()).map(Locations::location);
  }

  /**
   * Whether the studio has a location, which then stays until the transaction ends: nobody can take
   * it away while a setup that names it is on its way.
   */
  public boolean holds(LocationId id) {
    return in.sql()
        .select(LOCATION.ID)
        .from(LOCATION)
        .where(LOCATION.STUDIO_ID.eq(in.studio().text()))
        .and(LOCATION.ID.eq(id.text()))
        .and(LOCATION.DELETED_AT.isNull())
        .forShare()
        .fetchOptional()
        .isPresent();
  }

  /** At most so many, the last changed first, from the start or from where a page ended. */
  public Page<StoredLocation> list(Optional<Page.Place> after, int limit) {
    Page<Documents.Stored> page = documents.list(after, limit);
    return new Page<>(page.items().stream().map(Locations::location).toList(), page.next());
  }

  /** The names and ids of all, by name. */
  public Map<LocationId, String> names() {
    Map<LocationId, String> names = new LinkedHashMap<>();
    in.sql()
        .select(LOCATION.ID, LOCATION.NAME)
        .from(LOCATION)
        .where(LOCATION.STUDIO_ID.eq(in.studio().text()))
        .and(LOCATION.DELETED_AT.isNull())
        .orderBy(LOCATION.NAME, LOCATION.ID)
        .forEach(found -> names.put(new LocationId(found.value1()), found.value2()));
    return names;
  }

  public int count() {
    return documents.count();
  }

  /** Puts another document in the place of the revision that it was made from. */
  public Saving replace(LocationId id, int basedOn, String name, String document, String message) {
    return indexed(id, documents.replace(id.text(), basedOn, name, document, message, Map.of()));
  }

  /** Takes a location away; its revisions stay, and the deletion becomes one. */
  public Saving delete(LocationId id, int basedOn, String message) {
    return indexed(id, documents.delete(id.text(), basedOn, message));
  }

  private Saving indexed(LocationId id, Saving saving) {
    if (saving instanceof Saving.Saved) {
      new SetupsToIndex(in).becauseOf(id);
    }
    return saving;
  }

  private static StoredLocation location(Documents.Stored stored) {
    return new StoredLocation(
        new LocationId(stored.id()),
        stored.revision(),
        stored.document(),
        stored.label(),
        stored.changedAt(),
        stored.changedBy());
  }
}
