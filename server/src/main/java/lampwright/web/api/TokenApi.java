package lampwright.web.api;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.people.Reach;
import lampwright.tasks.Tokens;
import lampwright.web.http.Door;

/** The tokens by which a person's programs come in. */
public final class TokenApi {

  private static final int CREATED = 201;
  private static final int NO_CONTENT = 204;
  private static final int LONGEST_NAME = 200;

  private final Door door;
  private final Tokens tokens;
  private final Form<Wish> form;

  public TokenApi(Door door, Tokens tokens) {
    this.door = door;
    this.tokens = tokens;
    this.form = wishForm();
  }

  static Form<Wish> wishForm() {
    Field<Wish, String> name =
        Field.required(
            "name", Forms.text(LONGEST_NAME), Wish::name, "Which program it is for, in words.");
    return ObjectForm.of(
        "token",
        "A token that a person wants for a program.",
        values -> new Wish(values.get(name)),
        List.of(name));
  }

  record Wish(String name) {}

  private record Made(String id, String name, Instant createdAt, String token) {}

  private record Listed(String id, String name, Instant createdAt, Optional<Instant> lastUsedAt) {}

  private record All(List<Listed> items, Optional<String> next) {}

  /** Makes one, and shows its secret this once. */
  public void create(Context context) {
    Tokens.Made made =
        tokens.make(
            door.caller(context),
            new Tokens.Wish(Documents.read(context, form).name(), Reach.WHOLE, Optional.empty()));
    context.status(CREATED).header("Location", "/api/tokens/" + made.token().id());
    context.json(
        new Made(made.token().id(), made.token().name(), made.token().createdAt(), made.secret()));
  }

  /** Lists them, without their secrets. */
  public void list(Context context) {
    context.json(
        new All(
            tokens.list(door.caller(context)).stream()
                .map(
                    token ->
                        new Listed(token.id(), token.name(), token.createdAt(), token.lastUsedAt()))
                .toList(),
            Optional.empty()));
  }

  /** Revokes one; from then on nobody comes in by it. */
  public void delete(Context context) {
    tokens.revoke(door.caller(context), context.pathParam("token"));
    context.status(NO_CONTENT);
  }
}
