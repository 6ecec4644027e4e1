package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import lampwright.language.Notation;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Inviting;
import lampwright.tasks.Leave;
import lampwright.tasks.MemberKeeping;
import lampwright.tasks.PasswordResetting;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.web.http.LinkAddresses;
import lampwright.wording.Wording;

/** The page of who belongs to a studio, where owners see to that. */
public final class PeoplePages {

  private final Door door;
  private final Tasks tasks;
  private final LinkAddresses links;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What it calls on. */
  public record Tasks(MemberKeeping members, Inviting inviting, PasswordResetting resetting) {}

  public PeoplePages(
      Door door, Tasks tasks, LinkAddresses links, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.links = links;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio) {
    return "/studios/" + studio.text() + "/people";
  }

  /** What was typed into the form of an invitation. */
  private record Typed(String meantFor, String days) {
    static final Typed NOTHING = new Typed("", String.valueOf(Inviting.USUAL_DAYS));
  }

  /** Shows it: {@code /studios/{studio}/people}. */
  public void show(Context context) {
    show(context, Optional.empty(), Typed.NOTHING, FormErrors.none());
  }

  private void show(
      Context context, Optional<PeoplePage.Handed> handed, Typed typed, FormErrors errors) {
    StudioId studio = studio(context);
    Caller caller = door.caller(context);
    Layout layout = layouts.named(context, studio, "studio.people.heading");
    Notation notation = layout.notation();
    List<MemberKeeping.Known> members = tasks.members().list(caller, studio);
    boolean manages =
        members.stream()
            .anyMatch(one -> isMe(caller, one) && caller.reach().limit(role(one)) == Role.OWNER);
    templates.show(
        context,
        "people",
        new PeoplePage(
            layout,
            members.stream().map(one -> one(notation, caller, studio, one)).toList(),
            Stream.of(Role.values()).map(role -> word(notation, role)).toList(),
            Stream.of(Permission.values()).map(what -> row(notation, what)).toList(),
            manages
                ? Optional.of(managing(context, studio, notation, handed, typed, errors))
                : Optional.empty()));
  }

  private PeoplePage.Managing managing(
      Context context,
      StudioId studio,
      Notation notation,
      Optional<PeoplePage.Handed> handed,
      Typed typed,
      FormErrors errors) {
    String invitations = path(studio) + "/invitations";
    return new PeoplePage.Managing(
        door.csrfToken(context),
        AuditPages.path(studio),
        invitations,
        Stream.of(Role.values())
            .map(role -> new PeoplePage.Choice(role.word(), word(notation, role)))
            .toList(),
        tasks.inviting().list(door.caller(context), studio).stream()
            .map(
                open ->
                    new PeoplePage.Open(
                        open.meantFor(),
                        word(notation, open.role()),
                        AccountLinkPages.moment(new Wording(notation), open.expiresAt()),
                        invitations + "/" + open.id() + "/withdrawal"))
            .toList(),
        handed,
        typed.meantFor(),
        typed.days(),
        errors);
  }

  /** Makes an invitation, and shows its link this once. */
  public void invite(Context context) {
    FormFields form = Body.form(context);
    Wording words = layouts.words(context);
    Typed typed = new Typed(form.get(PeoplePage.MEANT_FOR), form.get(PeoplePage.DAYS));
    tried(
        context,
        typed,
        () -> {
          Inviting.Made made =
              tasks
                  .inviting()
                  .invite(
                      door.caller(context),
                      studio(context),
                      new Inviting.Wish(role(form), typed.meantFor(), number(typed.days())));
          return Optional.of(
              new PeoplePage.Handed(
                  words.say("members.link", made.invitation().meantFor()),
                  links.whole(context, "/invitations/" + made.secret())));
        });
  }

  /** Takes an invitation back. */
  public void withdraw(Context context) {
    tasks
        .inviting()
        .withdraw(door.caller(context), studio(context), context.pathParam("invitation"));
    context.redirect(path(studio(context)), HttpStatus.SEE_OTHER);
  }

