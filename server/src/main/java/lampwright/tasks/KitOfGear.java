package lampwright.tasks;

import lampwright.gear.KitId;

/** A kit that uses some gear. */
public record KitOfGear(KitId id, String name) {}
