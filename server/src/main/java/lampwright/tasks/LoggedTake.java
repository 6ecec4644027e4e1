package lampwright.tasks;

import java.time.Instant;
import java.util.List;
import lampwright.people.PersonId;
import lampwright.setup.SetupDocument;
import lampwright.setup.takes.ComparedReading;
import lampwright.setup.takes.Take;
import lampwright.setup.takes.TakeId;

/**
 * A take as it is now, with what its readings say against the setup that was shot.
 *
 * @param number of its day
 * @param loggedBy the name of who logged it, who is {@code creator}
 * @param shot the setup as it was shot
 */
public record LoggedTake(
    TakeId id,
    int revision,
    int number,
    Instant changedAt,
    String loggedBy,
    PersonId creator,
    SetupDocument shot,
    Take document,
    List<ComparedReading> readings) {

  public LoggedTake {
    readings = List.copyOf(readings);
  }

  /** What it is called on its day. */
  public String label() {
    return document.label(number);
  }
}
