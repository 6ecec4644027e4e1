package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lampwright.people.StudioId;
import lampwright.search.MarkedText;
import lampwright.search.Question;
import lampwright.search.SearchResult;
import lampwright.search.filter.Trait;
import lampwright.setup.Child;
import lampwright.setup.Parent;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Finding;
import lampwright.tasks.Glancing;
import lampwright.tasks.Leave;
import lampwright.tasks.LikeTones;
import lampwright.tasks.Refused;
import lampwright.tasks.Tracing;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;
import tools.jackson.databind.util.RawValue;

/** The setups of a studio: search, make, read, change, delete. */
public final class SetupApi {

  private static final String PARENT = "parent";
  private static final String PARENT_REVISION = "parent_revision";
  private static final String SEEN = "lampwright.seen";

  private final Door door;
  private final Cataloguing cataloguing;
  private final Glancing glancing;
  private final ToldDocuments documents = new ToldDocuments();
  private final Finding finding;
  private final Tracing tracing;

  public SetupApi(
      Door door, Cataloguing cataloguing, Glancing glancing, Finding finding, Tracing tracing) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.glancing = glancing;
    this.finding = finding;
    this.tracing = tracing;
  }

  /** What a setup was made from. */
  private record ParentJson(String id, int revision, String title) {

    static ParentJson of(Parent parent) {
      return new ParentJson(parent.id().text(), parent.revision(), parent.title());
    }
  }

  /** One that was made from a setup. */
  private record ChildJson(
      String id, String title, int revision, Instant changedAt, int parentRevision) {

    static ChildJson of(Child child) {
      return new ChildJson(
          child.id().text(),
          child.title(),
          child.revision(),
          child.changedAt(),
          child.parentRevision());
    }
  }

  private record Children(List<ChildJson> items) {}

  /**
   * One setup. All of it stands or changes with its revision, as the ETag promises: so its children
   * have an address of their own, and its parent is told as it was.
   */
  private record Setup(
      String id,
      int revision,
      Instant changedAt,
      String changedBy,
      String state,
      boolean archived,
      Optional<ParentJson> parent,
      Object document) {

    static Setup of(String id, Glancing.Shown setup, Object document) {
      return new Setup(
          id,
          setup.revision(),
          setup.changedAt(),
          setup.changedBy(),
          setup.standing().state().word(),
          setup.standing().archived(),
          setup.parent().map(ParentJson::of),
          document);
    }

    static Setup of(Catalogued setup) {
      return of(
          setup.id().text(),
          new Glancing.Shown(
              setup.revision(),
              setup.changedAt(),
              setup.changedBy(),
              setup.standing(),
              setup.parent(),
              Optional.empty()),
          SetupDocument.FORM.writeObject(setup.document()));
    }
  }

  /** One setup that was found. */
  private record Item(
      String id,
      String title,
      int revision,
      Instant changedAt,
      String state,
      boolean archived,
      Optional<String> intent,
      List<String> moods,
      Optional<String> place,
      int lights,
      double score,
      List<String> reasons,
      List<Why> why,
      OptionalDouble offStops) {

    static Item of(Finding.Found found) {
      SetupDocument document = found.setup().document();
      return new Item(
          found.setup().id().text(),
          document.title(),
          found.setup().revision(),
          found.setup().changedAt(),
          found.setup().standing().state().word(),
          found.setup().standing().archived(),
          document.intent(),
          document.moods(),
          document.occasion().flatMap(o -> o.place()).map(place -> place.name()),
          document.lights().size(),
          found.score(),
          InEnglish.say(found.reasons()),
          found.why().stream().map(Why::of).toList(),
          found.offStops());
    }
  }

  /** A part of a text, with the words marked: from, and to behind the last, in UTF-16 units. */
  private record Why(String field, String passage, List<List<Integer>> marked) {

    private static final int LONGEST_PASSAGE = 160;

    static Why of(MarkedText text) {
      MarkedText passage = text.passage(LONGEST_PASSAGE);
      return new Why(
          passage.field(),
          passage.text(),
          passage.marks().stream().map(mark -> List.of(mark.from(), mark.to())).toList());
    }
  }

  /** By trait, then by value, in the order of the trait. */
  private static Map<String, Map<String, Long>> facets(SearchResult.Facets facets) {
    Map<String, Map<String, Long>> all = new LinkedHashMap<>();
    for (Trait trait : Trait.values()) {
      if (facets.counts().containsKey(trait)) {
        all.put(trait.name('_'), facets.byValue(trait));
      }
    }
    return all;
  }

  private record Found(
      List<Item> items,
      long total,
      Map<String, Map<String, Long>> facets,
      Optional<String> next,
      boolean byWordsAlone,
      List<InsteadJson> instead,
      Optional<Integer> notJudged) {}

  /** Searches; without words lists all: what is proven first, then what was changed last. */
  public void find(Context context) {
    StudioId studio = studio(context);
    Caller caller = door.caller(context);
    Question asked =
        SearchQuery.question(context, studio, filters -> finding.locate(caller, studio, filters));
    Question question =
        SearchQuery.like(context)
            .map(setup -> finding.likeThis(caller, studio, setup).like())
            .or(() -> SearchQuery.likeTones(context).map(LikeTones::read))
            .map(asked::withLike)
            .orElse(asked);
    Finding.FoundPage page = finding.find(caller, studio, question);
    page.next()
        .ifPresent(
            cursor ->
                context.header(
                    "Link", "<" + SearchQuery.address(context, cursor) + ">; rel=\"next\""));
    context.json(
        new Found(
            page.items().stream().map(Item::of).toList(),
            page.total(),
            facets(page.facets()),
            page.next(),
            page.byWordsAlone(),
            page.instead().stream().map(InsteadJson::of).toList(),
            Optional.of(page.notJudged()).filter(many -> many > 0)));
  }

  /** Keeps a new setup: {@code ?parent=&parent_revision=} say what it was made from. */
  public void create(Context context) {
    StudioId studio = studio(context);
    Optional<Cataloguing.From> from = from(context);
    SetupDocument document = Documents.read(context, SetupDocument.FORM);
    Catalogued created =
        cataloguing.create(
            door.caller(context),
            studio,
            document,
            from,
            Messages.of(context),
            Repeats.of(context));
    showCreated(context, studio, created);
  }

  /** Answers with a setup that was made by this. */
  static void showCreated(Context context, StudioId studio, Catalogued created) {
    context.status(HttpStatus.CREATED);
    context.header("Location", "/api/studios/" + studio.text() + "/setups/" + created.id().text());
    showNow(context, created);
  }

  /** Answers with a setup as it is after a change. */
  static void showNow(Context context, Catalogued setup) {
    Preconditions.show(context, setup.revision());
    context.json(Setup.of(setup));
  }

  private static Optional<Cataloguing.From> from(Context context) {
    Optional<String> parent = Optional.ofNullable(context.queryParam(PARENT));
    Optional<String> revision = Optional.ofNullable(context.queryParam(PARENT_REVISION));
    if (revision.isPresent() && parent.isEmpty()) {
      throw Refused.invalid("/" + PARENT_REVISION, "Parent revision says nothing without parent.");
    }
    if (revision.filter(written -> !written.matches("[1-9]\\d{0,8}")).isPresent()) {
      throw Refused.invalid(
          "/" + PARENT_REVISION, "Parent revision must be a whole number from 1. Maybe 1?");
    }
    return parent.map(id -> new Cataloguing.From(id, revision.map(Integer::valueOf)));
  }

  /** Those that were made from it. */
  public void children(Context context) {
    context.json(
        new Children(
            tracing.children(door.caller(context), studio(context), setup(context)).stream()
                .map(ChildJson::of)
                .toList()));
  }

  /**
   * What was seen at the door.
   *
   * @param told the text of a revision that was told before
   */
  private record Seen(Glancing.Seen now, Optional<ToldDocuments.Told> told) {}

  /** Looks who comes for one setup, and at the setup itself. */
  public Optional<Caller> glance(Context context, Caller.Way way, String secret) {
    String studio = context.pathParam("studio");
    String setup = context.pathParam("setup");
    Optional<ToldDocuments.Told> told = documents.find(studio, setup);
    Glancing.Seen now =
        glancing.look(
            way,
            secret,
            studio,
            setup,
            told.map(ToldDocuments.Told::revision).or(() -> Preconditions.known(context)));
    context.attribute(SEEN, new Seen(now, told));
    return now.caller();
  }

  /** One setup as it is now, which was read at the door. */
  public void get(Context context) {
    Seen seen = Objects.requireNonNull(context.attribute(SEEN));
    Glancing.Shown setup = seen.now().setup();
    if (Preconditions.isKnown(context, setup.revision())) {
      return;
    }
    String studio = context.pathParam("studio");
    String id = context.pathParam("setup");
    Optional<String> document =
        seen.told()
            .filter(told -> told.isOf(setup.revision(), setup.changedAt()))
            .map(ToldDocuments.Told::document)
            .or(
                () ->
                    setup
                        .document()
                        .map(
                            read ->
                                documents.tell(
                                    studio, id, setup.revision(), setup.changedAt(), read)));
    if (document.isEmpty()) {
      // Another setup took the place of the one that was told before, such as the demo's anew.
      documents.forget(studio, id);
      showNow(context, cataloguing.get(door.caller(context), studio(context), setup(context)));
      return;
    }
    context.json(Setup.of(id, setup, new RawValue(document.get())));
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    int based = basedOn(context, door, cataloguing);
    replace(context, based, Documents.read(context, SetupDocument.FORM));
  }

  /** Changes what the body names of it. */
  public void change(Context context) {
    int based = basedOn(context, door, cataloguing);
    Catalogued now = cataloguing.get(door.caller(context), studio(context), setup(context));
    replace(
        context,
        based,
        Documents.changed(context, SetupDocument.FORM, based, now.revision(), now.document()));
  }

  private void replace(Context context, int based, SetupDocument document) {
    Catalogued replaced =
        cataloguing.replace(
            door.caller(context),
            studio(context),
            setup(context),
            Optional.of(based),
            document,
            Messages.of(context));
    showNow(context, replaced);
  }

  /** Takes it out of the catalogue. */
  public void delete(Context context) {
    int based = basedOn(context, door, cataloguing);
    cataloguing.delete(
        door.caller(context),
        studio(context),
        setup(context),
        Optional.of(based),
        Messages.of(context));
    context.status(HttpStatus.NO_CONTENT);
  }

  /** A setup as it is told. */
  static Object json(Catalogued setup) {
    return Setup.of(setup);
  }

  /** The revision a change is based on; where the header names several, the current one of them. */
  static int basedOn(Context context, Door door, Cataloguing cataloguing) {
    return Preconditions.based(
        context, () -> cataloguing.revision(door.caller(context), studio(context), setup(context)));
  }

  static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }

  static SetupId setup(Context context) {
    return Cataloguing.id(context.pathParam("setup"));
  }
}
