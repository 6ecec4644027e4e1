package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A document that an earlier version let in and this one would not, as a tightened rule leaves. */
class UnreadableDocumentsTest {

  private static final String STUDIO = "/api/studios/demo";

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void oneUnreadableSetupAndKitKeepNobodyFromTheOthersNorTheServerFromStarting() throws Exception {
    Visitor author = house.withToken("author@demo.example");
    int kits = Visitor.items(author.get(STUDIO + "/kits")).size();
    double setups = Told.number(Visitor.object(author.get(STUDIO + "/setups")), "total");
    String kit = Told.at(Visitor.items(author.get(STUDIO + "/kits")), 0, "id").toString();
    String setup = Told.at(Visitor.items(author.get(STUDIO + "/setups")), 0, "id").toString();
    house
        .database()
        .sqlAsSuperuser(
            "update lampwright.kit set document = '{\"old\": true}' where id = '" + kit + "'",
            "update lampwright.setup set document = '{\"old\": true}' where id = '" + setup + "'",
            "select 1");

    house.reopen();
    Visitor again = house.withToken("author@demo.example");
    List<?> left = Visitor.items(again.get(STUDIO + "/kits"));
    assertEquals(kits - 1, left.size());
    assertTrue(left.stream().noneMatch(one -> kit.equals(Told.at(one, "id"))));
    List<?> found = Visitor.items(again.get(STUDIO + "/setups?limit=100"));
    assertEquals((int) setups - 1, found.size());

    HttpResponse<String> made =
        again.post(STUDIO + "/setups", Documents.json(Documents.setup("Still written")));
    assertEquals(201, made.statusCode());
    assertEquals(1, Visitor.items(again.get(STUDIO + "/setups?q=%22still+written%22")).size());
  }
}
