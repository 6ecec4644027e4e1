package lampwright.drawing;

import java.util.List;
import java.util.Optional;

/**
 * A small drawing in many positions of one thing that can be turned, of which one is looked at: a
 * slider leafs through it, paper shows its first, middle and last leaf.
 *
 * @param key short, in lower case letters; no other book has it
 * @param label what is turned, as the slider's label
 * @param leaves at least one, in the order of the slider
 */
public record FlipBook(String key, String label, List<Leaf> leaves) {

  public FlipBook {
    leaves = List.copyOf(leaves);
    if (leaves.isEmpty()) {
      throw new IllegalArgumentException("Leaves (0) must be at least 1.");
    }
  }

  /**
   * One position.
   *
   * @param value where the slider stands ("2.0 m")
   * @param says what is to be seen, with the figures of the engine
   * @param drawing without ids, so that all leaves may stand in one page
   * @param ruler the levels on the stop ruler, where the drawing is about levels
   */
  public record Leaf(String value, String says, Svg drawing, Optional<Ruler> ruler) {}

  /** A stop ruler and what its open dot and its bar are. */
  public record Ruler(Svg drawing, String dotName, String barName) {

    static Ruler of(StopRuler ruler) {
      return new Ruler(ruler.svg(), ruler.dotName(), ruler.barName());
    }
  }

  /** The leaf that shows first, counted from 0. */
  public int start() {
    return leaves.size() / 2;
  }

  /** Whether a leaf is among those that paper shows. */
  public boolean isOnPaper(int leaf) {
    return leaf == 0 || leaf == start() || leaf == leaves.size() - 1;
  }
}
