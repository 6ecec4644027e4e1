package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Optional;
import lampwright.people.Role;
import lampwright.tasks.DemoStudio;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SigningIn;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.web.http.Visitors;
import lampwright.wording.Wording;
import org.jspecify.annotations.Nullable;

/** Signing in and out in a browser. */
public final class SignInPages {

  private static final String PATH = "/sign-in";
  private static final String NEXT = "next";

  private final Door door;
  private final SigningIn signingIn;
  private final Visitors visitors;
  private final Templates templates;
  private final Layouts layouts;
  private final Optional<String> demoPassword;

  /**
   * @param demoPassword the password of the demo's members, where the demo is on; it is no secret
   */
  public SignInPages(
      Door door,
      SigningIn signingIn,
      Visitors visitors,
      Templates templates,
      Layouts layouts,
      Optional<String> demoPassword) {
    this.door = door;
    this.signingIn = signingIn;
    this.visitors = visitors;
    this.templates = templates;
    this.layouts = layouts;
    this.demoPassword = demoPassword;
  }

  /** The form. */
  public void show(Context context) {
    String next = context.queryParam(NEXT);
    if (door.findCaller(context).isPresent()) {
      context.redirect(ours(next), HttpStatus.SEE_OTHER);
      return;
    }
    context.html(render(Optional.of(context), next == null ? "" : next, "", FormErrors.none()));
  }

  /** The form in place of a page that needs a person; it leads on to that page. */
  public String inPlaceOf(Optional<Context> context) {
    String next =
        context
            .filter(asked -> asked.method().name().equals("GET"))
            .map(
                asked ->
                    asked.path() + (asked.queryString() == null ? "" : "?" + asked.queryString()))
            .orElse("");
    return render(context, next, "", FormErrors.none());
  }

  /** Signs in. */
  public void signIn(Context context) {
    FormFields form = Body.form(context);
    String email = form.get(SignInPage.EMAIL);
    try {
      SigningIn.Session session =
          signingIn.signIn(email, form.get(SignInPage.PASSWORD), visitors.addressOf(context));
      door.begin(context, session.token(), session.lifetime());
      context.redirect(ours(form.get(NEXT)), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.WrongPassword)) {
        throw refused;
      }
      FormErrors errors =
          new FormErrors(
              List.of(
                  new FormErrors.FormError(
                      SignInPage.EMAIL, layouts.words(context).say("pages.signIn.wrong"))));
      context.status(HttpStatus.UNAUTHORIZED);
      context.html(render(Optional.of(context), form.get(NEXT), email, errors));
    }
  }

  /** Signs out. */
  public void signOut(Context context) {
    door.sessionToken(context).ifPresent(signingIn::signOut);
    door.end(context);
    context.redirect(PATH, HttpStatus.SEE_OTHER);
  }

  /** Only a path of this server: an address of another would make us a stranger's signpost. */
  private static String ours(@Nullable String next) {
    boolean isOurs =
        next != null
            && next.matches("/[A-Za-z0-9._~%/?&=+:@!$'()*,;-]*")
            && !next.startsWith("//")
            && !next.startsWith(PATH);
    return isOurs && next != null ? next : "/";
  }

  private String render(Optional<Context> context, String next, String email, FormErrors errors) {
    Wording words = layouts.words(context);
    return templates.render(
        "signIn",
        new SignInPage(
            layouts.outside(context, words.say("pages.signIn.title")),
            PATH,
            "",
            next,
            email,
            errors,
            demoPassword.map(password -> demo(password, words))));
  }

  private static SignInPage.DemoHint demo(String password, Wording words) {
    return new SignInPage.DemoHint(
        DemoStudio.MEMBERS.stream()
            .map(
                member ->
                    new SignInPage.DemoMember(
                        member.email(), words.say(may(member.role()), member.name())))
            .toList(),
        password);
  }

  private static String may(Role role) {
    return switch (role) {
      case OWNER -> "pages.signIn.owner";
      case AUTHOR -> "pages.signIn.author";
      case CREW -> "pages.signIn.crew";
      case READER -> "pages.signIn.reader";
    };
  }
}
