package lampwright.web.http;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.slf4j.MDC;

/**
 * Around each request: counts it, sees to it that nothing of it is left behind on its thread, and
 * tells the other side to come by another connection where the server is to end.
 */
final class InFlight extends Handler.Wrapper {

  private final Traffic traffic;

  InFlight(Traffic traffic) {
    this.traffic = traffic;
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    traffic.begin();
    Request.addCompletionListener(request, _ -> traffic.end());
    try {
      if (traffic.isStopping()) {
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        // Otherwise the end of the connection would be the end of the answer, and nobody could tell
        // a whole one from one that broke off. HTTP/1.0 has nothing else; there it is left out.
        response.getHeaders().put(HttpHeader.TRANSFER_ENCODING, "chunked");
      }
      return super.handle(request, response, callback);
    } finally {
      if (request.getAttribute(Admission.PASS) instanceof Admission.Pass pass) {
        pass.leave();
      }
      MDC.clear();
    }
  }
}
