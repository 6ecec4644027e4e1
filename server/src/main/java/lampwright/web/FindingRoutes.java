package lampwright.web;

import static lampwright.people.Permission.KEEP_INDEX;
import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.web.http.Access.may;

import lampwright.web.api.IndexApi;
import lampwright.web.api.SavedSearchApi;
import lampwright.web.api.ShownPictureApi;
import lampwright.web.api.SuggestionApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.FindPages;
import lampwright.web.pages.IndexPages;
import lampwright.web.pages.KeptPages;
import lampwright.web.pages.SavedSearchPages;
import lampwright.web.pages.ShownPicturePages;

/** Finding setups, and what one searches for again and again. */
public record FindingRoutes(
    SuggestionApi suggestionApi,
    SavedSearchApi savedSearchApi,
    ShownPictureApi shownPictureApi,
    IndexApi indexApi,
    FindPages findPages,
    SavedSearchPages savedSearchPages,
    ShownPicturePages shownPicturePages,
    IndexPages indexPages,
    KeptPages kept)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/studios/{studio}/suggestions", suggestionApi::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/shown-pictures", shownPictureApi::show, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/index", indexApi::show, may(KEEP_INDEX));
    routes.post("/api/studios/{studio}/index/rebuild", indexApi::start, may(KEEP_INDEX));
    routes.delete("/api/studios/{studio}/index/rebuild", indexApi::stop, may(KEEP_INDEX));
    routes.get("/api/studios/{studio}/saved-searches", savedSearchApi::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/saved-searches", savedSearchApi::create, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/saved-searches/{search}", savedSearchApi::get, may(READ_SETUPS));
    routes.put(
        "/api/studios/{studio}/saved-searches/{search}", savedSearchApi::replace, may(READ_SETUPS));
    routes.patch(
        "/api/studios/{studio}/saved-searches/{search}", savedSearchApi::change, may(READ_SETUPS));
    routes.delete(
        "/api/studios/{studio}/saved-searches/{search}", savedSearchApi::delete, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/saved-searches/{search}/news",
        savedSearchApi::news,
        may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/saved-searches/{search}/looks",
        savedSearchApi::look,
        may(READ_SETUPS));
  }

  private void forPeople(RouteList routes) {
    routes.get(
        "/studios/{studio}/setups", kept.over(findPages::find), may(READ_SETUPS, kept::glance));
    routes.post("/studios/{studio}/shown-pictures", shownPicturePages::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/index", indexPages::show, may(KEEP_INDEX));
    routes.post("/studios/{studio}/index/rebuild", indexPages::start, may(KEEP_INDEX));
    routes.post("/studios/{studio}/index/stop", indexPages::stop, may(KEEP_INDEX));
    routes.get("/studios/{studio}/saved-searches", savedSearchPages::list, may(READ_SETUPS));
    routes.post("/studios/{studio}/saved-searches", savedSearchPages::keep, may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/saved-searches/{search}/looks",
        savedSearchPages::open,
        may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/saved-searches/{search}/name",
        savedSearchPages::rename,
        may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/saved-searches/{search}/removal",
        savedSearchPages::remove,
        may(READ_SETUPS));
  }
}
