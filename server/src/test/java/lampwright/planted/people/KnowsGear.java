package lampwright.planted.people;

import lampwright.planted.gear.Public;

/** People must know nothing of gear. */
record KnowsGear(Public gear) {}
