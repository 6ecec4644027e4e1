package lampwright.web.http;

import io.javalin.http.Context;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One line a request. It names the route and not the address, since an address can hold a secret or
 * what somebody searched for.
 */
final class RequestLog {

  private final Logger log = LoggerFactory.getLogger("lampwright.requests");

  void write(Context context, float millis) {
    var endpoint = context.endpoints().lastHttpEndpoint();
    log.info(
        "{} {} {} {} {} ms",
        Reference.of(context),
        context.method().name(),
        endpoint == null ? "(no route)" : endpoint.path,
        context.statusCode(),
        Math.round(millis));
  }
}
