package lampwright.web;

import java.net.http.HttpRequest.BodyPublishers;
import lampwright.TestHouse;
import lampwright.Visitor;

/** Holds the search index against the API's description of itself. */
record IndexAsDescribed(TestHouse house, Described described, Visitor author) {

  private static final String INDEX = "/api/studios/demo/index";
  private static final String DESCRIBED = "/api/studios/{studio}/index";

  void mustFit() {
    Visitor owner = house.withToken("owner@demo.example");
    described.mustFit("GET " + DESCRIBED, 200, owner.get(INDEX));
    described.mustFit("GET " + DESCRIBED, 403, author.get(INDEX));
    described.mustFit("GET " + DESCRIBED, 401, house.visitor().get(INDEX));
    String start = "POST " + DESCRIBED + "/rebuild";
    described.mustFit(start, 202, owner.send("POST", INDEX + "/rebuild", BodyPublishers.noBody()));
    described.mustFit(start, 403, author.send("POST", INDEX + "/rebuild", BodyPublishers.noBody()));
    IndexOverRestTest.awaitLast(owner);
    described.mustFit("GET " + DESCRIBED, 200, owner.get(INDEX));
    String stop = "DELETE " + DESCRIBED + "/rebuild";
    described.mustFit(stop, 204, owner.delete(INDEX + "/rebuild"));
    described.mustFit(stop, 403, author.delete(INDEX + "/rebuild"));
  }
}
