package lampwright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonTest {

  private static String refused(String text) {
    return Objects.requireNonNull(
        assertThrows(Json.NotJson.class, () -> Json.parse(text)).getMessage());
  }

  @Test
  void textBecomesPlainValuesInTheOrderWritten() {
    assertEquals(
        "{z=[1.0, true, NULL], a=x}", Json.parse("{\"z\":[1,true,null],\"a\":\"x\"}").toString());
    assertEquals("{\"b\":[1,2.5],\"a\":\"“x”\"}", Json.print(ordered()));
  }

  private static Object ordered() {
    Map<String, Object> map = new java.util.LinkedHashMap<>();
    map.put("b", List.of(1L, 2.5));
    map.put("a", "“x”");
    return map;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\":1,\"a\":2} | a key stands twice in the same object.",
        "{\"a\": | the text ends too early.",
        "[1,] | this is not JSON. Maybe a comma, a quotation mark or a bracket is missing?",
        "NaN | this is not JSON. Maybe a comma, a quotation mark or a bracket is missing?",
        "{} {} | this is not JSON. Maybe a comma, a quotation mark or a bracket is missing?",
      })
  void whatIsNotJsonIsToldWithItsPlace(String text, String why) {
    String message = refused(text);
    assertEquals(why, message.replaceFirst("^Line 1, column \\d+: ", ""));
    assertEquals(true, message.startsWith("Line 1, column "), message);
  }

  @Test
  void hostileDepthAndLengthAreRefused() {
    String deep = "[".repeat(100_000) + "]".repeat(100_000);
    String why = "nested too deep, or a text or number that is too long.";
    assertEquals(why, refused(deep).replaceFirst("^Line 1, column \\d+: ", ""));
    assertEquals(why, refused("9".repeat(5_000)).replaceFirst("^Line 1, column \\d+: ", ""));
    assertEquals(
        why, refused("\"" + "x".repeat(300_000) + "\"").replaceFirst("^Line 1, column \\d+: ", ""));
    assertEquals("The text is empty.", refused("  "));
  }
}
