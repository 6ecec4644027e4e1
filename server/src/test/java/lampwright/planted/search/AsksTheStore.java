package lampwright.planted.search;

import lampwright.planted.store.ReachesWeb;

/** The index must not read the store. */
record AsksTheStore(ReachesWeb store) {}
