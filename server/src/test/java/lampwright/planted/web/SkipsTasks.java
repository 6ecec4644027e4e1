package lampwright.planted.web;

import java.util.Optional;
import lampwright.planted.store.ReachesWeb;

/** Pages must ask a task, not the store. */
public record SkipsTasks(Optional<ReachesWeb> store) {}
