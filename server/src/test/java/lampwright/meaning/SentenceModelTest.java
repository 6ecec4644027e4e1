package lampwright.meaning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SentenceModelTest {

  private static SentenceModel model;

  @BeforeAll
  static void load() throws SentenceModel.Unavailable {
    model = SentenceModel.load();
  }

  @AfterAll
  static void close() {
    model.close();
  }

  // The example of the model's own page, "all-MiniLM-L6-v2" (from memory, to two digits; the
  // weights of 8 bits differ a little).
  @Test
  void theModelsOwnExampleComesOut() {
    Meaning happy = model.of("That is a happy person");
    assertEquals(0.70, happy.nearness(model.of("That is a happy dog")), 0.06);
    assertEquals(0.94, happy.nearness(model.of("That is a very happy person")), 0.04);
    assertEquals(0.26, happy.nearness(model.of("Today is a sunny day")), 0.06);
  }

  // The dynamic symbols of an ELF file lie in it as words between zero bytes (System V ABI, "String
  // Table"). A runner of models that asks for none of these cannot speak to anybody.
  @ParameterizedTest
  @ValueSource(strings = {"linux-x64", "linux-aarch64"})
  void whatRunsTheModelCannotReachTheNetwork(String platform) throws IOException {
    String file = "/ai/onnxruntime/native/" + platform + "/libonnxruntime.so";
    try (InputStream in = SentenceModel.class.getResourceAsStream(file)) {
      String symbols =
          new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.ISO_8859_1);
      assertTrue(symbols.contains("\0malloc\0"), "symbols are found");
      for (String reaching : List.of("connect", "getaddrinfo", "sendto", "socket")) {
        assertFalse(symbols.contains("\0" + reaching + "\0"), reaching);
      }
    }
  }

  // Common practice, no source: what a photographer would call nearer.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "an empty pier in fog|a deserted jetty, misty|a crowded fair at noon",
        "warm candle light at supper|a table lit by flames|a runner on a wet track",
        "dancer frozen in mid-air|a leap caught sharp|a bowl of plums by a window"
      })
  void whatMeansTheSameLiesNearer(String asked, String near, String far) {
    Meaning one = model.of(asked);
    assertTrue(one.nearness(model.of(near)) > one.nearness(model.of(far)) + 0.1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\u0000", "😀", "灯", "…"})
  void everyTextMeansSomething(String text) {
    assertEquals(1, model.of(text).nearness(model.of(text)), 1e-6);
  }

  @Test
  void onlyTheBeginningOfALongTextIsRead() {
    String long1 = "A lantern by the lock. ".repeat(200);
    assertEquals(model.of(long1), model.of(long1 + "A brass band at noon."));
  }

  @Test
  void manyThreadsGetWhatOneGets() {
    List<String> texts = IntStream.range(0, 64).mapToObj(i -> "lantern number " + i).toList();
    List<Meaning> alone = texts.stream().map(model::of).toList();
    assertEquals(alone, texts.parallelStream().map(model::of).toList());
  }

  @Test
  void aMeaningSurvivesItsBytes() {
    Meaning meaning = model.of("a bleak harbour before dawn");
    Meaning again = Meaning.ofBytes(meaning.toBytes());
    assertEquals(1, meaning.nearness(again), 1e-5);
    assertEquals(again, Meaning.ofBytes(again.toBytes()));
    assertThrows(IllegalArgumentException.class, () -> Meaning.ofBytes(new byte[10]));
    assertThrows(IllegalArgumentException.class, () -> Meaning.of(new float[Meaning.DIMENSIONS]));
  }
}
