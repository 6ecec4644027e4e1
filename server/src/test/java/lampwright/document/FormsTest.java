package lampwright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormsTest {

  private record Thing(String name, double distance, Optional<Integer> count, List<Thing> parts) {}

  private static final Field<Thing, String> NAME =
      Field.required("name", Forms.text(10), Thing::name, "What it is called.");
  private static final Field<Thing, Double> DISTANCE =
      Field.usually(
          2.0,
          "distance_m",
          Forms.number("m").moreThan(0).atLeast(0.001).atMost(50).maybe(2),
          Thing::distance,
          "How far; usually 2 m.");
  private static final Field<Thing, Optional<Integer>> COUNT =
      Field.optional("count", Forms.count(1, 99), Thing::count, "How many.");
  private static final Field<Thing, List<Thing>> PARTS =
      Field.list("parts/of~it", leaf(), 3, Thing::parts, "Its parts.");
  private static final ObjectForm<Thing> FORM =
      ObjectForm.of(
          "thing",
          "A thing.",
          v -> new Thing(v.get(NAME), v.get(DISTANCE), v.get(COUNT), v.get(PARTS)),
          List.of(NAME, DISTANCE, COUNT, PARTS));

  private static ObjectForm<Thing> leaf() {
    return ObjectForm.of(
        "leaf",
        "A part.",
        v -> new Thing(v.get(NAME), 2, Optional.empty(), List.of()),
        List.of(NAME));
  }

  private static List<Problem> problems(String json) {
    return switch (FORM.read(Json.parse(json))) {
      case Reading.Sound<Thing> sound -> throw new AssertionError("No problem in " + json);
      case Reading.Faulty<Thing> faulty -> faulty.problems();
    };
  }

  private static String only(String json) {
    List<Problem> problems = problems(json);
    assertEquals(1, problems.size(), problems.toString());
    return problems.getFirst().pointer() + " " + problems.getFirst().message();
  }

  @Test
  void aMessageNamesTheValueTheBoundAndWhatToDo() {
    assertEquals(
        "/distance_m Distance (0 m) must be more than 0 m. Maybe 2 m?",
        only("{\"name\":\"a\",\"distance_m\":0}"));
    assertEquals(
        "/distance_m Distance (1.0E-9 m) must be at least 0.001 m. Maybe 2 m?",
        only("{\"name\":\"a\",\"distance_m\":1e-9}"));
    assertEquals(
        "/distance_m Distance (50.5 m) must be at most 50 m. Maybe 2 m?",
        only("{\"name\":\"a\",\"distance_m\":50.5}"));
    assertEquals(
        "/count Count (1.5) must be a whole number.", only("{\"name\":\"a\",\"count\":1.5}"));
  }

  @Test
  void aMissingFieldAndAnUnknownOneAreBothTold() {
    List<Problem> problems = problems("{\"nmae\":\"a\"}");
    assertEquals(List.of("/nmae", "/name"), problems.stream().map(Problem::pointer).toList());
    assertEquals(
        "There is no field \"nmae\" here. Known are: name, distance_m, count, parts/of~it.",
        problems.getFirst().message());
    assertEquals("Name is missing. What it is called.", problems.getLast().message());
  }

  @Test
  void aFieldWithoutANameIsUnknownToo() {
    assertEquals(
        "/ There is no field \"\" here. Known are: name, distance_m, count, parts/of~it.",
        only("{\"name\":\"a\",\"\":1}"));
  }

  @Test
  void aPointerEscapesTildesAndSlashesAndCountsItemsFromZero() {
    assertEquals(
        "/parts~1of~0it/1/name Name (7) must be text.",
        only("{\"name\":\"a\",\"parts/of~it\":[{\"name\":\"b\"},{\"name\":7}]}"));
    assertEquals(
        "/parts~1of~0it/0 Parts/of~it, item 1 (\"x\") must be an object.",
        only("{\"name\":\"a\",\"parts/of~it\":[\"x\"]}"));
    assertEquals(
        "/~0~1~01 There is no field \"~/~1\" here. Known are: name, distance_m, count,"
            + " parts/of~it.",
        only("{\"name\":\"a\",\"~/~1\":1}"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "true", "7", "\"x\"", "[]"})
  void whatIsNoObjectIsTold(String json) {
    assertEquals("", problems(json).getFirst().pointer());
    assertTrue(problems(json).getFirst().message().startsWith("The document ("));
  }

  @Test
  void nullIsNotAbsence() {
    assertEquals("/count Count (null) must be a number.", only("{\"name\":\"a\",\"count\":null}"));
  }

  @Test
  void everyProblemIsToldAtOnceButNotMoreThanFifty() {
    assertEquals(3, problems("{\"distance_m\":-1,\"count\":0}").size());
    String many =
        IntStream.range(0, 200)
            .mapToObj(i -> "\"x" + i + "\":0")
            .reduce("\"name\":\"a\"", (a, b) -> a + "," + b);
    assertEquals(50, problems("{" + many + "}").size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e999", "-1e999", "1e308", "123456789012345678901234567890"})
  void hugeNumbersAreProblemsAndNotErrors(String number) {
    assertEquals(
        "/distance_m",
        problems("{\"name\":\"a\",\"distance_m\":" + number + "}").getFirst().pointer());
  }

  @Test
  void minusZeroIsZero() {
    assertEquals(
        FORM.read(Json.parse("{\"name\":\"a\"}")).getClass(),
        FORM.read(Json.parse("{\"name\":\"a\",\"distance_m\":2}")).getClass());
    Form<Double> any = Forms.number("");
    assertEquals(new Reading.Sound<>(0.0), any.read(Json.parse("-0.0")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\ud800", "\\udc00 end", "\\u0000", "\\u0007", "\\u0085"})
  void brokenAndControlCharactersAreRefused(String text) {
    assertEquals(
        "/name Name must not hold control characters or broken characters.",
        only("{\"name\":\"" + text + "\"}"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\\t\\n", "\\u00a0", "\\u2003", "\\ufeff"})
  void textOfSpacesOnlyIsEmpty(String text) {
    assertTrue(only("{\"name\":\"" + text + "\"}").startsWith("/name Name must not be empty."));
  }

  @Test
  void aQuotedValueIsShortAndCannotBreakTheMessage() {
    String message =
        only("{\"name\":\"a\",\"count\":\"" + "\\u202e\\ud83d\\ude00".repeat(99) + "\"}");
    assertTrue(message.codePoints().allMatch(c -> c < 0x2000 || c > 0x2fff || c == '…'), message);
    assertTrue(message.codePoints().noneMatch(c -> Character.getType(c) == Character.SURROGATE));
    assertTrue(message.length() < 120, message);
  }

  @Test
  void theUsualValueIsNotWritten() {
    assertEquals(Map.of("name", "a"), FORM.write(new Thing("a", 2, Optional.empty(), List.of())));
    assertEquals(
        "{\"name\":\"a\",\"distance_m\":2.5,\"count\":3,\"parts/of~it\":[{\"name\":\"b\"}]}",
        Json.print(
            FORM.write(
                new Thing(
                    "a",
                    2.5,
                    Optional.of(3),
                    List.of(new Thing("b", 2, Optional.empty(), List.of()))))));
  }

  @ParameterizedTest
  @CsvSource({
    "f_number, F-number",
    "widest_f_number, Widest f-number",
    "iso, ISO",
    "iso_at_most, ISO at most",
    "ev100, EV100",
    "ambient_ev100, Ambient EV100",
    "energy_ws, Energy",
    "speed_m_per_s, Speed",
    "duration_t05_ms, Duration t0.5",
    "surface_facing_deg, Surface facing",
    "neutral_density_stops, Neutral density",
    "shift_mired, Shift",
    "id, Id",
    "m, M"
  })
  void aLabelIsTheTradesWord(String field, String label) {
    assertEquals(label, Words.label(field));
  }

  @Test
  void aCoordinateIsNamedWithItsPoint() {
    assertEquals("Place, z", Words.label(new Pointer("/lights/0/place/z_m")));
    assertEquals("Moods, item 3", Words.label(new Pointer("/moods/2")));
    assertEquals("The document", Words.label(Pointer.root()));
  }

  @Test
  void aQuantityHasItsUnitAsTheTradeWritesIt() {
    assertEquals("65°", Words.quantity(65, "°"));
    assertEquals("1 stop", Words.quantity(1, "stops"));
    assertEquals("-1.5 stops", Words.quantity(-1.5, "stops"));
    assertEquals("400 W·s", Words.quantity(400, "W·s"));
    assertEquals("5.6", Words.quantity(5.6, ""));
  }

  @Test
  void datesAndTimesReadAndWriteThemselves() {
    assertEquals(
        new Reading.Sound<>(LocalDate.of(2024, 2, 29)), Forms.date().read((Object) "2024-02-29"));
    assertEquals("18:40", Forms.timeOfDay().write(LocalTime.of(18, 40)));
    for (String wrong :
        List.of("2023-02-29", "2024-2-9", "-001-01-01", "0000-01-01", "2024-02-29\n")) {
      assertInstanceOf(Reading.Faulty.class, Forms.date().read((Object) wrong), wrong);
    }
    for (String wrong : List.of("24:00", "18:40:30", "1840", "٠١:٠٢")) {
      assertInstanceOf(Reading.Faulty.class, Forms.timeOfDay().read((Object) wrong), wrong);
    }
  }

  @Test
  void twoFormsOfOneNameInASchemaAreASlipOfOurs() {
    Field<Thing, List<Thing>> other =
        Field.list("others", leaf(), 3, Thing::parts, "Another form of the same name.");
    ObjectForm<Thing> both = ObjectForm.of("both", "Both.", FormsTest::none, List.of(PARTS, other));
    assertThrows(IllegalStateException.class, () -> Definitions.schemaOf(both, "x:y"));
  }

  private static Thing none(ObjectForm.Values values) {
    return new Thing("none", 2, Optional.empty(), values.get(PARTS));
  }

  @Test
  void aTextsLengthIsCountedAsTheSchemaCountsIt() {
    String camera = "\uD83D\uDCF7";
    assertEquals(
        new Reading.Sound<>(camera.repeat(10)), Forms.text(10).read((Object) camera.repeat(10)));
    assertEquals(
        "/name Name (11 characters) must be at most 10 characters.",
        only("{\"name\":\"" + camera.repeat(11) + "\"}"));
  }

  @Test
  void noTextTurnsTheDirectionOfTheFiguresAfterIt() {
    assertInstanceOf(Reading.Sound.class, Forms.text(10).read((Object) "\u05D0\u05D1"));
    for (String turning : List.of("\u202E", "\u202A", "\u2066", "\u2069")) {
      assertEquals(
          "/name Name must not hold characters that turn the direction of what follows.",
          only("{\"name\":\"a" + turning + "\"}"));
    }
  }
}
