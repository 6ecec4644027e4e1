package lampwright.gear.exchange;

import java.util.List;

/** What became of reading a file of gear. */
public sealed interface GearFile {

  /** The most pieces of gear in one file. */
  int MOST_LINES = 1_000;

  /** It is such a file; its lines may be faulty each for itself. */
  record Lines(List<FileLine> lines) implements GearFile {

    /** Copies the list. */
    public Lines {
      lines = List.copyOf(lines);
    }
  }

  /**
   * It is none, so that no line can be read.
   *
   * @param line where, from 1
   */
  record Unreadable(int line, LineFault fault) implements GearFile {}
}
