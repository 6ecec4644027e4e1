package lampwright.engine.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntUnaryOperator;

/** A problem for tests, with what makes one up. */
final class AllotmentCase {

  private static final List<Double> QUARTERS = List.of(0.25, 0.5, 0.75, 1.0, 1.25);

  private final double[] supplies;
  private final double pricePerWait;
  private final List<List<Choice>> rows;

  AllotmentCase(double[] supplies, double pricePerWait, List<List<Choice>> rows) {
    this.supplies = supplies;
    this.pricePerWait = pricePerWait;
    this.rows = rows;
  }

  double[] supplies() {
    return supplies;
  }

  double pricePerWait() {
    return pricePerWait;
  }

  List<List<Choice>> rows() {
    return rows;
  }

  /** A problem small enough to try everything: up to six rows of up to six choices. */
  static AllotmentCase small(Random random) {
    boolean isWhole = random.nextBoolean();
    boolean hasTies = random.nextBoolean();
    double price = random.nextInt(3) == 0 ? 0 : random.nextInt(4) * (hasTies ? 1 : 0.7);
    double[] supplies = new double[random.nextInt(6)];
    for (int k = 0; k < supplies.length; k++) {
      supplies[k] = isWhole ? random.nextInt(5) : random.nextInt(8) * 0.5;
    }
    List<List<Choice>> rows = new ArrayList<>();
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      rows.add(smallRow(random, supplies.length, isWhole, hasTies));
    }
    if (count > 2 && random.nextInt(4) == 0) {
      rows.set(1, rows.getFirst());
    }
    return new AllotmentCase(supplies, price, rows);
  }

  private static List<Choice> smallRow(
      Random random, int supplies, boolean isWhole, boolean hasTies) {
    List<Choice> row = new ArrayList<>();
    int count = random.nextInt(20) == 0 ? 0 : 1 + random.nextInt(6);
    Uses before = Uses.NOTHING;
    for (int c = 0; c < count; c++) {
      double cost = hasTies ? random.nextInt(7) - 1 : random.nextDouble() * 7 - 1;
      double waiting = hasTies ? random.nextInt(4) : random.nextDouble() * 3;
      before = random.nextInt(3) == 0 ? before : smallUses(random, supplies, isWhole);
      row.add(new Choice(cost, random.nextInt(3) == 0 ? 0 : waiting, before));
    }
    if (random.nextInt(3) > 0) {
      row.add(random.nextInt(row.size() + 1), new Choice(5 + random.nextInt(4), 0, Uses.NOTHING));
    }
    return row;
  }

  private static Uses smallUses(Random random, int supplies, boolean isWhole) {
    int[] used = new int[supplies];
    double[] amounts = new double[supplies];
    int count = 0;
    for (int k = 0; k < supplies; k++) {
      if (random.nextInt(2) == 0) {
        used[count] = k;
        amounts[count++] =
            isWhole ? 1 + random.nextInt(2) : QUARTERS.get(random.nextInt(QUARTERS.size())) * 0.9;
      }
    }
    return Uses.of(Arrays.copyOf(used, count), Arrays.copyOf(amounts, count));
  }

  /**
   * Lights of a studio: 20 heads in 6 models and 25 modifiers in 15 models, three nested classes of
   * stands; each row may take any head with any of some modifiers at some steps of its dial, each a
   * trade of cost for time to recycle, or be given up.
   */
  static AllotmentCase studio(Random random, int lights, int steps, double pricePerWait) {
    return studio(random, lights, steps, pricePerWait, i -> i);
  }

  /**
   * As before, with lights that want the same.
   *
   * @param wishOf which wish each light has
   */
  static AllotmentCase studio(
      Random random, int lights, int steps, double pricePerWait, IntUnaryOperator wishOf) {
    double[] supplies = new double[24];
    scatter(random, supplies, 0, 6, 20);
    scatter(random, supplies, 6, 15, 25);
    supplies[21] = 4;
    supplies[22] = 9;
    supplies[23] = 16;
    Uses[][] uses = new Uses[6][15];
    for (int head = 0; head < 6; head++) {
      for (int modifier = 0; modifier < 15; modifier++) {
        uses[head][modifier] = takes(head, 6 + modifier, (head + modifier) % 3);
      }
    }
    List<List<Choice>> wishes = new ArrayList<>();
    List<List<Choice>> rows = new ArrayList<>();
    for (int light = 0; light < lights; light++) {
      wishes.add(wish(random, steps, uses));
      rows.add(wishes.get(wishOf.applyAsInt(light)));
    }
    return new AllotmentCase(supplies, pricePerWait, rows);
  }

  private static Uses takes(int head, int modifier, int heaviness) {
    return switch (heaviness) {
      case 0 -> Uses.of(new int[] {head, modifier, 23}, new double[] {1, 1, 1});
      case 1 -> Uses.of(new int[] {head, modifier, 22, 23}, new double[] {1, 1, 1, 1});
      default -> Uses.of(new int[] {head, modifier, 21, 22, 23}, new double[] {1, 1, 1, 1, 1});
    };
  }

  private static void scatter(Random random, double[] supplies, int from, int models, int pieces) {
    Arrays.fill(supplies, from, from + models, 1);
    for (int piece = models; piece < pieces; piece++) {
      supplies[from + random.nextInt(models)]++;
    }
  }

  /** What one light wants: some modifiers are liked, some heads fit; more power recycles slower. */
  private static List<Choice> wish(Random random, int steps, Uses[][] uses) {
    double role = List.of(3.0, 1.5, 1.0, 1.0, 0.75).get(random.nextInt(5));
    List<Choice> row = new ArrayList<>();
    double[] likeness = random.doubles(15, 0, 4).toArray();
    for (int head = 0; head < 6; head++) {
      double powerOff = random.nextDouble() * 3 - 1;
      double weight = 0.3 + 0.2 * head;
      double slowestS = 0.5 + random.nextDouble() * 3.5;
      for (int modifier = 0; modifier < 15; modifier++) {
        double loss = powerOff + 0.4 * likeness[modifier] - 0.8;
        for (int step = 0; step < steps; step++) {
          double miss = Math.abs(loss - step * 0.3);
          double cost = role * miss + weight + 0.5 * role * likeness[modifier];
          row.add(new Choice(cost, slowestS / (1 << Math.min(step, 8)), uses[head][modifier]));
        }
      }
    }
    row.add(new Choice(8 * role, 0, Uses.NOTHING));
    return row;
  }

  Allotment least() {
    return new AllotmentSearch(supplies, pricePerWait)
        .least(rows, Double.POSITIVE_INFINITY, () -> false)
        .orElseThrow();
  }

  /** Returns what a choice of each row costs; fails where the supplies do not suffice. */
  double costOf(List<Integer> choiceOfRow) {
    double cost = 0;
    double longest = 0;
    double[] used = new double[supplies.length];
    for (int i = 0; i < rows.size(); i++) {
      Choice choice = rows.get(i).get(choiceOfRow.get(i));
      cost += choice.cost();
      longest = Math.max(longest, choice.waiting());
      for (int u = 0; u < choice.uses().count(); u++) {
        used[choice.uses().supply(u)] += choice.uses().amount(u);
      }
    }
    for (int k = 0; k < supplies.length; k++) {
      if (used[k] > supplies[k] + 1e-9) {
        throw new AssertionError("Supply " + k + " is exceeded: " + used[k] + " > " + supplies[k]);
      }
    }
    return cost + pricePerWait * longest;
  }
}
