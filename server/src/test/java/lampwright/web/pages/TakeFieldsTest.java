package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import java.util.Map;
import lampwright.document.Reading;
import lampwright.setup.Documents;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.takes.Take;
import lampwright.wording.WordsForTests;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TakeFieldsTest {

  private static final Map<String, String> TYPED =
      Map.of("client-key", "typed-once", "setup-revision", "1", "kept", "yes");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-11-28T01:15:00Z",
        "2026-11-28T00:00:00+01:00",
        "2026-11-28T01:15:07Z",
        "2026-11-28T01:15:07.25-03:30"
      })
  void aTakeWithoutATimeIsOneAtAnySecond(String sent) {
    OffsetDateTime now = OffsetDateTime.parse(sent);
    TakeFields fields =
        new TakeFields(
            FiguresComputation.of(Documents.setup(Documents.resource("one-light.json"))),
            WordsForTests.usual());
    assertEquals(
        now.withNano(0), sound(fields.read(field -> TYPED.getOrDefault(field, ""), now)).at());
  }

  private static Take sound(Reading<Take> reading) {
    return switch (reading) {
      case Reading.Sound<Take>(Take take) -> take;
      case Reading.Faulty<Take>(var problems) -> throw new AssertionError(problems.toString());
    };
  }
}
