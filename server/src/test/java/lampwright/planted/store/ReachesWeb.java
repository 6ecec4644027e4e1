package lampwright.planted.store;

import lampwright.planted.web.SkipsTasks;

/** The store must not know who asks. */
public record ReachesWeb(SkipsTasks web) {}
