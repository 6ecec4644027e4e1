package lampwright.people;

import java.util.Optional;

/**
 * How far what somebody came in with reaches: a token can be made to do less than its person may.
 * It only ever takes away; nobody can do more than their role in a studio covers.
 *
 * @param atMost the role that it may do the things of at most; empty for whatever its person may
 * @param only the one studio that it is good for; empty for every one of its person's
 */
public record Reach(Optional<Role> atMost, Optional<StudioId> only) {

  /** Of somebody who came in themself. */
  public static final Reach WHOLE = new Reach(Optional.empty(), Optional.empty());

  /** Whether it is good for a studio. */
  public boolean includes(StudioId studio) {
    return only.map(studio::equals).orElse(true);
  }

  /** What is left of the role that a person has. */
  public Role limit(Role role) {
    return atMost.map(role::orLess).orElse(role);
  }
}
