package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What programs are told of an adaptation beside the setup that it makes. */
class AdaptationsOverRestTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void theCostsByMatterAreTogetherTheWholeCost() {
    for (Object adaptation : everyAdaptation()) {
      double sum = 0;
      for (Object stops : ((Map<?, ?>) Told.at(adaptation, "costs")).values()) {
        sum += ((Number) stops).doubleValue();
      }
      assertEquals(Told.number(adaptation, "cost_stops"), sum, 1e-6, adaptation.toString());
    }
  }

  @Test
  void paceAndChargeAreThoseOfTheFigures() {
    int known = 0;
    for (Object adaptation : everyAdaptation()) {
      Map<?, ?> whole = (Map<?, ?>) adaptation;
      Map<?, ?> power = (Map<?, ?>) Told.at(adaptation, "figures", "power");
      assertEquals(power.containsKey("pace"), whole.containsKey("between_frames_s"));
      if (power.containsKey("pace")) {
        known++;
        assertEquals(
            Told.number(power, "pace", "between_frames_s"),
            Told.number(adaptation, "between_frames_s"));
      }
      if (power.containsKey("charge")) {
        assertEquals(
            Told.number(power, "charge", "frames"), Told.number(adaptation, "frames_per_charge"));
      }
    }
    assertTrue(known > 0, "No adaptation has a pace");
  }

  @Test
  void whatALightIsMadeOfIsWhatItsDocumentSays() {
    for (Object adaptation : everyAdaptation()) {
      List<?> documents = Told.list(adaptation, "document", "lights");
      for (Object light : Told.list(adaptation, "lights")) {
        if (Boolean.TRUE.equals(Told.at(light, "lit"))) {
          Map<?, ?> document =
              documents.stream()
                  .map(one -> (Map<?, ?>) one)
                  .filter(one -> Told.at(light, "id").equals(one.get("id")))
                  .findFirst()
                  .orElseThrow();
          Object made = Told.at(light, "made");
          assertEquals(Told.at(document, "head", "name"), Told.at(made, "head"));
          assertEquals(
              document.containsKey("heads") ? Told.number(document, "heads") : 1.0,
              Told.number(made, "heads"));
          assertEquals(
              document.containsKey("pops") ? Told.number(document, "pops") : 1.0,
              Told.number(made, "pops"));
        }
      }
    }
  }

  @Test
  void theProofSaysWhatTheFirstOneCostsAtLeast() {
    for (Object answer : everyAnswer()) {
      Object proof = Told.at(answer, "proof");
      List<?> adaptations = Told.list(answer, "adaptations");
      if (!adaptations.isEmpty()) {
        assertEquals(
            Told.number(adaptations.getFirst(), "cost_stops"),
            Told.number(proof, "at_least_stops") + Told.number(proof, "gap_stops"),
            1e-6);
      }
      assertEquals(
          Told.number(proof, "gap_stops") <= 0 && Boolean.FALSE.equals(Told.at(proof, "unlooked")),
          Told.at(proof, "optimal"));
    }
  }

  private static List<Object> everyAdaptation() {
    List<Object> all = new ArrayList<>();
    everyAnswer().forEach(answer -> all.addAll(Told.list(answer, "adaptations")));
    assertTrue(all.size() >= 20, "Too few adaptations: " + all.size());
    return all;
  }

  private static List<Object> everyAnswer() {
    Visitor reader = house.withToken("reader@demo.example");
    List<Object> all = new ArrayList<>();
    List<?> kits = Visitor.items(reader.get("/api/studios/demo/kits"));
    for (Object setup : Visitor.items(reader.get("/api/studios/demo/setups?limit=100"))) {
      for (Object kit : kits) {
        all.add(
            Visitor.object(
                reader.post(
                    "/api/studios/demo/setups/" + Told.at(setup, "id") + "/adaptations",
                    Json.print(Map.of("kit", Told.at(kit, "id"))))));
      }
    }
    return all;
  }
}
