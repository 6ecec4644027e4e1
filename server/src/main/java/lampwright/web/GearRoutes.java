package lampwright.web;

import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.WRITE_KITS;
import static lampwright.web.http.Access.may;

import lampwright.web.api.GearApi;
import lampwright.web.api.GearCalibrationApi;
import lampwright.web.api.GearFileApi;
import lampwright.web.api.KitApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.GearEditPages;
import lampwright.web.pages.GearPages;
import lampwright.web.pages.KitPages;

/** Gear and the kits made of it. */
public record GearRoutes(
    KitApi kitApi,
    GearApi gearApi,
    GearFileApi gearFileApi,
    GearCalibrationApi gearCalibrationApi,
    KitPages kitPages,
    GearPages gearPages,
    GearEditPages gearEditPages)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/studios/{studio}/kits", kitApi::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/kits", kitApi::create, may(WRITE_KITS));
    routes.get("/api/studios/{studio}/kits/{kit}", kitApi::get, may(READ_SETUPS));
    routes.put("/api/studios/{studio}/kits/{kit}", kitApi::replace, may(WRITE_KITS));
    routes.patch("/api/studios/{studio}/kits/{kit}", kitApi::change, may(WRITE_KITS));
    routes.delete("/api/studios/{studio}/kits/{kit}", kitApi::delete, may(WRITE_KITS));
    routes.get("/api/studios/{studio}/gear", gearApi::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/gear", gearApi::create, may(WRITE_KITS));
    routes.get("/api/studios/{studio}/gear/export", gearFileApi::show, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/gear/import", gearFileApi::take, may(WRITE_KITS));
    routes.get("/api/studios/{studio}/gear/{gear}", gearApi::get, may(READ_SETUPS));
    routes.put("/api/studios/{studio}/gear/{gear}", gearApi::replace, may(WRITE_KITS));
    routes.patch("/api/studios/{studio}/gear/{gear}", gearApi::change, may(WRITE_KITS));
    routes.delete("/api/studios/{studio}/gear/{gear}", gearApi::delete, may(WRITE_KITS));
    routes.post(
        "/api/studios/{studio}/gear/{gear}/calibration",
        gearCalibrationApi::calibrate,
        may(READ_SETUPS));
    routes.get("/api/studios/{studio}/gear/{gear}/kits", gearApi::kits, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/gear/{gear}/revisions", gearApi::revisions, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/gear/{gear}/revisions/{revision}",
        gearApi::revision,
        may(READ_SETUPS));
  }

  private void forPeople(RouteList routes) {
    routes.get("/studios/{studio}/kits", kitPages::list, may(READ_SETUPS));
    routes.get("/studios/{studio}/kits/new", kitPages::showNew, may(WRITE_KITS));
    routes.post("/studios/{studio}/kits/new", kitPages::create, may(WRITE_KITS));
    routes.get("/studios/{studio}/kits/{kit}", kitPages::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/kits/{kit}/change", kitPages::showChange, may(WRITE_KITS));
    routes.post("/studios/{studio}/kits/{kit}/change", kitPages::change, may(WRITE_KITS));
    routes.post("/studios/{studio}/kits/{kit}/removal", kitPages::remove, may(WRITE_KITS));
    routes.get("/studios/{studio}/gear", gearPages::list, may(READ_SETUPS));
    routes.get("/studios/{studio}/gear/new", gearEditPages::showNew, may(WRITE_KITS));
    routes.post("/studios/{studio}/gear/new", gearEditPages::create, may(WRITE_KITS));
    routes.get("/studios/{studio}/gear/{gear}", gearPages::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/gear/{gear}/change", gearEditPages::showChange, may(WRITE_KITS));
    routes.post("/studios/{studio}/gear/{gear}/change", gearEditPages::change, may(WRITE_KITS));
    routes.post("/studios/{studio}/gear/{gear}/removal", gearEditPages::retire, may(WRITE_KITS));
    routes.post("/studios/{studio}/gear/{gear}/calibration", gearPages::adopt, may(WRITE_KITS));
  }
}
