package lampwright.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.gear.KitId;

/** The kits of the studio that the transaction is in. */
public final class Kits {

  private final Documents documents;

  public Kits(StudioTransaction in) {
    this.documents = new Documents(in, Shelf.KITS);
  }

  /**
   * Keeps a new kit as its revision 1.
   *
   * @param document JSON, checked before
   */
  public StoredKit create(KitId id, String name, String document, String message) {
    return kit(documents.create(id.text(), name, document, message, Map.of()));
  }

  public Optional<StoredKit> find(KitId id) {
    return documents.find(id.text()).map(Kits::kit);
  }

  /** At most so many kits, the last changed first, from the start or from where a page ended. */
  public Page<StoredKit> list(Optional<Page.Place> after, int limit) {
    Page<Documents.Stored> page = documents.list(after, limit);
    return new Page<>(page.items().stream().map(Kits::kit).toList(), page.next());
  }

  /** Those of some kits that are there, by name. */
  public List<StoredKit> listOf(Collection<KitId> ids) {
    return documents.listOf(ids.stream().map(KitId::text).toList()).stream()
        .map(Kits::kit)
        .sorted(Comparator.comparing(StoredKit::name).thenComparing(kit -> kit.id().text()))
        .toList();
  }

  public int count() {
    return documents.count();
  }

  /** Puts another document in the place of the revision that it was made from. */
  public Saving replace(KitId id, int basedOn, String name, String document, String message) {
    return documents.replace(id.text(), basedOn, name, document, message, Map.of());
  }

  /** Makes a revision with the same document, because what it comes to has changed. */
  public Saving mark(KitId id, int basedOn, String message) {
    return documents.mark(id.text(), basedOn, message, Map.of());
  }

  /** Takes a kit away; its revisions stay, and the deletion becomes one. */
  public Saving delete(KitId id, int basedOn, String message) {
    return documents.delete(id.text(), basedOn, message);
  }

  /** Every change, the last first; of a deleted kit too. Empty where there never was one. */
  public List<Revision> listRevisions(KitId id) {
    return documents.revisions().list(id.text());
  }

  /** A kit as it once was; of a deleted kit too. */
  public Optional<StoredRevision> findRevision(KitId id, int number) {
    return documents.revisions().find(id.text(), number);
  }

  private static StoredKit kit(Documents.Stored stored) {
    return new StoredKit(
        new KitId(stored.id()),
        stored.revision(),
        stored.document(),
        stored.label(),
        stored.changedAt(),
        stored.changedBy());
  }
}
