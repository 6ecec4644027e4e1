package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.search.Question;
import lampwright.search.SearchResult;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Finding;
import lampwright.tasks.Leave;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** The setups of a studio: search, make, read, change, delete. */
public final class SetupApi {

  private final Door door;
  private final Cataloguing cataloguing;
  private final Finding finding;

  public SetupApi(Door door, Cataloguing cataloguing, Finding finding) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.finding = finding;
  }

  /** One setup. */
  private record Setup(
      String id, int revision, Instant changedAt, String changedBy, Map<String, Object> document) {

    static Setup of(Catalogued setup) {
      return new Setup(
          setup.id().text(),
          setup.revision(),
          setup.changedAt(),
          setup.changedBy(),
          SetupDocument.FORM.writeObject(setup.document()));
    }
  }

  /** One setup that was found. */
  private record Item(
      String id,
      String title,
      int revision,
      Instant changedAt,
      Optional<String> intent,
      List<String> moods,
      Optional<String> place,
      int lights,
      double score,
      List<String> reasons) {

    static Item of(Finding.Found found) {
      SetupDocument document = found.setup().document();
      return new Item(
          found.setup().id().text(),
          document.title(),
          found.setup().revision(),
          found.setup().changedAt(),
          document.intent(),
          document.moods(),
          document.occasion().flatMap(o -> o.place()).map(place -> place.name()),
          document.lights().size(),
          found.score(),
          found.reasons());
    }
  }

  private record Facets(
      Map<String, Long> mood, Map<String, Long> place, Map<String, Long> placeKind) {

    static Facets of(SearchResult.Facets facets) {
      return new Facets(facets.moods(), facets.places(), facets.placeKinds());
    }
  }

  private record Found(List<Item> items, long total, Facets facets, Optional<String> next) {}

  /** Searches; without words lists all, the last changed first. */
  public void find(Context context) {
    StudioId studio = studio(context);
    Question question = SearchQuery.question(context, studio);
    Finding.FoundPage page = finding.find(door.caller(context), studio, question);
    page.next()
        .ifPresent(
            cursor ->
                context.header(
                    "Link", "<" + SearchQuery.address(context, cursor) + ">; rel=\"next\""));
    context.json(
        new Found(
            page.items().stream().map(Item::of).toList(),
            page.total(),
            Facets.of(page.facets()),
            page.next()));
  }

  /** Keeps a new setup. */
  public void create(Context context) {
    StudioId studio = studio(context);
    SetupDocument document = Documents.read(context, SetupDocument.FORM);
    Catalogued created = cataloguing.create(door.caller(context), studio, document);
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + created.id().text());
    Preconditions.show(context, created.revision());
    context.json(Setup.of(created));
  }

  /** One setup as it is now. */
  public void get(Context context) {
    Catalogued setup = cataloguing.get(door.caller(context), studio(context), setup(context));
    if (!Preconditions.isKnown(context, setup.revision())) {
      context.json(Setup.of(setup));
    }
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    Optional<Integer> based = basedOn(context);
    SetupDocument document = Documents.read(context, SetupDocument.FORM);
    Catalogued replaced =
        cataloguing.replace(door.caller(context), studio(context), setup(context), based, document);
    Preconditions.show(context, replaced.revision());
    context.json(Setup.of(replaced));
  }

  /** Takes it out of the catalogue. */
  public void delete(Context context) {
    cataloguing.delete(door.caller(context), studio(context), setup(context), basedOn(context));
    context.status(HttpStatus.NO_CONTENT);
  }

  /** The revision a change is based on; where the header names several, the current one of them. */
  private Optional<Integer> basedOn(Context context) {
    Optional<Integer> based = Preconditions.based(context);
    if (based.isEmpty()) {
      Catalogued current = cataloguing.get(door.caller(context), studio(context), setup(context));
      Preconditions.mustMatch(context, current.revision());
      return Optional.of(current.revision());
    }
    return based;
  }

  static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }

  static SetupId setup(Context context) {
    return Cataloguing.id(context.pathParam("setup"));
  }
}
