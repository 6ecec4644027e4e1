package lampwright.web.api;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Forms;
import lampwright.tasks.Suggesting;
import lampwright.tasks.Suggestion;
import lampwright.web.http.Door;

/** How a search that is being typed may go on: {@code ?q=&limit=}. */
public final class SuggestionApi {

  private static final String TEXT = "q";
  private static final String LIMIT = "limit";
  private static final int LONGEST_TEXT = 2_000;
  private static final int MOST = 20;
  private static final int USUAL = 8;

  private final Door door;
  private final Suggesting suggesting;

  public SuggestionApi(Door door, Suggesting suggesting) {
    this.door = door;
    this.suggesting = suggesting;
  }

  private record Item(
      String words, String kind, Optional<String> q, Optional<Long> count, Optional<String> setup) {

    static Item of(Suggestion suggestion) {
      return switch (suggestion) {
        case Suggestion.Text text ->
            new Item(
                text.words(),
                text.kind(),
                Optional.of(text.text()),
                text.count().isPresent() ? Optional.of(text.count().getAsLong()) : Optional.empty(),
                Optional.empty());
        case Suggestion.Setup setup ->
            new Item(
                setup.words(),
                setup.kind(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(setup.id()));
      };
    }
  }

  private record All(List<Item> items) {}

  /** Shows them, the most useful first. */
  public void list(Context context) {
    Query query = new Query(context, Set.of(TEXT, LIMIT));
    Optional<String> text = query.text(TEXT, Forms.text(LONGEST_TEXT));
    Optional<Integer> limit = query.number(LIMIT, Forms.count(1, MOST));
    query.mustBeSound();
    context.json(
        new All(
            suggesting
                .suggest(
                    door.caller(context),
                    SetupApi.studio(context),
                    text.orElse(""),
                    limit.orElse(USUAL))
                .stream()
                .map(Item::of)
                .toList()));
  }
}
