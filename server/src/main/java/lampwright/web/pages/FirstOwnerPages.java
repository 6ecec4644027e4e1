package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.tasks.FirstOwner;
import lampwright.tasks.Passwords;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SigningIn;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;

/** The first owner takes over an empty server, by the link on its console. */
public final class FirstOwnerPages {

  private final Door door;
  private final FirstOwner firstOwner;
  private final Templates templates;
  private final Layouts layouts;

  public FirstOwnerPages(Door door, FirstOwner firstOwner, Templates templates, Layouts layouts) {
    this.door = door;
    this.firstOwner = firstOwner;
    this.templates = templates;
    this.layouts = layouts;
  }

  /** The form. */
  public void show(Context context) {
    firstOwner.mustBeOpen(context.pathParam("secret"));
    context.html(render(context, new FirstOwner.Wish("", "", "", ""), FormErrors.none()));
  }

  /** Makes the owner and signs them in. */
  public void become(Context context) {
    FormFields form = Body.form(context);
    FirstOwner.Wish wish =
        new FirstOwner.Wish(
            form.get(FirstOwnerPage.STUDIO),
            form.get(FirstOwnerPage.NAME),
            form.get(FirstOwnerPage.EMAIL),
            form.get(FirstOwnerPage.PASSWORD));
    List<FormErrors.FormError> errors = new ArrayList<>();
    if (!form.get(FirstOwnerPage.PASSWORD_AGAIN).equals(wish.password())) {
      errors.add(
          new FormErrors.FormError(
              FirstOwnerPage.PASSWORD_AGAIN,
              layouts.words(context).say("pages.firstOwner.differ")));
    }
    if (errors.isEmpty()) {
      errors.addAll(tryToBecome(context, wish));
    }
    if (!errors.isEmpty()) {
      context.status(HttpStatus.UNPROCESSABLE_CONTENT);
      context.html(render(context, wish, new FormErrors(errors)));
    }
  }

  private List<FormErrors.FormError> tryToBecome(Context context, FirstOwner.Wish wish) {
    try {
      SigningIn.Session session = firstOwner.become(context.pathParam("secret"), wish);
      door.begin(context, session.token(), session.lifetime());
      context.redirect("/", HttpStatus.SEE_OTHER);
      return List.of();
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.Invalid(List<Problem> problems)) {
        return problems.stream()
            .map(
                problem ->
                    new FormErrors.FormError(problem.pointer().substring(1), problem.message()))
            .toList();
      }
      throw refused;
    }
  }

  private String render(Context context, FirstOwner.Wish wish, FormErrors errors) {
    return templates.render(
        "firstOwner",
        new FirstOwnerPage(
            layouts.outside(
                Optional.of(context), layouts.words(context).say("pages.firstOwner.title")),
            context.path(),
            "",
            wish.studio(),
            wish.name(),
            wish.email(),
            Passwords.SHORTEST,
            errors));
  }
}
