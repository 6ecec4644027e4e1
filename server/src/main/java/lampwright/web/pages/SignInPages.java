package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import lampwright.people.Role;
import lampwright.tasks.DemoStudio;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.tasks.SigningIn;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;
import lampwright.web.http.FormFields;
import lampwright.wording.Wording;
import org.jspecify.annotations.Nullable;

/** Signing in and out in a browser. */
public final class SignInPages {

  private static final String PATH = "/sign-in";
  private static final String CODE_PATH = PATH + "/code";
  private static final String NEXT = "next";

  /** Asked for by who has given a password, and wants to give another. */
  private static final String AGAIN = "again";

  private final Door door;
  private final SigningIn signingIn;
  private final Entrance entrance;
  private final Templates templates;
  private final Layouts layouts;
  private final Optional<String> demoPassword;

  /**
   * @param demoPassword the password of the demo's members, where the demo is on; it is no secret
   */
  public SignInPages(
      Door door,
      SigningIn signingIn,
      Entrance entrance,
      Templates templates,
      Layouts layouts,
      Optional<String> demoPassword) {
    this.door = door;
    this.signingIn = signingIn;
    this.entrance = entrance;
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
    if (door.sessionToken(context).filter(signingIn::isWaiting).isPresent()
        && context.queryParam(AGAIN) == null) {
      context.redirect(CODE_PATH + "?" + NEXT + "=" + encoded(ours(next)), HttpStatus.SEE_OTHER);
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
          signingIn.signIn(email, form.get(SignInPage.PASSWORD), entrance.visit(context));
      entrance.begin(context, session);
      String next = ours(form.get(NEXT));
      context.redirect(
          session.waitsForCode() ? CODE_PATH + "?" + NEXT + "=" + encoded(next) : next,
          HttpStatus.SEE_OTHER);
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

  /** The second step: the form for the code, where a session waits for one. */
  public void showCode(Context context) {
    String next = ours(context.queryParam(NEXT));
    if (door.findCaller(context).isPresent()) {
      context.redirect(next, HttpStatus.SEE_OTHER);
    } else if (door.sessionToken(context).filter(signingIn::isWaiting).isEmpty()) {
      context.redirect(PATH + "?" + NEXT + "=" + encoded(next), HttpStatus.SEE_OTHER);
    } else {
      context.html(renderCode(context, next, FormErrors.none()));
    }
  }

  /** Takes the code. */
  public void giveCode(Context context) {
    FormFields form = Body.form(context);
    String next = ours(form.get(NEXT));
    try {
      entrance.begin(
          context,
          signingIn.giveCode(
              entrance.session(context), form.get(SignInCodePage.CODE), entrance.visit(context)));
      context.redirect(next, HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      if (!(refused.refusal() instanceof Refusal.WrongCode)) {
        throw refused;
      }
      context.status(HttpStatus.UNAUTHORIZED);
      context.html(
          renderCode(
              context,
              next,
              FormErrors.of(
                  SignInCodePage.CODE, layouts.words(context).say("account.error.code"))));
    }
  }

  private String renderCode(Context context, String next, FormErrors errors) {
    return templates.render(
        "signInCode",
        new SignInCodePage(
            layouts.outside(Optional.of(context), layouts.words(context).say("account.code.title")),
            CODE_PATH,
            next,
            PATH + "?" + AGAIN,
            errors));
  }

  private static String encoded(String path) {
    return URLEncoder.encode(path, StandardCharsets.UTF_8);
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
