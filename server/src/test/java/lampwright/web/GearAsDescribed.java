package lampwright.web;

import static lampwright.web.GearForTests.GEAR;
import static lampwright.web.GearForTests.head;
import static lampwright.web.GearForTests.kitOf;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Visitor;

/** Holds the studio's gear against the API's description of itself. */
record GearAsDescribed(TestHouse house, Described described, Visitor author) {

  private static final String ALL = "/api/studios/{studio}/gear";
  private static final String ONE = ALL + "/{gear}";

  void mustFit() {
    Map<String, Object> reading = Map.of("head", "Described", "f_number", 32.0, "distance_m", 2.0);
    String document =
        Documents.json(Documents.with(head("Described", 64), "readings", List.of(reading)));
    HttpResponse<String> made =
        described.mustFit("POST " + ALL, 201, author.post(GEAR + "?message=Bought", document));
    String place = made.headers().firstValue("Location").orElseThrow();
    described.mustFit("POST " + ALL, 422, author.post(GEAR, "{}"));
    described.mustFit("POST " + ALL, 415, author.postForm(GEAR, "a=b"));
    Visitor reader = house.withToken("reader@demo.example");
    described.mustFit("POST " + ALL, 403, reader.post(GEAR, document));
    described.mustFit("GET " + ALL, 200, author.get(GEAR + "?kind=head&q=desc&limit=1"));
    described.mustFit("GET " + ALL, 422, author.get(GEAR + "?kind=mood"));
    described.mustFit("GET " + ONE, 200, author.get(place));
    described.mustFit("GET " + ONE, 304, author.with("If-None-Match", "\"1\"").get(place));
    Visitor first = author.with("If-Match", "\"1\"");
    described.mustFit("PUT " + ONE, 428, author.put(place, document));
    described.mustFit("PUT " + ONE, 200, first.put(place, document));
    described.mustFit("PUT " + ONE, 412, first.put(place, document));
    calibration(place);
    files();
    kits(place);
    described.mustFit("GET " + ONE + "/revisions", 200, author.get(place + "/revisions"));
    described.mustFit(
        "GET " + ONE + "/revisions/{revision}", 200, author.get(place + "/revisions/1"));
    described.mustFit("DELETE " + ONE, 412, first.delete(place));
    described.mustFit("PATCH " + ONE, 412, first.patch(place, "{}"));
    described.mustFit("PATCH " + ONE, 200, author.with("If-Match", "\"3\"").patch(place, "{}"));
    described.mustFit("DELETE " + ONE, 204, author.with("If-Match", "*").delete(place));
    described.mustFit("GET " + ONE, 404, author.get(place));
  }

  private void calibration(String place) {
    String operation = "POST " + ONE + "/calibration";
    String path = place + "/calibration";
    described.mustFit(operation, 200, author.post(path, ""));
    described.mustFit(operation, 428, author.post(path + "?adopt=true", ""));
    Visitor second = author.with("If-Match", "\"2\"");
    described.mustFit(operation, 200, second.post(path + "?adopt=true", ""));
    described.mustFit(operation, 412, second.post(path + "?adopt=true", ""));
  }

  private void files() {
    HttpResponse<String> list =
        described.mustFit("GET " + ALL + "/export", 200, author.get(GEAR + "/export"));
    described.mustFit("GET " + ALL + "/export", 422, author.get(GEAR + "/export?format=csv"));
    HttpResponse<String> table = author.get(GEAR + "/export?format=csv&kind=head");
    String operation = "POST " + ALL + "/import";
    String path = GEAR + "/import?trial=true";
    described.mustFit(operation, 200, author.post(path, list.body()));
    described.mustFit(operation, 200, author.post(path, "{\"gear\":[{}]}"));
    described.mustFit(operation, 422, author.post(GEAR + "/import", "{\"gear\":[{}]}"));
    described.mustFit(
        operation,
        200,
        author
            .with("Content-Type", "text/csv")
            .send("POST", path, BodyPublishers.ofString(table.body())));
  }

  private void kits(String place) {
    String kit =
        author
            .post("/api/studios/demo/kits", Documents.json(kitOf("Described", place)))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    described.mustFit("GET " + ONE + "/kits", 200, author.get(place + "/kits"));
    described.mustFit("GET /api/studios/{studio}/kits/{kit}", 200, author.get(kit));
    described.mustFit("DELETE " + ONE, 409, author.with("If-Match", "\"3\"").delete(place));
    author.with("If-Match", "\"1\"").delete(kit);
  }
}
