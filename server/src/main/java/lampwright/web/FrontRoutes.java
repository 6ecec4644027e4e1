package lampwright.web;

import static lampwright.web.http.Access.Outside.ANYONE;
import static lampwright.web.http.Access.Outside.BY_LINK;
import static lampwright.web.http.Access.Outside.SIGNED_IN;
import static lampwright.web.http.Access.Outside.WATCHER;

import lampwright.web.api.HealthApi;
import lampwright.web.api.MetricsApi;
import lampwright.web.api.OpenApi;
import lampwright.web.api.SchemaApi;
import lampwright.web.api.SessionApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.AssetFiles;
import lampwright.web.pages.FirstOwnerPages;
import lampwright.web.pages.HomePages;
import lampwright.web.pages.ProblemPages;
import lampwright.web.pages.SignInPages;

/** The front: coming in and going out, health, descriptions and files that everybody may have. */
public record FrontRoutes(
    HealthApi healthApi,
    MetricsApi metricsApi,
    SessionApi sessionApi,
    SchemaApi schemaApi,
    OpenApi openApi,
    HomePages homePages,
    SignInPages signInPages,
    FirstOwnerPages firstOwnerPages,
    ProblemPages problemPages,
    AssetFiles assetFiles)
    implements Routes {

  @Override
  public void addTo(RouteList routes) {
    forPrograms(routes);
    forPeople(routes);
  }

  private void forPrograms(RouteList routes) {
    routes.get("/health/live", healthApi::live, ANYONE);
    routes.get("/health/ready", healthApi::ready, ANYONE);
    routes.get("/metrics", metricsApi::show, WATCHER);
    routes.get("/api/session", sessionApi::show, SIGNED_IN);
    routes.post("/api/session", sessionApi::create, ANYONE);
    routes.delete("/api/session", sessionApi::delete, SIGNED_IN);
    routes.get("/api/openapi.json", openApi::show, ANYONE);
    routes.get("/api/schemas/{file}", schemaApi::show, ANYONE);
  }

  private void forPeople(RouteList routes) {
    routes.get("/", homePages::show, ANYONE);
    routes.get("/sign-in", signInPages::show, ANYONE);
    routes.post("/sign-in", signInPages::signIn, ANYONE);
    routes.post("/sign-out", signInPages::signOut, SIGNED_IN);
    routes.get("/first-owner/{secret}", firstOwnerPages::show, BY_LINK);
    routes.post("/first-owner/{secret}", firstOwnerPages::become, BY_LINK);
    routes.get("/problems/{kind}", problemPages::explain, ANYONE);
    routes.get("/assets/{hash}/<name>", assetFiles::show, ANYONE);
    routes.get("/sign-in/code", signInPages::showCode, ANYONE);
    routes.post("/sign-in/code", signInPages::giveCode, ANYONE);
  }
}
