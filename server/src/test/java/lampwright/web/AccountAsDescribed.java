package lampwright.web;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.people.DeviceForTests;

/** Holds one's own account against the API's description of itself. */
record AccountAsDescribed(TestHouse house, Described described) {

  private static final String ACCOUNT = "/api/account";
  private static final String FACTOR = ACCOUNT + "/second-factor";
  private static final String EMAIL = "reader@demo.example";

  void mustFit() {
    Visitor reader = house.signedIn(EMAIL);
    described.mustFit("GET " + ACCOUNT, 200, reader.get(ACCOUNT));
    described.mustFit("GET " + ACCOUNT, 304, reader.with("If-None-Match", "\"1\"").get(ACCOUNT));
    described.mustFit("GET " + ACCOUNT, 403, house.withToken(EMAIL).get(ACCOUNT));
    String name = "{\"name\":\"Described\"}";
    Visitor first = reader.with("If-Match", "\"1\"");
    described.mustFit("PATCH " + ACCOUNT, 428, reader.patch(ACCOUNT, name));
    described.mustFit(
        "PATCH " + ACCOUNT, 415, first.send("PATCH", ACCOUNT, BodyPublishers.noBody()));
    described.mustFit("PATCH " + ACCOUNT, 422, first.patch(ACCOUNT, "{\"email\":\"b@c.example\"}"));
    described.mustFit("PATCH " + ACCOUNT, 200, first.patch(ACCOUNT, name));
    described.mustFit("PATCH " + ACCOUNT, 412, first.patch(ACCOUNT, name));
    String sessions = ACCOUNT + "/sessions";
    house.signedIn(EMAIL);
    HttpResponse<String> listed = described.mustFit("GET " + sessions, 200, reader.get(sessions));
    Object other = ((Map<?, ?>) Visitor.items(listed).getLast()).get("id");
    String one = "DELETE " + sessions + "/{session}";
    described.mustFit(one, 204, reader.delete(sessions + "/" + other));
    described.mustFit(one, 404, reader.delete(sessions + "/" + other));
    described.mustFit("DELETE " + sessions, 204, reader.delete(sessions));
    String events = ACCOUNT + "/events";
    described.mustFit("GET " + events, 200, reader.get(events + "?limit=2"));
    described.mustFit("GET " + events, 422, reader.get(events + "?cursor=x"));
    described.mustFit("GET " + events, 403, house.withToken(EMAIL).get(events));
    secondFactor(password(reader));
  }

  private Visitor password(Visitor reader) {
    String path = ACCOUNT + "/password";
    described.mustFit("PUT " + path, 422, reader.put(path, "{}"));
    return goesOn(
        reader,
        described.mustFit(
            "PUT " + path,
            200,
            reader.put(
                path,
                Documents.json(Map.of("current", TestHouse.PASSWORD, "new", TestHouse.PASSWORD)))));
  }

  private void secondFactor(Visitor reader) {
    String password = Documents.json(Map.of("password", TestHouse.PASSWORD));
    described.mustFit("GET " + FACTOR, 200, reader.get(FACTOR));
    described.mustFit("POST " + FACTOR, 422, reader.post(FACTOR, "{\"password\":\"wrong\"}"));
    String confirmation = FACTOR + "/confirmation";
    described.mustFit(
        "POST " + confirmation, 409, reader.post(confirmation, "{\"code\":\"123456\"}"));
    HttpResponse<String> offer =
        described.mustFit("POST " + FACTOR, 201, reader.post(FACTOR, password));
    described.mustFit(
        "POST " + confirmation, 422, reader.post(confirmation, "{\"code\":\"12345\"}"));
    DeviceForTests device = new DeviceForTests(String.valueOf(Visitor.object(offer).get("secret")));
    HttpResponse<String> on =
        described.mustFit(
            "POST " + confirmation,
            200,
            reader.post(
                confirmation, Documents.json(Map.of("code", device.codeAt(Instant.now())))));
    Visitor next = goesOn(reader, on);
    described.mustFit("GET " + FACTOR, 200, next.get(FACTOR));
    described.mustFit("POST " + FACTOR, 409, next.post(FACTOR, password));
    described.mustFit("POST /api/session", 401, house.signIn(EMAIL, TestHouse.PASSWORD));
    String anew = FACTOR + "/recovery-codes";
    described.mustFit("POST " + anew, 422, next.post(anew, "{}"));
    HttpResponse<String> codes =
        described.mustFit("POST " + anew, 200, next.post(anew, both(on, 0)));
    String removal = FACTOR + "/removal";
    described.mustFit("POST " + removal, 422, next.post(removal, "{}"));
    String both = both(codes, 1);
    Visitor off = goesOn(next, described.mustFit("POST " + removal, 200, next.post(removal, both)));
    described.mustFit("POST " + removal, 409, off.post(removal, both));
    described.mustFit("POST " + anew, 409, off.post(anew, both));
  }

  /** The password, and one of the recovery codes that an answer shows. */
  private static String both(HttpResponse<String> shown, int number) {
    return Documents.json(
        Map.of(
            "password",
            TestHouse.PASSWORD,
            "code",
            ((List<?>) Told.at(Visitor.object(shown), "recovery_codes")).get(number)));
  }

  /** The same person by the next token of their session. */
  static Visitor goesOn(Visitor before, HttpResponse<String> answer) {
    String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
    return before
        .with("Cookie", cookie.substring(0, cookie.indexOf(';')))
        .with("X-CSRF-Token", String.valueOf(Visitor.object(answer).get("csrf_token")));
  }
}
