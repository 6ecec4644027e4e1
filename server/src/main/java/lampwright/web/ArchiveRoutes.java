package lampwright.web;

import static lampwright.people.Permission.MOVE_STUDIO;
import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.WRITE_SETUPS;
import static lampwright.web.http.Access.may;

import lampwright.web.api.ArchiveApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.ArchivePages;

/** Archives out and in. */
public record ArchiveRoutes(ArchiveApi archiveApi, ArchivePages archivePages) implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/api/studios/{studio}/archive", archiveApi::studio, may(MOVE_STUDIO));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/archive", archiveApi::setup, may(WRITE_SETUPS));
    routes.post("/api/studios/{studio}/imports", archiveApi::receive, may(WRITE_SETUPS));
    routes.get("/api/studios/{studio}/imports/{import}", archiveApi::showImport, may(WRITE_SETUPS));
    routes.delete("/api/studios/{studio}/imports/{import}", archiveApi::discard, may(WRITE_SETUPS));
    routes.post(
        "/api/studios/{studio}/imports/{import}/execution", archiveApi::start, may(WRITE_SETUPS));
  }

  private void forPeople(RouteList routes) {
    routes.get("/studios/{studio}/archive", archivePages::show, may(READ_SETUPS));
    routes.post("/studios/{studio}/archive", archivePages::receive, may(WRITE_SETUPS));
    routes.get("/studios/{studio}/imports/{import}", archivePages::showImport, may(WRITE_SETUPS));
    routes.post(
        "/studios/{studio}/imports/{import}/execution", archivePages::start, may(WRITE_SETUPS));
    routes.post(
        "/studios/{studio}/imports/{import}/removal", archivePages::discard, may(WRITE_SETUPS));
  }
}
