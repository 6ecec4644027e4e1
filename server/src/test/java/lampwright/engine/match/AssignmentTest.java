package lampwright.engine.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AssignmentTest {

  private static final double NO = Double.POSITIVE_INFINITY;

  @Test
  void cheapestIsNotAlwaysGreedy() {
    Assignment answer = Assignment.leastCost(new double[][] {{1, 2}, {1, 100}});
    assertEquals(new Assignment.Complete(List.of(1, 0), 3), answer);
  }

  @Test
  void nothingToDoCostsNothing() {
    assertEquals(new Assignment.Complete(List.of(), 0), Assignment.leastCost(new double[][] {}));
  }

  @Test
  void rowsWithoutAnyColumnAreLeftOut() {
    Assignment answer = Assignment.leastCost(new double[][] {{NO, 4}, {NO, NO}, {NO, 1}});
    assertEquals(new Assignment.Partial(List.of(1, -1, -1), 4, List.of(1, 2)), answer);
  }

  @Test
  void noColumnsAtAllServeNobody() {
    assertEquals(
        new Assignment.Partial(List.of(-1, -1), 0, List.of(0, 1)),
        Assignment.leastCost(new double[][] {{}, {}}));
  }

  @Test
  void unusableCostsAreRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> Assignment.leastCost(new double[][] {{Double.NaN}}));
    assertThrows(
        IllegalArgumentException.class,
        () -> Assignment.leastCost(new double[][] {{Double.NEGATIVE_INFINITY}}));
    assertThrows(
        IllegalArgumentException.class, () -> Assignment.leastCost(new double[][] {{1e200}}));
    assertThrows(
        IllegalArgumentException.class, () -> Assignment.leastCost(new double[][] {{1, 2}, {3}}));
  }

  /** Small whole costs make many ties and long chains; fractions and negatives the rest. */
  @ParameterizedTest
  @CsvSource({
    "whole, 0.0, 1",
    "whole, 0.3, 2",
    "whole, 0.7, 3",
    "fraction, 0.0, 4",
    "fraction, 0.4, 5",
    "negative, 0.2, 6"
  })
  void agreesWithTryingEverything(String kind, double forbidden, long seed) {
    for (int run = 0; run < 1000; run++) {
      Random random = new Random(seed * 100_000 + run);
      int rows = 1 + random.nextInt(7);
      int columns = 1 + random.nextInt(7);
      double[][] cost = costs(random, kind, forbidden, rows, columns);
      String about = "seed " + seed + ", run " + run + ", " + Arrays.deepToString(cost);

      Assignment answer = Assignment.leastCost(cost);
      Best best = new Best(cost);
      assertEquals(best.served, served(answer), "served rows; " + about);
      assertEquals(best.total, answer.cost(), 1e-9, about);
      checkShape(cost, answer, about);
      assertEquals(answer, Assignment.leastCost(cost), "the same again; " + about);
    }
  }

  /** A diagonal hidden among dearer costs; the answer is known without trying. */
  @Test
  void findsAHiddenCheapDiagonalInALargeTable() {
    Random random = new Random(20261124);
    int size = 120;
    List<Integer> hidden = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      hidden.add(i);
    }
    Collections.shuffle(hidden, random);
    double[][] cost = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        cost[row][column] = column == hidden.get(row) ? 1 : 2 + random.nextDouble();
      }
    }
    assertEquals(new Assignment.Complete(hidden, size), Assignment.leastCost(cost));
  }

  private static double[][] costs(
      Random random, String kind, double forbidden, int rows, int columns) {
    double[][] cost = new double[rows][columns];
    for (double[] row : cost) {
      for (int column = 0; column < columns; column++) {
        row[column] =
            random.nextDouble() < forbidden
                ? NO
                : switch (kind) {
                  case "whole" -> random.nextInt(6);
                  case "fraction" -> random.nextDouble() * 10;
                  case "negative" -> random.nextGaussian() * 5;
                  default -> throw new IllegalArgumentException(kind);
                };
      }
    }
    return cost;
  }

  private static List<Integer> served(Assignment answer) {
    List<Integer> served = new ArrayList<>();
    for (int row = 0; row < answer.columnOfRow().size(); row++) {
      if (answer.columnOfRow().get(row) != Assignment.NONE) {
        served.add(row);
      }
    }
    return served;
  }

  private static void checkShape(double[][] cost, Assignment answer, String about) {
    List<Integer> used =
        answer.columnOfRow().stream().filter(column -> column != Assignment.NONE).toList();
    assertEquals(used.size(), used.stream().distinct().count(), "columns twice; " + about);
    for (int row = 0; row < cost.length; row++) {
      int column = answer.columnOfRow().get(row);
      assertTrue(column == Assignment.NONE || cost[row][column] < NO, "forbidden; " + about);
    }
    if (used.size() == cost.length) {
      assertInstanceOf(Assignment.Complete.class, answer, about);
    } else {
      List<Integer> unserved = assertInstanceOf(Assignment.Partial.class, answer).unservedRows();
      assertEquals(cost.length - used.size(), unserved.size(), about);
    }
  }

  /**
   * Tries every assignment: the best serves the earliest rows (compared as the list of served
   * rows), and among those costs least. It also checks that earliest-first serves as many as can be
   * served.
   */
  private static final class Best {
    private final double[][] cost;
    private final boolean[] taken;
    private final boolean[] servedNow;
    private List<Integer> served = List.of();
    private double total = 0;
    private int most = 0;

    Best(double[][] cost) {
      this.cost = cost;
      this.taken = new boolean[cost[0].length];
      this.servedNow = new boolean[cost.length];
      tryRow(0, 0);
      assertEquals(most, served.size(), "earliest first serves as many as can be");
    }

    private void tryRow(int row, double sum) {
      if (row == cost.length) {
        compare(sum);
        return;
      }
      for (int column = 0; column < taken.length; column++) {
        if (!taken[column] && cost[row][column] < NO) {
          taken[column] = true;
          servedNow[row] = true;
          tryRow(row + 1, sum + cost[row][column]);
          servedNow[row] = false;
          taken[column] = false;
        }
      }
      tryRow(row + 1, sum);
    }

    private void compare(double sum) {
      List<Integer> now = new ArrayList<>();
      for (int row = 0; row < servedNow.length; row++) {
        if (servedNow[row]) {
          now.add(row);
        }
      }
      most = Math.max(most, now.size());
      int order = earlier(now, served);
      if (order > 0 || (order == 0 && sum < total)) {
        served = now;
        total = sum;
      }
    }

    /** Plus where the first list serves an earlier row that the second does not. */
    private int earlier(List<Integer> first, List<Integer> second) {
      for (int row = 0; row < cost.length; row++) {
        if (first.contains(row) != second.contains(row)) {
          return first.contains(row) ? 1 : -1;
        }
      }
      return 0;
    }
  }
}
