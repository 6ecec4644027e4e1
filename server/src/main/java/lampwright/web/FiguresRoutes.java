package lampwright.web;

import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.WRITE_SETUPS;
import static lampwright.web.http.Access.may;

import lampwright.web.api.CalibrationApi;
import lampwright.web.api.CandelaTableApi;
import lampwright.web.api.ComputingApi;
import lampwright.web.api.ReactionApi;
import lampwright.web.api.ReadingMapApi;
import lampwright.web.api.SignatureApi;
import lampwright.web.api.SunApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.AdaptedPages;
import lampwright.web.pages.NowPages;
import lampwright.web.pages.WithoutPages;

/** What the engine says of a setup: figures, the same for other gear, readings, light by light. */
public record FiguresRoutes(
    ComputingApi computingApi,
    SignatureApi signatureApi,
    ReadingMapApi readingMapApi,
    ReactionApi reactionApi,
    SunApi sunApi,
    CandelaTableApi candelaTableApi,
    CalibrationApi calibrationApi,
    AdaptedPages adaptedPages,
    NowPages nowPages,
    WithoutPages withoutPages)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get(
        "/api/studios/{studio}/setups/{setup}/figures", computingApi::figures, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/signature", signatureApi::get, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/revisions/{revision}/signature",
        signatureApi::getOfRevision,
        may(READ_SETUPS));
    routes.get("/api/studios/{studio}/setups/{setup}/sun", sunApi::show, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/adaptations", computingApi::adapt, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/figures", computingApi::figuresOfBody, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/reading-maps", readingMapApi::map, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/reading-maps", readingMapApi::mapBody, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/adaptations", computingApi::adaptBody, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/candela-tables", candelaTableApi::read, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/calibrations", calibrationApi::calibrate, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/reactions", reactionApi::react, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/reactions", reactionApi::reactBody, may(READ_SETUPS));
  }

  private void forPeople(RouteList routes) {
    routes.get("/studios/{studio}/setups/{setup}/adapted", adaptedPages::show, may(READ_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/adapted", adaptedPages::save, may(WRITE_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/now", nowPages::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/lights", withoutPages::show, may(READ_SETUPS));
  }
}
