package lampwright.web.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.compression.Gzip;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.json.JavalinJackson3;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.NetworkConnector;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.slf4j.LoggerFactory;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;

/** The web framework, set up as this house needs it, with the door before every route. */
public final class HttpServer implements AutoCloseable {

  private static final int MISDIRECTED = 421;
  private static final int HEADER_BYTES = 16 * 1024;
  private static final Duration LONGEST_ANSWER = Duration.ofSeconds(20);
  private static final Duration REQUEST_ON_ITS_WAY = Duration.ofMillis(100);
  private static final long BETWEEN_LOOKS_MS = 10;

  private final Javalin javalin;
  private final List<ServedRoute> routes;
  private final Setup setup;

  private HttpServer(Javalin javalin, List<ServedRoute> routes, Setup setup) {
    this.javalin = javalin;
    this.routes = routes;
    this.setup = setup;
  }

  /**
   * What a server needs to know.
   *
   * @param host the address to listen on
   * @param port the port to listen on; 0 takes any free one
   * @param secure whether visitors come over TLS, to this server or to a proxy before it
   * @param names the names that it may be visited under
   * @param behindProxy whether a proxy on this machine stands before it
   * @param certificate what it speaks TLS with; empty where it speaks plain HTTP
   * @param patience how long it waits for whom
   */
  public record Place(
      String host,
      int port,
      boolean secure,
      HostNames names,
      boolean behindProxy,
      Optional<CertificateFiles> certificate,
      Patience patience) {

    /** Plain HTTP with the usual patience. */
    public Place(String host, int port, boolean secure, HostNames names) {
      this(host, port, secure, names, false, Optional.empty(), Patience.USUAL);
    }
  }

  /**
   * Starts to serve.
   *
   * @param traffic what it bounds and tells
   * @param routes adds the routes
   * @throws AddressUnusable when it cannot listen there
   * @throws CertificateUnusable when it cannot speak TLS with its certificate
   * @throws IllegalStateException when a route names no {@link Access}, or a lane is named for a
   *     route that is none
   */
  public static HttpServer start(
      Place place,
      Door door,
      ProblemPage page,
      SecureRandom random,
      Traffic traffic,
      Consumer<RouteList> routes) {
    Setup setup =
        new Setup(
            place,
            door,
            page,
            new Refusals(page),
            new Reference(random),
            new SecurityHeaders(place.secure()),
            new SlowPeers(place.patience(), place.behindProxy()),
            traffic,
            new Gate(traffic, new Visitors(place.behindProxy())));
    Javalin javalin =
        Javalin.create(
            config -> {
              setup.apply(config);
              routes.accept(new RouteList(config.routes));
            });
    List<ServedRoute> served = Door.mustGuardEveryRoute(javalin);
    mustBeServed(traffic, served);
    javalin.start();
    return new HttpServer(javalin, served, setup);
  }

  private static void mustBeServed(Traffic traffic, List<ServedRoute> served) {
    Set<String> known =
        served.stream()
            .map(route -> route.verb() + " " + route.path())
            .collect(Collectors.toUnmodifiableSet());
    traffic.lanes().keySet().stream()
        .filter(named -> !known.contains(named))
        .findFirst()
        .ifPresent(
            named -> {
              throw new IllegalStateException("A lane is named for what is no route: " + named);
            });
  }

  /** The port that it listens on. */
  public int port() {
    return javalin.port();
  }

  /** Everything that it answers to. */
  public List<ServedRoute> routes() {
    return routes;
  }

