package lampwright.tasks;

import java.util.Optional;
import java.util.function.Supplier;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.setup.SetupDocument;
import lampwright.store.Transaction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Documents on their way to the store and back. */
final class StoredDocuments {

  private static final Logger LOG = LoggerFactory.getLogger(StoredDocuments.class);

  private StoredDocuments() {}

  static <T> String print(Form<T> form, T document) {
    return Json.print(form.write(document));
  }

  /**
   * Reads what was checked before it was stored, where one that cannot be read must not keep the
   * others away: that one is logged and left out.
   *
   * @param id what the log calls it
   */
  static <T> Optional<T> find(Form<T> form, String json, Object id) {
    return find(() -> read(form, json), id);
  }

  /** The same of a setup. */
  static Optional<SetupDocument> findSetup(Transaction in, String json, Object id) {
    return find(() -> in.setupDocuments().read(json), id);
  }

  private static <T> Optional<T> find(Supplier<T> reading, Object id) {
    try {
      return Optional.of(reading.get());
    } catch (IllegalStateException unreadable) {
      LOG.error("Stored document {} is left out", id, unreadable);
      return Optional.empty();
    }
  }

  /**
   * Reads what was checked before it was stored.
   *
   * @throws IllegalStateException where the form has changed and no migration has followed
   */
  static <T> T read(Form<T> form, String json) {
    return switch (form.read(Json.parse(json))) {
      case Reading.Sound<T>(T value) -> value;
      case Reading.Faulty<T> faulty ->
          throw new IllegalStateException("Stored document is faulty: " + faulty.problems());
    };
  }
}
