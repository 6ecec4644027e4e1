package lampwright.setup.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.web.Documents;
import org.junit.jupiter.api.Test;

class LightPairsTest {

  private static SetupDocument with(String... lights) {
    List<Map<String, Object>> written =
        List.of(lights).stream()
            .map(
                light -> {
                  List<String> parts = List.of(light.split(" is ", -1));
                  return Documents.with(Documents.light(parts.getFirst()), "role", parts.getLast());
                })
            .toList();
    Map<String, Object> setup = Documents.with(Documents.setup("Pairs"), "lights", written);
    setup.remove("build_order");
    return switch (SetupDocument.FORM.read(Json.parse(Documents.json(setup)))) {
      case Reading.Sound<SetupDocument>(SetupDocument sound) -> sound;
      case Reading.Faulty<SetupDocument> faulty ->
          throw new AssertionError(faulty.problems().toString());
    };
  }

  private static List<String> pairs(SetupDocument before, SetupDocument after) {
    return LightPairs.of(before, after).all().stream()
        .map(
            pair ->
                pair.before().map(light -> light.id().text()).orElse("nothing")
                    + " to "
                    + pair.after().map(light -> light.id().text()).orElse("nothing"))
        .toList();
  }

  @Test
  void lightsOfOneIdBelongTogetherEvenWhereTheirRoleChanged() {
    assertEquals(
        List.of("right to right", "left to left"),
        pairs(with("left is key", "right is fill"), with("left is fill", "right is key")),
        "in the order of the later setup, where the key comes first");
  }

  @Test
  void lightsOfOneRoleBelongTogetherInTheirOrderWhereIdsDiffer() {
    assertEquals(
        List.of("window to lamp", "a to c", "b to d"),
        pairs(
            with("window is key", "a is rim", "b is rim"),
            with("lamp is key", "c is rim", "d is rim")));
  }

  @Test
  void whatOnlyOneOfThemHasStandsAloneAndLastIfItIsTheFirsts() {
    assertEquals(
        List.of("key to key", "nothing to hair", "fill to nothing"),
        pairs(with("fill is fill", "key is key"), with("key is key", "hair is hair")));
  }

  @Test
  void noLightBelongsToTwo() {
    LightPairs pairs = LightPairs.of(with("a is rim"), with("b is rim", "c is rim"));
    assertEquals("a", pairs.before(new LightId("b")).orElseThrow().id().text());
    assertEquals(true, pairs.before(new LightId("c")).isEmpty());
    assertEquals("b", pairs.after(new LightId("a")).orElseThrow().id().text());
  }
}
