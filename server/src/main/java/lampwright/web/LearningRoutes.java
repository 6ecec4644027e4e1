package lampwright.web;

import static lampwright.people.Permission.LOG_TAKES;
import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.SEE_LEARNING;
import static lampwright.people.Permission.SIGN_OFF;
import static lampwright.people.Permission.WRITE_TRAILS;
import static lampwright.web.http.Access.Outside.SIGNED_IN;
import static lampwright.web.http.Access.may;

import lampwright.learning.glossary.Term;
import lampwright.web.api.DrillApi;
import lampwright.web.api.TrailApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.DrillPages;
import lampwright.web.pages.GlossaryPages;
import lampwright.web.pages.LearningPages;
import lampwright.web.pages.SignOffPages;
import lampwright.web.pages.TrailEditPages;
import lampwright.web.pages.TrailPages;

/** Learning: drills, trails, sign-off and the words of the trade. */
public record LearningRoutes(
    DrillApi drillApi,
    TrailApi trailApi,
    LearningPages learningPages,
    DrillPages drillPages,
    TrailPages trailPages,
    TrailEditPages trailEditPages,
    SignOffPages signOffPages,
    GlossaryPages glossaryPages)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/studios/{studio}/drills", drillApi::ask, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/drills/answers", drillApi::answer, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/drills/progress", drillApi::progress, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/trails", trailApi::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/trails", trailApi::create, may(WRITE_TRAILS));
    routes.get("/api/studios/{studio}/trails/{trail}", trailApi::get, may(READ_SETUPS));
    routes.put("/api/studios/{studio}/trails/{trail}", trailApi::replace, may(WRITE_TRAILS));
    routes.patch("/api/studios/{studio}/trails/{trail}", trailApi::change, may(WRITE_TRAILS));
    routes.delete("/api/studios/{studio}/trails/{trail}", trailApi::delete, may(WRITE_TRAILS));
    routes.get("/api/studios/{studio}/trails/{trail}/way", trailApi::way, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/trails/{trail}/stages/{stage}/done",
        trailApi::done,
        may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/trails/{trail}/stages/{stage}/builds",
        trailApi::handIn,
        may(LOG_TAKES));
    routes.get("/api/studios/{studio}/builds", trailApi::builds, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/builds/{build}", trailApi::build, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/builds/{build}/judgement", trailApi::judge, may(SIGN_OFF));
    routes.get("/api/studios/{studio}/learning", trailApi::report, may(SEE_LEARNING));
  }

  private void forPeople(RouteList routes) {
    routes.get(Term.PAGE, glossaryPages::show, SIGNED_IN);
    routes.get("/studios/{studio}/learning", learningPages::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/drills", drillPages::show, may(READ_SETUPS));
    routes.post("/studios/{studio}/drills", drillPages::answer, may(READ_SETUPS));
    routes.get("/studios/{studio}/trails/new", trailEditPages::showNew, may(WRITE_TRAILS));
    routes.post("/studios/{studio}/trails/new", trailEditPages::create, may(WRITE_TRAILS));
    routes.get("/studios/{studio}/trails/{trail}", trailPages::show, may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/trails/{trail}/stages/{stage}", trailPages::go, may(READ_SETUPS));
    routes.get(
        "/studios/{studio}/trails/{trail}/change", trailEditPages::showChange, may(WRITE_TRAILS));
    routes.post(
        "/studios/{studio}/trails/{trail}/change", trailEditPages::change, may(WRITE_TRAILS));
    routes.get("/studios/{studio}/builds/{build}", signOffPages::show, may(READ_SETUPS));
    routes.post("/studios/{studio}/builds/{build}", signOffPages::judge, may(SIGN_OFF));
    routes.get("/studios/{studio}/learning/report", signOffPages::report, may(SEE_LEARNING));
  }
}
