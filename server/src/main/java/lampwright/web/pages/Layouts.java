package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.Optional;
import lampwright.language.Language;
import lampwright.language.Preferences;
import lampwright.people.Preferred;
import lampwright.web.http.AskedLanguage;
import lampwright.web.http.Door;
import lampwright.wording.Wording;

/** What a page has around its own part, for whoever looks at it. */
public final class Layouts {

  private final Door door;
  private final Assets assets;
  private final Notations notations;

  public Layouts(Door door, Assets assets, Notations notations) {
    this.door = door;
    this.assets = assets;
    this.notations = notations;
  }

  /** For a page outside every studio. */
  public Layout outside(Optional<Context> context, String title) {
    return new Layout(
        title,
        Optional.empty(),
        context.map(Layouts::theme).orElse(Theme.DEVICE),
        words(context),
        assets);
  }

  /** For a page inside a studio. */
  public Layout inside(Context context, String title, SignedIn member) {
    return new Layout(title, Optional.of(member), theme(context), words(context), assets);
  }

  /**
   * The words and figures of who asks: as they have chosen; for who is not signed in, in the
   * language that the browser asks for and the usual units.
   */
  public Wording words(Context context) {
    return words(Optional.of(context));
  }

  /** The same where perhaps nobody asked in a way that could be read. */
  public Wording words(Optional<Context> context) {
    Language asked =
        context
            .flatMap(of -> AskedLanguage.find(of.header("Accept-Language")))
            .orElse(Preferences.USUAL.language());
    Preferred preferred =
        context
            .flatMap(door::knownCaller)
            .map(caller -> caller.person().preferred())
            .orElse(Preferred.NOTHING);
    return new Wording(notations.of(preferred.in(asked)));
  }

  private static Theme theme(Context context) {
    String cookie = context.cookie(Theme.COOKIE);
    return cookie == null ? Theme.DEVICE : Theme.of(cookie);
  }
}
