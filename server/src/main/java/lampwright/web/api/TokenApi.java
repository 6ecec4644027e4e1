package lampwright.web.api;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.people.Ids;
import lampwright.people.Reach;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.tasks.Tokens;
import lampwright.web.http.Door;

/** The tokens by which a person's programs come in. */
public final class TokenApi {

  private static final int CREATED = 201;
  private static final int NO_CONTENT = 204;

  private final Door door;
  private final Tokens tokens;
  private final Form<Tokens.Wish> form;

  public TokenApi(Door door, Tokens tokens) {
    this.door = door;
    this.tokens = tokens;
    this.form = wishForm();
  }

  static Form<Tokens.Wish> wishForm() {
    Field<Tokens.Wish, String> name =
        Field.required(
            "name",
            Forms.text(Tokens.LONGEST_NAME),
            Tokens.Wish::name,
            "Which program it is for, in words.");
    Field<Tokens.Wish, Optional<Role>> atMost =
        Field.optional(
            "at_most",
            Forms.choice(Role.values()),
            wish -> wish.reach().atMost(),
            "The role whose things it may do at most, and no more than its person may; absent for"
                + " all that its person may.");
    Field<Tokens.Wish, Optional<StudioId>> studio =
        Field.optional(
            "studio",
            Forms.text(32)
                .like("^[0-9a-z]{4,32}$", Ids::isId, "an id, 4 to 32 small letters and digits")
                .as(StudioId::new, StudioId::text),
            wish -> wish.reach().only(),
            "The one studio that it is good for; absent for each of its person's.");
    Field<Tokens.Wish, Optional<Integer>> days =
        Field.optional(
            "days",
            Forms.count(1, Tokens.MOST_DAYS),
            Tokens.Wish::days,
            "After how many days it ends; absent for a token that lasts until it is revoked.");
    return ObjectForm.of(
        "token",
        "A token that a person wants for a program.",
        values ->
            new Tokens.Wish(
                values.get(name),
                new Reach(values.get(atMost), values.get(studio)),
                values.get(days)),
        List.of(name, atMost, studio, days));
  }

  private record Made(
      String id,
      String name,
      Optional<String> atMost,
      Optional<String> studio,
      Instant createdAt,
      Optional<Instant> expiresAt,
      String token) {

    static Made of(Tokens.Made made) {
      Listed listed = Listed.of(made.token());
      return new Made(
          listed.id(),
          listed.name(),
          listed.atMost(),
          listed.studio(),
          listed.createdAt(),
          listed.expiresAt(),
          made.secret());
    }

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Made[" + id + "]";
    }
  }

  private record Listed(
      String id,
      String name,
      Optional<String> atMost,
      Optional<String> studio,
      Instant createdAt,
      Optional<Instant> expiresAt,
      Optional<Instant> lastUsedAt) {

    static Listed of(Tokens.Token token) {
      return new Listed(
          token.id(),
          token.name(),
          token.reach().atMost().map(Role::word),
          token.reach().only().map(StudioId::text),
          token.createdAt(),
          token.expiresAt(),
          token.lastUsedAt());
    }
  }

  private record All(List<Listed> items, Optional<String> next) {}

  /** Makes one, and shows its secret this once. */
  public void create(Context context) {
    Tokens.Made made = tokens.make(door.caller(context), Documents.read(context, form));
    context.status(CREATED).header("Location", "/api/tokens/" + made.token().id());
    context.json(Made.of(made));
  }

  /** Lists them, without their secrets. */
  public void list(Context context) {
    context.json(
        new All(
            tokens.list(door.caller(context)).stream().map(Listed::of).toList(), Optional.empty()));
  }

  /** Revokes one; from then on nobody comes in by it. */
  public void delete(Context context) {
    tokens.revoke(door.caller(context), context.pathParam("token"));
    context.status(NO_CONTENT);
  }
}
