package lampwright.web;

import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.WRITE_SETUPS;
import static lampwright.web.http.Access.Outside.ANYONE;
import static lampwright.web.http.Access.may;

import lampwright.web.api.LocationApi;
import lampwright.web.api.PackingApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.FieldPages;
import lampwright.web.pages.LocationPages;
import lampwright.web.pages.PackPages;
import lampwright.web.pages.SheetPages;

/** The day itself: places, what to pack, and what one has in the field. */
public record DayRoutes(
    LocationApi locationApi,
    PackingApi packingApi,
    LocationPages locationPages,
    PackPages packPages,
    FieldPages fieldPages,
    SheetPages sheetPages)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/studios/{studio}/packing", packingApi::show, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/locations", locationApi::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/locations", locationApi::create, may(WRITE_SETUPS));
    routes.get("/api/studios/{studio}/locations/{location}", locationApi::get, may(READ_SETUPS));
    routes.put(
        "/api/studios/{studio}/locations/{location}", locationApi::replace, may(WRITE_SETUPS));
    routes.patch(
        "/api/studios/{studio}/locations/{location}", locationApi::change, may(WRITE_SETUPS));
    routes.delete(
        "/api/studios/{studio}/locations/{location}", locationApi::delete, may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/locations/{location}/sun", locationApi::sun, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/locations/{location}/ambient",
        locationApi::ambient,
        may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/locations/{location}/setups", locationApi::setups, may(READ_SETUPS));
  }

  private void forPeople(RouteList routes) {
    routes.get("/studios/{studio}/setups/{setup}/field", fieldPages::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/field", fieldPages::list, may(READ_SETUPS));
    routes.get("/studios/{studio}/packing", packPages::show, may(READ_SETUPS));
    routes.get("/worker.js", fieldPages::worker, ANYONE);
    routes.get("/manifest.webmanifest", fieldPages::manifest, ANYONE);
    routes.get("/studios/{studio}/setups/{setup}/sheet", sheetPages::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/sheet.pdf", sheetPages::file, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/sheet.pdf", sheetPages::file, may(READ_SETUPS));
    routes.get("/studios/{studio}/locations", locationPages::list, may(READ_SETUPS));
    routes.get("/studios/{studio}/locations/new", locationPages::showNew, may(WRITE_SETUPS));
    routes.post("/studios/{studio}/locations/new", locationPages::create, may(WRITE_SETUPS));
    routes.get("/studios/{studio}/locations/{location}", locationPages::show, may(READ_SETUPS));
    routes.get(
        "/studios/{studio}/locations/{location}/change",
        locationPages::showChange,
        may(WRITE_SETUPS));
    routes.post(
        "/studios/{studio}/locations/{location}/change", locationPages::change, may(WRITE_SETUPS));
  }
}
