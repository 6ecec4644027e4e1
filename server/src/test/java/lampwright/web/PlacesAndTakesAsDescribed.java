package lampwright.web;

import java.net.http.HttpResponse;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;

/** Holds locations, takes and notes against the API's description of itself. */
record PlacesAndTakesAsDescribed(TestHouse house, Described described, Visitor author) {

  private static final String STUDIO = "/api/studios/demo";
  private static final String IN_STUDIO = "/api/studios/{studio}";

  void mustFit() {
    locations();
    String setups = STUDIO + "/setups";
    String setup =
        author
            .post(setups, Documents.json(Documents.setup("Described")))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    takes(setup);
    notes(setup);
    proposals(setup);
  }

  private void takes(String setup) {
    String all = IN_STUDIO + "/setups/{setup}/takes";
    String one = all + "/{take}";
    String path = setup + "/takes";
    String document = Documents.json(TakesOverRestTest.take("described", 8));
    HttpResponse<String> made = described.mustFit("POST " + all, 201, author.post(path, document));
    String place = made.headers().firstValue("Location").orElseThrow();
    described.mustFit("POST " + all, 200, author.post(path, document));
    described.mustFit("POST " + all, 422, author.post(path, "{}"));
    described.mustFit(
        "POST " + all, 403, house.withToken("reader@demo.example").post(path, document));
    described.mustFit("GET " + all, 200, author.get(path + "?limit=1&kept=undecided"));
    described.mustFit("GET " + one, 200, author.get(place));
    described.mustFit("GET " + one, 304, author.with("If-None-Match", "\"1\"").get(place));
    Visitor first = author.with("If-Match", "\"1\"");
    described.mustFit("PUT " + one, 428, author.put(place, document));
    described.mustFit("PUT " + one, 200, first.put(place, document));
    described.mustFit("PUT " + one, 412, first.put(place, document));
    String calibration = place + "/calibration";
    String chosen = "{\"readings\":[\"key\"]}";
    described.mustFit("POST " + one + "/calibration", 422, first.post(calibration, "{}"));
    described.mustFit("POST " + one + "/calibration", 200, first.post(calibration, chosen));
    described.mustFit("POST " + one + "/calibration", 412, first.post(calibration, chosen));
    String gear = place + "/gear-readings";
    author.post(STUDIO + "/gear", Documents.json(headOf(setup)));
    described.mustFit("POST " + one + "/gear-readings", 422, author.post(gear, "{}"));
    described.mustFit("POST " + one + "/gear-readings", 200, author.post(gear, chosen));
    patches(one, place);
    described.mustFit("DELETE " + one, 204, author.with("If-Match", "\"3\"").delete(place));
    described.mustFit("GET " + one, 404, author.get(place));
  }

  /** A head of the studio's that is called as the setup's is. */
  private Map<String, Object> headOf(String setup) {
    Object name =
        Told.at(Visitor.object(author.get(setup)), "document", "lights", 0, "head", "name");
    return GearForTests.head(name.toString(), 64);
  }

  private void proposals(String setup) {
    String all = IN_STUDIO + "/setups/{setup}/proposals";
    String one = all + "/{proposal}";
    String accept = "POST " + one + "/acceptance";
    String path = setup + "/proposals";
    String proposal = "{\"setup_revision\":1,\"used\":{\"exposure\":{\"iso\":200},\"lights\":[]}}";
    Visitor crew = house.withToken("crew@demo.example");
    Visitor reader = house.withToken("reader@demo.example");
    HttpResponse<String> made = described.mustFit("POST " + all, 201, crew.post(path, proposal));
    String place = made.headers().firstValue("Location").orElseThrow();
    described.mustFit("POST " + all, 422, crew.post(path, "{}"));
    described.mustFit("POST " + all, 403, reader.post(path, proposal));
    described.mustFit("GET " + all, 200, author.get(path + "?limit=1"));
    described.mustFit("GET " + all, 422, author.get(path + "?limit=0"));
    described.mustFit("GET " + all, 403, reader.get(path));
    described.mustFit("GET " + one, 200, crew.get(place));
    described.mustFit("GET " + one, 304, crew.with("If-None-Match", "\"1\"").get(place));
    described.mustFit("GET " + one, 404, author.get(path + "/zzzz"));
    String acceptance = place + "/acceptance";
    Visitor current = author.with("If-Match", "*");
    described.mustFit(accept, 428, author.post(acceptance, ""));
    described.mustFit(accept, 412, author.with("If-Match", "\"99\"").post(acceptance, ""));
    described.mustFit(accept, 403, crew.with("If-Match", "*").post(acceptance, ""));
    described.mustFit(accept, 200, current.post(acceptance, ""));
    described.mustFit(accept, 409, current.post(acceptance, ""));
    described.mustFit("GET " + one, 200, author.get(place));
    described.mustFit("DELETE " + one, 428, author.delete(place));
    described.mustFit("DELETE " + one, 409, current.delete(place));
    String other = crew.post(path, proposal).headers().firstValue("Location").orElseThrow();
    described.mustFit("DELETE " + one, 204, current.delete(other));
  }

