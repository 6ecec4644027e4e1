package lampwright.tasks;

import java.util.Map;
import lampwright.learning.trail.Way;
import lampwright.people.PersonId;

/**
 * A trail and how far a member has come on it.
 *
 * @param names of the people that the way names
 */
public record WalkedTrail(KeptTrail trail, Way way, Map<PersonId, String> names) {
  public WalkedTrail {
    names = Map.copyOf(names);
  }
}
