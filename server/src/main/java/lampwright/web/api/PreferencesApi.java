package lampwright.web.api;

import io.javalin.http.Context;
import lampwright.document.Form;
import lampwright.people.Preferred;
import lampwright.tasks.Preferring;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** How the caller has chosen to read: read it, and put another choice in its place. */
public final class PreferencesApi {

  private final Door door;
  private final Preferring preferring;

  public PreferencesApi(Door door, Preferring preferring) {
    this.door = door;
    this.preferring = preferring;
  }

  /** What is read here. */
  static Form<Preferred> form() {
    return Preferring.FORM;
  }

  /** As it is now. */
  public void get(Context context) {
    Preferring.Chosen chosen = preferring.get(door.caller(context));
    if (!Preconditions.isKnown(context, chosen.revision())) {
      context.json(Preferring.FORM.writeObject(chosen.preferred()));
    }
  }

  /** Puts another choice in its place. */
  public void replace(Context context) {
    int based = Preconditions.based(context, () -> preferring.get(door.caller(context)).revision());
    Preferring.Chosen chosen =
        preferring.replace(door.caller(context), based, Documents.read(context, Preferring.FORM));
    Preconditions.show(context, chosen.revision());
    context.json(Preferring.FORM.writeObject(chosen.preferred()));
  }
}
