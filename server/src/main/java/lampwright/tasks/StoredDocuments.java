package lampwright.tasks;

import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.Reading;

/** Documents on their way to the store and back. */
final class StoredDocuments {

  private StoredDocuments() {}

  static <T> String print(Form<T> form, T document) {
    return Json.print(form.write(document));
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
