package lampwright.tasks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.search.Search;
import lampwright.search.SearchResult;
import lampwright.setup.PictureId;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Pictures;
import lampwright.store.StoredPicture;

/** Finds setups. What the index names is read again from the database, under its locks. */
public final class Finding {

  private final Database database;
  private final Search search;

  public Finding(Database database, Search search) {
    this.database = database;
    this.search = search;
  }

  /**
   * A setup that was found, with why.
   *
   * @param picture its finished picture
   */
  public record Found(
      Catalogued setup, double score, List<String> reasons, Optional<FoundPicture> picture) {}

  /**
   * What a list shows of a setup's picture.
   *
   * @param sha256 of its file
   * @param width in pixels, upright
   * @param height in pixels, upright
   */
  public record FoundPicture(
      PictureId id, Optional<String> caption, String sha256, int width, int height) {}

  /**
   * A page of what was found.
   *
   * @param total how many setups match in all
   */
  public record FoundPage(
      List<Found> items, long total, SearchResult.Facets facets, Optional<String> next) {}

  /**
   * Searches the question's studio.
   *
   * @throws Refused Invalid at {@code /cursor} for a cursor that the question did not make
   */
  public FoundPage find(Caller caller, StudioId studio, Question question) {
    return database.inStudio(
        studio,
        caller.person().id(),
        in -> {
          Sight sight = Sight.ask(in);
          if (!question.studio().equals(studio.text())) {
            throw new IllegalArgumentException("The question is about another studio.");
          }
          return switch (search.search(sight.isWhole() ? question : question.onlyForAll())) {
            case SearchResult.UnreadableCursor unreadable ->
                throw Refused.invalid(
                    "/cursor", "Cursor was not made by this search. Start again without it.");
            case SearchResult.Answer answer -> {
              List<SetupId> ids =
                  answer.items().stream().map(hit -> new SetupId(hit.setup())).toList();
              Map<SetupId, Catalogued> living = Cataloguing.listOf(in, sight, ids);
              yield new FoundPage(
                  found(answer, living, new Pictures(in).finals(living.keySet())),
                  answer.total(),
                  answer.facets(),
                  answer.next());
            }
          };
        });
  }

  private static List<Found> found(
      SearchResult.Answer answer,
      Map<SetupId, Catalogued> living,
      Map<SetupId, StoredPicture> pictures) {
    List<Found> found = new ArrayList<>();
    for (SearchResult.Hit hit : answer.items()) {
      Catalogued setup = living.get(new SetupId(hit.setup()));
      if (setup != null) {
        found.add(
            new Found(
                setup,
                hit.score(),
                hit.reasons(),
                Optional.ofNullable(pictures.get(setup.id())).map(Finding::picture)));
      }
    }
    return found;
  }

  private static FoundPicture picture(StoredPicture stored) {
    return new FoundPicture(
        stored.id(),
        StoredDocuments.read(PictureNote.FORM, stored.document()).caption(),
        stored.file().sha256(),
        stored.file().width(),
        stored.file().height());
  }
}
