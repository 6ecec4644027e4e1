package lampwright.tasks;

import java.time.Duration;
import java.util.List;
import lampwright.document.Problem;

/**
 * A request that is refused for a reason that one may expect. The one exception of its kind; the
 * web turns its {@link Refusal} into an answer. It has no stack trace, since it is no fault.
 */
public final class Refused extends RuntimeException {

  private final transient Refusal refusal;

  public Refused(Refusal refusal) {
    super(refusal.getClass().getSimpleName(), null, false, false);
    this.refusal = refusal;
  }

  /** Why. */
  public Refusal refusal() {
    return refusal;
  }

  public static Refused notSignedIn() {
    return new Refused(new Refusal.NotSignedIn());
  }

  public static Refused notFound() {
    return new Refused(new Refusal.NotFound());
  }

  /** See {@link Refusal.NotAllowed}. */
  public static Refused notAllowed(String what) {
    return new Refused(new Refusal.NotAllowed(what));
  }

  public static Refused invalid(List<Problem> problems) {
    return new Refused(new Refusal.Invalid(problems));
  }

  /** One wrong place; see {@link Problem}. */
  public static Refused invalid(String pointer, String message) {
    return invalid(List.of(new Problem(pointer, message)));
  }

  /** See {@link Refusal.Stale}. */
  public static Refused stale(int current) {
    return new Refused(new Refusal.Stale(current));
  }

  /** See {@link Refusal.NotReadable}. */
  public static Refused notReadable(String message) {
    return new Refused(new Refusal.NotReadable(message));
  }

  public static Refused tooMany(Duration retryAfter) {
    return new Refused(new Refusal.TooMany(retryAfter));
  }

  public static Refused unavailable(Duration retryAfter) {
    return new Refused(new Refusal.Unavailable(retryAfter));
  }
}
