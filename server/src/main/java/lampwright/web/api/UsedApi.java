package lampwright.web.api;

import io.javalin.http.Context;
import lampwright.document.Form;
import lampwright.setup.Used;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.Recorded;
import lampwright.tasks.Recording;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/**
 * What was really used of a setup. Its ETag is the setup's own, since telling it makes the setup's
 * next revision.
 */
public final class UsedApi {

  private final Door door;
  private final Cataloguing cataloguing;
  private final Recording recording;

  public UsedApi(Door door, Cataloguing cataloguing, Recording recording) {
    this.door = door;
    this.cataloguing = cataloguing;
    this.recording = recording;
  }

  /** What is read here. */
  static Form<Used> form() {
    return Used.FORM;
  }

  /** What was told last, against the plan. */
  public void get(Context context) {
    Recorded recorded =
        recording
            .find(door.caller(context), SetupApi.studio(context), SetupApi.setup(context))
            .orElseThrow(Refused::notFound);
    if (!Preconditions.isKnown(context, recorded.current())) {
      context.json(UsedJson.of(recorded));
    }
  }

  /** Tells it. */
  public void record(Context context) {
    int based = SetupApi.basedOn(context, door, cataloguing);
    Used used = Documents.read(context, Used.FORM);
    Recorded recorded =
        recording.record(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            based,
            used,
            Messages.of(context));
    Preconditions.show(context, recorded.current());
    context.json(UsedJson.of(recorded));
  }
}
