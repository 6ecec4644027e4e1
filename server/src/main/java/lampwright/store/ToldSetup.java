package lampwright.store;

import java.util.Optional;
import lampwright.setup.Parent;

/**
 * A setup as it is now, with what stands beside it wherever it is told of.
 *
 * @param changedBy what who made this revision is called in the studio
 * @param parent what it was made from; empty also where that may not be seen
 */
public record ToldSetup(StoredSetup stored, String changedBy, Optional<Parent> parent) {}