  /**
   * Stops, and loses no request. First it says that it is not ready and goes on answering, each
   * answer with the word that its connection ends, so that who hands out requests takes others.
   * Then nobody new is let in; connections on which nothing is asked are ended, and what is being
   * answered is answered, for at most 20 seconds.
   */
  @Override
  public void close() {
    setup.traffic().stop();
    try {
      Thread.sleep(setup.traffic().drain());
      letNobodyIn();
      long end = System.nanoTime() + LONGEST_ANSWER.toNanos();
      while (setup.peers().endIdle(REQUEST_ON_ITS_WAY) && System.nanoTime() < end) {
        Thread.sleep(BETWEEN_LOOKS_MS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    javalin.stop();
  }

  private void letNobodyIn() {
    for (Connector connector : javalin.jettyServer().server().getConnectors()) {
      if (connector instanceof NetworkConnector network) {
        network.close();
      }
    }
  }

  private record Setup(
      Place place,
      Door door,
      ProblemPage page,
      Refusals refusals,
      Reference references,
      SecurityHeaders headers,
      SlowPeers peers,
      Traffic traffic,
      Gate gate) {

    void apply(JavalinConfig config) {
      config.startup.showJavalinBanner = false;
      config.startup.showOldJavalinVersionWarning = false;
      config.startup.startupWatcherEnabled = false;
      config.concurrency.useVirtualThreads = true;
      config.http.prefer405over404 = true;
      config.http.maxRequestSize = Body.MOST_BYTES;
      config.http.compressionStrategy = new CompressionStrategy(null, new Gzip(6));
      config.router.ignoreTrailingSlashes = false;
      config.jsonMapper(
          new JavalinJackson3(
              JsonMapper.builder()
                  .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                  .changeDefaultPropertyInclusion(
                      inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_ABSENT))
                  .build(),
              true));
      config.jetty.addConnector(this::listening);
      config.jetty.modifyHttpConfiguration(this::apply);
      config.jetty.modifyServer(this::apply);
      config.jetty.modifyServletContextHandler(
          handler -> handler.setErrorHandler(brokenRequests()));
      config.routes.before(this::receive);
      config.routes.beforeMatched(context -> door.enter(context, gate));
      config.routes.after(Setup::sayEncoding);
      // The answer is there; who takes it slowly needs no place for that.
      config.routes.after(Admission::leave);
      refusals.install(config.routes);
      RequestLog log = new RequestLog(door, traffic.times());
      config.requestLogger.http((context, millis) -> log.write(context, millis));
      config.router.javaLangErrorHandler(this::fail);
    }

    /** An error of the virtual machine, such as no memory: nothing but the answer is left of it. */
    private void fail(HttpServletResponse response, Error error) {
      ProblemKind kind = ProblemKind.OUR_FAULT;
      String reference = references.make();
      LoggerFactory.getLogger(HttpServer.class).error("{} failed", reference, error);
      response.setContentType(ProblemDetails.MEDIA_TYPE);
      try {
        response
            .getOutputStream()
            .write(
                new ProblemDetails(kind, kind.explanation(), reference, List.of())
                    .toJson()
                    .getBytes(StandardCharsets.UTF_8));
      } catch (IOException e) {
        error.addSuppressed(e);
      }
    }

    private void apply(HttpConfiguration http) {
      http.setUriCompliance(UriCompliance.DEFAULT);
      http.setRequestHeaderSize(HEADER_BYTES);
      // Otherwise a line that differs in case alone is taken for one that came before it on the
      // same connection: another's cookie, entity tag or token.
      http.setHeaderCacheCaseSensitive(true);
      http.setSendServerVersion(false);
      http.setSendDateHeader(true);
      http.addCustomizer((request, _) -> PlainVerb.of(request));
      http.setIdleTimeout(place.patience().silence().toMillis());
    }

    /** Takes the address before anything starts, so that a taken one is told by us alone. */
    private ServerConnector listening(Server server, HttpConfiguration http) {
      HttpConnectionFactory requests = new HttpConnectionFactory(http);
      Optional<Tls> tls =
          place.certificate().map(files -> new Tls(files, place.patience().betweenLooks()));
      // Its own look at names would refuse what HostNames takes, and is not for plain HTTP.
      tls.ifPresent(_ -> http.addCustomizer(new SecureRequestCustomizer(false)));
      ServerConnector connector =
          tls.isPresent()
              ? new ServerConnector(server, tls.get().before(requests.getProtocol()), requests)
              : new ServerConnector(server, requests);
      tls.ifPresent(connector::addBean);
      connector.addBean(peers);
      connector.addBean(everybody(connector));
      connector.setHost(place.host());
      connector.setPort(place.port());
      connector.setIdleTimeout(place.patience().silence().toMillis());
      try {
        connector.open();
      } catch (IOException e) {
        throw new AddressUnusable(place.host(), place.port(), e);
      }
      return connector;
    }

    /** Where there are too many altogether, those that do nothing are not waited for. */
    private NetworkConnectionLimit everybody(ServerConnector connector) {
      NetworkConnectionLimit limit =
          new NetworkConnectionLimit(place.patience().altogether(), connector);
      limit.setEndPointIdleTimeout(place.patience().silence().toMillis() / 10);
      return limit;
    }

    private void apply(Server server) {
      server.insertHandler(new InFlight(traffic));
      server.insertHandler(new PatientHandler(peers));
      server.setErrorHandler(brokenRequests());
    }

    private BrokenRequests brokenRequests() {
      return new BrokenRequests(page, references, headers);
    }

    /** All our text is UTF-8; a browser that had to guess could be led to read markup into it. */
    private static void sayEncoding(Context context) {
      String type = context.res().getContentType();
      if (type != null && type.startsWith("text/") && !type.contains("charset")) {
        context.contentType(type + "; charset=utf-8");
      }
    }

    private void receive(Context context) {
      references.give(context);
      headers.set(context);
      if (!place.names().includes(context.header("Host"))) {
        refusals.answer(
            context, ProblemKind.of(MISDIRECTED), ProblemKind.of(MISDIRECTED).explanation());
        context.skipRemainingHandlers();
        return;
      }
      Escapes.decode(context.path());
      String query = context.queryString();
      if (query != null) {
        Escapes.decode(query);
      }
    }
  }
}
