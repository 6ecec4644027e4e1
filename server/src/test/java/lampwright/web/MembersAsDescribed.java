package lampwright.web;

import java.net.http.HttpResponse;
import lampwright.TestHouse;
import lampwright.Told;
import lampwright.Visitor;

/** Holds members, invitations and studios against the API's description of itself. */
record MembersAsDescribed(TestHouse house, Described described) {

  void mustFit() {
    Visitor owner = house.signedIn("owner@demo.example");
    HttpResponse<String> founded = owner.post("/api/studios", "{\"name\":\"Described\"}");
    described.mustFit("POST /api/studios", 201, founded);
    String studio = "/api/studios/" + Visitor.object(founded).get("id");
    String all = "/api/studios/{studio}";
    described.mustFit("GET " + all, 200, owner.get(studio));
    described.mustFit(
        "PATCH " + all, 200, owner.with("If-Match", "\"1\"").patch(studio, "{\"name\":\"So\"}"));

    HttpResponse<String> invited =
        owner.post(studio + "/invitations", "{\"role\":\"crew\",\"meant_for\":\"Wim\"}");
    described.mustFit("POST " + all + "/invitations", 201, invited);
    described.mustFit("GET " + all + "/invitations", 200, owner.get(studio + "/invitations"));
    String link = "/api" + Visitor.object(invited).get("link");
    String secret = "/api/invitations/{secret}";
    described.mustFit("GET " + secret, 200, house.visitor().get(link));
    described.mustFit("GET " + secret, 404, house.visitor().get("/api/invitations/AAAA"));
    described.mustFit("POST " + secret, 422, house.visitor().post(link, "{\"account\":{}}"));
    described.mustFit("POST " + secret, 409, owner.post(link, "{}"));
    described.mustFit(
        "POST " + secret,
        201,
        house
            .visitor()
            .post(
                link,
                "{\"account\":{\"name\":\"Wim\",\"email\":\"wim.described@light.example\","
                    + "\"password\":\"three quiet lamps\"}}"));
    HttpResponse<String> further =
        owner.post(studio + "/invitations", "{\"role\":\"crew\",\"meant_for\":\"x\",\"days\":1}");
    described.mustFit(
        "DELETE " + all + "/invitations/{invitation}",
        204,
        owner.delete(studio + "/invitations/" + Visitor.object(further).get("id")));

    HttpResponse<String> members = owner.get(studio + "/members");
    described.mustFit("GET " + all + "/members", 200, members);
    String wim =
        Visitor.items(members).stream()
            .filter(one -> "Wim".equals(Told.at(one, "name")))
            .map(one -> studio + "/members/" + Told.at(one, "id"))
            .findFirst()
            .orElseThrow();
    String one = all + "/members/{person}";
    described.mustFit("GET " + one, 200, owner.get(wim));
    described.mustFit(
        "PUT " + one, 200, owner.with("If-Match", "\"1\"").put(wim, "{\"role\":\"author\"}"));
    described.mustFit("POST " + one + "/reset-links", 201, owner.post(wim + "/reset-links", ""));
    described.mustFit("DELETE " + one, 204, owner.with("If-Match", "\"2\"").delete(wim));
  }
}
