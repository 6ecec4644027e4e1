package lampwright.setup.buildable;

import java.util.Arrays;

/**
 * Whether there are enough heads for all lights if modifiers were free, and enough modifiers if
 * heads were: two matchings by augmenting paths. Where one fails no allotment exists, which depth
 * first would take long to find out.
 */
final class Relaxation {

  private final KitReach kit;
  private final Makings makings;
  private final int[][] givenTo;
  private final int[] given;
  private final int[] amounts;
  private final boolean[] seen;
  private final boolean[][] fits;

  Relaxation(KitReach kit, Makings makings, int mostLights) {
    this.kit = kit;
    this.makings = makings;
    int kinds = Math.max(kit.heads.length, kit.modifiers.length);
    this.givenTo = new int[kinds][mostLights];
    this.given = new int[kinds];
    this.amounts = new int[kinds];
    this.seen = new boolean[kinds];
    this.fits = new boolean[mostLights][kinds];
  }

  /**
   * Asks whether both could be enough for the lights from a depth on.
   *
   * @param left of all supplies
   */
  boolean isPossible(Allotting allotting, int depth, int[] left) {
    return isPossible(allotting, depth, left, true) && isPossible(allotting, depth, left, false);
  }

  private boolean isPossible(Allotting allotting, int depth, int[] left, boolean heads) {
    int kinds = heads ? kit.heads.length : kit.modifiers.length;
    for (int kind = 0; kind < kinds; kind++) {
      given[kind] = 0;
      amounts[kind] = amount(kind, heads, left);
    }
    int[] kindOf = heads ? makings.model : makings.modifier;
    for (int i = depth; i < allotting.lights(); i++) {
      int light = allotting.lightAt(i);
      Arrays.fill(fits[light], false);
      int end = allotting.endOf(light);
      for (int k = makings.first[light]; k < end; k++) {
        fits[light][kindOf[allotting.makingOf(k)]] = true;
      }
      Arrays.fill(seen, false);
      if (!give(light, kinds)) {
        return false;
      }
    }
    return true;
  }

  private boolean give(int light, int kinds) {
    for (int kind = 0; kind < kinds; kind++) {
      if (!fits[light][kind] || seen[kind]) {
        continue;
      }
      seen[kind] = true;
      if (given[kind] < amounts[kind]) {
        givenTo[kind][given[kind]++] = light;
        return true;
      }
      for (int j = 0; j < given[kind]; j++) {
        if (give(givenTo[kind][j], kinds)) {
          givenTo[kind][j] = light;
          return true;
        }
      }
    }
    return false;
  }

  private int amount(int kind, boolean heads, int[] left) {
    if (heads) {
      return left[kind];
    }
    return kind == kit.modifiers.length - 1 ? fits.length : left[kit.firstModifier + kind];
  }
}
