package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
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

  private static final String PAGE = "/studios/demo/setups/%s/adapted?kit=%s";

  @Test
  void aFormWithEmptyFieldsLeadsToTheShortestAddressThatSaysTheSame() {
    Visitor author = house.withToken("author@demo.example");
    String path = address(author);
    HttpResponse<String> answer =
        author.get(path + "&iso=400&aperture=&time=&clock=&move=yes&for=" + kitOf(path));
    assertEquals(303, answer.statusCode());
    assertEquals(path + "&iso=400&move=yes", answer.headers().firstValue("Location").orElseThrow());
  }

  @Test
  void aWrongWishIsToldAtItsFieldAndNothingElseIsLost() {
    Visitor author = house.withToken("author@demo.example");
    HttpResponse<String> answer = author.get(address(author) + "&iso=many&nearest=0.9");
    assertEquals(422, answer.statusCode());
    Document page = Jsoup.parse(answer.body());
    Element iso = page.expectFirst("#wish-iso");
    assertEquals("many", iso.attr("value"));
    assertEquals("true", iso.attr("aria-invalid"));
    assertEquals(
        "Wrong: ISO at most (\"many\") must be a number. Maybe 100?",
        page.expectFirst("#" + iso.attr("aria-describedby")).text());
    assertEquals(1, page.select(".errors a[href=#wish-iso]").size());
    assertEquals("0.9", page.expectFirst("#wish-nearest").attr("value"));
    assertTrue(page.expectFirst("details:has(#wish-nearest)").hasAttr("open"));
  }

  @Test
  void noAddressIsAnswered500() {
    Visitor author = house.withToken("author@demo.example");
    String path = address(author);
    for (String query :
        List.of(
            "&iso=1e999",
            "&head.key=%F0%9F%92%A1",
            "&head.=x",
            "&head.nobody=x",
            "&without=nobody",
            "&give_up=nobody",
            "&dead.nothing=3",
            "&charge.=50",
            "&weight.=1",
            "&way=99",
            "&way=-1",
            "&body=none",
            "&date=2024-02-30",
            "&lat=10",
            "&lat=10&lon=10",
            "&utc=%2B99:00",
            "&ways=999999999999",
            "&nonsense=1",
            "&count.key=1&count.key=2",
            "&pops=" + "9".repeat(500))) {
      int status = author.get(path + query).statusCode();
      assertTrue(status == 200 || status == 422, query + " was answered " + status);
    }
    assertEquals(422, author.get(path.substring(0, path.indexOf('?'))).statusCode());
    assertEquals(422, author.get(path + "x").statusCode());
  }

  @Test
  void aLightKeepsItsNumberOnThePlanWhenOthersAreGivenUp() {
    Visitor author = house.withToken("author@demo.example");
    String path =
        PAGE.formatted(
            idOf(author, "setups", "title", "Over the cut"),
            idOf(author, "kits", "name", "Van kit"));
    Document page = Jsoup.parse(author.get(path).body());
    List<String> inTable = page.select(".plan-table th[scope=row]").eachText();
    assertEquals(List.of("3 Rim", "5 Key", "6 Fill", "7 Kicker"), inTable.subList(0, 4));
  }

  @Test
  void aHeadThatIsKeptStandsInTheAddressAndCanBeLetGo() {
    Visitor author = house.withToken("author@demo.example");
    Document page = Jsoup.parse(author.get(address(author)).body());
    Document kept = follow(author, page.expectFirst("a.keep:containsOwn(keep this head)"));
    assertEquals("1 Key: 200 W·s battery head✕", kept.select(".wished .chip").text());
    assertEquals("200 W·s battery head", kept.expectFirst("input[name=head.key]").attr("value"));
    Document free = follow(author, kept.expectFirst(".wished .chip"));
    assertEquals(0, free.select(".wished .chip").size());
  }

  @Test
  void theWaysStandSideBySideAndTheOneThatIsShownIsMarked() {
    Visitor author = house.withToken("author@demo.example");
    String path =
        PAGE.formatted(
            idOf(author, "setups", "title", "Last boat out"),
            idOf(author, "kits", "name", "Satchel kit"));
    Document page = Jsoup.parse(author.get(path).body());
    List<String> ways = page.select(".comparison thead .way-name").eachText();
    assertEquals(List.of("A", "B"), ways.subList(0, 2));
    assertEquals("A shown here", page.select(".comparison thead .way-shown").text());
    Document second = follow(author, page.expectFirst(".comparison thead a"));
    assertEquals("B shown here", second.select(".comparison thead .way-shown").text());
    assertEquals(
        page.select(".comparison tbody").text(), second.select(".comparison tbody").text());
  }

  @Test
  void theWayThatIsShownIsKeptAsASetupThatNamesItsParent() {
    Visitor author = house.signedIn("author@demo.example");
    String path = address(house.withToken("author@demo.example"));
    Document page = Jsoup.parse(author.get(path).body());
    Element form = page.expectFirst(".save form");
    String csrf = form.expectFirst("input[name=csrf]").attr("value");
    HttpResponse<String> answer =
        author.postForm(form.attr("action"), "title=Kept+for+tonight&csrf=" + csrf);
    assertEquals(303, answer.statusCode(), answer.body());
    String kept = answer.headers().firstValue("Location").orElseThrow();
    Map<?, ?> made = Visitor.object(author.get("/api" + kept));
    assertEquals("Kept for tonight", Told.at(made, "document", "title"));
    assertEquals("200 W·s battery head", Told.at(made, "document", "lights", 0, "head", "name"));
    assertEquals("One light", Told.at(made, "parent", "title"));

    HttpResponse<String> wrong = author.postForm(form.attr("action"), "title=+&csrf=" + csrf);
    assertEquals(422, wrong.statusCode());
    assertEquals("true", Jsoup.parse(wrong.body()).expectFirst("#save-title").attr("aria-invalid"));
  }

  @Test
  void whoeverMayNotWriteSetupsIsNotAskedToKeepOne() {
    Visitor author = house.withToken("author@demo.example");
    String path = address(author);
    Proven.by(author, "/api" + path);
    Visitor reader = house.signedIn("reader@demo.example");
    Document page = Jsoup.parse(reader.get(path).body());
    assertEquals(0, page.select(".save").size());
    assertEquals(1, page.select(".comparison").size());
  }

  private static String idOf(Visitor author, String what, String field, String beginning) {
    return Visitor.items(author.get("/api/studios/demo/" + what)).stream()
        .filter(item -> String.valueOf(Told.at(item, field)).startsWith(beginning))
        .map(item -> String.valueOf(Told.at(item, "id")))
        .findFirst()
        .orElseThrow();
  }

  private static Document follow(Visitor author, Element link) {
    HttpResponse<String> answer = author.get(link.attr("href"));
    assertEquals(200, answer.statusCode(), answer.body());
    return Jsoup.parse(answer.body());
  }

  private static String address(Visitor author) {
    return PAGE.formatted(
        made(author, "setups", Documents.setup("One light")),
        made(author, "kits", Documents.kit("One head")));
  }

  private static String kitOf(String address) {
    return address.substring(address.indexOf('=') + 1);
  }

  private static String made(Visitor author, String what, Map<String, Object> document) {
    HttpResponse<String> answer =
        author.post("/api/studios/demo/" + what, Documents.json(document));
    assertEquals(201, answer.statusCode(), answer.body());
    return String.valueOf(Told.at(Visitor.object(answer), "id"));
  }
}
