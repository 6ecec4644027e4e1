package lampwright.setup.buildable;

import java.util.Arrays;

/**
 * Gives each light of a setup one of its makings, so that the kit has enough of everything and the
 * worst miss is as small as can be. Exact, by depth first, the light with the fewest choices first;
 * a worst miss needs no sums, so nearly all setups take the first choice of each light.
 */
final class Allotting {

  /** So many tries; then the full search has to say. */
  private static final int MOST_TRIES = 1_000_000;

  /** After so many tries at one exposure it is worth to ask whether there is any hope. */
  private static final int TRIES_BEFORE_DOUBT = 40;

  private final KitReach kit;
  private final Makings makings;
  private final int[] left;
  private final int[] order;
  private final int[] end;
  private final Relaxation relaxation;
  private final DeadEnds deadEnds = new DeadEnds();
  private final long[] bitsOfSupply;
  private final int[] fewestHeadsFrom;
  private final double[] plain;
  private double withGel;
  private double[] miss = new double[256];
  private int[] choice = new int[256];
  private int lights;
  private double limit;
  private double floor;
  private int tries;
  private int doubt;
  private boolean hopeless;
  private boolean fellShort;

  Allotting(KitReach kit, Makings makings, int mostLights) {
    this.kit = kit;
    this.makings = makings;
    this.left = kit.amounts.clone();
    this.order = new int[mostLights];
    this.end = new int[mostLights];
    this.bitsOfSupply = new long[kit.amounts.length];
    for (int i = 0; i < bitsOfSupply.length; i++) {
      bitsOfSupply[i] = DeadEnds.spread(i);
    }
    this.plain = new double[kit.mostHeadsOfALight() + 1];
    this.fewestHeadsFrom = new int[mostLights + 1];
    this.relaxation = new Relaxation(kit, makings, mostLights);
  }

  void begin(int lightCount) {
    lights = lightCount;
    tries = 0;
    if (miss.length < makings.count()) {
      miss = new double[2 * makings.count()];
      choice = new int[2 * makings.count()];
    }
  }

  /** Asks whether the last answers are not proved, because there was too much to try. */
  boolean gaveUp() {
    return tries > MOST_TRIES;
  }

  /** Asks whether at the last exposure each light could be made, but not all of them together. */
  boolean fellShort() {
    return fellShort;
  }

  /** Asks whether there is enough of everything where each light gets any of its makings. */
  boolean isEnough() {
    for (int i = 0; i < lights; i++) {
      end[i] = makings.first[i];
      for (int k = makings.first[i]; k < makings.first[i + 1]; k++) {
        if (makings.heads[k] == 1 && makings.gels(i, k).length == 0) {
          insert(i, k, 0);
        }
      }
    }
    limit = 1;
    floor = 0;
    return allot() < 1;
  }

  /**
   * The least worst miss at an exposure, where it is below a limit.
   *
   * @param exposure that the heads have to give, in stops above 1 lx·s
   * @param enough a miss of no more is as good as none
   * @param others the miss of what is no light
   * @return the limit where all are worse
   */
  double least(
      double exposure,
      ShutterReach shutter,
      boolean clear,
      double enough,
      double others,
      double below) {
    limit = below;
    floor = others;
    fellShort = false;
    if (others >= below) {
      return below;
    }
    if (others <= enough && isEasy(exposure, shutter, clear, enough)) {
      return others;
    }
    for (int i = 0; i < lights; i++) {
      if (!choices(i, exposure, shutter, clear, enough)) {
        return below;
      }
      floor = Math.max(floor, miss[makings.first[i]]);
    }
    double found = allot();
    fellShort = found >= below;
    return found;
  }

  /** Gives each light in turn the first making that will do; most setups need no more. */
  private boolean isEasy(double exposure, ShutterReach shutter, boolean clear, double enough) {
    System.arraycopy(kit.amounts, 0, left, 0, left.length);
    for (int i = 0; i < lights; i++) {
      boolean made = false;
      for (int k = makings.first[i]; k < makings.first[i + 1] && !made; k++) {
        made = miss(k, exposure, shutter, clear) <= enough && take(i, k, 1);
      }
      if (!made) {
        return false;
      }
    }
    return true;
  }

  private double miss(int making, double exposure, ShutterReach shutter, boolean clear) {
    double exact = makings.strength[making] - exposure;
    int head = makings.model[making];
    int step = makings.firstStep[making];
    return clear ? kit.heads[head].miss(exact, step) : shutter.models().get(head).miss(exact, step);
  }

  private boolean choices(
      int light, double exposure, ShutterReach shutter, boolean clear, double enough) {
    int from = makings.first[light];
    end[light] = from;
    for (int k = from; k < makings.first[light + 1]; k++) {
      double off = miss(k, exposure, shutter, clear);
      off = off <= enough ? 0 : off;
      if (!isOutdone(light, k, off) && off < limit) {
        insert(light, k, off);
      }
    }
    return end[light] > from;
  }

