package lampwright.web.http;

import io.javalin.http.Context;
import java.util.Optional;
import lampwright.tasks.Refused;
import lampwright.tasks.SigningIn;
import lampwright.tasks.Visit;

/** Where people sign in: tells how they come, and gives their browser what it is known by. */
public final class Entrance {

  private final Door door;
  private final Visitors visitors;
  private final BrowserCookie browser;

  /**
   * @param secure whether visitors come over TLS
   */
  public Entrance(Door door, Visitors visitors, boolean secure) {
    this.door = door;
    this.visitors = visitors;
    this.browser = new BrowserCookie(secure);
  }

  /** How somebody comes. */
  public Visit visit(Context context) {
    return new Visit(
        visitors.addressOf(context),
        Optional.ofNullable(context.header("User-Agent")).orElse(""),
        door.sessionToken(context),
        browser.find(context));
  }

  /**
   * Begins a session with this visitor.
   *
   * @return what its changes must carry, see {@link Door#csrfToken}
   */
  public String begin(Context context, SigningIn.Session session) {
    String csrfToken = door.begin(context, session.token(), session.lifetime());
    session.knownBy().ifPresent(secret -> browser.set(context, secret, SigningIn.BROWSER_KNOWN));
    return csrfToken;
  }

  /**
   * Goes on with this visitor's session under another token.
   *
   * @return what its changes must carry from now on
   */
  public String goOn(Context context, String token) {
    return door.begin(context, token, SigningIn.END);
  }

  /**
   * The token of the session that a person came by.
   *
   * @throws Refused when they did not come by one
   */
  public String session(Context context) {
    return door.sessionToken(context).orElseThrow(Refused::notSignedIn);
  }
}
