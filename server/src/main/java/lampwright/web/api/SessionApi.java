package lampwright.web.api;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.people.Person;
import lampwright.tasks.Caller;
import lampwright.tasks.Refused;
import lampwright.tasks.SigningIn;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;

/** Signing in and out by programs, and who one is. */
public final class SessionApi {

  private static final int CREATED = 201;
  private static final int NO_CONTENT = 204;
  private static final int LONGEST = 320;
  private static final int LONGEST_CODE = 60;

  private final Door door;
  private final SigningIn signingIn;
  private final Entrance entrance;
  private final Form<Credentials> form;

  public SessionApi(Door door, SigningIn signingIn, Entrance entrance) {
    this.door = door;
    this.signingIn = signingIn;
    this.entrance = entrance;
    this.form = credentialsForm();
  }

  record Credentials(String email, String password, Optional<String> code) {

    /** No record's text may reach a log with a password in it. */
    @Override
    public String toString() {
      return "Credentials";
    }
  }

  static Form<Credentials> credentialsForm() {
    Field<Credentials, String> email =
        Field.required("email", Forms.text(LONGEST), Credentials::email, "Who signs in.");
    Field<Credentials, String> password =
        Field.required("password", Forms.text(LONGEST), Credentials::password, "Their password.");
    Field<Credentials, Optional<String>> code =
        Field.optional(
            "code",
            Forms.text(LONGEST_CODE),
            Credentials::code,
            "For who has a second factor: the code that their device shows, or a recovery code.");
    return ObjectForm.of(
        "credentials",
        "What a person signs in with.",
        values -> new Credentials(values.get(email), values.get(password), values.get(code)),
        List.of(email, password, code));
  }

  private record PersonView(String id, String email, String name) {

    static PersonView of(Person person) {
      return new PersonView(person.id().text(), person.email(), person.name());
    }
  }

  private record SignedIn(String csrfToken, PersonView person, Instant expiresAt) {}

  private record Here(PersonView person, String way, Optional<String> csrfToken) {}

  /** Signs in: sets the session's cookie and gives the token that changes must carry. */
  public void create(Context context) {
    Credentials credentials = Documents.read(context, form);
    SigningIn.Session session =
        signingIn.signIn(
            credentials.email(),
            credentials.password(),
            credentials.code(),
            entrance.visit(context));
    String csrfToken = entrance.begin(context, session);
    context.status(CREATED).header("Location", "/api/session");
    context.json(new SignedIn(csrfToken, PersonView.of(session.person()), session.expiresAt()));
  }

  /** Says who one is. */
  public void show(Context context) {
    Caller caller = door.caller(context);
    Optional<String> csrfToken =
        caller.way() == Caller.Way.SESSION
            ? Optional.of(door.csrfToken(context))
            : Optional.empty();
    String way = caller.way() == Caller.Way.SESSION ? "session" : "token";
    context.json(new Here(PersonView.of(caller.person()), way, csrfToken));
  }

  /** Signs out. */
  public void delete(Context context) {
    String token =
        door.sessionToken(context)
            .orElseThrow(
                () ->
                    Refused.notAllowed(
                        "A token has no session to end. Revoke it at /api/tokens/{token}."));
    signingIn.signOut(token);
    door.end(context);
    context.status(NO_CONTENT);
  }
}
