package lampwright.tasks;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.search.IndexFailure;
import lampwright.store.DatabaseUnavailable;
import lampwright.store.NotEntered;
import lampwright.store.PicturesUnavailable;

/** Every reason for which a request is refused. What is none of these is a fault of ours. */
public sealed interface Refusal {

  /** The refusal that an exception stands for; empty where it is a fault of ours. */
  static Optional<Refusal> find(Exception thrown) {
    return switch (thrown) {
      case Refused refused -> Optional.of(refused.refusal());
      case NotEntered _ -> Optional.of(new NotFound());
      case DatabaseUnavailable _ -> Optional.of(new Unavailable(Duration.ofSeconds(5)));
      case PicturesUnavailable _ -> Optional.of(new Unavailable(Duration.ofSeconds(5)));
      // It mends itself: the follower builds what was found broken anew.
      case IndexFailure _ -> Optional.of(new Unavailable(Duration.ofSeconds(5)));
      default -> Optional.empty();
    };
  }

  /** Nobody is signed in, or no longer. */
  record NotSignedIn() implements Refusal {}

  /** E-mail and password do not belong together; which of them is wrong stays open. */
  record WrongPassword() implements Refusal {}

  /** The password is right, and the code of the person's second factor was not sent. */
  record CodeNeeded() implements Refusal {}

  /** The code of a second factor is wrong, or was used before. */
  record WrongCode() implements Refusal {}

  /** It is not there, or the person may not know that it is. */
  record NotFound() implements Refusal {}

  /**
   * The person sees it and may not do this with it.
   *
   * @param what a sentence for them: what their role lacks and who has it
   */
  record NotAllowed(String what) implements Refusal {}

  /** A change came without the proof that a page of ours, or the person's program, sent it. */
  record NotProven() implements Refusal {}

  /** It was read and is wrong, in these places. */
  record Invalid(List<Problem> problems) implements Refusal {
    public Invalid {
      problems = List.copyOf(problems);
    }
  }

  /** It clashes with what is there. */
  record Clash(String what) implements Refusal {}

  /** The key of a request was taken for another one. */
  record KeyReused() implements Refusal {}

  /**
   * Somebody changed it since it was read.
   *
   * @param current the revision that it has now
   */
  record Stale(int current) implements Refusal {}

  /** A change must name the revision that it is based on. */
  record PreconditionMissing() implements Refusal {}

  /**
   * It cannot be read at all.
   *
   * @param message what is wrong with it and where
   */
  record NotReadable(String message) implements Refusal {}

  /**
   * It is larger than anything that is taken here.
   *
   * @param mostBytes the most that is taken
   */
  record TooLarge(long mostBytes) implements Refusal {}

  /**
   * It is in a format that is not read here.
   *
   * @param accepted the media type that is
   */
  record WrongContentType(String accepted) implements Refusal {}

  /** It was tried too often. */
  record TooMany(Duration retryAfter) implements Refusal {}

  /** It cannot be done now; it is nobody's fault. */
  record Unavailable(Duration retryAfter) implements Refusal {}
}
