package lampwright.store;

import lampwright.people.StudioId;

/** A setup and whose it is, where many studios are read at once. */
public record SetupOfStudio(StudioId studio, StoredSetup setup) {}