  /** Gives a member another role. */
  public void changeRole(Context context) {
    FormFields form = Body.form(context);
    tried(
        context,
        Typed.NOTHING,
        () -> {
          tasks
              .members()
              .changeRole(
                  door.caller(context),
                  studio(context),
                  person(context),
                  revision(form),
                  role(form));
          return Optional.empty();
        });
  }

  /** Takes a member out, or leaves. */
  public void remove(Context context) {
    FormFields form = Body.form(context);
    boolean isMe = person(context).equals(door.caller(context).person().id());
    try {
      tasks
          .members()
          .remove(door.caller(context), studio(context), person(context), revision(form));
      context.redirect(isMe ? "/" : path(studio(context)), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      show(context, Optional.empty(), Typed.NOTHING, errors(context, refused));
    }
  }

  /** Makes a link for a new password, and shows it this once. */
  public void makeResetLink(Context context) {
    Wording words = layouts.words(context);
    tried(
        context,
        Typed.NOTHING,
        () -> {
          PasswordResetting.Made made =
              tasks.resetting().issue(door.caller(context), studio(context), person(context));
          return Optional.of(
              new PeoplePage.Handed(
                  words.say("members.link", made.person().name()),
                  links.whole(context, "/password-reset/" + made.secret())));
        });
  }

  private void tried(Context context, Typed typed, Supplier<Optional<PeoplePage.Handed>> attempt) {
    try {
      Optional<PeoplePage.Handed> handed = attempt.get();
      if (handed.isPresent()) {
        show(context, handed, Typed.NOTHING, FormErrors.none());
      } else {
        context.redirect(path(studio(context)), HttpStatus.SEE_OTHER);
      }
    } catch (Refused refused) {
      show(context, Optional.empty(), typed, errors(context, refused));
    }
  }

  private FormErrors errors(Context context, Refused refused) {
    if (refused.refusal() instanceof Refusal.Stale) {
      context.status(HttpStatus.CONFLICT);
      return FormErrors.of("", layouts.words(context).say("members.since"));
    }
    return AccountLinkPages.errors(context, refused);
  }

  private static StudioId studio(Context context) {
    return Leave.studio(context.pathParam("studio"));
  }

  private static PersonId person(Context context) {
    return MemberKeeping.id(context.pathParam("person"));
  }

  private static Role role(FormFields form) {
    String word = form.get(PeoplePage.ROLE);
    return Stream.of(Role.values())
        .filter(role -> role.word().equals(word))
        .findFirst()
        .orElseThrow(() -> Refused.invalid("/role", "Role is none of those here. Choose one."));
  }

  private static int revision(FormFields form) {
    return number(form.get(PeoplePage.REVISION));
  }

  /** What is no number is one that fits nowhere. */
  private static int number(String text) {
    return text.strip().matches("[0-9]{1,6}") ? Integer.parseInt(text.strip()) : 0;
  }

  private static Role role(MemberKeeping.Known one) {
    return one.member().role();
  }

  private static boolean isMe(Caller caller, MemberKeeping.Known one) {
    return one.member().person().id().equals(caller.person().id());
  }

  private static PeoplePage.One one(
      Notation notation, Caller caller, StudioId studio, MemberKeeping.Known one) {
    return new PeoplePage.One(
        one.member().person().name(),
        word(notation, role(one)),
        isMe(caller, one),
        role(one).word(),
        one.member().revision(),
        path(studio) + "/" + one.member().person().id().text());
  }

  private static PeoplePage.Row row(Notation notation, Permission permission) {
    return new PeoplePage.Row(
        notation.say("studio.people.permission." + permission.name().toLowerCase(Locale.ROOT)),
        Stream.of(Role.values()).map(role -> role.may(permission)).toList());
  }

  private static String word(Notation notation, Role role) {
    return notation.say("studio.people.role." + role.word());
  }
}
