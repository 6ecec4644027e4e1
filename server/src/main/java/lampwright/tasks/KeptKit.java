package lampwright.tasks;

import java.time.Instant;
import lampwright.gear.Kit;
import lampwright.gear.KitId;

/** A kit of a studio as it is now. */
public record KeptKit(KitId id, int revision, Instant changedAt, Kit document) {}
