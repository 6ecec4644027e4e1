package lampwright.web.http;

import io.javalin.http.Context;
import lampwright.metrics.RequestTimes;
import lampwright.people.StudioId;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.spi.LoggingEventBuilder;

/**
 * One line a request, and its time. It names the route and not the address, since an address can
 * hold a secret or what somebody searched for; of studio and person it has the ids only.
 */
final class RequestLog {

  private static final String NO_ROUTE = "(no route)";
  private static final String NOBODY = "-";
  private static final int NOT_FOUND = 404;
  private static final float NANOS_PER_MS = 1e6f;

  private final Logger log = LoggerFactory.getLogger("lampwright.requests");
  private final Door door;
  private final RequestTimes times;

  RequestLog(Door door, RequestTimes times) {
    this.door = door;
    this.times = times;
  }

  void write(Context context, float millis) {
    var endpoint = context.endpoints().lastHttpEndpoint();
    String route = endpoint == null ? NO_ROUTE : endpoint.path;
    String verb = context.method().name();
    int status = context.statusCode();
    times.answered(route, verb, status, (long) (millis * NANOS_PER_MS));
    if (!log.isInfoEnabled()) {
      return;
    }
    long bytes =
        ServletContextRequest.getServletContextRequest(context.req()).getHttpOutput().getWritten();
    String studio = studio(context);
    String person = door.knownCaller(context).map(it -> it.person().id().text()).orElse(NOBODY);
    LoggingEventBuilder line =
        log.atInfo()
            .addKeyValue("method", verb)
            .addKeyValue("route", route)
            .addKeyValue("status", status)
            .addKeyValue("ms", Math.round(millis))
            .addKeyValue("bytes", bytes);
    line = studio.equals(NOBODY) ? line : line.addKeyValue("studio", studio);
    line = person.equals(NOBODY) ? line : line.addKeyValue("person", person);
    line.log(
        "{} {} {} {} ms {} bytes {} {}",
        verb,
        route,
        status,
        Math.round(millis),
        bytes,
        studio,
        person);
  }

  /** Of who was let into it only: otherwise it may be anything that somebody typed. */
  private static String studio(Context context) {
    StudioId studio = context.attribute(Door.STUDIO);
    return studio == null || context.statusCode() == NOT_FOUND ? NOBODY : studio.text();
  }
}
