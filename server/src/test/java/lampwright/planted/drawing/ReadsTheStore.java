package lampwright.planted.drawing;

import lampwright.planted.store.ReachesWeb;

/** A drawing must be handed what it draws. */
record ReadsTheStore(ReachesWeb store) {}
