package lampwright.tasks;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Files of pictures that are in use though no row may need them: an archive that goes out reads
 * them, or one that comes in is about to name them.
 */
final class HeldPictures {

  private final Map<String, Integer> held = new HashMap<>();
  private final Set<String> unneeded = new HashSet<>();

  synchronized void hold(Collection<String> hashes) {
    hashes.forEach(hash -> held.merge(hash, 1, Integer::sum));
  }

  /** Whether a file must stay for now; who asks is told later that it may go. */
  synchronized boolean isHeld(String hash) {
    boolean isHeld = held.containsKey(hash);
    if (isHeld) {
      unneeded.add(hash);
    }
    return isHeld;
  }

  /** Lets go of them; says of which somebody wanted to take the files away meanwhile. */
  synchronized Set<String> letGo(Collection<String> hashes) {
    Set<String> wanted = new HashSet<>();
    for (String hash : hashes) {
      held.computeIfPresent(hash, (_, holders) -> holders == 1 ? null : holders - 1);
      if (!held.containsKey(hash) && unneeded.remove(hash)) {
        wanted.add(hash);
      }
    }
    return wanted;
  }
}
