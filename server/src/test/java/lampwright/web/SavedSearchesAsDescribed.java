package lampwright.web;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import lampwright.Visitor;

/** Holds kept searches against the API's description of itself. */
record SavedSearchesAsDescribed(Described described, Visitor author) {

  private static final String STUDIO = "/api/studios/demo";
  private static final String ALL = "/api/studios/{studio}/saved-searches";
  private static final String ONE = ALL + "/{search}";

  void mustFit() {
    String path = STUDIO + "/saved-searches";
    String document = "{\"name\":\"Described\",\"question\":\"q=dusk\"}";
    HttpResponse<String> made = described.mustFit("POST " + ALL, 201, author.post(path, document));
    String place = made.headers().firstValue("Location").orElseThrow();
    described.mustFit("POST " + ALL, 409, author.post(path, document));
    described.mustFit("POST " + ALL, 422, author.post(path, "{}"));
    described.mustFit("GET " + ALL, 200, author.get(path));
    described.mustFit("GET " + ONE, 200, author.get(place));
    described.mustFit("GET " + ONE, 304, author.with("If-None-Match", "\"1\"").get(place));
    described.mustFit("GET " + ONE + "/news", 200, author.get(place + "/news"));
    described.mustFit("POST " + ONE + "/looks", 200, author.post(place + "/looks", ""));
    Visitor first = author.with("If-Match", "\"1\"");
    described.mustFit("PUT " + ONE, 428, author.put(place, document));
    described.mustFit("PUT " + ONE, 200, first.put(place, document));
    described.mustFit("PUT " + ONE, 412, first.put(place, document));
    Visitor second = author.with("If-Match", "\"2\"");
    described.mustFit("PATCH " + ONE, 412, first.patch(place, "{}"));
    described.mustFit("PATCH " + ONE, 415, second.send("PATCH", place, BodyPublishers.noBody()));
    described.mustFit("PATCH " + ONE, 200, second.patch(place, "{}"));
    described.mustFit("DELETE " + ONE, 412, first.delete(place));
    described.mustFit("DELETE " + ONE, 204, author.with("If-Match", "*").delete(place));
    described.mustFit("GET " + ONE, 404, author.get(place));
  }
}
