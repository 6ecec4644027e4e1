package lampwright.store;

import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;

/**
 * One line of the change log.
 *
 * @param revision which the change made; a deletion makes one too; 0 where the setup went with all
 *     its history
 * @param now the setup as it is, maybe changed again since; absent where it is deleted
 */
public record SetupChange(
    Bookmark at, StudioId studio, SetupId setup, int revision, Optional<SetupOfStudio> now) {}
