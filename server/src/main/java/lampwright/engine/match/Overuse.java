package lampwright.engine.match;

/** By how much a relaxed problem's choices exceed what a node leaves of each supply. */
final class Overuse {

  private final PackedRows packed;
  private final Relaxation relaxation;
  private final Incumbent incumbent;
  private final int[] choiceOfRow;

  /** How much more is used than there is; below 0 where some is left over. */
  final double[] over;

  Overuse(PackedRows packed, Relaxation relaxation, Incumbent incumbent) {
    this.packed = packed;
    this.relaxation = relaxation;
    this.incumbent = incumbent;
    choiceOfRow = new int[packed.rows];
    over = new double[packed.supply.length];
  }

  /** Works it out for the relaxation's last bound; offers choices that exceed nothing. */
  void measure(Node node) {
    for (int k : packed.tight) {
      over[k] = -node.left[k];
    }
    for (int row = 0; row < choiceOfRow.length; row++) {
      int decided = node.choiceOfRow[row];
      choiceOfRow[row] = decided == Node.FREE ? relaxation.chosen[row] : decided;
      if (decided == Node.FREE) {
        packed.addUses(choiceOfRow[row], 1, over);
      }
    }
    if (isWithin()) {
      incumbent.offer(packed, choiceOfRow);
    }
  }

  private boolean isWithin() {
    for (int k : packed.tight) {
      if (over[k] > 0) {
        return false;
      }
    }
    return true;
  }
}
