package lampwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import lampwright.engine.light.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TargetTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          face                    | at the face
          between their shoulders | between their shoulders
          Behind the ear          | Behind the ear
          her left hand           | at her left hand
          the axle box            | at the axle box
          elder's face            | at the elder's face
          inside                  | at the inside
          """)
  void aReadingStandsAtItsTargetInEnglish(String name, String where) {
    Target target =
        new Target(name, new Point(0, 0, 0), Target.Held.TOWARD_LIGHT, Optional.empty());
    assertEquals(where, target.where());
  }
}
