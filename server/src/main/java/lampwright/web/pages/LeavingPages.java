package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import lampwright.people.Membership;
import lampwright.tasks.Caller;
import lampwright.tasks.Leaving;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;

/** The pages on which one takes out one's data, and leaves for good. */
public final class LeavingPages {

  static final String PATH = "/account/leaving";
  private static final String QUESTION = PATH + "/question";
  private static final String DATA = "/api/account/data";

  private final Door door;
  private final Leaving leaving;
  private final Entrance entrance;
  private final Templates templates;
  private final OwnLayouts own;

  public LeavingPages(
      Door door, Entrance entrance, Leaving leaving, Templates templates, OwnLayouts own) {
    this.door = door;
    this.leaving = leaving;
    this.entrance = entrance;
    this.templates = templates;
    this.own = own;
  }

  /** Shows what one can take out, and what holds one back: {@code /account/leaving}. */
  public void show(Context context) {
    Caller caller = door.caller(context);
    Leaving.Ties ties = leaving.ties(caller);
    Layout layout = own.named(context, "leaving.title");
    boolean canLeave = leaving.canLeave(caller);
    templates.show(
        context,
        "leaving",
        new LeavingPage(
            layout,
            DATA,
            ties.ownedAlone().stream()
                .filter(_ -> canLeave)
                .map(one -> new Link(one.studioName(), PeoplePages.path(one.studio())))
                .toList(),
            canLeave && ties.ownedAlone().isEmpty() ? QUESTION : ""));
  }

  /** Asks: {@code /account/leaving/question}. */
  public void ask(Context context) {
    ask(context, "", FormErrors.none());
  }

  private void ask(Context context, String names, FormErrors errors) {
    Caller caller = door.caller(context);
    Layout layout = own.named(context, "leaving.question.title");
    templates.show(
        context,
        "leavingQuestion",
        new LeavingQuestionPage(
            layout,
            QUESTION,
            door.csrfToken(context),
            caller.person().name(),
            names,
            studios(leaving.ties(caller), layout.words()),
            PATH,
            errors));
  }

  private static List<String> studios(Leaving.Ties ties, Wording words) {
    return ties.all().stream().map(one -> studio(one, words)).toList();
  }

  private static String studio(Membership one, Wording words) {
    return words.say(
        "leaving.studio", one.studioName(), words.say("studio.people.role." + one.role().word()));
  }

  /** Takes the answer. */
  public void leave(Context context) {
    FormFields sent = Body.form(context);
    String names = sent.get(LeavingQuestionPage.NAMES);
    Wording words = own.words(context);
    if (!List.of(LeavingQuestionPage.KEEP, LeavingQuestionPage.NAMELESS).contains(names)) {
      refuse(context, "", LeavingQuestionPage.NAMES, words.say("leaving.names.missing"));
      return;
    }
    boolean isNameless = names.equals(LeavingQuestionPage.NAMELESS);
    try {
      leaving.leave(
          door.caller(context),
          new Leaving.Wish(
              sent.get(LeavingQuestionPage.PASSWORD),
              isNameless ? Leaving.Names.NAMELESS : Leaving.Names.KEEP),
          entrance.visit(context));
    } catch (Refused refused) {
      switch (refused.refusal()) {
        case Refusal.Invalid _ ->
            refuse(
                context, names, LeavingQuestionPage.PASSWORD, words.say("leaving.password.wrong"));
        // The page says which studio it is.
        case Refusal.Clash _ -> context.redirect(PATH, HttpStatus.SEE_OTHER);
        default -> throw refused;
      }
      return;
    }
    door.end(context);
    templates.show(
        context, "left", new LeftPage(own.outside(context, words.say("leaving.left.title")), "/"));
  }

  private void refuse(Context context, String names, String field, String message) {
    context.status(HttpStatus.UNPROCESSABLE_CONTENT);
    ask(context, names, FormErrors.of(field, message));
  }
}
