package lampwright.planted.gear;

import lampwright.planted.setup.ReachesStore;

/** Gear must know nothing of setups. */
record KnowsSetups(ReachesStore setup) {}
