package lampwright.web;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Visitor;

/** Holds archives and imports against the API's description of itself. */
record ArchivesAsDescribed(TestHouse house, Described described, Visitor author) {

  private static final String STUDIO = "/api/studios/demo";
  private static final String IN_STUDIO = "/api/studios/{studio}";

  void mustFit() {
    Visitor owner = house.withToken("owner@demo.example");
    String all = "GET " + IN_STUDIO + "/archive";
    described.mustFit(all, 200, owner.get(STUDIO + "/archive"));
    described.mustFit(all, 403, author.get(STUDIO + "/archive"));
    described.mustFit(all, 401, house.visitor().get(STUDIO + "/archive"));
    Map<String, Object> document = Documents.setup("Described");
    String setup =
        author
            .post(STUDIO + "/setups", Documents.json(document))
            .headers()
            .firstValue("Location")
            .orElseThrow();
    String one = "GET " + IN_STUDIO + "/setups/{setup}/archive";
    described.mustFit(one, 200, author.get(setup + "/archive"));
    described.mustFit(one, 404, author.get(STUDIO + "/setups/zzzz/archive"));
    imports(author.bytes(setup + "/archive").body());
  }

  private void imports(byte[] archive) {
    String imports = STUDIO + "/imports";
    String create = "POST " + IN_STUDIO + "/imports";
    Visitor sender = author.with("Content-Type", "application/zip");
    HttpResponse<String> made =
        described.mustFit(
            create, 201, sender.send("POST", imports, BodyPublishers.ofByteArray(archive)));
    described.mustFit(create, 422, sender.send("POST", imports, BodyPublishers.ofString("PK")));
    described.mustFit(create, 415, author.post(imports, "{}"));
    described.mustFit(
        create,
        403,
        house
            .withToken("reader@demo.example")
            .with("Content-Type", "application/zip")
            .send("POST", imports, BodyPublishers.ofByteArray(archive)));
    String place = made.headers().firstValue("Location").orElseThrow();
    String get = "GET " + IN_STUDIO + "/imports/{import}";
    described.mustFit(get, 200, author.get(place));
    described.mustFit(get, 404, author.get(imports + "/zzzz"));
    String start = "POST " + IN_STUDIO + "/imports/{import}/execution";
    described.mustFit(
        start, 202, author.send("POST", place + "/execution", BodyPublishers.noBody()));
    described.mustFit(
        start, 409, author.send("POST", place + "/execution", BodyPublishers.noBody()));
    HttpResponse<String> other = sender.send("POST", imports, BodyPublishers.ofByteArray(archive));
    String second = other.headers().firstValue("Location").orElseThrow();
    String delete = "DELETE " + IN_STUDIO + "/imports/{import}";
    described.mustFit(delete, 204, author.delete(second));
    described.mustFit(delete, 404, author.delete(second));
  }
}
