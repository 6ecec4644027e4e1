package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.tasks.MemberKeeping;
import lampwright.tasks.PasswordResetting;
import lampwright.web.http.Door;
import lampwright.web.http.LinkAddresses;
import lampwright.web.http.Preconditions;

/**
 * Who belongs to a studio: list, read, give another role, let go, and a link for a new password.
 */
public final class MemberApi {

  private final Door door;
  private final MemberKeeping members;
  private final PasswordResetting resetting;
  private final LinkAddresses links;

  public MemberApi(
      Door door, MemberKeeping members, PasswordResetting resetting, LinkAddresses links) {
    this.door = door;
    this.members = members;
    this.resetting = resetting;
    this.links = links;
  }

  record Standing(Role role) {}

  static Form<Standing> form() {
    Field<Standing, Role> role =
        Field.required("role", Forms.choice(Role.values()), Standing::role, "What they may do.");
    return ObjectForm.of(
        "member",
        "What a member is in a studio.",
        values -> new Standing(values.get(role)),
        List.of(role));
  }

  private record One(
      String id, String name, String role, Optional<String> email, int revision, Instant since) {

    static One of(MemberKeeping.Known known) {
      return new One(
          known.member().person().id().text(),
          known.member().person().name(),
          known.member().role().name().toLowerCase(Locale.ROOT),
          known.email(),
          known.member().revision(),
          known.member().since());
    }
  }

  private record All(List<One> items, Optional<String> next) {}

  private record ResetLink(String link, Instant expiresAt) {}

  /** Everybody, by name. */
  public void list(Context context) {
    context.json(
        new All(
            members.list(door.caller(context), SetupApi.studio(context)).stream()
                .map(One::of)
                .toList(),
            Optional.empty()));
  }

  /** One as they are now. */
  public void get(Context context) {
    MemberKeeping.Known known = current(context);
    if (!Preconditions.isKnown(context, known.member().revision())) {
      context.json(One.of(known));
    }
  }

  /** Gives one another role. */
  public void replace(Context context) {
    int based = basedOn(context);
    MemberKeeping.Known known =
        members.changeRole(
            door.caller(context),
            SetupApi.studio(context),
            person(context),
            based,
            Documents.read(context, form()).role());
    Preconditions.show(context, known.member().revision());
    context.json(One.of(known));
  }

  /** Takes one out, or leaves. */
  public void delete(Context context) {
    members.remove(
        door.caller(context), SetupApi.studio(context), person(context), basedOn(context));
    context.status(HttpStatus.NO_CONTENT);
  }

  /** Makes a link by which one sets a new password; shown this once. */
  public void makeResetLink(Context context) {
    PasswordResetting.Made made =
        resetting.issue(door.caller(context), SetupApi.studio(context), person(context));
    context.status(HttpStatus.CREATED);
    context.json(new ResetLink(links.of("/password-reset/" + made.secret()), made.expiresAt()));
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> current(context).member().revision());
  }

  private MemberKeeping.Known current(Context context) {
    return members.get(door.caller(context), SetupApi.studio(context), person(context));
  }

  private static PersonId person(Context context) {
    return MemberKeeping.id(context.pathParam("person"));
  }
}
