package lampwright.web;

import java.util.LinkedHashMap;
import java.util.Map;
import lampwright.Told;
import lampwright.Visitor;
import lampwright.document.Json;

/** Holds drills against the API's description of itself. */
record DrillsAsDescribed(Described described, Visitor author) {

  private static final String DRILLS = "/api/studios/demo/drills";
  private static final String ALL = "/api/studios/{studio}/drills";

  void mustFit() {
    Map<?, ?> drill =
        Visitor.object(
            described.mustFit(
                "GET " + ALL, 200, author.get(DRILLS + "?kind=stops_between&seed=3")));
    described.mustFit("GET " + ALL, 200, author.get(DRILLS + "?kind=unsafe"));
    described.mustFit("GET " + ALL, 422, author.get(DRILLS + "?kind=juggling"));
    described.mustFit("GET " + ALL, 404, author.get(DRILLS + "?setup=zzzz"));
    Map<String, Object> sent = new LinkedHashMap<>();
    sent.put("kind", drill.get("kind"));
    sent.put("setup", Told.at(drill, "setup", "id"));
    sent.put("seed", drill.get("seed"));
    sent.put("question", drill.get("question"));
    String answers = "POST " + ALL + "/answers";
    described.mustFit(answers, 422, author.post(DRILLS + "/answers", Json.print(sent)));
    sent.put("number", 19.0);
    described.mustFit(answers, 200, author.post(DRILLS + "/answers", Json.print(sent)));
    sent.put("question", "000000000000");
    described.mustFit(answers, 409, author.post(DRILLS + "/answers", Json.print(sent)));
    described.mustFit("GET " + ALL + "/progress", 200, author.get(DRILLS + "/progress"));
  }
}
