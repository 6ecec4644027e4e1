package lampwright.planted.engine;

import net.e175.klaus.solarpositioning.SolarPosition;

/** Only engine.sun may ask the sun library. */
record AsksTheSun(SolarPosition position) {}
