package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import lampwright.document.Problem;
import lampwright.people.Membership;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.StudioKeeping;
import lampwright.tasks.Studios;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** The page of the studios that one belongs to, where owners found and rename them. */
public final class StudiosPages {

  private final Door door;
  private final Studios studios;
  private final StudioKeeping keeping;
  private final Templates templates;
  private final OwnLayouts layouts;

  public StudiosPages(
      Door door, Studios studios, StudioKeeping keeping, Templates templates, OwnLayouts layouts) {
    this.door = door;
    this.studios = studios;
    this.keeping = keeping;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** Shows them: {@code /studios}. */
  public void show(Context context) {
    show(context, FormErrors.none());
  }

  private void show(Context context, FormErrors errors) {
    Caller caller = door.caller(context);
    Wording words = layouts.words(context);
    List<Membership> all = studios.list(caller);
    templates.show(
        context,
        "studios",
        new StudiosPage(
            layouts.named(context, "members.studios.title"),
            door.csrfToken(context),
            all.stream().map(one -> one(caller, one, words)).toList(),
            all.stream().anyMatch(one -> one.role() == Role.OWNER),
            errors));
  }

  private StudiosPage.One one(Caller caller, Membership member, Wording words) {
    boolean mayRename = member.role().may(Permission.MANAGE_MEMBERS);
    return new StudiosPage.One(
        member.studioName(),
        SetupPages.findPath(member.studio()),
        words.say("studio.people.role." + member.role().word()),
        mayRename ? StudiosPage.PATH + "/" + member.studio().text() + "/name" : "",
        mayRename ? keeping.get(caller, member.studio()).revision() : 0);
  }

  /** Founds another and leads there. */
  public void found(Context context) {
    FormFields sent = Body.form(context);
    try {
      StudioId founded = keeping.found(door.caller(context), sent.get(StudiosPage.NAME)).id();
      context.redirect(SetupPages.findPath(founded), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, refused);
    }
  }

  /** Gives one another name. */
  public void rename(Context context) {
    FormFields sent = Body.form(context);
    try {
      keeping.rename(
          door.caller(context),
          Leave.studio(context.pathParam("studio")),
          revision(sent),
          sent.get(StudiosPage.NAME));
      context.redirect(StudiosPage.PATH, HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      again(context, refused);
    }
  }

  private void again(Context context, Refused refused) {
    switch (refused.refusal()) {
      case Refusal.Invalid(List<Problem> problems) -> {
        context.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(context, FormErrors.of("", problems.getFirst().message()));
      }
      case Refusal.Stale _ -> {
        context.status(HttpStatus.PRECONDITION_FAILED);
        show(context, FormErrors.of("", layouts.words(context).say("members.since")));
      }
      default -> throw refused;
    }
  }

  /** The one that was looked at; where the form does not say, none that there is. */
  private static int revision(FormFields sent) {
    String written = sent.get(StudiosPage.REVISION);
    return written.matches("[1-9]\\d{0,8}") ? Integer.parseInt(written) : 0;
  }
}
