package lampwright.web.http;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.util.Optional;

/** The cookie that holds a session's token; no script can read it. */
public final class SessionCookie {

  private static final String NAME = "lampwright_session";
  private static final int LONGEST = 100;

  private final boolean secure;
  private final String name;

  /**
   * @param secure whether visitors come over TLS; then the browser keeps it from every other host
   */
  public SessionCookie(boolean secure) {
    this.secure = secure;
    this.name = secure ? "__Host-" + NAME : NAME;
  }

  Optional<String> find(Context context) {
    return Optional.ofNullable(context.cookie(name))
        .filter(token -> !token.isEmpty() && token.length() <= LONGEST);
  }

  void set(Context context, String token, Duration lifetime) {
    context.cookie(cookie(token, Math.toIntExact(lifetime.toSeconds())));
  }

  void remove(Context context) {
    context.cookie(cookie("", 0));
  }

  private Cookie cookie(String value, int seconds) {
    Cookie cookie = new Cookie(name, value);
    cookie.setPath("/");
    cookie.setMaxAge(seconds);
    cookie.setSecure(secure);
    cookie.setHttpOnly(true);
    cookie.setSameSite(SameSite.LAX);
    return cookie;
  }
}
