package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static lampwright.web.GearForTests.gear;
import static lampwright.web.GearForTests.head;
import static lampwright.web.GearForTests.kept;
import static lampwright.web.GearForTests.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GearOverRestTest {

  @RegisterExtension static final TestHouse house = TestHouse.withDemo();

  private Visitor author;

  @BeforeAll
  void anAuthorComesWithAToken() {
    author = house.withToken("author@demo.example");
  }

  @Test
  void gearIsMadeReadChangedAndTakenAway() {
    Map<String, Object> document =
        Documents.with(
            Documents.with(head("Lathe head", 64.0), "count", 3.0),
            "condition",
            List.of(Map.of("date", "2026-05-01", "note", "Modelling lamp cracked.")));
    HttpResponse<String> made = author.post(GEAR + "?message=Bought", Documents.json(document));
    assertEquals(201, made.statusCode(), made.body());
    String place = made.headers().firstValue("Location").orElseThrow();
    assertEquals(document, told(author, place).get("document"));
    assertEquals(304, author.with("If-None-Match", "\"1\"").get(place).statusCode());

    String other = Documents.json(Documents.with(document, "out_of_order", 1.0));
    assertEquals(428, author.put(place, other).statusCode());
    Visitor first = author.with("If-Match", "\"1\"");
    assertEquals(200, first.put(place + "?message=Dropped", other).statusCode());
    assertEquals(412, first.put(place, other).statusCode());
    assertEquals(1, Told.number(told(author, place), "document", "out_of_order"));

    List<?> history = Told.list(told(author, place + "/revisions"), "items");
    assertEquals(
        List.of("Dropped", "Bought"),
        history.stream().map(line -> Told.at(line, "message")).toList());
    assertEquals(document, told(author, place + "/revisions/1").get("document"));
    assertEquals(404, author.get(place + "/revisions/3").statusCode());

    assertEquals(412, first.delete(place).statusCode());
    assertEquals(204, author.with("If-Match", "\"2\"").delete(place).statusCode());
    for (String gone : List.of("", "/kits", "/revisions", "/revisions/1")) {
      assertEquals(404, author.get(place + gone).statusCode(), gone);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pack | {'name':'Box','energy_ws':1200,'outlets':2}",
        "modifier | {'name':'Dish','kind':'dish','spread_deg':60}",
        "body | {'name':'Body','width_mm':36,'height_mm':24,'sync':'1/200'}",
        "lens | {'name':'Long','focal_length_mm':85}",
        "gel | {'name':'Straw','shift_mired':65,'loss_stops':0.5}",
        "neutral_density | {'name':'Grey 3','loss_stops':3}",
        "stand | {'name':'Tall','highest_m':3.2}"
      })
  void eachKindIsKeptAsItWasWritten(String kind, String piece) {
    String document = "{\"kind\":\"%s\",\"%s\":%s}".formatted(kind, kind, piece.replace('\'', '"'));
    HttpResponse<String> made = author.post(GEAR, document);
    assertEquals(201, made.statusCode(), made.body());
    assertEquals(lampwright.document.Json.parse(document), Visitor.object(made).get("document"));
    List<?> listed = Visitor.items(author.get(GEAR + "?kind=" + kind));
    assertTrue(listed.stream().allMatch(item -> Told.at(item, "kind").equals(kind)));
    assertEquals(
        List.of(Told.at(Visitor.object(made), "document", kind, "name")),
        listed.stream().map(item -> Told.at(item, "name")).toList());
  }

  @Test
  void gearIsFoundByAPartOfItsName() {
    kept(author, GEAR, head("100 % of 50_50", 40));
    for (String part : List.of("100+%25", "50_5", "OF+50")) {
      assertEquals(1, Visitor.items(author.get(GEAR + "?kind=head&q=" + part)).size(), part);
    }
    // What stands for anything in SQL stands for itself here.
    assertEquals(0, Visitor.items(author.get(GEAR + "?q=1%25f")).size());
  }

  @Test
  void theListIsReadPageByPage() {
    for (int i = 0; i < 4; i++) {
      kept(author, GEAR, head("Paged " + i, 50));
    }
    List<Object> seen = new ArrayList<>();
    String address = GEAR + "?limit=2&q=paged";
    while (!address.isEmpty()) {
      HttpResponse<String> answer = author.get(address);
      Visitor.items(answer).forEach(item -> seen.add(Told.at(item, "name")));
      String link = answer.headers().firstValue("Link").orElse("<>");
      address = link.substring(1, link.indexOf('>'));
    }
    assertEquals(List.of("Paged 3", "Paged 2", "Paged 1", "Paged 0"), seen);
  }

  @ParameterizedTest
  @CsvSource({"?kind=mood,/kind", "?cursor=x,/cursor", "?limit=0,/limit", "?colour=1,/colour"})
  void aWishThatCannotBeMeantIsPointedAt(String query, String pointer) {
    HttpResponse<String> answer = author.get(GEAR + query);
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'kind':'mood'} | /kind",
        "{'kind':'gel'} | /gel",
        "{'kind':'gel','head':{}} | /head",
        "{'kind':'gel','gel':{'name':'A','shift_mired':1,'loss_stops':-1}} | /gel/loss_stops",
        "{'kind':'gel','gel':{'name':'A','shift_mired':1,'loss_stops':1},'readings':[]} |"
            + " /readings",
        "{'kind':'stand','stand':{'name':'A','highest_m':2},'out_of_order':2} | /out_of_order",
        "{'kind':'stand','stand':{'name':'A','highest_m':2},'count':0} | /count",
        "{'kind':'stand','stand':{'name':'A','highest_m':2},'condition':[{'note':'x'}]}"
            + " | /condition/0/date"
      })
  void whatIsWrongIsPointedAt(String document, String pointer) {
    HttpResponse<String> answer = author.post(GEAR, document.replace('\'', '"'));
    assertEquals(422, answer.statusCode(), answer.body());
    assertEquals(pointer, Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void readingsAreOfTheHeadThatKeepsThem() {
    Map<String, Object> reading = Map.of("head", "Other", "f_number", 8.0, "distance_m", 2.0);
    HttpResponse<String> answer =
        author.post(
            GEAR, Documents.json(Documents.with(head("Own", 64), "readings", List.of(reading))));
    assertEquals(422, answer.statusCode());
    assertEquals("/readings/0/head", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void gearStaysOfItsKind() {
    String place = kept(author, GEAR, head("Turncoat", 64));
    HttpResponse<String> answer =
        author
            .with("If-Match", "\"1\"")
            .put(place, Documents.json(gear("stand", Map.of("name", "X", "highest_m", 2.0))));
    assertEquals(422, answer.statusCode());
    assertEquals("/kind", Told.at(Visitor.object(answer), "errors", 0, "pointer"));
  }

  @Test
  void readersAndCrewReadGearButDoNotChangeIt() {
    String place = kept(author, GEAR, head("Theirs to see", 64));
    String document = Documents.json(head("Theirs", 64));
    for (String who : List.of("crew@demo.example", "reader@demo.example")) {
      Visitor other = house.withToken(who);
      for (String path : List.of(GEAR, place, place + "/kits", place + "/revisions")) {
        assertEquals(200, other.get(path).statusCode(), path);
      }
      assertEquals(403, other.post(GEAR, document).statusCode());
      assertEquals(403, other.with("If-Match", "\"1\"").put(place, document).statusCode());
      assertEquals(403, other.with("If-Match", "\"1\"").delete(place).statusCode());
    }
    assertEquals(401, house.visitor().get(place).statusCode());
    assertEquals(404, author.get("/api/studios/zzzz9zzzz9zzzz9z/gear").statusCode());
    assertEquals(404, author.get(GEAR + "/zzzz9zzzz9zzzz9z").statusCode());
  }
}
