package lampwright.store;

import java.time.Instant;
import java.time.LocalDate;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.setup.takes.TakeId;

/**
 * A take as it is now.
 *
 * @param day by the clocks of the place
 * @param number of that day
 * @param document JSON
 */
public record StoredTake(
    TakeId id,
    SetupId setup,
    int revision,
    LocalDate day,
    int number,
    String document,
    Instant takenAt,
    Instant changedAt,
    PersonId createdBy) {}
