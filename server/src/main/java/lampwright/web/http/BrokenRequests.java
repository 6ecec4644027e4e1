package lampwright.web.http;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/**
 * Answers what is refused before there is a request to route: malformed addresses, headers that are
 * too large, and the like. In place of the network library's own error pages.
 */
final class BrokenRequests extends ErrorHandler {

  private final ProblemPage page;
  private final Reference references;
  private final SecurityHeaders headers;

  BrokenRequests(ProblemPage page, Reference references, SecurityHeaders headers) {
    this.page = page;
    this.references = references;
    this.headers = headers;
  }

  @Override
  public boolean errorPageForMethod(String method) {
    return true;
  }

  @Override
  protected void generateResponse(
      Request request,
      Response response,
      int status,
      @Nullable String message,
      @Nullable Throwable cause,
      Callback callback) {
    ProblemKind kind = ProblemKind.of(status);
    ProblemDetails problem =
        new ProblemDetails(kind, kind.explanation(), references.make(), List.of());
    headers.all().forEach((name, value) -> response.getHeaders().put(name, value));
    response.setStatus(kind.status());
    String path = request.getHttpURI() == null ? null : request.getHttpURI().getPath();
    String body;
    if (Refusals.isForProgram(path, request.getHeaders().get(HttpHeader.ACCEPT))) {
      response.getHeaders().put(HttpHeader.CONTENT_TYPE, ProblemDetails.MEDIA_TYPE);
      body = problem.toJson();
    } else {
      response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/html; charset=utf-8");
      body = page.render(problem, Optional.empty());
    }
    response.write(true, ByteBuffer.wrap(body.getBytes(StandardCharsets.UTF_8)), callback);
  }
}
