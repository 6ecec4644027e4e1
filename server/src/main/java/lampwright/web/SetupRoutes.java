package lampwright.web;

import static lampwright.people.Permission.LOG_TAKES;
import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.WRITE_SETUPS;
import static lampwright.web.http.Access.may;

import lampwright.web.api.ComparisonApi;
import lampwright.web.api.HistoryApi;
import lampwright.web.api.ProposalApi;
import lampwright.web.api.SetupApi;
import lampwright.web.api.UsedApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.BesidePages;
import lampwright.web.pages.EditorPages;
import lampwright.web.pages.KeptPages;
import lampwright.web.pages.LifePages;
import lampwright.web.pages.ProposalPages;
import lampwright.web.pages.SetupPages;

/**
 * Setups: the documents, their revisions and states, and what the studio keeps of others' changes.
 */
public record SetupRoutes(
    SetupApi setupApi,
    UsedApi usedApi,
    HistoryApi historyApi,
    ComparisonApi comparisonApi,
    ProposalApi proposalApi,
    EditorPages editorPages,
    SetupPages setupPages,
    LifePages lifePages,
    BesidePages besidePages,
    ProposalPages proposalPages,
    KeptPages kept)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/studios/{studio}/setups", setupApi::find, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/setups", setupApi::create, may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}", setupApi::get, may(READ_SETUPS, setupApi::glance));
    routes.put("/api/studios/{studio}/setups/{setup}", setupApi::replace, may(WRITE_SETUPS));
    routes.patch("/api/studios/{studio}/setups/{setup}", setupApi::change, may(WRITE_SETUPS));
    routes.delete("/api/studios/{studio}/setups/{setup}", setupApi::delete, may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/children", setupApi::children, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/setups/{setup}/used", usedApi::get, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/setups/{setup}/used", usedApi::record, may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/revisions", historyApi::list, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/revisions/{revision}",
        historyApi::get,
        may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/restorations",
        historyApi::restore,
        may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/state", historyApi::standing, may(READ_SETUPS));
    routes.put("/api/studios/{studio}/setups/{setup}/state", historyApi::stand, may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/comparison",
        comparisonApi::compare,
        may(READ_SETUPS));
    routes.post("/api/studios/{studio}/setups/{setup}/copies", historyApi::copy, may(WRITE_SETUPS));
    routes.get("/api/studios/{studio}/setups/{setup}/proposals", proposalApi::list, may(LOG_TAKES));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/proposals", proposalApi::create, may(LOG_TAKES));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/proposals/{proposal}",
        proposalApi::get,
        may(LOG_TAKES));
    routes.delete(
        "/api/studios/{studio}/setups/{setup}/proposals/{proposal}",
        proposalApi::decline,
        may(LOG_TAKES));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/proposals/{proposal}/acceptance",
        proposalApi::accept,
        may(WRITE_SETUPS));
  }

  private void forPeople(RouteList routes) {
    // Before the page of one setup, whose id an address would else seem to name.
    routes.get("/studios/{studio}/setups/new", editorPages::showNew, may(WRITE_SETUPS));
    routes.post("/studios/{studio}/setups/new", editorPages::create, may(WRITE_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/edit", editorPages::show, may(WRITE_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/edit", editorPages::save, may(WRITE_SETUPS));
    routes.get(
        "/studios/{studio}/setups/{setup}",
        kept.over(setupPages::show),
        may(READ_SETUPS, kept::glance));
    routes.get("/studios/{studio}/setups/{setup}/used", setupPages::showUsed, may(READ_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/used", setupPages::recordUsed, may(LOG_TAKES));
    routes.get("/studios/{studio}/setups/{setup}/revisions", lifePages::history, may(READ_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/changes", lifePages::changes, may(READ_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/state", lifePages::stand, may(WRITE_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/restorations", lifePages::restore, may(WRITE_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/beside", besidePages::show, may(READ_SETUPS));
    routes.get(
        "/studios/{studio}/setups/{setup}/figures",
        kept.over(setupPages::figures),
        may(READ_SETUPS, kept::glance));
    routes.get(
        "/studios/{studio}/setups/{setup}/proposals/{proposal}",
        proposalPages::leadBack,
        may(LOG_TAKES));
    routes.post(
        "/studios/{studio}/setups/{setup}/proposals/{proposal}",
        proposalPages::accept,
        may(WRITE_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/proposals/{proposal}/withdrawal",
        proposalPages::decline,
        may(LOG_TAKES));
  }
}
