package lampwright.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import lampwright.engine.match.Choice;
import lampwright.engine.match.Uses;

/**
 * An invented problem of a studio's size: twelve lights, 20 heads in 6 models, 25 modifiers in 15
 * models, three nested classes of stands; any head with any modifier at some steps of its dial, or
 * the light is given up.
 */
final class StudioAllotment {

  private static final int HEADS = 6;
  private static final int MODIFIERS = 15;
  private static final int STANDS = HEADS + MODIFIERS;

  final double[] supplies = new double[STANDS + 3];
  final double pricePerWait;
  final List<List<Choice>> rows = new ArrayList<>();

  StudioAllotment(long seed, int steps, double pricePerWait) {
    this.pricePerWait = pricePerWait;
    Random random = new Random(seed);
    scatter(random, 0, HEADS, 20);
    scatter(random, HEADS, MODIFIERS, 25);
    supplies[STANDS] = 4;
    supplies[STANDS + 1] = 9;
    supplies[STANDS + 2] = 16;
    for (int light = 0; light < 12; light++) {
      rows.add(row(random, steps));
    }
  }

  private void scatter(Random random, int from, int models, int pieces) {
    Arrays.fill(supplies, from, from + models, 1);
    for (int piece = models; piece < pieces; piece++) {
      supplies[from + random.nextInt(models)]++;
    }
  }

  private static List<Choice> row(Random random, int steps) {
    double role = List.of(3.0, 1.5, 1.0, 1.0, 0.75).get(random.nextInt(5));
    double[] likeness = random.doubles(MODIFIERS, 0, 4).toArray();
    List<Choice> row = new ArrayList<>();
    for (int head = 0; head < HEADS; head++) {
      double powerOff = random.nextDouble() * 3 - 1;
      double slowestS = 0.5 + random.nextDouble() * 3.5;
      for (int modifier = 0; modifier < MODIFIERS; modifier++) {
        Uses uses = uses(head, modifier);
        double loss = powerOff + 0.4 * likeness[modifier] - 0.8;
        for (int step = 0; step < steps; step++) {
          double miss = Math.abs(loss - step * 0.3);
          double cost = role * miss + 0.3 + 0.2 * head + 0.5 * role * likeness[modifier];
          row.add(new Choice(cost, slowestS / (1 << step), uses));
        }
      }
    }
    row.add(new Choice(8 * role, 0, Uses.NOTHING));
    return row;
  }

  private static Uses uses(int head, int modifier) {
    int least = STANDS + 2 - (head + modifier) % 3;
    int[] supplies = new int[2 + STANDS + 3 - least];
    supplies[0] = head;
    supplies[1] = HEADS + modifier;
    for (int i = 2; i < supplies.length; i++) {
      supplies[i] = least + i - 2;
    }
    double[] amounts = new double[supplies.length];
    Arrays.fill(amounts, 1);
    return Uses.of(supplies, amounts);
  }
}
