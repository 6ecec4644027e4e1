package lampwright.meaning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import ai.djl.huggingface.tokenizers.HuggingFaceTokenizer;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Held to the tokenizer that the model was published with (library "tokenizers", by its file). */
class WordPiecesTest {

  private static final String FILE = "/all-minilm-l6-v2-q-tokenizer.json";

  // Of all Unicode, and of what people write about light.
  private static final List<String> BITS =
      List.of(
          "Bleak harbour, before dawn",
          "f/5.6",
          "1/125 s",
          "½",
          "naïve café ÅNGSTRÖM",
          "don't",
          "“quoted”",
          "…",
          "—",
          "softbox+grid",
          "snow_and_salt",
          "\t",
          "\u00a0",
          "\u200b",
          "\u0000",
          "\ufffd",
          "灯火",
          "ひかり",
          "빛",
          "свет",
          "نور",
          "😀",
          "€",
          "^`|~",
          "x\u0301",
          "ſtrange",
          "İstanbul",
          "ﬁlter",
          "supercalifragilistic",
          "a".repeat(101),
          "[CLS]",
          "##ing");

  private static WordPieces ours;
  private static HuggingFaceTokenizer reference;

  @BeforeAll
  static void readBoth() throws IOException {
    // The library would ask a server in the net otherwise.
    System.setProperty("OPT_OUT_TRACKING", "true");
    System.setProperty("ai.djl.offline", "true");
    try (InputStream in = open();
        InputStream again = open()) {
      ours = WordPieces.read(in);
      reference =
          HuggingFaceTokenizer.newInstance(
              again, Map.of("padding", "false", "truncation", "false", "maxLength", "100000"));
    }
  }

  private static InputStream open() {
    return Objects.requireNonNull(WordPiecesTest.class.getResourceAsStream(FILE));
  }

  @AfterAll
  static void close() {
    reference.close();
  }

  static Stream<String> generated() {
    Random random = new Random(20261127);
    return Stream.generate(
            () -> {
              StringBuilder text = new StringBuilder();
              for (int i = random.nextInt(8); i >= 0; i--) {
                text.append(BITS.get(random.nextInt(BITS.size())));
                text.append(random.nextBoolean() ? " " : "");
              }
              return text.toString();
            })
        .limit(500);
  }

  static Stream<String> bits() {
    return BITS.stream();
  }

  @ParameterizedTest
  @MethodSource({"bits", "generated"})
  void aTextIsCutAsThePublishedTokenizerCutsIt(String text) {
    // What stands for marks of the vocabulary itself is plain text here: nobody may write them.
    if (text.contains("[CLS]")) {
      return;
    }
    assertArrayEquals(reference.encode(text).getIds(), ours.of(text, 100_000), text);
  }

  @Test
  void whatSomebodyTypesNeverBecomesAMarkOfTheModel() {
    long[] pieces = ours.of("[CLS] [SEP]", 100);
    assertEquals(1, Arrays.stream(pieces).filter(piece -> piece == pieces[0]).count());
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 7, 20})
  void aLongTextIsCutOffWithItsEndMarked(int most) {
    long[] whole = ours.of("a lantern ".repeat(50), 1_000);
    long[] cut = ours.of("a lantern ".repeat(50), most);
    assertEquals(most, cut.length);
    assertArrayEquals(Arrays.copyOf(whole, most - 1), Arrays.copyOf(cut, most - 1));
    assertEquals(whole[whole.length - 1], cut[most - 1]);
  }
}
