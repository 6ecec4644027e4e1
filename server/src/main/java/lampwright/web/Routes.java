package lampwright.web;

import static lampwright.web.http.Access.ANYONE;
import static lampwright.web.http.Access.SIGNED_IN;

import lampwright.learning.glossary.Term;
import lampwright.web.api.ArchiveApi;
import lampwright.web.api.CalibrationApi;
import lampwright.web.api.CandelaTableApi;
import lampwright.web.api.ComparisonApi;
import lampwright.web.api.ComputingApi;
import lampwright.web.api.DrillApi;
import lampwright.web.api.GearApi;
import lampwright.web.api.GearCalibrationApi;
import lampwright.web.api.GearFileApi;
import lampwright.web.api.HealthApi;
import lampwright.web.api.HistoryApi;
import lampwright.web.api.IndexApi;
import lampwright.web.api.KitApi;
import lampwright.web.api.LocationApi;
import lampwright.web.api.NoteApi;
import lampwright.web.api.OpenApi;
import lampwright.web.api.PackingApi;
import lampwright.web.api.PictureApi;
import lampwright.web.api.PreferencesApi;
import lampwright.web.api.ProposalApi;
import lampwright.web.api.ReactionApi;
import lampwright.web.api.ReadingMapApi;
import lampwright.web.api.SavedSearchApi;
import lampwright.web.api.SchemaApi;
import lampwright.web.api.SessionApi;
import lampwright.web.api.SetupApi;
import lampwright.web.api.ShownPictureApi;
import lampwright.web.api.SignatureApi;
import lampwright.web.api.StudioApi;
import lampwright.web.api.SuggestionApi;
import lampwright.web.api.SunApi;
import lampwright.web.api.TakeApi;
import lampwright.web.api.TokenApi;
import lampwright.web.api.TrailApi;
import lampwright.web.api.UsedApi;
import lampwright.web.http.RouteList;
import lampwright.web.pages.AdaptedPages;
import lampwright.web.pages.ArchivePages;
import lampwright.web.pages.AssetFiles;
import lampwright.web.pages.BesidePages;
import lampwright.web.pages.DrillPages;
import lampwright.web.pages.EditorPages;
import lampwright.web.pages.FieldPages;
import lampwright.web.pages.FindPages;
import lampwright.web.pages.FirstOwnerPages;
import lampwright.web.pages.GearEditPages;
import lampwright.web.pages.GearPages;
import lampwright.web.pages.GlossaryPages;
import lampwright.web.pages.HomePages;
import lampwright.web.pages.IndexPages;
import lampwright.web.pages.KitPages;
import lampwright.web.pages.LearningPages;
import lampwright.web.pages.LifePages;
import lampwright.web.pages.LocationPages;
import lampwright.web.pages.NowPages;
import lampwright.web.pages.PackPages;
import lampwright.web.pages.PeoplePages;
import lampwright.web.pages.PicturePages;
import lampwright.web.pages.PreferencesPages;
import lampwright.web.pages.ProblemPages;
import lampwright.web.pages.ProposalPages;
import lampwright.web.pages.SavedSearchPages;
import lampwright.web.pages.SetupPages;
import lampwright.web.pages.SheetPages;
import lampwright.web.pages.ShownPicturePages;
import lampwright.web.pages.SignInPages;
import lampwright.web.pages.SignOffPages;
import lampwright.web.pages.TakePages;
import lampwright.web.pages.TrailEditPages;
import lampwright.web.pages.TrailPages;
import lampwright.web.pages.WithoutPages;

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
      ReactionApi reactions,
      PackingApi packing,
      SunApi sun,
      CandelaTableApi candelaTables,
      CalibrationApi calibrations,
      UsedApi used,
      ProposalApi proposals,
      HistoryApi histories,
      LocationApi locations,
      TakeApi takes,
      NoteApi notes,
      PictureApi pictures,
      ComparisonApi comparisons,
      GearApi gear,
      GearFileApi gearFiles,
      GearCalibrationApi gearCalibrations,
      ArchiveApi archives,
      IndexApi index,
      SignatureApi signatures,
      PreferencesApi preferences,
      SuggestionApi suggestions,
      SavedSearchApi savedSearches,
      ShownPictureApi shownPictures,
      DrillApi drills,
      TrailApi trails) {}

  /** What people visit. */
  public record Pages(
      HomePages home,
      SignInPages signIn,
      FirstOwnerPages firstOwner,
      ProblemPages problems,
      AssetFiles assets,
      FindPages find,
      SetupPages setups,
      ProposalPages proposals,
      AdaptedPages adapted,
      NowPages now,
      WithoutPages without,
      SheetPages sheets,
      FieldPages field,
      PackPages packing,
      LocationPages locations,
      TakePages takes,
      LifePages life,
      PicturePages pictures,
      SavedSearchPages savedSearches,
      PreferencesPages preferences,
      ShownPicturePages shownPictures,
      KitPages kits,
      GearPages gear,
      GearEditPages gearForms,
      PeoplePages people,
      ArchivePages archives,
      IndexPages index,
      EditorPages editor,
      BesidePages beside,
      LearningPages learning,
      DrillPages drills,
      TrailPages trails,
      TrailEditPages trailForms,
      SignOffPages signOffs,
      GlossaryPages glossary) {}

  public void addTo(RouteList routes) {
    routes.get("/health/live", api.health()::live, ANYONE);
    routes.get("/health/ready", api.health()::ready, ANYONE);

    routes.get("/api/session", api.session()::show, SIGNED_IN);
    routes.post("/api/session", api.session()::create, ANYONE);
    routes.delete("/api/session", api.session()::delete, SIGNED_IN);
    routes.get("/api/tokens", api.tokens()::list, SIGNED_IN);
    routes.post("/api/tokens", api.tokens()::create, SIGNED_IN);
    routes.delete("/api/tokens/{token}", api.tokens()::delete, SIGNED_IN);
    routes.get("/api/preferences", api.preferences()::get, SIGNED_IN);
    routes.put("/api/preferences", api.preferences()::replace, SIGNED_IN);
    routes.get("/api/studios", api.studios()::list, SIGNED_IN);
    routes.get("/api/openapi.json", api.description()::show, ANYONE);
    routes.get("/api/schemas/{file}", api.schemas()::show, ANYONE);

    routes.get("/api/studios/{studio}/setups", api.setups()::find, SIGNED_IN);
    routes.post("/api/studios/{studio}/setups", api.setups()::create, SIGNED_IN);
    routes.get("/api/studios/{studio}/suggestions", api.suggestions()::list, SIGNED_IN);
    routes.post("/api/studios/{studio}/shown-pictures", api.shownPictures()::show, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}", api.setups()::get, SIGNED_IN);
    routes.put("/api/studios/{studio}/setups/{setup}", api.setups()::replace, SIGNED_IN);
    routes.patch("/api/studios/{studio}/setups/{setup}", api.setups()::change, SIGNED_IN);
    routes.delete("/api/studios/{studio}/setups/{setup}", api.setups()::delete, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/children", api.setups()::children, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/used", api.used()::get, SIGNED_IN);
    routes.post("/api/studios/{studio}/setups/{setup}/used", api.used()::record, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/revisions", api.histories()::list, SIGNED_IN);
    routes.get(
        "/api/studios/{studio}/setups/{setup}/revisions/{revision}",
        api.histories()::get,
        SIGNED_IN);
    routes.post(
        "/api/studios/{studio}/setups/{setup}/restorations", api.histories()::restore, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/state", api.histories()::standing, SIGNED_IN);
    routes.put("/api/studios/{studio}/setups/{setup}/state", api.histories()::stand, SIGNED_IN);
    routes.get(
        "/api/studios/{studio}/setups/{setup}/comparison", api.comparisons()::compare, SIGNED_IN);
    routes.post("/api/studios/{studio}/setups/{setup}/copies", api.histories()::copy, SIGNED_IN);
    String pictures = "/api/studios/{studio}/setups/{setup}/pictures";
    routes.get(pictures, api.pictures()::list, SIGNED_IN);
    routes.post(pictures, api.pictures()::create, SIGNED_IN);
    routes.get(pictures + "/{picture}", api.pictures()::get, SIGNED_IN);
    routes.put(pictures + "/{picture}", api.pictures()::replace, SIGNED_IN);
    routes.patch(pictures + "/{picture}", api.pictures()::change, SIGNED_IN);
    routes.delete(pictures + "/{picture}", api.pictures()::delete, SIGNED_IN);
    routes.get(pictures + "/{picture}/comparison", api.pictures()::compare, SIGNED_IN);
    routes.get(pictures + "/{picture}/thumbnail", api.pictures()::thumbnail, SIGNED_IN);
    routes.get(pictures + "/{picture}/screen", api.pictures()::screen, SIGNED_IN);
    routes.get(pictures + "/{picture}/original", api.pictures()::original, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/figures", api.computing()::figures, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/signature", api.signatures()::get, SIGNED_IN);
    routes.get(
        "/api/studios/{studio}/setups/{setup}/revisions/{revision}/signature",
        api.signatures()::getOfRevision,
        SIGNED_IN);
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
    routes.patch("/api/studios/{studio}/kits/{kit}", api.kits()::change, SIGNED_IN);
    routes.delete("/api/studios/{studio}/kits/{kit}", api.kits()::delete, SIGNED_IN);

    gear(routes);
    reactions(routes);
    routes.get("/api/studios/{studio}/packing", api.packing()::show, SIGNED_IN);
    places(routes);
    takesAndNotes(routes);
    proposals(routes);
    archives(routes);
    savedSearches(routes);
    onLocation(routes);
    learning(routes);
    lightByLight(routes);
    fieldSheets(routes);
    pagesOfTheDay(routes);
    pagesOfPictures(routes);
    pagesOfTheStudio(routes);
    glossary(routes);

    routes.get("/", pages.home()::show, ANYONE);
    routes.get("/sign-in", pages.signIn()::show, ANYONE);
    routes.post("/sign-in", pages.signIn()::signIn, ANYONE);
    routes.post("/sign-out", pages.signIn()::signOut, SIGNED_IN);
    routes.get("/preferences", pages.preferences()::show, SIGNED_IN);
    routes.post("/preferences", pages.preferences()::change, SIGNED_IN);
    routes.get("/first-owner/{secret}", pages.firstOwner()::show, ANYONE);
    routes.post("/first-owner/{secret}", pages.firstOwner()::become, ANYONE);
    routes.get("/problems/{kind}", pages.problems()::explain, ANYONE);
    routes.get("/studios/{studio}/setups", pages.find()::find, SIGNED_IN);
    // Before the page of one setup, whose id an address would else seem to name.
    routes.get("/studios/{studio}/setups/new", pages.editor()::showNew, SIGNED_IN);
    routes.post("/studios/{studio}/setups/new", pages.editor()::create, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/edit", pages.editor()::show, SIGNED_IN);
    routes.post("/studios/{studio}/setups/{setup}/edit", pages.editor()::save, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}", pages.setups()::show, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/used", pages.setups()::showUsed, SIGNED_IN);
    routes.post("/studios/{studio}/setups/{setup}/used", pages.setups()::recordUsed, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/revisions", pages.life()::history, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/changes", pages.life()::changes, SIGNED_IN);
    routes.post("/studios/{studio}/setups/{setup}/state", pages.life()::stand, SIGNED_IN);
    routes.post("/studios/{studio}/setups/{setup}/restorations", pages.life()::restore, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/beside", pages.beside()::show, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/figures", pages.setups()::figures, SIGNED_IN);
    routes.get("/studios/{studio}/setups/{setup}/adapted", pages.adapted()::show, SIGNED_IN);
    routes.post("/studios/{studio}/setups/{setup}/adapted", pages.adapted()::save, SIGNED_IN);
    routes.get("/assets/{hash}/<name>", pages.assets()::show, ANYONE);
  }

  private void glossary(RouteList routes) {
    routes.get(Term.PAGE, pages.glossary()::show, SIGNED_IN);
  }

  private void reactions(RouteList routes) {
    String setup = "/studios/{studio}/setups/{setup}";
    routes.post("/api" + setup + "/reactions", api.reactions()::react, SIGNED_IN);
    routes.post("/api/studios/{studio}/reactions", api.reactions()::reactBody, SIGNED_IN);
    routes.get(setup + "/now", pages.now()::show, SIGNED_IN);
  }

  private void learning(RouteList routes) {
    routes.get("/studios/{studio}/learning", pages.learning()::show, SIGNED_IN);
    String drills = "/studios/{studio}/drills";
    routes.get(drills, pages.drills()::show, SIGNED_IN);
    routes.post(drills, pages.drills()::answer, SIGNED_IN);
    routes.get("/api" + drills, api.drills()::ask, SIGNED_IN);
    routes.post("/api" + drills + "/answers", api.drills()::answer, SIGNED_IN);
    routes.get("/api" + drills + "/progress", api.drills()::progress, SIGNED_IN);
    trails(routes);
  }

  private void trails(RouteList routes) {
    String trails = "/api/studios/{studio}/trails";
    String trail = trails + "/{trail}";
    routes.get(trails, api.trails()::list, SIGNED_IN);
    routes.post(trails, api.trails()::create, SIGNED_IN);
    routes.get(trail, api.trails()::get, SIGNED_IN);
    routes.put(trail, api.trails()::replace, SIGNED_IN);
    routes.patch(trail, api.trails()::change, SIGNED_IN);
    routes.delete(trail, api.trails()::delete, SIGNED_IN);
    routes.get(trail + "/way", api.trails()::way, SIGNED_IN);
    routes.post(trail + "/stages/{stage}/done", api.trails()::done, SIGNED_IN);
    routes.post(trail + "/stages/{stage}/builds", api.trails()::handIn, SIGNED_IN);
    String builds = "/api/studios/{studio}/builds";
    routes.get(builds, api.trails()::builds, SIGNED_IN);
    routes.get(builds + "/{build}", api.trails()::build, SIGNED_IN);
    routes.post(builds + "/{build}/judgement", api.trails()::judge, SIGNED_IN);
    routes.get("/api/studios/{studio}/learning", api.trails()::report, SIGNED_IN);
    String pages = "/studios/{studio}/trails";
    routes.get(pages + "/new", this.pages.trailForms()::showNew, SIGNED_IN);
    routes.post(pages + "/new", this.pages.trailForms()::create, SIGNED_IN);
    routes.get(pages + "/{trail}", this.pages.trails()::show, SIGNED_IN);
    routes.post(pages + "/{trail}/stages/{stage}", this.pages.trails()::go, SIGNED_IN);
    routes.get(pages + "/{trail}/change", this.pages.trailForms()::showChange, SIGNED_IN);
    routes.post(pages + "/{trail}/change", this.pages.trailForms()::change, SIGNED_IN);
    String signOffs = "/studios/{studio}/builds/{build}";
    routes.get(signOffs, this.pages.signOffs()::show, SIGNED_IN);
    routes.post(signOffs, this.pages.signOffs()::judge, SIGNED_IN);
    routes.get("/studios/{studio}/learning/report", this.pages.signOffs()::report, SIGNED_IN);
  }

  private void onLocation(RouteList routes) {
    routes.get("/studios/{studio}/setups/{setup}/field", pages.field()::show, SIGNED_IN);
    routes.get("/studios/{studio}/field", pages.field()::list, SIGNED_IN);
    routes.get("/studios/{studio}/packing", pages.packing()::show, SIGNED_IN);
    routes.get("/worker.js", pages.field()::worker, ANYONE);
    routes.get("/manifest.webmanifest", pages.field()::manifest, ANYONE);
  }

  private void lightByLight(RouteList routes) {
    routes.get("/studios/{studio}/setups/{setup}/lights", pages.without()::show, SIGNED_IN);
  }

  private void fieldSheets(RouteList routes) {
    String sheet = "/studios/{studio}/setups/{setup}/sheet";
    routes.get(sheet, pages.sheets()::show, SIGNED_IN);
    routes.get(sheet + ".pdf", pages.sheets()::file, SIGNED_IN);
    routes.get("/api" + sheet + ".pdf", pages.sheets()::file, SIGNED_IN);
  }

  private void pagesOfTheDay(RouteList routes) {
    String locations = "/studios/{studio}/locations";
    routes.get(locations, pages.locations()::list, SIGNED_IN);
    routes.get(locations + "/new", pages.locations()::showNew, SIGNED_IN);
    routes.post(locations + "/new", pages.locations()::create, SIGNED_IN);
    routes.get(locations + "/{location}", pages.locations()::show, SIGNED_IN);
    routes.get(locations + "/{location}/change", pages.locations()::showChange, SIGNED_IN);
    routes.post(locations + "/{location}/change", pages.locations()::change, SIGNED_IN);
    String setup = "/studios/{studio}/setups/{setup}";
    routes.get(setup + "/takes", pages.takes()::show, SIGNED_IN);
    routes.post(setup + "/takes", pages.takes()::log, SIGNED_IN);
    routes.get(setup + "/takes/{take}", pages.takes()::showLog, SIGNED_IN);
    routes.post(setup + "/takes/{take}", pages.takes()::correct, SIGNED_IN);
    routes.post(setup + "/takes/{take}/withdrawal", pages.takes()::withdraw, SIGNED_IN);
    routes.post(setup + "/takes/{take}/readings", pages.takes()::keepReadings, SIGNED_IN);
    routes.get(setup + "/notes", pages.takes()::showLog, SIGNED_IN);
    routes.post(setup + "/notes", pages.takes()::note, SIGNED_IN);
  }

  private void pagesOfPictures(RouteList routes) {
    String all = "/studios/{studio}/setups/{setup}/pictures";
    routes.get(all, pages.pictures()::list, SIGNED_IN);
    routes.post(all, pages.pictures()::add, SIGNED_IN);
    routes.post("/studios/{studio}/shown-pictures", pages.shownPictures()::show, SIGNED_IN);
    routes.get(all + "/{picture}", pages.pictures()::show, SIGNED_IN);
    routes.post(all + "/{picture}", pages.pictures()::change, SIGNED_IN);
    routes.get(all + "/{picture}/removal", pages.pictures()::showRemoval, SIGNED_IN);
    routes.post(all + "/{picture}/removal", pages.pictures()::remove, SIGNED_IN);
  }

  private void pagesOfTheStudio(RouteList routes) {
    String kits = "/studios/{studio}/kits";
    routes.get(kits, pages.kits()::list, SIGNED_IN);
    routes.get(kits + "/new", pages.kits()::showNew, SIGNED_IN);
    routes.post(kits + "/new", pages.kits()::create, SIGNED_IN);
    routes.get(kits + "/{kit}", pages.kits()::show, SIGNED_IN);
    routes.get(kits + "/{kit}/change", pages.kits()::showChange, SIGNED_IN);
    routes.post(kits + "/{kit}/change", pages.kits()::change, SIGNED_IN);
    routes.post(kits + "/{kit}/removal", pages.kits()::remove, SIGNED_IN);
    String gear = "/studios/{studio}/gear";
    routes.get(gear, pages.gear()::list, SIGNED_IN);
    routes.get(gear + "/new", pages.gearForms()::showNew, SIGNED_IN);
    routes.post(gear + "/new", pages.gearForms()::create, SIGNED_IN);
    routes.get(gear + "/{gear}", pages.gear()::show, SIGNED_IN);
    routes.get(gear + "/{gear}/change", pages.gearForms()::showChange, SIGNED_IN);
    routes.post(gear + "/{gear}/change", pages.gearForms()::change, SIGNED_IN);
    routes.post(gear + "/{gear}/removal", pages.gearForms()::retire, SIGNED_IN);
    routes.post(gear + "/{gear}/calibration", pages.gear()::adopt, SIGNED_IN);
    routes.get("/studios/{studio}/people", pages.people()::show, SIGNED_IN);
    routes.get("/studios/{studio}/archive", pages.archives()::show, SIGNED_IN);
    routes.post("/studios/{studio}/archive", pages.archives()::receive, SIGNED_IN);
    String index = "/studios/{studio}/index";
    routes.get(index, pages.index()::show, SIGNED_IN);
    routes.post(index + "/rebuild", pages.index()::start, SIGNED_IN);
    routes.post(index + "/stop", pages.index()::stop, SIGNED_IN);
    String imports = "/studios/{studio}/imports/{import}";
    routes.get(imports, pages.archives()::showImport, SIGNED_IN);
    routes.post(imports + "/execution", pages.archives()::start, SIGNED_IN);
    routes.post(imports + "/removal", pages.archives()::discard, SIGNED_IN);
  }

  private void proposals(RouteList routes) {
    String proposals = "/api/studios/{studio}/setups/{setup}/proposals";
    String proposal = proposals + "/{proposal}";
    routes.get(proposals, api.proposals()::list, SIGNED_IN);
    routes.post(proposals, api.proposals()::create, SIGNED_IN);
    routes.get(proposal, api.proposals()::get, SIGNED_IN);
    routes.delete(proposal, api.proposals()::decline, SIGNED_IN);
    routes.post(proposal + "/acceptance", api.proposals()::accept, SIGNED_IN);
    String shown = "/studios/{studio}/setups/{setup}/proposals/{proposal}";
    routes.get(shown, pages.proposals()::leadBack, SIGNED_IN);
    routes.post(shown, pages.proposals()::accept, SIGNED_IN);
    routes.post(shown + "/withdrawal", pages.proposals()::decline, SIGNED_IN);
  }

  private void takesAndNotes(RouteList routes) {
    String takes = "/api/studios/{studio}/setups/{setup}/takes";
    String take = takes + "/{take}";
    routes.get(takes, api.takes()::list, SIGNED_IN);
    routes.post(takes, api.takes()::create, SIGNED_IN);
    routes.get(take, api.takes()::get, SIGNED_IN);
    routes.put(take, api.takes()::replace, SIGNED_IN);
    routes.patch(take, api.takes()::change, SIGNED_IN);
    routes.delete(take, api.takes()::delete, SIGNED_IN);
    routes.post(take + "/calibration", api.takes()::calibrate, SIGNED_IN);
    routes.post(take + "/gear-readings", api.takes()::keepWithGear, SIGNED_IN);
    String notes = "/api/studios/{studio}/setups/{setup}/notes";
    String note = notes + "/{note}";
    routes.get(notes, api.notes()::list, SIGNED_IN);
    routes.post(notes, api.notes()::create, SIGNED_IN);
    routes.get(note, api.notes()::get, SIGNED_IN);
    routes.put(note, api.notes()::replace, SIGNED_IN);
    routes.patch(note, api.notes()::change, SIGNED_IN);
    routes.delete(note, api.notes()::delete, SIGNED_IN);
  }

  private void gear(RouteList routes) {
    String all = "/api/studios/{studio}/gear";
    String one = all + "/{gear}";
    routes.get(all, api.gear()::list, SIGNED_IN);
    routes.post(all, api.gear()::create, SIGNED_IN);
    routes.get(all + "/export", api.gearFiles()::show, SIGNED_IN);
    routes.post(all + "/import", api.gearFiles()::take, SIGNED_IN);
    routes.get(one, api.gear()::get, SIGNED_IN);
    routes.put(one, api.gear()::replace, SIGNED_IN);
    routes.patch(one, api.gear()::change, SIGNED_IN);
    routes.delete(one, api.gear()::delete, SIGNED_IN);
    routes.post(one + "/calibration", api.gearCalibrations()::calibrate, SIGNED_IN);
    routes.get(one + "/kits", api.gear()::kits, SIGNED_IN);
    routes.get(one + "/revisions", api.gear()::revisions, SIGNED_IN);
    routes.get(one + "/revisions/{revision}", api.gear()::revision, SIGNED_IN);
  }

  private void archives(RouteList routes) {
    routes.get("/api/studios/{studio}/archive", api.archives()::studio, SIGNED_IN);
    routes.get("/api/studios/{studio}/setups/{setup}/archive", api.archives()::setup, SIGNED_IN);
    String index = "/api/studios/{studio}/index";
    routes.get(index, api.index()::show, SIGNED_IN);
    routes.post(index + "/rebuild", api.index()::start, SIGNED_IN);
    routes.delete(index + "/rebuild", api.index()::stop, SIGNED_IN);
    String imports = "/api/studios/{studio}/imports";
    routes.post(imports, api.archives()::receive, SIGNED_IN);
    routes.get(imports + "/{import}", api.archives()::showImport, SIGNED_IN);
    routes.delete(imports + "/{import}", api.archives()::discard, SIGNED_IN);
    routes.post(imports + "/{import}/execution", api.archives()::start, SIGNED_IN);
  }

  private void savedSearches(RouteList routes) {
    String all = "/api/studios/{studio}/saved-searches";
    String one = all + "/{search}";
    routes.get(all, api.savedSearches()::list, SIGNED_IN);
    routes.post(all, api.savedSearches()::create, SIGNED_IN);
    routes.get(one, api.savedSearches()::get, SIGNED_IN);
    routes.put(one, api.savedSearches()::replace, SIGNED_IN);
    routes.patch(one, api.savedSearches()::change, SIGNED_IN);
    routes.delete(one, api.savedSearches()::delete, SIGNED_IN);
    routes.get(one + "/news", api.savedSearches()::news, SIGNED_IN);
    routes.post(one + "/looks", api.savedSearches()::look, SIGNED_IN);
    String page = "/studios/{studio}/saved-searches";
    routes.get(page, pages.savedSearches()::list, SIGNED_IN);
    routes.post(page, pages.savedSearches()::keep, SIGNED_IN);
    routes.post(page + "/{search}/looks", pages.savedSearches()::open, SIGNED_IN);
    routes.post(page + "/{search}/name", pages.savedSearches()::rename, SIGNED_IN);
    routes.post(page + "/{search}/removal", pages.savedSearches()::remove, SIGNED_IN);
  }

  private void places(RouteList routes) {
    String all = "/api/studios/{studio}/locations";
    String one = all + "/{location}";
    routes.get(all, api.locations()::list, SIGNED_IN);
    routes.post(all, api.locations()::create, SIGNED_IN);
    routes.get(one, api.locations()::get, SIGNED_IN);
    routes.put(one, api.locations()::replace, SIGNED_IN);
    routes.patch(one, api.locations()::change, SIGNED_IN);
    routes.delete(one, api.locations()::delete, SIGNED_IN);
    routes.get(one + "/sun", api.locations()::sun, SIGNED_IN);
    routes.get(one + "/ambient", api.locations()::ambient, SIGNED_IN);
    routes.get(one + "/setups", api.locations()::setups, SIGNED_IN);
  }
}
