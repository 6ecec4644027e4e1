package lampwright.tasks;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.search.filter.Filter;

/**
 * A search that somebody keeps under a name of their own.
 *
 * @param question as it stands in the address of a search, {@code q=dusk&filter=mood%20calm}
 */
public record SavedSearch(String name, String question) {

  /** The longest name, in characters. */
  public static final int LONGEST_NAME = 80;

  private static final int LONGEST_QUESTION = 4_000;

  private static final Field<SavedSearch, String> NAME =
      Field.required(
          "name",
          Forms.text(LONGEST_NAME),
          SavedSearch::name,
          "What its owner calls it, once among their searches, in whatever capitals.");
  private static final Field<SavedSearch, String> QUESTION =
      Field.required(
          "question",
          Forms.text(LONGEST_QUESTION),
          SavedSearch::question,
          "What is searched for, as it stands in the address of a search, with q, filter, mood,"
              + " place, place_kind, state, archived and sort.");

  /** The search as a document. */
  public static final ObjectForm<SavedSearch> FORM =
      ObjectForm.of(
          "saved_search",
          "A search that is kept under a name.",
          values -> new SavedSearch(values.get(NAME), values.get(QUESTION)),
          List.of(NAME, QUESTION));

  /** What names are compared by. */
  String nameKey() {
    return Filter.key(name);
  }
}
