package lampwright.setup.packing;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What is wished of a day.
 *
 * @param hands people who build, 1 to {@value #MOST_HANDS}
 * @param wanted when each setup's first frame is to be made, in the order of the day; absent where
 *     it may be whenever it comes up. At least one of them gives the day its clock.
 * @param notBefore when the crew is there at the soonest
 */
public record DayWishes(
    int hands, WorkTimes times, List<Optional<Instant>> wanted, Optional<Instant> notBefore) {

  /** More people stand in one another's way. */
  public static final int MOST_HANDS = 8;

  /** Copies the list and checks the hands. */
  public DayWishes {
    wanted = List.copyOf(wanted);
    if (hands < 1 || hands > MOST_HANDS) {
      throw new IllegalArgumentException(
          "Hands (%d) must be 1 to %d.".formatted(hands, MOST_HANDS));
    }
  }

  DayWishes withHands(int other) {
    return new DayWishes(other, times, wanted, notBefore);
  }
}
