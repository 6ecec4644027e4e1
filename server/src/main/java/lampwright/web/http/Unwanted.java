package lampwright.web.http;

import io.javalin.http.Context;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The rest of a body that nobody wants, since its request is refused. To end the connection while
 * the other side still sends would take the answer from it too (RFC 9112, section 9.6): so the
 * answer goes first, and then the rest is taken in and let go.
 */
final class Unwanted {

  private static final Logger LOG = LoggerFactory.getLogger(Unwanted.class);
  private static final long MOST_BYTES = 16L * 1024 * 1024;

  private Unwanted() {}

  /** Whether some of the body may still be on its way. */
  static boolean isComing(Context context) throws IOException {
    boolean hasBody =
        context.req().getContentLengthLong() > 0
            || context.req().getHeader("Transfer-Encoding") != null;
    // Who asks whether to send it at all is told not to.
    return hasBody
        && context.req().getHeader("Expect") == null
        && !"close".equals(context.res().getHeader("Connection"))
        && !context.req().getInputStream().isFinished();
  }

  /**
   * Sends an answer, then takes in what still comes, as far as it is not too much and as soon as
   * {@link Patience} says.
   */
  static void answer(Context context, byte[] answer) throws IOException {
    context.res().setContentLength(answer.length);
    context.res().getOutputStream().write(answer);
    context.res().flushBuffer();
    Admission.leave(context);
    InputStream rest = context.req().getInputStream();
    try {
      rest.skipNBytes(MOST_BYTES);
    } catch (EOFException e) {
      LOG.trace("All of it has come", e);
    } catch (IOException e) {
      LOG.debug("Whoever sent it went away, or was too slow", e);
    }
  }
}
