package lampwright.web.api;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.setup.SetupDocument;
import lampwright.setup.Standing;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Histories;
import lampwright.tasks.Past;
import lampwright.tasks.Refused;
import lampwright.tasks.Stating;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** A setup's history, the way back in it, where the setup stands, and copies of it. */
public final class HistoryApi {

  private static final String CURSOR = "cursor";
  private static final int LARGEST_REVISION = 999_999_999;

  private final Door door;
  private final Cataloguing cataloguing;
  private final Histories histories;
  private final Stating stating;

  public HistoryApi(Door door, Cataloguing cataloguing, Histories histories, Stating stating) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.histories = histories;
    this.stating = stating;
  }

  private record Restoration(int revision) {

    private static final Field<Restoration, Integer> REVISION =
        required(
            "revision",
            Forms.count(1, LARGEST_REVISION),
            Restoration::revision,
            "The revision to bring back.");

    static final ObjectForm<Restoration> FORM =
        ObjectForm.of(
            "restoration_request",
            "Bring back what a setup was at a revision.",
            values -> new Restoration(values.get(REVISION)),
            List.of(REVISION));
  }

  private record CopyWish(Optional<String> title) {

    private static final Field<CopyWish, Optional<String>> TITLE =
        optional(
            "title",
            SetupDocument.titleForm(),
            CopyWish::title,
            "Of the new one; the setup's own where left out.");

    static final ObjectForm<CopyWish> FORM =
        ObjectForm.of(
            "copy_request",
            "Begin a new draft from a setup.",
            values -> new CopyWish(values.get(TITLE)),
            List.of(TITLE));
  }

  /** What is read here. */
  static List<Form<?>> forms() {
    return List.of(Restoration.FORM, CopyWish.FORM, Standing.FORM);
  }

  private record Line(
      int revision,
      Instant changedAt,
      String changedBy,
      String message,
      String title,
      String state,
      boolean archived,
      Optional<Integer> plannedRevision,
      Optional<Integer> restoredFrom,
      boolean deleted,
      Optional<Map<String, Object>> document) {

    static Line of(Past past, Optional<SetupDocument> document) {
      return new Line(
          past.revision(),
          past.changedAt(),
          past.changedBy(),
          past.message(),
          past.title(),
          past.standing().state().word(),
          past.standing().archived(),
          past.planned(),
          past.restoredFrom(),
          past.deleted(),
          document.map(SetupDocument.FORM::writeObject));
    }
  }

  private record Lines(List<Line> items, Optional<String> next) {}

  private record StandingJson(int revision, String state, boolean archived) {

    static StandingJson of(Catalogued setup) {
      return new StandingJson(
          setup.revision(), setup.standing().state().word(), setup.standing().archived());
    }
  }

  /**
   * Every change, the newest first. Its ETag is the setup's, also where that is deleted. Only who
   * may restore gets one: what others see of the list changes by more than revisions.
   */
  public void list(Context context) {
    Query query = new Query(context, Set.of(CURSOR, "limit"));
    Optional<Integer> before = query.number(CURSOR, Forms.count(1, LARGEST_REVISION));
    int limit = query.limit();
    query.mustBeSound();
    Histories.Page page =
        histories.list(
            door.caller(context), SetupApi.studio(context), SetupApi.setup(context), before, limit);
    Optional<String> next = page.next().map(String::valueOf);
    Query.linkNext(context, next);
    if (!(page.mayRestore() && Preconditions.isKnown(context, page.current()))) {
      context.json(
          new Lines(
              page.items().stream().map(line -> Line.of(line, Optional.empty())).toList(), next));
    }
  }

  /** One revision with its document. */
  public void get(Context context) {
    Histories.PastDocument past =
        histories.get(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            revision(context));
    if (!Preconditions.isKnown(context, past.line().revision())) {
      context.json(Line.of(past.line(), Optional.of(past.document())));
    }
  }

  /** The revision that an address names. */
  static int revision(Context context) {
    String written = context.pathParam("revision");
    if (!written.matches("[1-9]\\d{0,8}")) {
      throw Refused.notFound();
    }
    return Integer.parseInt(written);
  }

  /** Brings a revision back. */
  public void restore(Context context) {
    int based = Preconditions.based(context, () -> current(context));
    Restoration wanted = Documents.read(context, Restoration.FORM);
    Catalogued restored =
        histories.restore(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            Optional.of(based),
            wanted.revision(),
            Messages.of(context));
    SetupApi.showNow(context, restored);
  }

  private int current(Context context) {
    return histories
        .list(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            Optional.empty(),
            1)
        .current();
  }

  /** Where it stands. */
  public void standing(Context context) {
    Catalogued setup =
        cataloguing.get(door.caller(context), SetupApi.studio(context), SetupApi.setup(context));
    if (!Preconditions.isKnown(context, setup.revision())) {
      context.json(StandingJson.of(setup));
    }
  }

  /** Says where it stands from now on. */
  public void stand(Context context) {
    int based = SetupApi.basedOn(context, door, cataloguing);
    Standing standing = Documents.read(context, Standing.FORM);
    Catalogued now =
        stating.stand(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            based,
            standing,
            Messages.of(context));
    Preconditions.show(context, now.revision());
    context.json(StandingJson.of(now));
  }

  /** Begins a new draft from it. */
  public void copy(Context context) {
    CopyWish wanted = Documents.read(context, CopyWish.FORM);
    Catalogued copy =
        stating.copy(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            wanted.title(),
            Messages.of(context),
            Repeats.of(context));
    SetupApi.showCreated(context, SetupApi.studio(context), copy);
  }
}
