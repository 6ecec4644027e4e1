package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static lampwright.web.GearForTests.KITS;
import static lampwright.web.GearForTests.head;
import static lampwright.web.GearForTests.id;
import static lampwright.web.GearForTests.kept;
import static lampwright.web.GearForTests.kitOf;
import static lampwright.web.GearForTests.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.LinkedHashMap;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A setup embeds its heads, so gear that is edited later changes nothing of what was done. */
class OldSetupsKeepTheirFiguresTest {

  private static final String SETUPS = "/api/studios/demo/setups";
  private static final String NAME = "400 W·s battery head";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void figuresOfSetupsStayWhenGearAndKitAreEdited() {
    Visitor author = house.withToken("author@demo.example");
    String gear = kept(author, GEAR, head(NAME, 64));
    String kit = kept(author, KITS, kitOf("The studio's", gear));
    String setup = kept(author, SETUPS, Documents.setup("Made before"));
    String adapted = kept(author, SETUPS, adaptation(author, setup, kit));
    Map<?, ?> ofSetup = told(author, setup + "/figures");
    Map<?, ?> ofAdapted = told(author, adapted + "/figures");

    Visitor first = author.with("If-Match", "\"1\"");
    assertEquals(200, first.put(gear, Documents.json(head(NAME, 32))).statusCode());
    String another = Documents.json(Documents.kit("The studio's"));
    assertNotEquals(
        Told.at(adaptation(author, setup, kit), "lights"),
        Told.at(told(author, adapted), "document", "lights"),
        "the edit changes what is adapted now");
    assertEquals(200, author.with("If-Match", "\"2\"").put(kit, another).statusCode());
    assertEquals(204, author.with("If-Match", "\"2\"").delete(gear).statusCode());

    assertEquals(ofSetup, told(author, setup + "/figures"));
    assertEquals(ofAdapted, told(author, adapted + "/figures"));
    assertEquals(
        64,
        Told.number(
            told(author, adapted), "document", "lights", 0, "head", "output", "guide_number_m"));
  }

  private static Map<String, Object> adaptation(Visitor author, String setup, String kit) {
    Object document =
        Told.at(
            Json.parse(author.post(setup + "/adaptations", "{\"kit\":\"" + id(kit) + "\"}").body()),
            "adaptations",
            0,
            "document");
    Map<String, Object> copy = new LinkedHashMap<>();
    ((Map<?, ?>) document).forEach((key, value) -> copy.put(key.toString(), value));
    return copy;
  }
}
