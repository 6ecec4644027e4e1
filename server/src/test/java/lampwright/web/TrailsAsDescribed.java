package lampwright.web;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;

/** Holds trails, builds and the report against the API's description of itself. */
record TrailsAsDescribed(TestHouse house, Described described, Visitor author) {

  private static final String STUDIO = "/api/studios/demo";
  private static final String ALL = "/api/studios/{studio}/trails";
  private static final String ONE = ALL + "/{trail}";
  private static final String BUILDS = "/api/studios/{studio}/builds";

  void mustFit() {
    Object first = Visitor.items(author.get(STUDIO + "/setups?limit=1")).getFirst();
    String setup = String.valueOf(Told.at(first, "id"));
    String path = STUDIO + "/trails";
    String document = TrailsOverRestTest.trail("Described", setup);
    HttpResponse<String> made = described.mustFit("POST " + ALL, 201, author.post(path, document));
    String place = made.headers().firstValue("Location").orElseThrow();
    described.mustFit("POST " + ALL, 422, author.post(path, "{}"));
    described.mustFit("GET " + ALL, 200, author.get(path));
    described.mustFit("GET " + ONE, 200, author.get(place));
    described.mustFit("GET " + ONE, 304, author.with("If-None-Match", "\"1\"").get(place));
    described.mustFit("GET " + ONE + "/way", 200, author.get(place + "/way"));
    walk(place, STUDIO + "/setups/" + setup);
    Visitor now = author.with("If-Match", "\"1\"");
    described.mustFit("PUT " + ONE, 428, author.put(place, document));
    described.mustFit("PUT " + ONE, 200, now.put(place, document));
    described.mustFit("PUT " + ONE, 412, now.put(place, document));
    Visitor second = author.with("If-Match", "\"2\"");
    described.mustFit("PATCH " + ONE, 200, second.patch(place, "{}"));
    described.mustFit("DELETE " + ONE, 412, now.delete(place));
    described.mustFit("DELETE " + ONE, 204, author.with("If-Match", "*").delete(place));
    described.mustFit(
        "GET /api/studios/{studio}/learning",
        200,
        house.withToken("owner@demo.example").get(STUDIO + "/learning"));
    described.mustFit("GET /api/studios/{studio}/learning", 403, author.get(STUDIO + "/learning"));
  }

  private void walk(String trail, String setup) {
    Visitor crew = house.withToken("crew@demo.example");
    String done = "POST " + ONE + "/stages/{stage}/done";
    described.mustFit(done, 200, crew.post(trail + "/stages/read/done", ""));
    described.mustFit(done, 409, crew.post(trail + "/stages/build/done", ""));
    Object light = Told.at(Visitor.object(author.get(setup)), "document", "lights", 0, "id");
    Map<String, Object> take = TakesOverRestTest.take("described-run", 8);
    take.put("kind", "run_through");
    take.put("readings", List.of(Map.of("light", light, "f_number", 8.0)));
    String logged =
        crew.post(setup + "/takes", Json.print(take))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    String id = logged.substring(logged.lastIndexOf('/') + 1);
    String handIn = "POST " + ONE + "/stages/{stage}/builds";
    String path = trail + "/stages/build/builds";
    described.mustFit(handIn, 422, crew.post(path, "{\"take\":\"zzzz\"}"));
    described.mustFit(handIn, 200, crew.post(path, "{\"take\":\"" + id + "\"}"));
    described.mustFit(handIn, 409, crew.post(path, "{\"take\":\"" + id + "\"}"));
    HttpResponse<String> waiting =
        described.mustFit("GET " + BUILDS, 200, author.get(STUDIO + "/builds"));
    String build = STUDIO + "/builds/" + Told.at(Visitor.items(waiting).getLast(), "id");
    described.mustFit("GET " + BUILDS + "/{build}", 200, author.get(build));
    String judge = "POST " + BUILDS + "/{build}/judgement";
    described.mustFit(judge, 422, author.post(build + "/judgement", "{}"));
    described.mustFit(judge, 403, crew.post(build + "/judgement", "{\"signed_off\":true}"));
    described.mustFit(judge, 200, author.post(build + "/judgement", "{\"signed_off\":true}"));
    described.mustFit(
        judge,
        409,
        house.withToken("owner@demo.example").post(build + "/judgement", "{\"signed_off\":true}"));
  }
}
