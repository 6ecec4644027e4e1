package lampwright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MergePatchTest {

  private static String merged(String original, String patch) {
    return Json.print(MergePatch.apply(Json.parse(original), Json.parse(patch)));
  }

  /** RFC 7396, appendix A: all fifteen, in its order. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\":\"b\"}                | {\"a\":\"c\"}                    | {\"a\":\"c\"}",
        "{\"a\":\"b\"}                | {\"b\":\"c\"}                    |"
            + " {\"a\":\"b\",\"b\":\"c\"}",
        "{\"a\":\"b\"}                | {\"a\":null}                     | {}",
        "{\"a\":\"b\",\"b\":\"c\"}    | {\"a\":null}                     | {\"b\":\"c\"}",
        "{\"a\":[\"b\"]}              | {\"a\":\"c\"}                    | {\"a\":\"c\"}",
        "{\"a\":\"c\"}                | {\"a\":[\"b\"]}                  | {\"a\":[\"b\"]}",
        "{\"a\":{\"b\":\"c\"}}        | {\"a\":{\"b\":\"d\",\"c\":null}} | {\"a\":{\"b\":\"d\"}}",
        "{\"a\":[{\"b\":\"c\"}]}      | {\"a\":[1]}                      | {\"a\":[1.0]}",
        "[\"a\",\"b\"]                | [\"c\",\"d\"]                    | [\"c\",\"d\"]",
        "{\"a\":\"b\"}                | [\"c\"]                          | [\"c\"]",
        "{\"a\":\"foo\"}              | null                             | null",
        "{\"a\":\"foo\"}              | \"bar\"                          | \"bar\"",
        "{\"e\":null}                 | {\"a\":1}                        | {\"e\":null,\"a\":1.0}",
        "[1,2]                        | {\"a\":\"b\",\"c\":null}         | {\"a\":\"b\"}",
        "{}                           | {\"a\":{\"bb\":{\"ccc\":null}}}  | {\"a\":{\"bb\":{}}}",
      })
  void theExamplesOfItsStandardComeOutRfc7396(String original, String patch, String result) {
    assertEquals(result, merged(original, patch));
  }

  @Test
  void whatIsChangedStaysAsItIs() {
    Object original = Json.parse("{\"a\":{\"b\":\"c\"}}");
    MergePatch.apply(original, Json.parse("{\"a\":{\"b\":null},\"d\":1}"));
    assertEquals("{\"a\":{\"b\":\"c\"}}", Json.print(original));
  }
}
