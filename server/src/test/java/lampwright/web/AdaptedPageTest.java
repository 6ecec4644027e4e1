package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class AdaptedPageTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  @Test
  void theRowForThisKitNamesTheGelsThatItsPowerIsReckonedThrough() {
    Visitor author = house.withToken("author@demo.example");
    Map<String, Object> light = Documents.light("key");
    light.put("gels", List.of(Map.of("name", "half blue", "shift_mired", -70, "loss_stops", 0.9)));
    Map<String, Object> setup = Documents.with(Documents.setup("Blue"), "lights", List.of(light));
    String setupId = made(author, "setups", setup);
    String kitId = made(author, "kits", Documents.kit("One head"));
    HttpResponse<String> page =
        author.get("/studios/demo/setups/" + setupId + "/adapted?kit=" + kitId);
    assertEquals(
        "200 W·s battery head, standard reflector, half blue",
        Jsoup.parse(page.body()).select(".row-now .cell-gear").text());
  }

  private static String made(Visitor author, String what, Map<String, Object> document) {
    HttpResponse<String> answer =
        author.post("/api/studios/demo/" + what, Documents.json(document));
    assertEquals(201, answer.statusCode(), answer.body());
    return String.valueOf(Told.at(Visitor.object(answer), "id"));
  }
}
