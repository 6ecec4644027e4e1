package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.people.Studio;
import lampwright.tasks.NewAccount;
import lampwright.tasks.StudioKeeping;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** The studios that a person belongs to. */
public final class StudioApi {

  private final Door door;
  private final Studios studios;

  private final StudioKeeping keeping;

  public StudioApi(Door door, Studios studios, StudioKeeping keeping) {
    this.door = door;
    this.studios = studios;
    this.keeping = keeping;
  }

  record Named(String name) {}

  static Form<Named> form() {
    Field<Named, String> name =
        Field.required(
            "name", Forms.text(NewAccount.LONGEST_NAME), Named::name, "What it is called.");
    return ObjectForm.of(
        "studio", "A studio.", values -> new Named(values.get(name)), List.of(name));
  }

  private record One(String id, String name, int revision, Instant createdAt) {

    static One of(Studio kept) {
      return new One(kept.id().text(), kept.name(), kept.revision(), kept.createdAt());
    }
  }

  private record Belonged(String id, String name, String role) {}

  private record All(List<Belonged> items, Optional<String> next) {}

  /** Lists them, each with the person's role there. */
  public void list(Context context) {
    context.json(
        new All(
            studios.list(door.caller(context)).stream()
                .map(
                    membership ->
                        new Belonged(
                            membership.studio().text(),
                            membership.studioName(),
                            membership.role().word()))
                .toList(),
            Optional.empty()));
  }

  /** Founds one, which the caller owns. */
  public void found(Context context) {
    Studio founded = keeping.found(door.caller(context), Documents.read(context, form()).name());
    context.status(HttpStatus.CREATED);
    context.header("Location", "/api/studios/" + founded.id().text());
    Preconditions.show(context, founded.revision());
    context.json(One.of(founded));
  }

  /** One as it is now. */
  public void get(Context context) {
    Studio now = current(context);
    if (!Preconditions.isKnown(context, now.revision())) {
      context.json(One.of(now));
    }
  }

  /** Gives one another name. */
  public void change(Context context) {
    int based = Preconditions.based(context, () -> current(context).revision());
    Studio now = current(context);
    String name =
        Documents.changed(context, form(), based, now.revision(), new Named(now.name())).name();
    Studio renamed = keeping.rename(door.caller(context), SetupApi.studio(context), based, name);
    Preconditions.show(context, renamed.revision());
    context.json(One.of(renamed));
  }

  private Studio current(Context context) {
    return keeping.get(door.caller(context), SetupApi.studio(context));
  }
}
