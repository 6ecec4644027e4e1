package lampwright.web;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import lampwright.TestHouse;
import lampwright.Visitor;
import lampwright.people.Role;

/** Holds tokens with bounds, taking out and leaving against the API's description of itself. */
record LeavingAsDescribed(TestHouse house, Described described) {

  private static final String LEAVE = "DELETE /api/account";

  void mustFit() {
    Newcomer newcomer = Newcomer.to(house, "Described Person", Role.AUTHOR);
    Visitor me = newcomer.signedIn();
    String bounds = "{\"name\":\"bounded\",\"at_most\":\"reader\",\"studio\":\"demo\",\"days\":9}";
    HttpResponse<String> made =
        described.mustFit("POST /api/tokens", 201, me.post("/api/tokens", bounds));
    described.mustFit("GET /api/tokens", 200, me.get("/api/tokens"));
    described.mustFit(
        "POST /api/tokens", 422, me.post("/api/tokens", bounds.replace("demo", "zzzz9")));
    Visitor program =
        house.visitor().with("Authorization", "Bearer " + Visitor.object(made).get("token"));
    described.mustFit("GET /api/account/data", 200, me.get("/api/account/data"));
    described.mustFit("GET /api/account/data", 403, program.get("/api/account/data"));
    described.mustFit(LEAVE, 422, leave(me, "{}"));
    described.mustFit(LEAVE, 403, leave(program, "{}"));
    house.database().newStudio(newcomer.id());
    Visitor other = Newcomer.to(house, "Another Person", Role.CREW).signedIn();
    String word = "{\"password\":\"" + Newcomer.PASSWORD + "\",\"names\":\"keep\"}";
    described.mustFit(LEAVE, 409, leave(me, word));
    described.mustFit(LEAVE, 204, leave(other, word));
  }

  private static HttpResponse<String> leave(Visitor who, String json) {
    return who.with("Content-Type", "application/json")
        .send("DELETE", "/api/account", BodyPublishers.ofString(json));
  }
}
