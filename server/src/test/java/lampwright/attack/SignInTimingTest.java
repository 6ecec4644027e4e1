package lampwright.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * Time does not tell who is known here (Web Security Testing Guide, IDNT-04: account enumeration).
 */
class SignInTimingTest {

  private static final int PAIRS = 12;

  @RegisterExtension static final AttackedHouse house = new AttackedHouse();

  private static double millis(String email) {
    var visitor = house.stranger();
    long begun = System.nanoTime();
    int status =
        visitor
            .post(
                "/api/session",
                "{\"email\":\"%s\",\"password\":\"a wrong guess\"}".formatted(email))
            .statusCode();
    double taken = (System.nanoTime() - begun) / 1e6;
    assertEquals(401, status);
    return taken;
  }

  private static double median(List<Double> values) {
    return values.stream().sorted().toList().get(values.size() / 2);
  }

  /**
   * Taken in turns, so that whatever else the machine does falls on both. Without the work for
   * nobody an unknown name is answered in a twentieth of the time; the bound is half to double.
   */
  @Test
  void aKnownAndAnUnknownNameAreAnsweredAfterTheSameWork() {
    List<Double> known = new ArrayList<>();
    List<Double> unknown = new ArrayList<>();
    for (int i = 0; i < PAIRS; i++) {
      known.add(millis("reader@demo.example"));
      unknown.add(millis("nobody" + i + "@demo.example"));
    }
    double ratio = median(unknown) / median(known);
    assertTrue(
        ratio > 0.5 && ratio < 2,
        "unknown %.1f ms, known %.1f ms".formatted(median(unknown), median(known)));
  }
}
