package lampwright.wording;

import java.util.List;
import lampwright.language.Notation;
import lampwright.setup.SetupDocument;
import lampwright.setup.reacting.Reaction;

/**
 * What to change now, as it is read.
 *
 * @param happened what happened, in a sentence
 * @param untouched what the setup is like if nobody touches anything, in a sentence
 * @param ways best first; empty where nothing is to be changed, or nothing helps
 * @param instead in the place of ways: that nothing is to be changed, that nothing helps and what
 *     falls short, or what is not known; empty where there are ways
 * @param cautions what can hurt while it is done, where something can
 */
public record ReactionLines(
    String happened, String untouched, List<WayLines> ways, String instead, List<String> cautions) {

  public ReactionLines {
    ways = List.copyOf(ways);
    cautions = List.copyOf(cautions);
  }

  /**
   * One way.
   *
   * @param dials how many things a hand turns: "1 dial"
   * @param holdsAll whether everything is then within a third of where it was
   * @param turns what to do, one line each: "Shutter 1/60 → 1/30"
   * @param then what the setup is like then: "Ambient back at −1.3. All lights where they were."
   * @param costs what it costs besides, one sentence each: "Movement blurs twice as far."
   */
  public record WayLines(
      String dials, boolean holdsAll, List<String> turns, String then, List<String> costs) {
    public WayLines {
      turns = List.copyOf(turns);
      costs = List.copyOf(costs);
    }
  }

  /**
   * The lines of a reaction.
   *
   * @param setup as it was before something happened
   */
  public static ReactionLines of(SetupDocument setup, Reaction reaction, Notation notation) {
    throw new UnsupportedOperationException("The words are not written yet.");
  }
}
