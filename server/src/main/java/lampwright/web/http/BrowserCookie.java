package lampwright.web.http;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.util.Optional;

/**
 * The cookie by which a browser is known again in which somebody has signed in. It lets nobody in;
 * it only keeps what strangers guess from slowing that person down. No script can read it.
 */
final class BrowserCookie {

  private static final String NAME = "lampwright_browser";
  private static final String PATH = "/";
  private static final int LONGEST = 100;

  private final boolean secure;
  private final String name;

  /**
   * @param secure whether visitors come over TLS
   */
  BrowserCookie(boolean secure) {
    this.secure = secure;
    this.name = secure ? "__Host-" + NAME : NAME;
  }

  Optional<String> find(Context context) {
    return Optional.ofNullable(context.cookie(name))
        .filter(secret -> !secret.isEmpty() && secret.length() <= LONGEST);
  }

  void set(Context context, String secret, Duration lifetime) {
    Cookie cookie = new Cookie(name, secret);
    cookie.setPath(PATH);
    cookie.setMaxAge(Math.toIntExact(lifetime.toSeconds()));
    cookie.setSecure(secure);
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.LAX);
    context.cookie(cookie);
  }
}
