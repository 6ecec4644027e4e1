package lampwright.web;

import static lampwright.people.Permission.LOG_TAKES;
import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.WRITE_KITS;
import static lampwright.people.Permission.WRITE_SETUPS;
import static lampwright.web.http.Access.may;

import lampwright.web.api.NoteApi;
import lampwright.web.api.PictureApi;
import lampwright.web.api.TakeApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.PicturePages;
import lampwright.web.pages.TakePages;

/** What came of a setup: takes, notes and pictures. */
public record OutcomeRoutes(
    TakeApi takeApi,
    NoteApi noteApi,
    PictureApi pictureApi,
    TakePages takePages,
    PicturePages picturePages)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/studios/{studio}/setups/{setup}/pictures", pictureApi::list, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/pictures", pictureApi::create, may(LOG_TAKES));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/pictures/{picture}",
        pictureApi::get,
        may(READ_SETUPS));
    routes.put(
        "/api/studios/{studio}/setups/{setup}/pictures/{picture}",
        pictureApi::replace,
        may(WRITE_SETUPS));
    routes.patch(
        "/api/studios/{studio}/setups/{setup}/pictures/{picture}",
        pictureApi::change,
        may(WRITE_SETUPS));
    routes.delete(
        "/api/studios/{studio}/setups/{setup}/pictures/{picture}",
        pictureApi::delete,
        may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/pictures/{picture}/comparison",
        pictureApi::compare,
        may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/pictures/{picture}/thumbnail",
        pictureApi::thumbnail,
        may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/pictures/{picture}/screen",
        pictureApi::screen,
        may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/pictures/{picture}/original",
        pictureApi::original,
        may(READ_SETUPS));
    routes.get("/api/studios/{studio}/setups/{setup}/takes", takeApi::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/setups/{setup}/takes", takeApi::create, may(LOG_TAKES));
    routes.get("/api/studios/{studio}/setups/{setup}/takes/{take}", takeApi::get, may(READ_SETUPS));
    routes.put(
        "/api/studios/{studio}/setups/{setup}/takes/{take}", takeApi::replace, may(LOG_TAKES));
    routes.patch(
        "/api/studios/{studio}/setups/{setup}/takes/{take}", takeApi::change, may(LOG_TAKES));
    routes.delete(
        "/api/studios/{studio}/setups/{setup}/takes/{take}", takeApi::delete, may(LOG_TAKES));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/takes/{take}/calibration",
        takeApi::calibrate,
        may(WRITE_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/takes/{take}/gear-readings",
        takeApi::keepWithGear,
        may(WRITE_KITS));
    routes.get("/api/studios/{studio}/setups/{setup}/notes", noteApi::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/setups/{setup}/notes", noteApi::create, may(LOG_TAKES));
    routes.get("/api/studios/{studio}/setups/{setup}/notes/{note}", noteApi::get, may(READ_SETUPS));
    routes.put(
        "/api/studios/{studio}/setups/{setup}/notes/{note}", noteApi::replace, may(LOG_TAKES));
    routes.patch(
        "/api/studios/{studio}/setups/{setup}/notes/{note}", noteApi::change, may(LOG_TAKES));
    routes.delete(
        "/api/studios/{studio}/setups/{setup}/notes/{note}", noteApi::delete, may(LOG_TAKES));
  }

  private void forPeople(RouteList routes) {
    routes.get("/studios/{studio}/setups/{setup}/takes", takePages::show, may(READ_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/takes", takePages::log, may(LOG_TAKES));
    routes.get("/studios/{studio}/setups/{setup}/takes/{take}", takePages::showLog, may(LOG_TAKES));
    routes.post(
        "/studios/{studio}/setups/{setup}/takes/{take}", takePages::correct, may(LOG_TAKES));
    routes.post(
        "/studios/{studio}/setups/{setup}/takes/{take}/withdrawal",
        takePages::withdraw,
        may(LOG_TAKES));
    routes.post(
        "/studios/{studio}/setups/{setup}/takes/{take}/readings",
        takePages::keepReadings,
        may(WRITE_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/notes", takePages::showLog, may(READ_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/notes", takePages::note, may(LOG_TAKES));
    routes.get("/studios/{studio}/setups/{setup}/pictures", picturePages::list, may(READ_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/pictures", picturePages::add, may(LOG_TAKES));
    routes.get(
        "/studios/{studio}/setups/{setup}/pictures/{picture}",
        picturePages::show,
        may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/pictures/{picture}",
        picturePages::change,
        may(WRITE_SETUPS));
    routes.get(
        "/studios/{studio}/setups/{setup}/pictures/{picture}/removal",
        picturePages::showRemoval,
        may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/pictures/{picture}/removal",
        picturePages::remove,
        may(WRITE_SETUPS));
  }
}
