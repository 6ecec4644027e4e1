package lampwright.planted.document;

import lampwright.planted.gear.Public;

/** The forms of documents must know nothing of what they are forms for. */
record KnowsTheEngine(Public gear) {}
