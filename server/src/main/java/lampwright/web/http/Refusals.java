package lampwright.web.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.tasks.Refusal;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * How a refusal is answered: the only place that knows status codes. Programs get problem details
 * (RFC 9457), people the same facts as a page. What is no refusal is our fault: the visitor gets a
 * reference, the log the stack trace.
 */
public final class Refusals {

  private static final int METHOD_NOT_ALLOWED = 405;
  private static final int NOT_FOUND = 404;
  private static final int NO_CONTENT = 204;

  private final Logger log = LoggerFactory.getLogger(Refusals.class);
  private final ProblemPage page;

  public Refusals(ProblemPage page) {
    this.page = page;
  }

  /** Catches everything that a handler throws. */
  public void install(RoutesConfig routes) {
    routes.exception(HttpResponseException.class, (e, context) -> answer(context, e));
    routes.exception(
        Exception.class,
        (e, context) ->
            Refusal.find(e)
                .ifPresentOrElse(refusal -> answer(context, refusal), () -> fail(context, e)));
  }

  private void fail(Context context, Exception e) {
    log.error("A request failed", e);
    answer(context, ProblemKind.OUR_FAULT, ProblemKind.OUR_FAULT.explanation());
  }

  /** Answers a refusal. */
  public void answer(Context context, Refusal refusal) {
    switch (refusal) {
      case Refusal.NotSignedIn _ -> {
        context.header("WWW-Authenticate", "Bearer realm=\"lampwright\"");
        answer(context, ProblemKind.NOT_SIGNED_IN, "Sign in, or send a token.");
      }
      case Refusal.WrongPassword _ ->
          answer(
              context,
              ProblemKind.WRONG_PASSWORD,
              "Correct the e-mail or the password and try again.");
      case Refusal.CodeNeeded _ ->
          answer(
              context,
              ProblemKind.CODE_NEEDED,
              "Send the code that your device shows in the field code, beside the password.");
      case Refusal.WrongCode _ ->
          answer(
              context,
              ProblemKind.WRONG_CODE,
              "Send the code that your device shows now, or a recovery code.");
      case Refusal.NotFound _ -> answer(context, ProblemKind.NOT_FOUND, NOTHING_HERE);
      case Refusal.NotAllowed(String what) -> answer(context, ProblemKind.NOT_ALLOWED, what);
      case Refusal.NotProven _ ->
          answer(
              context,
              ProblemKind.NOT_PROVEN,
              "Send the session's csrf_token in X-CSRF-Token, or load the page again.");
      case Refusal.Invalid(List<Problem> problems) ->
          answer(context, ProblemKind.INVALID, count(problems), problems);
      case Refusal.Clash(String what) -> answer(context, ProblemKind.CLASH, what);
      case Refusal.KeyReused _ ->
          answer(
              context,
              ProblemKind.KEY_REUSED,
              "Take another key, or send what was sent with this one before.");
      case Refusal.Stale(int current) -> {
        Preconditions.show(context, current);
        answer(
            context,
            ProblemKind.STALE,
            "The current revision is %d. Get it, put your change into it and send that."
                .formatted(current));
      }
      case Refusal.PreconditionMissing _ ->
          answer(
              context,
              ProblemKind.PRECONDITION_MISSING,
              "Send the ETag of what you read in the header If-Match.");
      case Refusal.NotReadable(String message) ->
          answer(context, ProblemKind.NOT_READABLE, message);
      case Refusal.TooLarge(long mostBytes) -> {
        // The rest of the body is not read, so nothing can follow it on this connection.
        context.header("Connection", "close");
        answer(
            context,
            ProblemKind.TOO_LARGE,
            "At most %d bytes are taken here. Send less.".formatted(mostBytes));
      }
      case Refusal.WrongContentType(String accepted) -> {
        context.header(
            context.method().equals(HandlerType.PATCH) ? "Accept-Patch" : "Accept-Post", accepted);
        answer(
            context,
            ProblemKind.WRONG_CONTENT_TYPE,
            "Send %s in UTF-8, and say so in Content-Type.".formatted(accepted));
      }
      case Refusal.TooMany(Duration retryAfter) -> {
        retry(context, retryAfter);
        answer(context, ProblemKind.TOO_MANY, "Try again " + in(retryAfter));
      }
      case Refusal.Unavailable(Duration retryAfter) -> {
        retry(context, retryAfter);
        answer(context, ProblemKind.UNAVAILABLE, "Try again " + in(retryAfter));
      }
    }
  }

  private static final String NOTHING_HERE =
      "The address may be mistyped, or what stood here was taken away.";

  private static String count(List<Problem> problems) {
    return problems.size() == 1
        ? "One thing is wrong: " + problems.getFirst().message()
        : problems.size() + " things are wrong; each says its place.";
  }

  private static void retry(Context context, Duration after) {
    context.header("Retry-After", Long.toString(seconds(after)));
  }

  private static String in(Duration after) {
    long seconds = seconds(after);
    return seconds == 1 ? "in a second." : "in " + seconds + " seconds.";
  }

  private static long seconds(Duration after) {
    return Math.max(1, after.plusMillis(999).toSeconds());
  }

  /** The web framework's own refusals: no such route, no such method on it, and the like. */
  private void answer(Context context, HttpResponseException e) {
    switch (e.getStatus()) {
      case NOT_FOUND -> answer(context, ProblemKind.NOT_FOUND, NOTHING_HERE);
      case METHOD_NOT_ALLOWED -> {
        String allowed = String.join(", ", e.getDetails().values());
        context.header("Allow", allowed);
        if (context.method().equals(HandlerType.OPTIONS)) {
          context.status(NO_CONTENT);
          return;
        }
        answer(
            context,
            ProblemKind.METHOD_NOT_ALLOWED,
            "%s does not work here; %s does."
                .formatted(context.method().name().toUpperCase(Locale.ROOT), allowed));
      }
      default -> {
        ProblemKind kind = ProblemKind.of(e.getStatus());
        if (kind == ProblemKind.OUR_FAULT) {
          fail(context, e);
        } else {
          answer(context, kind, kind.explanation());
        }
      }
    }
  }

  void answer(Context context, ProblemKind kind, String detail) {
    answer(context, kind, detail, List.of());
  }

  private void answer(Context context, ProblemKind kind, String detail, List<Problem> errors) {
    ProblemDetails problem = new ProblemDetails(kind, detail, Reference.of(context), errors);
    context.status(kind.status());
    context.header("Cache-Control", "no-store");
    if (isForProgram(context.path(), context.header("Accept"))) {
      answer(context, ProblemDetails.MEDIA_TYPE, problem.toJson());
    } else {
      answer(context, "text/html; charset=utf-8", page.render(problem, Optional.of(context)));
    }
  }

  private static void answer(Context context, String type, String text) {
    context.contentType(type);
    // As bytes: of text the framework would ask a type that names no encoding how to write it.
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try {
      if (Unwanted.isComing(context)) {
        Unwanted.answer(context, bytes);
      } else {
        context.result(bytes);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether the answer goes to a program, which cannot read a page. */
  static boolean isForProgram(@Nullable String path, @Nullable String accept) {
    if (path != null
        && (path.startsWith("/api") || path.startsWith("/health") || path.equals("/metrics"))) {
      return true;
    }
    return accept != null && accept.contains("json") && !accept.contains("html");
  }
}
