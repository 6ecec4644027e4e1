package lampwright.setup.buildable;

import java.util.Arrays;

/**
 * The ways in which a kit can make each light of one setup, as the search finds them, all but the
 * power. Filled again for each setup, so that nothing is allocated for it.
 */
final class Makings {

  private final KitReach kit;
  private final DemandCatalogue demands;

  /** Where each light's makings start; one more than there are lights. */
  final int[] first;

  double[] strength = new double[256];
  int[] model = new int[256];
  int[] modifier = new int[256];
  int[] heads = new int[256];
  int[] gel = new int[256];
  int[] firstStep = new int[256];

  /** Of each light the most and the least that it can give, in stops above what is wanted. */
  double mostNeeded;

  double leastNeeded;

  private int count;
  private int startOfLights;
  private Verdict.Reason refusal = Verdict.Reason.LEVEL_NOT_KNOWN;
  private int light;
  private double highest;
  private double lowest;

  Makings(KitReach kit, DemandCatalogue demands, int mostLights) {
    this.kit = kit;
    this.demands = demands;
    this.first = new int[mostLights + 1];
  }

  /**
   * Collects the ways to make a setup's lights.
   *
   * @param exact without the tables
   * @param mostModifiers so many of those that a light can be made with are enough
   * @return false where some light has none; then {@link #refusal} says why
   */
  boolean collect(int setup, boolean exact, int mostModifiers) {
    startOfLights = demands.firstLight[setup];
    int end = demands.firstLight[setup + 1];
    count = 0;
    mostNeeded = Double.POSITIVE_INFINITY;
    leastNeeded = Double.NEGATIVE_INFINITY;
    for (light = startOfLights; light < end; light++) {
      first[light - startOfLights] = count;
      highest = Double.NEGATIVE_INFINITY;
      lowest = Double.POSITIVE_INFINITY;
      if (!demands.known[light]) {
        refusal = Verdict.Reason.LEVEL_NOT_KNOWN;
        return false;
      }
      refusal = Verdict.Reason.NO_MODIFIER_OF_THAT_SIZE;
      int modifiers = 0;
      for (int m = kit.modifiers.length - 1; m >= 0 && modifiers < mostModifiers; m--) {
        double radius = kit.modifiers[m].radiusM();
        if (radius >= demands.leastRadiusM[light] && radius <= demands.mostRadiusM[light]) {
          int before = count;
          withModifier(setup, m, exact);
          modifiers += count > before ? 1 : 0;
        }
      }
      if (first[light - startOfLights] == count) {
        return false;
      }
      mostNeeded = Math.min(mostNeeded, highest);
      leastNeeded = Math.max(leastNeeded, lowest);
    }
    first[end - startOfLights] = count;
    return true;
  }

  /** Why the last light that was looked at cannot be made. */
  Verdict.Reason refusal() {
    return refusal;
  }

  private void withModifier(int setup, int m, boolean exact) {
    double geometry = kit.modifiers[m].stops(demands, light, exact);
    if (geometry == Double.NEGATIVE_INFINITY) {
      refusal = Verdict.Reason.NO_LIGHT_REACHES;
      return;
    }
    int pops = demands.pops[light];
    double more = pops == 1 ? 0 : Doublings.of(pops);
    for (int h = 0; h < kit.heads.length; h++) {
      double peak = kit.peakStops[m][h];
      if (Double.isNaN(peak)) {
        continue;
      }
      HeadReach head = kit.heads[h];
      int step = head.first(pops, demands.betweenFramesS[setup], demands.frames[setup]);
      if (!head.has(step)) {
        refusal = Verdict.Reason.NO_HEAD_LASTS;
        continue;
      }
      double one = peak + geometry + more - demands.wantedStops[light];
      withHead(h, m, step, one);
    }
  }

  private void withHead(int h, int m, int step, double one) {
    HeadReach head = kit.heads[h];
    double[] losses = kit.gelStops[demands.gelKind[light]];
    int most = kit.mostHeads(h, demands.heads[light]);
    for (int g = losses.length - 1; g >= 0; g--) {
      for (int n = 1; n <= most; n++) {
        double full = one - losses[g] + (n == 1 ? 0 : n == 2 ? 1 : Doublings.of(n));
        add(full, h, m, n, g, step);
        highest = Math.max(highest, full - head.down(step));
        lowest = Math.min(lowest, full - head.mostDown());
      }
    }
  }

  private void add(double full, int h, int m, int n, int g, int step) {
    if (count == strength.length) {
      grow(2 * count);
    }
    strength[count] = full;
    model[count] = h;
    modifier[count] = m;
    heads[count] = n;
    gel[count] = g;
    firstStep[count] = step;
    count++;
  }

  private void grow(int size) {
    strength = Arrays.copyOf(strength, size);
    model = Arrays.copyOf(model, size);
    modifier = Arrays.copyOf(modifier, size);
    heads = Arrays.copyOf(heads, size);
    gel = Arrays.copyOf(gel, size);
    firstStep = Arrays.copyOf(firstStep, size);
  }

  int count() {
    return count;
  }

  int[] gels(int lightOfSetup, int making) {
    return kit.gelIndices[demands.gelKind[startOfLights + lightOfSetup]][gel[making]];
  }

  /** How many of a modifier a making takes; none of the heads' own reflector. */
  int copies(int making) {
    int m = modifier[making];
    int takes = kit.takesHeads[m];
    return m == kit.modifiers.length - 1 ? 0 : (heads[making] + takes - 1) / takes;
  }
}
