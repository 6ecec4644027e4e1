package lampwright.web.api;

import static lampwright.document.Field.required;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.setup.LightId;
import lampwright.setup.takes.Take;
import lampwright.setup.takes.TakeId;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.GearMetering;
import lampwright.tasks.Listed;
import lampwright.tasks.LoggedTake;
import lampwright.tasks.TakeLogging;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** The takes of a setup: list, log, read, change, delete; their readings for the figures. */
public final class TakeApi {

  private static final String DAY = "day";
  private static final String KEPT = "kept";

  private final Door door;
  private final Cataloguing cataloguing;
  private final TakeLogging takes;
  private final GearMetering metering;

  public TakeApi(Door door, Cataloguing cataloguing, TakeLogging takes, GearMetering metering) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.takes = takes;
    this.metering = metering;
  }

  /** Whose readings are taken over. */
  private record Chosen(List<LightId> readings) {

    private static final Field<Chosen, List<LightId>> READINGS =
        required(
            "readings",
            Forms.list(LightId.FORM, 1, 40),
            Chosen::readings,
            "The lights whose readings are taken over.");

    private static final ObjectForm<Chosen> FORM =
        ObjectForm.of(
            "chosen_readings",
            "Readings of a take that the setup takes over, or its heads.",
            values -> new Chosen(values.get(READINGS)),
            List.of(READINGS));
  }

  /** What is read here. */
  static List<Form<?>> forms() {
    return List.of(Take.FORM, Chosen.FORM);
  }

  /** Part of them, the last taken first: {@code ?day=&kept=&limit=&cursor=}. */
  public void list(Context context) {
    Query query = new Query(context, Set.of(DAY, KEPT, "cursor", "limit"));
    Optional<LocalDate> day = query.text(DAY, Forms.date());
    Optional<Take.Kept> kept = query.text(KEPT, Forms.choice(Take.Kept.values()));
    Listed.Wish wish = query.page();
    Listed<LoggedTake> page =
        takes.list(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            new TakeLogging.Wish(day, kept, wish));
    Query.linkNext(context, page);
    context.json(
        new TakeJson.All(page.items().stream().map(TakeJson.One::of).toList(), page.next()));
  }

  /** Logs one; the same once more answers with the one that is there. */
  public void create(Context context) {
    Take document = Documents.read(context, Take.FORM);
    TakeLogging.Logged logged =
        takes.log(
            door.caller(context), SetupApi.studio(context), SetupApi.setup(context), document);
    context.status(logged.isNew() ? HttpStatus.CREATED : HttpStatus.OK);
    context.header("Location", context.path() + "/" + logged.take().id().text());
    Preconditions.show(context, logged.take().revision());
    context.json(TakeJson.One.of(logged.take()));
  }

  /** One as it is now. */
  public void get(Context context) {
    LoggedTake take = current(context);
    if (!Preconditions.isKnown(context, take.revision())) {
      context.json(TakeJson.One.of(take));
    }
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    int based = basedOn(context);
    replace(context, based, Documents.read(context, Take.FORM));
  }

  /** Changes what the body names of it. */
  public void change(Context context) {
    int based = basedOn(context);
    LoggedTake now = current(context);
    replace(
        context,
        based,
        Documents.changed(context, Take.FORM, based, now.revision(), now.document()));
  }

  private void replace(Context context, int based, Take document) {
    LoggedTake replaced =
        takes.replace(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            take(context),
            based,
            document);
    Preconditions.show(context, replaced.revision());
    context.json(TakeJson.One.of(replaced));
  }

  /** Takes it away. */
  public void delete(Context context) {
    takes.delete(
        door.caller(context),
        SetupApi.studio(context),
        SetupApi.setup(context),
        take(context),
        basedOn(context));
    context.status(HttpStatus.NO_CONTENT);
  }

  /**
   * Lets the setup take over readings. It makes the setup's next revision, so its ETag is the
   * setup's own.
   */
  public void calibrate(Context context) {
    TakeId take = take(context);
    int based = SetupApi.basedOn(context, door, cataloguing);
    Chosen chosen = Documents.read(context, Chosen.FORM);
    Catalogued changed =
        takes.calibrate(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            take,
            based,
            chosen.readings());
    Preconditions.show(context, changed.revision());
    context.json(SetupApi.json(changed));
  }

  private record Heads(List<GearJson.One> items) {}

  /** Keeps readings with the heads that gave them, for their calibration. */
  public void keepWithGear(Context context) {
    Chosen chosen = Documents.read(context, Chosen.FORM);
    context.json(
        new Heads(
            metering
                .keep(
                    door.caller(context),
                    SetupApi.studio(context),
                    SetupApi.setup(context),
                    take(context),
                    chosen.readings())
                .stream()
                .map(GearJson.One::of)
                .toList()));
  }

  private LoggedTake current(Context context) {
    return takes.get(
        door.caller(context), SetupApi.studio(context), SetupApi.setup(context), take(context));
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> current(context).revision());
  }

  private static TakeId take(Context context) {
    return TakeLogging.id(context.pathParam("take"));
  }
}
