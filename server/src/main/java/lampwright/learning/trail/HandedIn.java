package lampwright.learning.trail;

import java.time.Instant;
import java.util.Optional;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.Role;

/**
 * A build that somebody handed in for a stage.
 *
 * @param judgement absent while it waits
 */
public record HandedIn(StageId stage, PersonId by, Instant at, Optional<Judgement> judgement) {

  /**
   * What somebody said of it.
   *
   * @param isSignedOff else it was sent back, to be done again
   * @param words why, or what to mind
   */
  public record Judgement(boolean isSignedOff, PersonId by, Instant at, String words) {}

  /** Why somebody may not judge a build. */
  public enum Bar {
    /** Their role does not cover it. */
    ROLE,
    /** They built it: nobody signs themself off, whatever their role. */
    OWN,
    /** Somebody has judged it. */
    JUDGED
  }

  /** What keeps somebody from judging it; empty where they may. */
  public Optional<Bar> bar(PersonId person, Role role) {
    if (by.equals(person)) {
      return Optional.of(Bar.OWN);
    }
    if (!role.may(Permission.SIGN_OFF)) {
      return Optional.of(Bar.ROLE);
    }
    return judgement.isPresent() ? Optional.of(Bar.JUDGED) : Optional.empty();
  }
}