  private void notes(String setup) {
    String all = IN_STUDIO + "/setups/{setup}/notes";
    String one = all + "/{note}";
    String path = setup + "/notes";
    String document = "{\"text\":\"Fog.\",\"about\":{\"kind\":\"light\",\"light\":\"key\"}}";
    HttpResponse<String> made = described.mustFit("POST " + all, 201, author.post(path, document));
    String place = made.headers().firstValue("Location").orElseThrow();
    described.mustFit("POST " + all, 422, author.post(path, "{}"));
    described.mustFit("GET " + all, 200, author.get(path + "?limit=1"));
    described.mustFit("GET " + one, 200, author.get(place));
    described.mustFit("GET " + one, 304, author.with("If-None-Match", "\"1\"").get(place));
    Visitor first = author.with("If-Match", "\"1\"");
    described.mustFit("PUT " + one, 428, author.put(place, document));
    described.mustFit("PUT " + one, 200, first.put(place, document));
    described.mustFit("PUT " + one, 412, first.put(place, document));
    patches(one, place);
    described.mustFit("DELETE " + one, 204, author.with("If-Match", "\"3\"").delete(place));
    described.mustFit("GET " + one, 404, author.get(place));
  }

  private void locations() {
    String all = IN_STUDIO + "/locations";
    String one = all + "/{location}";
    String path = STUDIO + "/locations";
    String document = Documents.json(Documents.location("Described"));
    HttpResponse<String> made = described.mustFit("POST " + all, 201, author.post(path, document));
    String place = made.headers().firstValue("Location").orElseThrow();
    Visitor first = author.with("If-Match", "\"1\"");
    described.mustFit("POST " + all, 422, author.post(path, "{}"));
    described.mustFit(
        "POST " + all, 403, house.withToken("crew@demo.example").post(path, document));
    described.mustFit("GET " + all, 200, author.get(path + "?limit=1"));
    described.mustFit("GET " + all, 422, author.get(path + "?limit=0"));
    described.mustFit("GET " + one, 200, author.get(place));
    described.mustFit("GET " + one, 304, author.with("If-None-Match", "\"1\"").get(place));
    described.mustFit("GET " + one + "/sun", 200, author.get(place + "/sun?date=2025-09-12"));
    described.mustFit("GET " + one + "/sun", 422, author.get(place + "/sun?date=soon"));
    String hour = "/ambient?at=2026-09-12T19:00:00%2B01:00";
    described.mustFit("GET " + one + "/ambient", 200, author.get(place + hour));
    described.mustFit("GET " + one + "/ambient", 422, author.get(place + "/ambient"));
    described.mustFit("GET " + one + "/setups", 200, author.get(place + "/setups"));
    described.mustFit("PUT " + one, 428, author.put(place, document));
    described.mustFit("PUT " + one, 200, first.put(place, document));
    described.mustFit("PUT " + one, 412, first.put(place, document));
    String setup = Documents.json(LocationsOverRestTest.setupAt(place));
    String kept = author.post(STUDIO + "/setups", setup).headers().firstValue("Location").get();
    Visitor second = author.with("If-Match", "\"2\"");
    described.mustFit("DELETE " + one, 409, second.delete(place));
    first.delete(kept);
    patches(one, place);
    described.mustFit("DELETE " + one, 204, author.with("If-Match", "*").delete(place));
    described.mustFit("GET " + one, 404, author.get(place));
  }

  /** Changes nothing of what has revision 2, so that it has revision 3. */
  private void patches(String one, String place) {
    Visitor second = author.with("If-Match", "\"2\"");
    described.mustFit("PATCH " + one, 428, author.patch(place, "{}"));
    described.mustFit("PATCH " + one, 422, second.patch(place, "{\"none\":1}"));
    described.mustFit("PATCH " + one, 200, second.patch(place, "{}"));
    described.mustFit("PATCH " + one, 412, second.patch(place, "{}"));
  }
}
