package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.tasks.Leaving;
import lampwright.tasks.Passwords;
import lampwright.tasks.TakingOut;
import lampwright.web.http.Admission;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** All that is kept of a person, for them to take out; and the way to leave for good. */
public final class LeavingApi {

  private static final Logger LOG = LoggerFactory.getLogger(LeavingApi.class);
  private static final int NO_CONTENT = 204;

  private final Door door;
  private final TakingOut takingOut;
  private final Leaving leaving;
  private final Entrance entrance;
  private final Form<Leaving.Wish> form;

  public LeavingApi(Door door, Entrance entrance, TakingOut takingOut, Leaving leaving) {
    this.door = door;
    this.takingOut = takingOut;
    this.leaving = leaving;
    this.entrance = entrance;
    this.form = form();
  }

  static Form<Leaving.Wish> form() {
    Field<Leaving.Wish, String> password =
        Field.required(
            "password", Forms.text(Passwords.LONGEST), Leaving.Wish::password, "Yours, once more.");
    Field<Leaving.Wish, Leaving.Names> names =
        Field.required(
            "names",
            Forms.choice(Leaving.Names.values()),
            Leaving.Wish::names,
            "Whether your name stays beside what you wrote, or it is by a former member from now"
                + " on. Where your name stands in texts, it stays either way.");
    return ObjectForm.of(
        "leaving",
        "What somebody says who leaves for good.",
        values -> new Leaving.Wish(values.get(password), values.get(names)),
        List.of(password, names));
  }

  /** Gives out all that is kept of the caller, and what they wrote. */
  public void data(Context context) throws IOException {
    try (TakingOut.Ready ready = takingOut.all(door.caller(context))) {
      context.header(
          "Content-Disposition", "attachment; filename=\"%s.zip\"".formatted(ready.name()));
      context.contentType("application/zip");
      if (!context.method().equals(HandlerType.HEAD)) {
        Admission.leave(context);
        // Not the framework's: it would press together what is pressed already.
        OutputStream out = context.res().getOutputStream();
        try {
          ready.write(out);
          out.flush();
        } catch (IOException e) {
          // The headers are out already. What lacks its directory is no ZIP to anybody.
          LOG.warn("Somebody's data was not given out whole: {}", e.toString());
        }
      }
    }
  }

  /** Leaves for good. */
  public void leave(Context context) {
    leaving.leave(door.caller(context), Documents.read(context, form), entrance.visit(context));
    door.end(context);
    context.status(NO_CONTENT);
  }
}
