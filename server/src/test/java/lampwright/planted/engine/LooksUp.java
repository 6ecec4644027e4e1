package lampwright.planted.engine;

import lampwright.planted.setup.ReachesStore;

/** The engine must know nothing of setups. */
record LooksUp(ReachesStore setup) {}
