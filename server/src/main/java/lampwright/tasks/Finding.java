package lampwright.tasks;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampwright.language.Said;
import lampwright.people.StudioId;
import lampwright.search.Instead;
import lampwright.search.MarkedText;
import lampwright.search.Matching;
import lampwright.search.Question;
import lampwright.search.Search;
import lampwright.search.SearchResult;
import lampwright.search.filter.Filter;
import lampwright.search.filter.ReadFilter;
import lampwright.search.filter.Trait;
import lampwright.setup.PictureId;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Pictures;
import lampwright.store.StoredPicture;

/** Finds setups. What the index names is read again from the database, under its locks. */
public final class Finding implements AutoCloseable {

  private final Database database;
  private final Search search;
  private final KitJudging judging;

  public Finding(Database database, Search search) {
    this.database = database;
    this.search = search;
    this.judging = new KitJudging(database);
  }

  /** Ends what goes on in the background. */
  @Override
  public void close() {
    judging.close();
  }

  /**
   * A setup that was found, with why.
   *
   * @param why its texts with the words marked that it was found by; none of an older revision than
   *     the setup's, whose author may have taken them out
   * @param picture its finished picture
   * @param offStops by how many stops the kit is off that was asked for, if one was
   */
  public record Found(
      Catalogued setup,
      double score,
      List<Said> reasons,
      List<MarkedText> why,
      Optional<FoundPicture> picture,
      OptionalDouble offStops) {}

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
   * @param byWordsAlone whether what the question means could not be told
   * @param instead where nothing was found: what would be found by asking for less
   * @param notJudged how many of the studio's setups are not told yet whether a kit that was asked
   *     for makes them; they are not among what was found
   */
  public record FoundPage(
      List<Found> items,
      long total,
      SearchResult.Facets facets,
      Optional<String> next,
      boolean byWordsAlone,
      List<Instead> instead,
      int notJudged) {}

  /**
   * Searches the question's studio.
   *
   * @throws Refused Invalid at {@code /cursor} for a cursor that the question did not make
   */
  public FoundPage find(Caller caller, StudioId studio, Question question) {
    BuildableFilters buildable = BuildableFilters.of(judging, caller, studio, question.filters());
    return find(caller, studio, question, buildable);
  }

  /**
   * A question as the index is asked it for somebody; equal where the same is asked.
   *
   * @param notJudged how many setups are not told yet whether a kit makes them
   */
  record Narrowed(Question question, int notJudged) {}

