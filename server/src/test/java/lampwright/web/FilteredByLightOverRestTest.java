package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is counted and filtered by is what each setup's own signature says. */
class FilteredByLightOverRestTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private static final String SETUPS = "/api/studios/demo/setups";

  private static Map<?, ?> object(Visitor visitor, String path) {
    return Visitor.object(visitor.get(path));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @CsvSource({
    "pattern, key, pattern",
    "key_side, key, side",
    "softness, softness, kind",
    "lead, balance, leads",
    "freezing, freezing, kind"
  })
  void aCountIsOfTheSetupsThatSayTheSameOfThemselves(String trait, String part, String field) {
    Visitor author = house.signedIn("author@demo.example");
    Map<?, ?> counts =
        (Map<?, ?>) Told.at(object(author, SETUPS + "?limit=100&facets=" + trait), "facets", trait);
    assertFalse(counts.isEmpty());
    for (Map.Entry<?, ?> count : counts.entrySet()) {
      String value = String.valueOf(count.getKey());
      String bracket = trait.replace('_', ' ') + " " + value;
      Map<?, ?> found = object(author, SETUPS + "?limit=100&filter=" + encoded(bracket));
      assertEquals(count.getValue(), found.get("total"), bracket);
      Set<String> said = new TreeSet<>();
      for (Object item : (Iterable<?>) Told.at(found, "items")) {
        Map<?, ?> signature =
            object(author, SETUPS + "/" + ((Map<?, ?>) item).get("id") + "/signature");
        Map<?, ?> told = (Map<?, ?>) Told.at(signature, part);
        String own = String.valueOf(told.get(field)).replace('_', ' ');
        // Near the boundary of two patterns a setup goes by both names.
        said.add(value.equals(told.get("neighbour")) ? value : own);
      }
      assertEquals(Set.of(spoken(value)), said, bracket);
    }
  }

  /** The signature's own word for what a filter says in more. */
  private static String spoken(String value) {
    return switch (value) {
      case "the middle", "level" -> "neither";
      default -> value;
    };
  }

  @Test
  void aRangeOfTheAmbientFindsWhatLiesInIt() {
    Visitor author = house.signedIn("author@demo.example");
    Map<?, ?> found = object(author, SETUPS + "?limit=100&q=" + encoded("[ambient -3 to -1]"));
    int looked = 0;
    for (Object item : (Iterable<?>) Told.at(found, "items")) {
      Map<?, ?> signature =
          object(author, SETUPS + "/" + ((Map<?, ?>) item).get("id") + "/signature");
      double stops = Told.number(signature, "ambient", "from_shooting_stops");
      assertTrue(stops >= -3.05 && stops <= -0.95, "ambient " + stops);
      looked++;
    }
    assertTrue(looked > 0);
  }
}
