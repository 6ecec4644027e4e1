package lampwright.store;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.setup.SetupId;

/** The setups of the studio that the transaction is in. */
public final class Setups {

  private final Documents documents;

  public Setups(StudioTransaction in) {
    this.documents = new Documents(in, Shelf.SETUPS);
  }

  /**
   * Keeps a new setup as its revision 1.
   *
   * @param document JSON, checked before
   */
  public StoredSetup create(SetupId id, String title, String document, String message) {
    return setup(documents.create(id.text(), title, document, message));
  }

  public Optional<StoredSetup> find(SetupId id) {
    return documents.find(id.text()).map(Setups::setup);
  }

  /** Those of some setups that the studio has, by their ids. */
  public Map<SetupId, StoredSetup> listOf(Collection<SetupId> ids) {
    return documents.listOf(ids.stream().map(SetupId::text).toList()).stream()
        .map(Setups::setup)
        .collect(Collectors.toMap(StoredSetup::id, setup -> setup));
  }

  /** At most so many setups, the last changed first, from the start or from where a page ended. */
  public Page<StoredSetup> list(Optional<Page.Place> after, int limit) {
    Page<Documents.Stored> page = documents.list(after, limit);
    return new Page<>(page.items().stream().map(Setups::setup).toList(), page.next());
  }

  /** The titles that setups have now, and that deleted ones had last. */
  public Set<String> titlesEver() {
    return documents.labelsEver();
  }

  public int count() {
    return documents.count();
  }

  /** Puts another document in the place of the revision that it was made from. */
  public Saving replace(SetupId id, int basedOn, String title, String document, String message) {
    return documents.replace(id.text(), basedOn, title, document, message);
  }

  /** Takes a setup away; its revisions stay, and the deletion becomes one. */
  public Saving delete(SetupId id, int basedOn, String message) {
    return documents.delete(id.text(), basedOn, message);
  }

  /** Every change, the last first; of a deleted setup too. Empty where there never was one. */
  public List<Revision> listRevisions(SetupId id) {
    return documents.listRevisions(id.text());
  }

  /** A setup as it once was; of a deleted setup too. */
  public Optional<StoredRevision> findRevision(SetupId id, int number) {
    return documents.findRevision(id.text(), number);
  }

  private static StoredSetup setup(Documents.Stored stored) {
    return new StoredSetup(
        new SetupId(stored.id()),
        stored.revision(),
        stored.document(),
        stored.label(),
        stored.changedAt(),
        stored.changedBy());
  }
}
