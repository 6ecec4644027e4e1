package lampwright.store;

import lampwright.learning.trail.HandedIn;
import lampwright.learning.trail.TrailId;
import lampwright.setup.SetupId;
import lampwright.setup.takes.TakeId;

/**
 * A run-through that was handed in for a stage of a trail.
 *
 * @param take the run-through
 */
public record StoredBuild(
    String id, TrailId trail, SetupId setup, TakeId take, HandedIn handedIn) {}
