package lampwright.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class HeadTest {

  @Test
  void mountPackAndBatteriesAreWrittenAsTheyWereRead() {
    String json = GearDocuments.headJson("'mount':'large ring','pack':'floor pack','batteries':3");
    Head head = GearDocuments.sound(Head.FORM, json);
    assertEquals(Optional.of("large ring"), head.mount());
    assertEquals(Optional.of("floor pack"), head.pack());
    assertEquals(3, head.batteries());
    assertEquals(GearDocuments.parsed(json), GearDocuments.written(Head.FORM, head));
  }

  @Test
  void aHeadThatSaysNothingOfThemHasOneBatteryAndIsWrittenWithoutThem() {
    String json = GearDocuments.headJson("");
    Head head = GearDocuments.sound(Head.FORM, json);
    assertEquals(Optional.empty(), head.mount());
    assertEquals(Optional.empty(), head.pack());
    assertEquals(1, head.batteries());
    assertEquals(GearDocuments.parsed(json), GearDocuments.written(Head.FORM, head));
  }

  @Test
  void aHeadOnTheMainsMayStateBatteriesAllTheSame() {
    assertEquals(2, GearDocuments.head("'feed':'mains','batteries':2").batteries());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'mount':'' | /mount",
        "'mount':7 | /mount",
        "'pack':' ' | /pack",
        "'batteries':0 | /batteries",
        "'batteries':21 | /batteries",
        "'batteries':1.5 | /batteries"
      })
  void whatDoesNotFitIsPointedAt(String fields, String pointer) {
    String json = GearDocuments.headJson(fields);
    assertEquals(pointer, GearDocuments.problems(Head.FORM, json).getFirst().pointer());
  }
}
