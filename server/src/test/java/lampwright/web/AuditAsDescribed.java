package lampwright.web;

import java.net.http.HttpResponse;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;

/** Holds the audit trail and the links for outsiders against the API's description of itself. */
record AuditAsDescribed(TestHouse house, Described described, Visitor author) {

  private static final String STUDIO = "/api/studios/demo";

  void mustFit() {
    links();
    String audit = "GET /api/studios/{studio}/audit";
    Visitor owner = house.withToken("owner@demo.example");
    described.mustFit(audit, 200, owner.get(STUDIO + "/audit?limit=100"));
    described.mustFit(audit, 200, owner.get(STUDIO + "/audit?kind=share_link&limit=1"));
    described.mustFit(audit, 403, author.get(STUDIO + "/audit"));
    described.mustFit(audit, 422, owner.get(STUDIO + "/audit?kind=mood"));
    described.mustFit(audit, 422, owner.get(STUDIO + "/audit?cursor=x"));
  }

  private void links() {
    String all = "/api/studios/{studio}/setups/{setup}/share-links";
    Object setup = Visitor.items(author.get(STUDIO + "/setups?limit=1")).getFirst();
    String path = STUDIO + "/setups/" + Told.at(setup, "id") + "/share-links";
    HttpResponse<String> made =
        described.mustFit("POST " + all, 201, author.post(path, "{\"days\":1}"));
    described.mustFit("POST " + all, 422, author.post(path, "{\"days\":91}"));
    described.mustFit("GET " + all, 200, author.get(path));
    String place = made.headers().firstValue("Location").orElseThrow();
    Visitor crew = house.withToken("crew@demo.example");
    described.mustFit("GET " + all, 403, crew.get(path));
    described.mustFit("DELETE " + all + "/{link}", 403, crew.delete(place));
    described.mustFit("DELETE " + all + "/{link}", 204, author.delete(place));
    described.mustFit("DELETE " + all + "/{link}", 404, author.delete(place));
  }
}
