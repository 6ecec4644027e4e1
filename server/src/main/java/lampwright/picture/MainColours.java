package lampwright.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import lampwright.engine.colour.LinearRgb;
import lampwright.engine.colour.Oklab;
import lampwright.engine.colour.SignalLight;
import lampwright.engine.colour.Srgb;

/**
 * Groups the pixels around at most six colours in Oklab, without dice: pixels of nearly one colour
 * are counted together; each next seed is what lies furthest from the seeds before, weighted by its
 * count (k-means, S. Lloyd 1982, seeded by the greatest weighted squared distance); groups nearer
 * than {@link #ALIKE} are joined.
 */
final class MainColours {

  private static final int MOST = 6;
  private static final int ROUNDS = 20;
  private static final double ALIKE = 0.06;
  private static final double LEAST_SHARE = 0.01;

  /** A group of pixels: their sums of light and how many they are. */
  private record Group(double red, double green, double blue, long count) {

    static final Group EMPTY = new Group(0, 0, 0, 0);

    static Group of(LinearRgb light) {
      return new Group(light.red(), light.green(), light.blue(), 1);
    }

    Group plus(Group other) {
      return new Group(
          red + other.red, green + other.green, blue + other.blue, count + other.count);
    }

    LinearRgb mean() {
      return new LinearRgb(red / count, green / count, blue / count);
    }

    Oklab colour() {
      return mean().toXyz().toOklab();
    }

    MainColour toMain(long all) {
      Srgb shown = mean().toSrgb();
      int rgb =
          ((int) Math.round(255 * shown.red()) << 16)
              | ((int) Math.round(255 * shown.green()) << 8)
              | (int) Math.round(255 * shown.blue());
      return new MainColour(rgb, (double) count / all);
    }
  }

  private MainColours() {}

  static List<MainColour> of(int[] rgb, SignalLight light) {
    List<Group> cells = cells(rgb, light);
    List<Oklab> colours = cells.stream().map(Group::colour).toList();
    List<Group> groups = grouped(cells, colours, seeds(cells, colours));
    return joined(groups).stream()
        .sorted(Comparator.comparingLong(Group::count).reversed().thenComparingDouble(Group::red))
        .map(group -> group.toMain(rgb.length))
        .filter(main -> main.share() >= LEAST_SHARE)
        .toList();
  }

  private static List<Group> cells(int[] rgb, SignalLight light) {
    Group[] cells = new Group[1 << 15];
    Arrays.fill(cells, Group.EMPTY);
    for (int pixel : rgb) {
      int cell = (pixel >> 9 & 0x7c00) | (pixel >> 6 & 0x3e0) | (pixel >> 3 & 0x1f);
      cells[cell] = cells[cell].plus(Group.of(light.of(pixel)));
    }
    return Arrays.stream(cells).filter(cell -> cell.count() > 0).toList();
  }

  private static List<Oklab> seeds(List<Group> cells, List<Oklab> colours) {
    double[] nearest = new double[cells.size()];
    Arrays.fill(nearest, 1);
    List<Oklab> seeds = new ArrayList<>();
    while (seeds.size() < MOST) {
      int best = 0;
      for (int i = 1; i < nearest.length; i++) {
        if (nearest[i] * cells.get(i).count() > nearest[best] * cells.get(best).count()) {
          best = i;
        }
      }
      if (nearest[best] == 0) {
        break;
      }
      Oklab seed = colours.get(best);
      seeds.add(seed);
      for (int i = 0; i < nearest.length; i++) {
        nearest[i] = Math.min(nearest[i], squared(colours.get(i), seed));
      }
    }
    return seeds;
  }

  private static List<Group> grouped(List<Group> cells, List<Oklab> colours, List<Oklab> seeds) {
    List<Oklab> middles = seeds;
    List<Group> groups = List.of();
    for (int round = 0; round < ROUNDS; round++) {
      List<Group> next = new ArrayList<>(Collections.nCopies(middles.size(), Group.EMPTY));
      for (int i = 0; i < cells.size(); i++) {
        int to = nearest(colours.get(i), middles);
        next.set(to, next.get(to).plus(cells.get(i)));
      }
      groups = next.stream().filter(group -> group.count() > 0).toList();
      List<Oklab> moved = groups.stream().map(Group::colour).toList();
      if (moved.equals(middles)) {
        break;
      }
      middles = moved;
    }
    return groups;
  }

  private static int nearest(Oklab colour, List<Oklab> middles) {
    int best = 0;
    for (int i = 1; i < middles.size(); i++) {
      if (squared(colour, middles.get(i)) < squared(colour, middles.get(best))) {
        best = i;
      }
    }
    return best;
  }

  private static List<Group> joined(List<Group> groups) {
    List<Group> left = new ArrayList<>(groups);
    for (int i = 0; i < left.size(); i++) {
      for (int j = left.size() - 1; j > i; j--) {
        if (squared(left.get(i).colour(), left.get(j).colour()) < ALIKE * ALIKE) {
          left.set(i, left.get(i).plus(left.remove(j)));
        }
      }
    }
    return left;
  }

  private static double squared(Oklab one, Oklab other) {
    double l = one.lightness() - other.lightness();
    double a = one.a() - other.a();
    double b = one.b() - other.b();
    return l * l + a * a + b * b;
  }
}
