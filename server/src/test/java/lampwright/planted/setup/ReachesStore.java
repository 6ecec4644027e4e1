package lampwright.planted.setup;

import lampwright.planted.store.ReachesWeb;

/** Setups must not know where they are kept. */
public record ReachesStore(ReachesWeb store) {}
