package lampwright.setup.packing;

import java.util.List;

/**
 * One stage of the day: a setup is built, shot or struck, or all move on to the next.
 *
 * @param setup its place in the order of the day, from 0; of a move the setup that is left
 * @param from minutes after the day begins
 * @param atLeast minutes that no order of the same errands beats, with the same hands
 * @param stints by their start
 */
public record Stage(int setup, Kind kind, int from, int minutes, int atLeast, List<Stint> stints) {

  /** What the stage is for. */
  public enum Kind {
    BUILD,
    SHOOT,
    STRIKE,
    MOVE
  }

  public Stage {
    stints = List.copyOf(stints);
  }

  /** Minutes after the day begins when it is over. */
  public int to() {
    return from + minutes;
  }

  /** Whether no order of the same errands is shorter. */
  public boolean isShortest() {
    return minutes == atLeast;
  }

  Stage shifted(int start) {
    return new Stage(setup, kind, start, minutes, atLeast, stints);
  }
}