  /**
   * What is asked of the index for the caller, without pages: authors and kits by their setups.
   *
   * @param patience how long kits may be judged for it, all together
   */
  List<Narrowed> narrow(
      Caller caller, StudioId studio, List<Question> questions, Duration patience) {
    long start = System.nanoTime();
    List<BuildableFilters> buildables =
        questions.stream()
            .map(
                question ->
                    BuildableFilters.of(
                        judging, caller, studio, question.filters(), left(patience, start)))
            .toList();
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          boolean whole = Sight.ask(in).isWhole();
          boolean byAuthor =
              questions.stream()
                  .flatMap(question -> question.filters().stream())
                  .anyMatch(filter -> filter.trait() == Trait.AUTHOR);
          Authors authors = new Authors(byAuthor ? Cataloguing.names(in) : Map.of());
          List<Narrowed> narrowed = new ArrayList<>();
          for (int i = 0; i < questions.size(); i++) {
            Question byIds =
                questions
                    .get(i)
                    .withFilters(questions.get(i).filters().stream().map(authors::toIds).toList());
            BuildableFilters buildable = buildables.get(i);
            buildable
                .narrow(whole ? byIds : byIds.onlyForAll())
                .ifPresent(one -> narrowed.add(new Narrowed(one, buildable.waiting())));
          }
          return narrowed;
        });
  }

  private static Duration left(Duration patience, long start) {
    Duration left = patience.minusNanos(System.nanoTime() - start);
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** All that the index finds for a question, up to so many. */
  Matching matching(Narrowed narrowed, int most) {
    return search.matching(narrowed.question(), most);
  }

  /** Differs whenever a search of the studio may find something else. */
  public String shown(StudioId studio) {
    return search.shown(studio.text());
  }

  private FoundPage find(
      Caller caller, StudioId studio, Question question, BuildableFilters buildable) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = Sight.ask(in);
          if (!question.studio().equals(studio.text())) {
            throw new IllegalArgumentException("The question is about another studio.");
          }
          Authors authors = new Authors(Cataloguing.names(in));
          Question byIds =
              question.withFilters(question.filters().stream().map(authors::toIds).toList());
          Question seen = sight.isWhole() ? byIds : byIds.onlyForAll();
          Optional<Question> narrowed = buildable.narrow(seen);
          SearchResult result =
              narrowed.isPresent()
                  ? search.search(narrowed.get())
                  : new SearchResult.UnreadableCursor();
          return switch (result) {
            case SearchResult.UnreadableCursor unreadable ->
                throw Refused.invalid(
                    "/cursor", "Cursor was not made by this search. Start again without it.");
            case SearchResult.Answer answer -> {
              List<SetupId> ids =
                  answer.items().stream().map(hit -> new SetupId(hit.setup())).toList();
              Map<SetupId, Catalogued> living = Cataloguing.listOf(in, sight, ids);
              yield new FoundPage(
                  found(
                      question,
                      answer,
                      living,
                      new Pictures(in).finals(living.keySet()),
                      buildable),
                  answer.total(),
                  authors.toNames(answer.facets()),
                  answer.next().map(buildable::mark),
                  answer.byWordsAlone(),
                  Stream.concat(
                          answer.instead().stream().map(buildable::with),
                          answer.total() > 0
                              ? Stream.empty()
                              : buildable.instead(search, seen).stream())
                      .map(one -> authors.toNames(one, question.filters()))
                      .toList(),
                  buildable.waiting());
            }
          };
        });
  }

  /**
   * Looks up the studio's locations that filters name.
   *
   * @return for each filter the same with its place, or why there is none
   */
  public List<ReadFilter> locate(Caller caller, StudioId studio, List<Filter> filters) {
    if (filters.stream()
        .noneMatch(
            filter -> filter instanceof Filter.Buildable || locationOf(filter).isPresent())) {
      return filters.stream().<ReadFilter>map(ReadFilter.Understood::new).toList();
    }
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight.ask(in);
          Whereabouts whereabouts = new Whereabouts(in);
          KitNames kits = new KitNames(in);
          return filters.stream()
              .map(
                  filter ->
                      filter instanceof Filter.Buildable buildable
                          ? kits.locate(buildable)
                          : whereabouts.locate(filter))
              .toList();
        });
  }

  /**
   * What a search for setups with light like this one's goes by.
   *
   * @param setup its id, as it was written
   * @throws Refused Invalid at {@code /like} where there is none that may be seen
   */
  public LikeThis likeThis(Caller caller, StudioId studio, String setup) {
    return database.inStudio(studio, caller.asker(), in -> LikeThis.find(in, Sight.ask(in), setup));
  }

  /** The names of the studio's kits, for a filter by what one makes. */
  public List<String> kits(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight.ask(in);
          return new KitNames(in).names();
        });
  }

  /** Up to five filters that find some of the setups that one may see, but not all of them. */
  public List<Filter> examples(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Question everything = Question.of(studio.text(), "");
          boolean whole = Sight.ask(in).isWhole();
          return new SearchExamples(
                  search, whole ? everything : everything.onlyForAll(), new Whereabouts(in))
              .list();
        });
  }

  static Optional<Filter.Spot.Location> locationOf(Filter filter) {
    return filter instanceof Filter.Near near
            && near.spot() instanceof Filter.Spot.Location location
        ? Optional.of(location)
        : Optional.empty();
  }

  private static List<Found> found(
      Question question,
      SearchResult.Answer answer,
      Map<SetupId, Catalogued> living,
      Map<SetupId, StoredPicture> pictures,
      BuildableFilters buildable) {
    List<Found> found = new ArrayList<>();
    for (SearchResult.Hit hit : answer.items()) {
      Catalogued setup = living.get(new SetupId(hit.setup()));
      if (setup != null) {
        found.add(
            new Found(
                setup,
                hit.score(),
                reasons(question, hit, setup, pictures, buildable),
                hit.revision() == setup.revision() ? hit.why() : List.of(),
                Optional.ofNullable(pictures.get(setup.id())).map(Finding::picture),
                buildable.offStops(setup.id())));
      }
    }
    return found;
  }

  private static List<Said> reasons(
      Question question,
      SearchResult.Hit hit,
      Catalogued setup,
      Map<SetupId, StoredPicture> pictures,
      BuildableFilters buildable) {
    return Stream.of(
            question.like().stream().flatMap(like -> alike(like, setup, pictures)),
            hit.reasons().stream(),
            buildable.reasons(setup.id()).stream())
        .<Said>flatMap(some -> some)
        .toList();
  }

  private static Stream<Said> alike(
      Question.Like like, Catalogued setup, Map<SetupId, StoredPicture> pictures) {
    return switch (like.by()) {
      case LIGHT -> LikeThis.reasons(like, setup.document()).stream();
      case PICTURE ->
          Optional.ofNullable(pictures.get(setup.id())).stream()
              .flatMap(picture -> LikeTones.reasons(like, picture).stream());
    };
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
