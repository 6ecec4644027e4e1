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
import lampwright.people.Invitation;
import lampwright.people.PasswordRule;
import lampwright.people.Role;
import lampwright.tasks.Inviting;
import lampwright.tasks.NewAccount;
import lampwright.web.http.Door;
import lampwright.web.http.LinkAddresses;

/** Invitations to a studio, for who makes them and for who holds the link of one. */
public final class InvitationApi {

  private static final String LINK = "/invitations/";

  private final Door door;
  private final Inviting inviting;
  private final LinkAddresses links;

  public InvitationApi(Door door, Inviting inviting, LinkAddresses links) {
    this.door = door;
    this.inviting = inviting;
    this.links = links;
  }

  /** What an invitation is to be, in a studio. */
  static Form<Inviting.Wish> form() {
    Field<Inviting.Wish, Role> role =
        Field.required(
            "role", Forms.choice(Role.values()), Inviting.Wish::role, "What they will be.");
    Field<Inviting.Wish, String> meantFor =
        Field.required(
            "meant_for",
            Forms.text(Inviting.LONGEST_MEANT_FOR),
            Inviting.Wish::meantFor,
            "For whom it is, in words of your own; only owners see them.");
    Field<Inviting.Wish, Integer> days =
        Field.usually(
            Inviting.USUAL_DAYS,
            "days",
            Forms.count(1, Inviting.MOST_DAYS),
            Inviting.Wish::days,
            "How many days it lasts.");
    return ObjectForm.of(
        "invitation",
        "An invitation that an owner wants to make.",
        values -> new Inviting.Wish(values.get(role), values.get(meantFor), values.get(days)),
        List.of(role, meantFor, days));
  }

  /** Somebody who takes an invitation: with a new account, or with the one they signed in with. */
  record Answer(Optional<NewAccount> account) {}

  static Form<NewAccount> accountForm() {
    Field<NewAccount, String> name =
        Field.required(
            "name", Forms.text(NewAccount.LONGEST_NAME), NewAccount::name, "What one is called.");
    Field<NewAccount, String> email =
        Field.required(
            "email",
            Forms.text(NewAccount.LONGEST_EMAIL),
            NewAccount::email,
            "The address that one signs in with.");
    Field<NewAccount, String> password =
        Field.required(
            "password",
            Forms.text(PasswordRule.LONGEST),
            NewAccount::password,
            "12 characters or more; a few words that do not belong together.");
    return ObjectForm.of(
        "new_account",
        "The account of somebody who has none.",
        values -> new NewAccount(values.get(name), values.get(email), values.get(password)),
        List.of(name, email, password));
  }

  static Form<Answer> answerForm() {
    Field<Answer, Optional<NewAccount>> account =
        Field.optional(
            "account", accountForm(), Answer::account, "Left out by who is signed in already.");
    return ObjectForm.of(
        "invitation_answer",
        "How somebody takes an invitation.",
        values -> new Answer(values.get(account)),
        List.of(account));
  }

  private record One(
      String id,
      String role,
      String meantFor,
      String invitedBy,
      Instant createdAt,
      Instant expiresAt) {

    static One of(Invitation kept) {
      return new One(
          kept.id(),
          kept.role().word(),
          kept.meantFor(),
          kept.invitedBy().text(),
          kept.createdAt(),
          kept.expiresAt());
    }
  }

  private record Made(
      String id, String role, String meantFor, Instant createdAt, Instant expiresAt, String link) {}

  private record All(List<One> items, Optional<String> next) {}

  private record Offer(String studioName, String invitedBy, String role, Instant expiresAt) {}

  private record Joined(String studio, String role, Optional<String> csrfToken) {}

  /** The open ones. */
  public void list(Context context) {
    context.json(
        new All(
            inviting.list(door.caller(context), SetupApi.studio(context)).stream()
                .map(One::of)
                .toList(),
            Optional.empty()));
  }

  /** Makes one, and shows its link this once. */
  public void create(Context context) {
    Inviting.Made made =
        inviting.invite(
            door.caller(context), SetupApi.studio(context), Documents.read(context, form()));
    Invitation kept = made.invitation();
    context.status(HttpStatus.CREATED).header("Location", context.path() + "/" + kept.id());
    context.json(
        new Made(
            kept.id(),
            kept.role().word(),
            kept.meantFor(),
            kept.createdAt(),
            kept.expiresAt(),
            links.of(LINK + made.secret())));
  }

  /** Takes one back; its link works no more. */
  public void withdraw(Context context) {
    inviting.withdraw(
        door.caller(context), SetupApi.studio(context), context.pathParam("invitation"));
    context.status(HttpStatus.NO_CONTENT);
  }

  /** What a link offers. */
  public void look(Context context) {
    Inviting.Offer offer = inviting.look(context.pathParam("secret"));
    context.json(
        new Offer(offer.studioName(), offer.inviterName(), offer.role().word(), offer.expiresAt()));
  }

  /** Takes what a link offers. */
  public void accept(Context context) {
    String secret = context.pathParam("secret");
    inviting.look(secret);
    Optional<NewAccount> account = Documents.read(context, answerForm()).account();
    if (account.isPresent()) {
      Inviting.Arrived arrived = inviting.accept(secret, account.get());
      String csrfToken =
          door.begin(context, arrived.session().token(), arrived.session().lifetime());
      joined(context, arrived.offer(), Optional.of(csrfToken));
    } else {
      joined(context, inviting.accept(secret, door.provenCaller(context)), Optional.empty());
    }
  }

  private static void joined(Context context, Inviting.Offer offer, Optional<String> csrfToken) {
    String studio = offer.studio().text();
    context.status(HttpStatus.CREATED).header("Location", "/api/studios/" + studio);
    context.json(new Joined(studio, offer.role().word(), csrfToken));
  }
}
