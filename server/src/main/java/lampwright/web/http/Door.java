package lampwright.web.http;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.router.ParsedEndpoint;
import io.javalin.security.Roles;
import java.net.URI;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Leave;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import org.jspecify.annotations.Nullable;

/**
 * Finds out who comes in, and whether a change that comes with a cookie was meant. It stands before
 * every route; a route that does not say whom it lets in keeps the server from starting.
 */
public final class Door {

  private static final String CALLER = "lampwright.caller";
  static final String STUDIO = "lampwright.studio";
  private static final String SESSION = "lampwright.session";
  private static final String BEARER = "bearer ";
  private static final String CSRF_HEADER = "X-CSRF-Token";
  static final String CSRF_FIELD = "csrf";
  private static final Set<HandlerType> CHANGE_NOTHING =
      Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS, HandlerType.QUERY);

  private final Function<String, Optional<Caller>> bySession;
  private final Function<String, Optional<Caller>> byToken;
  private final Optional<ReadersLook> reader;
  private final Porter porter;
  private final SessionCookie cookie;
  private final CsrfTokens csrfTokens;

  /** Looks who comes only to read something of a studio. */
  @FunctionalInterface
  public interface ReadersLook {

    /**
     * Looks who comes.
     *
     * @param secret of the session or token that they come by, good or not
     * @param studio as the address says it, whether or not there is one
     * @return empty for who cannot come in
     */
    Optional<Caller> look(Caller.Way way, String secret, String studio);
  }

  /** Asks leave for a member of a studio. */
  public interface Porter {

    /**
     * Lets a member pass whose role covers it.
     *
     * @throws Refused NotFound for who is no member, NotAllowed for whom the role does not cover it
     */
    void mustMay(Caller caller, StudioId studio, Permission permission);
  }

  /**
   * @param bySession who a session's token belongs to
   * @param byToken who a program's token belongs to
   * @param reader looks who comes only to read something of a studio, where that is more than who
   *     it is; empty where it is not
   * @param porter asks leave before a change is looked at
   */
  public Door(
      Function<String, Optional<Caller>> bySession,
      Function<String, Optional<Caller>> byToken,
      Optional<ReadersLook> reader,
      Porter porter,
      SessionCookie cookie,
      CsrfTokens csrfTokens) {
    this.bySession = bySession;
    this.byToken = byToken;
    this.reader = reader;
    this.porter = porter;
    this.cookie = cookie;
    this.csrfTokens = csrfTokens;
  }

  /**
   * Looks at every route.
   *
   * @return all of them
   * @throws IllegalStateException when one does not say whom it lets in, or says it twice
   */
  static List<ServedRoute> mustGuardEveryRoute(Javalin server) {
    List<ServedRoute> routes = new ArrayList<>();
    for (ParsedEndpoint route : server.unsafe.internalRouter.allHttpHandlers()) {
      String verb = route.endpoint.method.name();
      Roles roles = route.endpoint.metadata(Roles.class);
      if (route.endpoint.method.isHttpMethod()) {
        Access access =
            access(roles == null ? Set.of() : roles.getRoles())
                .orElseThrow(
                    () ->
                        new IllegalStateException(
                            "Route (%s %s) must name exactly one Access."
                                .formatted(verb, route.endpoint.path)));
        routes.add(new ServedRoute(verb, route.endpoint.path, access));
      }
    }
    return List.copyOf(routes);
  }

  private static Optional<Access> access(Set<?> roles) {
    return roles.size() == 1 && roles.iterator().next() instanceof Access access
        ? Optional.of(access)
        : Optional.empty();
  }

  /**
   * Lets a request in, or refuses it.
   *
   * @param gate passed before anything costs much, to look up who comes included
   */
  void enter(Context context, Gate gate) {
    Access access =
        access(context.routeRoles())
            .orElseThrow(() -> new IllegalStateException("A route without Access was reached."));
    boolean changes = !CHANGE_NOTHING.contains(context.method());
    if (changes && bearer(context).isEmpty()) {
      mustComeFromHere(context);
    }
    gate.enter(context, access);
    if (access.isOpen()) {
      gate.count(context, Optional.empty());
      return;
    }
    if (access instanceof Access.Member member) {
      member
          .glance()
          .or(() -> changes ? Optional.empty() : reader.map(Door::glance))
          .ifPresent(glance -> look(context, glance));
    }
    Caller caller = findCaller(context).orElseThrow(Refused::notSignedIn);
    gate.count(context, Optional.of(caller));
    if (changes && bearer(context).isEmpty()) {
      mustBeProven(context);
    }
    if (access.equals(Access.Outside.IN_PERSON) && caller.way() != Caller.Way.SESSION) {
      throw Refused.notAllowed(
          "Only a person who signed in can do this, and not a program with a token. Sign in.");
    }
    if (access instanceof Access.Member(Permission permission, var _)) {
      StudioId studio = Leave.studio(context.pathParam("studio"));
      if (changes) {
        porter.mustMay(caller, studio, permission);
      }
      context.attribute(STUDIO, studio);
    }
  }

  private static Glance glance(ReadersLook reader) {
    return (context, way, secret) -> reader.look(way, secret, context.pathParam("studio"));
  }

  private void look(Context context, Glance glance) {
    Optional<String> token = bearer(context);
    context.attribute(
        CALLER,
        token.isPresent()
            ? glance.look(context, Caller.Way.TOKEN, token.get())
            : cookie
                .find(context)
                .flatMap(secret -> glance.look(context, Caller.Way.SESSION, secret)));
  }

  /**
   * Who asks, on a route for {@link Access.Outside#SIGNED_IN}.
   *
   * @throws Refused when nobody is signed in
   */
  public Caller caller(Context context) {
    return findCaller(context).orElseThrow(Refused::notSignedIn);
  }

  /**
   * Who asks for a change in their own name, on a route that is open to everybody: the proof, which
   * is not asked for before such a route, is asked for here.
   *
   * @throws Refused when nobody is signed in, or the cookie comes without its proof
   */
  public Caller provenCaller(Context context) {
    Caller caller = caller(context);
    if (bearer(context).isEmpty()) {
      mustBeProven(context);
    }
    return caller;
  }

  /** Who asks, where anybody may. Looked up once a request, and only where somebody wants it. */
  public Optional<Caller> findCaller(Context context) {
    Optional<Caller> found = context.attribute(CALLER);
    if (found == null) {
      Optional<String> token = bearer(context);
      found = token.isPresent() ? byToken.apply(token.get()) : bySession(context);
      context.attribute(CALLER, found);
    }
    return found;
  }

  /** Who asks, where that was looked up already: costs nothing, and cannot fail. */
  public Optional<Caller> knownCaller(Context context) {
    Optional<Caller> found = context.attribute(CALLER);
    return found == null ? Optional.empty() : found;
  }

  private Optional<Caller> bySession(Context context) {
    return cookie.find(context).flatMap(bySession);
  }

  /**
   * The token of the session that the request came with, good or not; or of the one that has begun
   * since.
   */
  public Optional<String> sessionToken(Context context) {
    Optional<String> begun = Optional.ofNullable(context.attribute(SESSION));
    return bearer(context).isPresent() ? Optional.empty() : begun.or(() -> cookie.find(context));
  }

  /** What forms and programs of this session must send with a change; empty without a session. */
  public String csrfToken(Context context) {
    return sessionToken(context).map(csrfTokens::of).orElse("");
  }

  /**
   * Begins a session with this visitor.
   *
   * @return what its changes must carry, see {@link #csrfToken}
   */
  public String begin(Context context, String sessionToken, Duration lifetime) {
    cookie.set(context, sessionToken, lifetime);
    context.attribute(SESSION, sessionToken);
    return csrfTokens.of(sessionToken);
  }

  /** Ends the session with this visitor. */
  public void end(Context context) {
    cookie.remove(context);
  }

  private static Optional<String> bearer(Context context) {
    return Optional.ofNullable(context.header("Authorization"))
        .filter(header -> header.toLowerCase(Locale.ROOT).startsWith(BEARER))
        .map(header -> header.substring(BEARER.length()).strip());
  }

  /** Browsers say where a change comes from; where none does, the proof decides alone. */
  private static void mustComeFromHere(Context context) {
    String site = context.header("Sec-Fetch-Site");
    if (site != null && !site.equals("same-origin") && !site.equals("none")) {
      throw new Refused(new Refusal.NotProven());
    }
    String origin = context.header("Origin");
    if (site == null && origin != null && !isHere(origin, context.header("Host"))) {
      throw new Refused(new Refusal.NotProven());
    }
  }

  private static boolean isHere(String origin, @Nullable String host) {
    try {
      return host != null && host.equalsIgnoreCase(URI.create(origin).getAuthority());
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private void mustBeProven(Context context) {
    String sent = context.header(CSRF_HEADER);
    if (sent == null && Body.isForm(context)) {
      sent = Body.form(context).get(CSRF_FIELD);
    } else if (sent == null && FormWithFile.is(context)) {
      sent = FormWithFile.of(context).get(CSRF_FIELD);
    }
    String session = sessionToken(context).orElseThrow(Refused::notSignedIn);
    if (sent == null || !csrfTokens.isOf(session, sent)) {
      throw new Refused(new Refusal.NotProven());
    }
  }
}
