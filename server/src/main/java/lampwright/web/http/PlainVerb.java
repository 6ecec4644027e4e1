package lampwright.web.http;

import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.Request;

/**
 * A request whose verb is the one in its first line. The web framework would take a header for it,
 * and whoever looks at requests before us, such as a proxy that lets nobody delete, would not.
 */
final class PlainVerb extends Request.Wrapper {

  private static final String OVERRIDE = "X-HTTP-Method-Override";

  private final HttpFields headers;

  private PlainVerb(Request request) {
    super(request);
    this.headers = HttpFields.build(request.getHeaders()).remove(OVERRIDE).asImmutable();
  }

  /** The request itself, where no header says another verb. */
  static Request of(Request request) {
    return request.getHeaders().contains(OVERRIDE) ? new PlainVerb(request) : request;
  }

  @Override
  public HttpFields getHeaders() {
    return headers;
  }
}
