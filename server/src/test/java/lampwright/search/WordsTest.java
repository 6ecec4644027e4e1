package lampwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "f/5.6|f5.6 5.6|f/5.6",
        "F 5,6|f5.6 5.6|F 5,6",
        "ƒ/8.|f8 8|ƒ/8",
        "(f4)|f4 4|f4",
        "1/125 s|1_125|1/125 s",
        "1/125s,|1_125|1/125s",
        "1 / 8000 sec|1_8000|1 / 8000 sec",
        "400 W·s|400ws 400|400 W·s",
        "400Ws|400ws 400|400Ws",
        "Café's|cafe|Café's",
        "LONELY harbours|lone harbour|LONELY harbours",
        "if 5|5|5",
        "soft\u00adbox|softbox|soft\u00adbox",
      })
  void theTradesNumbersStayWholeAndKeepTheirPlaceInTheText(
      String text, String terms, String quote) {
    List<Words.Word> words;
    try (Words analyzer = new Words()) {
      words = analyzer.of(text);
    }
    assertEquals(terms, String.join(" ", words.stream().map(Words.Word::term).toList()));
    assertEquals(quote, text.substring(words.getFirst().start(), words.getLast().end()));
  }
}
