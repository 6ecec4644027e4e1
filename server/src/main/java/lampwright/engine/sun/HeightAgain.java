package lampwright.engine.sun;

import java.util.List;

/** Whether the sun stands at an elevation again, in the same half of the day. */
public sealed interface HeightAgain {

  /**
   * It does.
   *
   * @param times one a day at most, in order, at least one
   */
  record Reached(List<Encounter> times) implements HeightAgain {
    public Reached {
      times = List.copyOf(times);
    }
  }

  /**
   * It does not in the days that were searched.
   *
   * @param nearest the nearest it comes
   */
  record OutOfReach(Encounter nearest) implements HeightAgain {}
}
