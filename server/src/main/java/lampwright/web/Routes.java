package lampwright.web;

import static lampwright.web.http.Access.ANYONE;
import static lampwright.web.http.Access.SIGNED_IN;

import lampwright.web.api.CalibrationApi;
import lampwright.web.api.CandelaTableApi;
import lampwright.web.api.ComputingApi;
import lampwright.web.api.HealthApi;
import lampwright.web.api.KitApi;
import lampwright.web.api.OpenApi;
import lampwright.web.api.ReadingMapApi;
import lampwright.web.api.SchemaApi;
import lampwright.web.api.SessionApi;
import lampwright.web.api.SetupApi;
import lampwright.web.api.StudioApi;
import lampwright.web.api.SunApi;
import lampwright.web.api.TokenApi;
import lampwright.web.api.UsedApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.AdaptedPages;
import lampwright.web.pages.AssetFiles;
import lampwright.web.pages.FindPages;
import lampwright.web.pages.FirstOwnerPages;
import lampwright.web.pages.HomePages;
import lampwright.web.pages.ProblemPages;
import lampwright.web.pages.SetupPages;
import lampwright.web.pages.SignInPages;

/** Every URL: verb, path, handler, and who may come in. No logic. */
public record Routes(Api api, Pages pages) {

  /** What programs ask. */
  public record Api(
      HealthApi health,
      SessionApi session,
      TokenApi tokens,
      StudioApi studios,
      SchemaApi schemas,
      OpenApi description,
      SetupApi setups,
      KitApi kits,
      ComputingApi computing,
      ReadingMapApi readingMaps,
      SunApi sun,
      CandelaTableApi candelaTables,
      CalibrationApi calibrations,
      UsedApi used) {}

  /** What people visit. */
  public record Pages(
      HomePages home,
      SignInPages signIn,
      FirstOwnerPages firstOwner,
      ProblemPages problems,
      AssetFiles assets,
      FindPages find,
      SetupPages setups,
      AdaptedPages adapted) {}

  public void addTo(RouteList routes) {
    routes.get("/health/live", api.health()::live, ANYONE);
    routes.get("/health/ready", api.health()::ready, ANYONE);

    routes.get("/api/session", api.session()::show, SIGNED_IN);
    routes.post("/api/session", api.session()::create, ANYONE);
    routes.delete("/api/session", api.session()::delete, SIGNED_IN);
    routes.get("/api/tokens", api.tokens()::list, SIGNED_IN);
    routes.post("/api/tokens", api.tokens()::create, SIGNED_IN);
    routes.delete("/api/tokens/{token}", api.tokens()::delete, SIGNED_IN);
    routes.get("/api/studios", api.studios()::list, SIGNED_IN);
    routes.get("/api/openapi.json", api.description()::show, ANYONE);
    routes.get("/api/schemas/{file}", api.schemas()::show, ANYONE);

    routes.get("/api/studios/{studio}/setups", api.setups()::find, SIGNED_IN);
    routes.post("/api/studios/{studio}/setups", api.setups()::create, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}", api.setups()::get, SIGNED_IN);
    routes.put("/api/studios/{studio}/setups/{setup}", api.setups()::replace, SIGNED_IN);
    routes.delete("/api/studios/{studio}/setups/{setup}", api.setups()::delete, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/children", api.setups()::children, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/used", api.used()::get, SIGNED_IN);
    routes.post("/api/studios/{studio}/setups/{setup}/used", api.used()::record, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/figures", api.computing()::figures, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/sun", api.sun()::show, SIGNED_IN);
    routes.post(
        "/api/studios/{studio}/setups/{setup}/adaptations", api.computing()::adapt, SIGNED_IN);
    routes.post("/api/studios/{studio}/figures", api.computing()::figuresOfBody, SIGNED_IN);
    routes.post(
        "/api/studios/{studio}/setups/{setup}/reading-maps", api.readingMaps()::map, SIGNED_IN);
    routes.post("/api/studios/{studio}/reading-maps", api.readingMaps()::mapBody, SIGNED_IN);
    routes.post("/api/studios/{studio}/adaptations", api.computing()::adaptBody, SIGNED_IN);
    routes.post("/api/studios/{studio}/candela-tables", api.candelaTables()::read, SIGNED_IN);
    routes.post("/api/studios/{studio}/calibrations", api.calibrations()::calibrate, SIGNED_IN);
    routes.get("/api/studios/{studio}/kits", api.kits()::list, SIGNED_IN);
    routes.post("/api/studios/{studio}/kits", api.kits()::create, SIGNED_IN);
    routes.get("/api/studios/{studio}/kits/{kit}", api.kits()::get, SIGNED_IN);
    routes.put("/api/studios/{studio}/kits/{kit}", api.kits()::replace, SIGNED_IN);
    routes.delete("/api/studios/{studio}/kits/{kit}", api.kits()::delete, SIGNED_IN);

    routes.get("/", pages.home()::show, ANYONE);
    routes.get("/sign-in", pages.signIn()::show, ANYONE);
    routes.post("/sign-in", pages.signIn()::signIn, ANYONE);
    routes.post("/sign-out", pages.signIn()::signOut, SIGNED_IN);
    routes.get("/first-owner/{secret}", pages.firstOwner()::show, ANYONE);
    routes.post("/first-owner/{secret}", pages.firstOwner()::become, ANYONE);
    routes.get("/problems/{kind}", pages.problems()::explain, ANYONE);
    routes.get("/studios/{studio}/setups", pages.find()::find, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}", pages.setups()::show, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/used", pages.setups()::showUsed, SIGNED_IN);
    routes.post("/studios/{studio}/setups/{setup}/used", pages.setups()::recordUsed, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/figures", pages.setups()::figures, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/adapted", pages.adapted()::show, SIGNED_IN);
    routes.post("/studios/{studio}/setups/{setup}/adapted", pages.adapted()::save, SIGNED_IN);
    routes.get("/assets/{hash}/<name>", pages.assets()::show, ANYONE);
  }
}
