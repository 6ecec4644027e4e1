package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.PersonId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The demo studio goes as a whole, and nothing else goes with it. */
class DemoRemovedTest {

  private static final String DEMO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void whenItIsRemovedNothingOfItIsLeftAndAnotherStudioKeepsAll() throws Exception {
    Visitor owner = house.withToken("owner@demo.example");
    new EveryKindOfThing(DEMO, owner, house.withToken("crew@demo.example")).make();
    String author = EveryKindOfThing.person(house.withToken("author@demo.example"));
    assertEquals(
        201,
        owner
            .post(DEMO + "/saved-searches", "{\"name\":\"Rain\",\"question\":\"q=rain\"}")
            .statusCode());
    String other = house.database().newStudio(new PersonId(author)).text();
    Visitor elsewhere = house.withToken("author@demo.example");
    assertEquals(
        201,
        elsewhere
            .post("/api/studios/" + other + "/setups", Documents.json(Documents.setup("Rope")))
            .statusCode());

    house.database().sqlAsSuperuser("select lampwright.remove_demo()");
    house.reopen("false");

    for (String table : tables()) {
      String rest =
          house
              .database()
              .sqlAsSuperuser(
                  "select count(*) from lampwright." + table + " where studio_id = 'demo'")
              .getFirst();
      boolean mayStay = table.equals("change_log");
      assertTrue(mayStay || rest.equals("0"), table + " has " + rest);
    }
    assertEquals(
        List.of("author@demo.example"),
        house.database().sqlAsSuperuser("select email from lampwright.person"));
    assertEquals(List.of(), pictures());
    assertEquals(
        "1",
        house
            .database()
            .sqlAsSuperuser(
                "select count(*) from lampwright.setup where studio_id = '" + other + "'")
            .getFirst());
    Visitor withAnOldToken = house.visitor().with("Authorization", owner.header("Authorization"));
    assertEquals(401, withAnOldToken.get(DEMO + "/setups").statusCode());

    house.reopen("few");
    Visitor back = house.withToken("owner@demo.example");
    assertEquals(10.0, Told.number(Visitor.object(back.get(DEMO + "/setups")), "total"));
  }

  private static List<String> tables() throws Exception {
    return house
        .database()
        .sqlAsSuperuser(
            "select table_name from information_schema.columns where table_schema = 'lampwright'"
                + " and column_name = 'studio_id'"
                // How often it was written is told nobody, and what comes after it is not taken for
                // it.
                + " and table_name <> 'studio_writes'");
  }

  private static List<Path> pictures() throws Exception {
    try (Stream<Path> files = Files.walk(house.data().resolve("pictures"))) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> !file.toString().endsWith(".lock"))
          .toList();
    }
  }
}
