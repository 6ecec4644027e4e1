package lampwright.store;

import java.util.Map;
import java.util.Optional;
import lampwright.learning.trail.TrailId;

/** The trails of the studio that the transaction is in. */
public final class Trails {

  private final Documents documents;

  public Trails(StudioTransaction in) {
    this.documents = new Documents(in, Shelf.TRAILS);
  }

  /**
   * Keeps a new trail as its revision 1.
   *
   * @param document JSON, checked before
   */
  public StoredTrail create(TrailId id, String name, String document, String message) {
    return trail(documents.create(id.text(), name, document, message, Map.of()));
  }

  public Optional<StoredTrail> find(TrailId id) {
    return documents.find(id.text()).map(Trails::trail);
  }

  /** At most so many, the last changed first, from the start or from where a page ended. */
  public Page<StoredTrail> list(Optional<Page.Place> after, int limit) {
    Page<Documents.Stored> page = documents.list(after, limit);
    return new Page<>(page.items().stream().map(Trails::trail).toList(), page.next());
  }

  public int count() {
    return documents.count();
  }

  /** Puts another document in the place of the revision that it was made from. */
  public Saving replace(TrailId id, int basedOn, String name, String document, String message) {
    return documents.replace(id.text(), basedOn, name, document, message, Map.of());
  }

  /** Takes a trail away; its revisions stay, and the deletion becomes one. */
  public Saving delete(TrailId id, int basedOn, String message) {
    return documents.delete(id.text(), basedOn, message);
  }

  private static StoredTrail trail(Documents.Stored stored) {
    return new StoredTrail(
        new TrailId(stored.id()),
        stored.revision(),
        stored.document(),
        stored.label(),
        stored.changedAt(),
        stored.changedBy());
  }
}
