package lampwright.web.http;

import io.javalin.security.RouteRole;

/** Who may come in by a route. Each route has exactly one; what they may do is asked inside. */
public enum Access implements RouteRole {
  /** Everybody, signed in or not. */
  ANYONE,
  /** A person with a session or a token. */
  SIGNED_IN
}