  /**
   * Asks whether the same head and modifier do as well with less: with fewer heads, or without a
   * gel. Those come first among the makings.
   */
  private boolean isOutdone(int light, int k, double off) {
    boolean begins =
        k == makings.first[light]
            || makings.model[k] != makings.model[k - 1]
            || makings.modifier[k] != makings.modifier[k - 1];
    int heads = makings.heads[k];
    if (begins) {
      Arrays.fill(plain, Double.POSITIVE_INFINITY);
    }
    if (heads == 1) {
      withGel = Double.POSITIVE_INFINITY;
    }
    if (makings.gels(light, k).length == 0) {
      double fewer = plain[heads - 1];
      plain[heads] = Math.min(fewer, off);
      return fewer <= off;
    }
    double less = Math.min(withGel, plain[heads]);
    withGel = Math.min(withGel, off);
    return less <= off;
  }

  /** Sorted by the miss; of equal ones that which was found first, which takes less. */
  private void insert(int light, int making, double off) {
    int at = end[light]++;
    while (at > makings.first[light] && miss[at - 1] > off) {
      miss[at] = miss[at - 1];
      choice[at] = choice[at - 1];
      at--;
    }
    miss[at] = off;
    choice[at] = making;
  }

  /** Finds allotments, each better than the one before, until there is none. */
  private double allot() {
    double found = limit;
    do {
      limit = found;
      found = allotBelowLimit();
    } while (found < limit && found > floor);
    return found;
  }

  private double allotBelowLimit() {
    for (int i = 0; i < lights; i++) {
      end[i] = endOf(i);
      int at = i;
      int choices = end[i] - makings.first[i];
      while (at > 0 && end[order[at - 1]] - makings.first[order[at - 1]] > choices) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = i;
    }
    fewestHeadsFrom[lights] = 0;
    for (int depth = lights - 1; depth >= 0; depth--) {
      fewestHeadsFrom[depth] = fewestHeadsFrom[depth + 1] + fewestHeads(order[depth]);
    }
    System.arraycopy(kit.amounts, 0, left, 0, left.length);
    deadEnds.clear();
    doubt = tries + TRIES_BEFORE_DOUBT;
    hopeless = false;
    return allot(0, floor, kit.headCount());
  }

  private int fewestHeads(int light) {
    int fewest = Integer.MAX_VALUE;
    for (int k = makings.first[light]; k < end[light]; k++) {
      fewest = Math.min(fewest, makings.heads[choice[k]]);
    }
    return fewest;
  }

  /** Returns the worst miss of the first allotment that is found, or the limit. */
  private double allot(int depth, double worst, int headsLeft) {
    if (depth == lights) {
      return worst;
    }
    if (headsLeft < fewestHeadsFrom[depth]) {
      return limit;
    }
    long state = tries > doubt ? state(depth) : 0;
    if (state != 0 && (deadEnds.has(state) || isHopeless(depth))) {
      return limit;
    }
    int light = order[depth];
    for (int k = makings.first[light]; k < end[light]; k++) {
      if (++tries == doubt) {
        hopeless = isHopeless(0);
      }
      if (hopeless || tries > MOST_TRIES) {
        return limit;
      }
      int making = choice[k];
      if (take(light, making, 1)) {
        double found =
            allot(depth + 1, Math.max(worst, miss[k]), headsLeft - makings.heads[making]);
        take(light, making, -1);
        if (found < limit) {
          return found;
        }
      }
    }
    if (state != 0) {
      deadEnds.add(state);
    }
    return limit;
  }

  private long state(int depth) {
    long state = DeadEnds.spread(-depth - 2L);
    for (int i = 0; i < left.length; i++) {
      state += left[i] * bitsOfSupply[i];
    }
    return state == 0 ? 1 : state;
  }

  /** Asks whether heads alone, or modifiers alone, already do not do for the rest of the lights. */
  private boolean isHopeless(int depth) {
    return !relaxation.isPossible(this, depth, depth == 0 ? kit.amounts : left);
  }

  /** Which lights are left from a depth on. */
  int lightAt(int depth) {
    return order[depth];
  }

  int lights() {
    return lights;
  }

  /** Past the last choice of a light that misses by less than the limit. */
  int endOf(int light) {
    int k = end[light];
    while (k > makings.first[light] && miss[k - 1] >= limit) {
      k--;
    }
    return k;
  }

  int makingOf(int k) {
    return choice[k];
  }

  /** Takes what a making needs, or gives it back; takes nothing where there is not enough. */
  private boolean take(int light, int making, int sign) {
    int head = makings.model[making];
    int heads = sign * makings.heads[making];
    int modifier = kit.firstModifier + makings.modifier[making];
    int copies = sign * makings.copies(making);
    int[] gels = makings.gels(light, making);
    if (left[head] < heads || (copies != 0 && left[modifier] < copies)) {
      return false;
    }
    for (int gel : gels) {
      if (left[kit.firstGel + gel] < heads) {
        return false;
      }
    }
    left[head] -= heads;
    if (copies != 0) {
      left[modifier] -= copies;
    }
    for (int gel : gels) {
      left[kit.firstGel + gel] -= heads;
    }
    return true;
  }
}
