package lampwright.web;

import static lampwright.people.Permission.KEEP_INDEX;
import static lampwright.people.Permission.LOG_TAKES;
import static lampwright.people.Permission.MANAGE_MEMBERS;
import static lampwright.people.Permission.MOVE_STUDIO;
import static lampwright.people.Permission.READ_SETUPS;
import static lampwright.people.Permission.SEE_AUDIT;
import static lampwright.people.Permission.SEE_LEARNING;
import static lampwright.people.Permission.SHARE_SETUPS;
import static lampwright.people.Permission.SIGN_OFF;
import static lampwright.people.Permission.WRITE_KITS;
import static lampwright.people.Permission.WRITE_SETUPS;
import static lampwright.people.Permission.WRITE_TRAILS;
import static lampwright.web.http.Access.Outside.ANYONE;
import static lampwright.web.http.Access.Outside.BY_LINK;
import static lampwright.web.http.Access.Outside.IN_PERSON;
import static lampwright.web.http.Access.Outside.SIGNED_IN;
import static lampwright.web.http.Access.may;

import lampwright.learning.glossary.Term;
import lampwright.web.api.AccountApi;
import lampwright.web.api.ArchiveApi;
import lampwright.web.api.AuditApi;
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
import lampwright.web.api.InvitationApi;
import lampwright.web.api.KitApi;
import lampwright.web.api.LeavingApi;
import lampwright.web.api.LocationApi;
import lampwright.web.api.MemberApi;
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
import lampwright.web.api.SecondFactorApi;
import lampwright.web.api.SessionApi;
import lampwright.web.api.SetupApi;
import lampwright.web.api.ShareLinkApi;
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
import lampwright.web.pages.AccountLinkPages;
import lampwright.web.pages.AccountPages;
import lampwright.web.pages.AdaptedPages;
import lampwright.web.pages.ArchivePages;
import lampwright.web.pages.AssetFiles;
import lampwright.web.pages.AuditPages;
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
import lampwright.web.pages.LeavingPages;
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
import lampwright.web.pages.SecondFactorPages;
import lampwright.web.pages.SetupPages;
import lampwright.web.pages.SharePages;
import lampwright.web.pages.SharedPages;
import lampwright.web.pages.SheetPages;
import lampwright.web.pages.ShownPicturePages;
import lampwright.web.pages.SignInPages;
import lampwright.web.pages.SignOffPages;
import lampwright.web.pages.StudiosPages;
import lampwright.web.pages.TakePages;
import lampwright.web.pages.TokenPages;
import lampwright.web.pages.TrailEditPages;
import lampwright.web.pages.TrailPages;
import lampwright.web.pages.WithoutPages;

/** Every URL: verb, path, handler, and who may come in. No logic. */
public record Routes(Api api, Pages pages) {

  /** What programs ask. */
  public record Api(
      HealthApi health,
      SessionApi session,
      AccountApi account,
      SecondFactorApi secondFactor,
      TokenApi tokens,
      LeavingApi leaving,
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
      TrailApi trails,
      AuditApi audit,
      ShareLinkApi shareLinks,
      MemberApi members,
      InvitationApi invitations) {}

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
      AccountPages account,
      SecondFactorPages secondFactor,
      TokenPages tokens,
      LeavingPages leaving,
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
      GlossaryPages glossary,
      AuditPages audit,
      SharePages share,
      SharedPages shared,
      AccountLinkPages accountLinks,
      StudiosPages studios) {}

  public void addTo(RouteList routes) {
    routes.get("/health/live", api.health()::live, ANYONE);
    routes.get("/health/ready", api.health()::ready, ANYONE);

    routes.get("/api/session", api.session()::show, SIGNED_IN);
    routes.post("/api/session", api.session()::create, ANYONE);
    routes.delete("/api/session", api.session()::delete, SIGNED_IN);
    routes.get("/api/tokens", api.tokens()::list, IN_PERSON);
    routes.post("/api/tokens", api.tokens()::create, IN_PERSON);
    routes.delete("/api/tokens/{token}", api.tokens()::delete, IN_PERSON);
    routes.get("/api/preferences", api.preferences()::get, SIGNED_IN);
    routes.put("/api/preferences", api.preferences()::replace, SIGNED_IN);
    routes.get("/api/studios", api.studios()::list, SIGNED_IN);
    routes.get("/api/openapi.json", api.description()::show, ANYONE);
    routes.get("/api/schemas/{file}", api.schemas()::show, ANYONE);

    routes.get("/api/studios/{studio}/setups", api.setups()::find, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/setups", api.setups()::create, may(WRITE_SETUPS));
    routes.get("/api/studios/{studio}/suggestions", api.suggestions()::list, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/shown-pictures", api.shownPictures()::show, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/setups/{setup}", api.setups()::get, may(READ_SETUPS));
    routes.put("/api/studios/{studio}/setups/{setup}", api.setups()::replace, may(WRITE_SETUPS));
    routes.patch("/api/studios/{studio}/setups/{setup}", api.setups()::change, may(WRITE_SETUPS));
    routes.delete("/api/studios/{studio}/setups/{setup}", api.setups()::delete, may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/children", api.setups()::children, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/setups/{setup}/used", api.used()::get, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/setups/{setup}/used", api.used()::record, may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/revisions", api.histories()::list, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/revisions/{revision}",
        api.histories()::get,
        may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/restorations",
        api.histories()::restore,
        may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/state", api.histories()::standing, may(READ_SETUPS));
    routes.put(
        "/api/studios/{studio}/setups/{setup}/state", api.histories()::stand, may(WRITE_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/comparison",
        api.comparisons()::compare,
        may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/copies", api.histories()::copy, may(WRITE_SETUPS));
    String pictures = "/api/studios/{studio}/setups/{setup}/pictures";
    routes.get(pictures, api.pictures()::list, may(READ_SETUPS));
    routes.post(pictures, api.pictures()::create, may(LOG_TAKES));
    routes.get(pictures + "/{picture}", api.pictures()::get, may(READ_SETUPS));
    routes.put(pictures + "/{picture}", api.pictures()::replace, may(WRITE_SETUPS));
    routes.patch(pictures + "/{picture}", api.pictures()::change, may(WRITE_SETUPS));
    routes.delete(pictures + "/{picture}", api.pictures()::delete, may(WRITE_SETUPS));
    routes.get(pictures + "/{picture}/comparison", api.pictures()::compare, may(READ_SETUPS));
    routes.get(pictures + "/{picture}/thumbnail", api.pictures()::thumbnail, may(READ_SETUPS));
    routes.get(pictures + "/{picture}/screen", api.pictures()::screen, may(READ_SETUPS));
    routes.get(pictures + "/{picture}/original", api.pictures()::original, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/figures", api.computing()::figures, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/signature", api.signatures()::get, may(READ_SETUPS));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/revisions/{revision}/signature",
        api.signatures()::getOfRevision,
        may(READ_SETUPS));
    routes.get("/api/studios/{studio}/setups/{setup}/sun", api.sun()::show, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/adaptations",
        api.computing()::adapt,
        may(READ_SETUPS));
    routes.post("/api/studios/{studio}/figures", api.computing()::figuresOfBody, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/setups/{setup}/reading-maps",
        api.readingMaps()::map,
        may(READ_SETUPS));
    routes.post("/api/studios/{studio}/reading-maps", api.readingMaps()::mapBody, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/adaptations", api.computing()::adaptBody, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/candela-tables", api.candelaTables()::read, may(READ_SETUPS));
    routes.post(
        "/api/studios/{studio}/calibrations", api.calibrations()::calibrate, may(READ_SETUPS));
    routes.get("/api/studios/{studio}/kits", api.kits()::list, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/kits", api.kits()::create, may(WRITE_KITS));
    routes.get("/api/studios/{studio}/kits/{kit}", api.kits()::get, may(READ_SETUPS));
    routes.put("/api/studios/{studio}/kits/{kit}", api.kits()::replace, may(WRITE_KITS));
    routes.patch("/api/studios/{studio}/kits/{kit}", api.kits()::change, may(WRITE_KITS));
    routes.delete("/api/studios/{studio}/kits/{kit}", api.kits()::delete, may(WRITE_KITS));

    account(routes);
    gear(routes);
    reactions(routes);
    routes.get("/api/studios/{studio}/packing", api.packing()::show, may(READ_SETUPS));
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
    tokensAndLeaving(routes);
    auditAndSharing(routes);
    whoBelongs(routes);

    routes.get("/", pages.home()::show, ANYONE);
    routes.get("/sign-in", pages.signIn()::show, ANYONE);
    routes.post("/sign-in", pages.signIn()::signIn, ANYONE);
    routes.post("/sign-out", pages.signIn()::signOut, SIGNED_IN);
    routes.get("/preferences", pages.preferences()::show, SIGNED_IN);
    routes.post("/preferences", pages.preferences()::change, SIGNED_IN);
    routes.get("/first-owner/{secret}", pages.firstOwner()::show, BY_LINK);
    routes.post("/first-owner/{secret}", pages.firstOwner()::become, BY_LINK);
    routes.get("/problems/{kind}", pages.problems()::explain, ANYONE);
    routes.get("/studios/{studio}/setups", pages.find()::find, may(READ_SETUPS));
    // Before the page of one setup, whose id an address would else seem to name.
    routes.get("/studios/{studio}/setups/new", pages.editor()::showNew, may(WRITE_SETUPS));
    routes.post("/studios/{studio}/setups/new", pages.editor()::create, may(WRITE_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/edit", pages.editor()::show, may(WRITE_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/edit", pages.editor()::save, may(WRITE_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}", pages.setups()::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/used", pages.setups()::showUsed, may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/used", pages.setups()::recordUsed, may(LOG_TAKES));
    routes.get(
        "/studios/{studio}/setups/{setup}/revisions", pages.life()::history, may(READ_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/changes", pages.life()::changes, may(READ_SETUPS));
    routes.post("/studios/{studio}/setups/{setup}/state", pages.life()::stand, may(WRITE_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/restorations", pages.life()::restore, may(WRITE_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/beside", pages.beside()::show, may(READ_SETUPS));
    routes.get(
        "/studios/{studio}/setups/{setup}/figures", pages.setups()::figures, may(READ_SETUPS));
    routes.get("/studios/{studio}/setups/{setup}/adapted", pages.adapted()::show, may(READ_SETUPS));
    routes.post(
        "/studios/{studio}/setups/{setup}/adapted", pages.adapted()::save, may(WRITE_SETUPS));
    routes.get("/assets/{hash}/<name>", pages.assets()::show, ANYONE);
  }

  private void account(RouteList routes) {
    String own = "/api/account";
    routes.get(own, api.account()::get, IN_PERSON);
    routes.patch(own, api.account()::change, IN_PERSON);
    routes.put(own + "/password", api.account()::changePassword, IN_PERSON);
    routes.get(own + "/sessions", api.account()::listSessions, IN_PERSON);
    routes.delete(own + "/sessions", api.account()::endOtherSessions, IN_PERSON);
    routes.delete(own + "/sessions/{session}", api.account()::endSession, IN_PERSON);
    String factor = own + "/second-factor";
    routes.get(factor, api.secondFactor()::get, IN_PERSON);
    routes.post(factor, api.secondFactor()::offer, IN_PERSON);
    routes.post(factor + "/confirmation", api.secondFactor()::confirm, IN_PERSON);
    routes.post(factor + "/removal", api.secondFactor()::switchOff, IN_PERSON);

    routes.get("/sign-in/code", pages.signIn()::showCode, ANYONE);
    routes.post("/sign-in/code", pages.signIn()::giveCode, ANYONE);
    String page = "/account";
    routes.get(page, pages.account()::show, IN_PERSON);
    routes.post(page + "/details", pages.account()::changeDetails, IN_PERSON);
    routes.post(page + "/password", pages.account()::changePassword, IN_PERSON);
    routes.post(page + "/sessions/{session}/removal", pages.account()::endSession, IN_PERSON);
    routes.post(page + "/other-sessions/removal", pages.account()::endOtherSessions, IN_PERSON);
    String factorPage = page + "/second-factor";
    routes.get(factorPage, pages.secondFactor()::show, IN_PERSON);
    routes.post(factorPage, pages.secondFactor()::offer, IN_PERSON);
    routes.post(factorPage + "/confirmation", pages.secondFactor()::confirm, IN_PERSON);
    routes.post(factorPage + "/removal", pages.secondFactor()::switchOff, IN_PERSON);
  }

  private void tokensAndLeaving(RouteList routes) {
    routes.get("/api/account/data", api.leaving()::data, IN_PERSON);
    routes.delete("/api/account", api.leaving()::leave, IN_PERSON);
    String tokens = "/account/tokens";
    routes.get(tokens, pages.tokens()::show, IN_PERSON);
    routes.post(tokens, pages.tokens()::make, IN_PERSON);
    routes.post(tokens + "/{token}/removal", pages.tokens()::revoke, IN_PERSON);
    String leaving = "/account/leaving";
    routes.get(leaving, pages.leaving()::show, IN_PERSON);
    routes.get(leaving + "/question", pages.leaving()::ask, IN_PERSON);
    routes.post(leaving + "/question", pages.leaving()::leave, IN_PERSON);
  }

  private void auditAndSharing(RouteList routes) {
    routes.get("/api/studios/{studio}/audit", api.audit()::list, may(SEE_AUDIT));
    routes.get("/studios/{studio}/audit", pages.audit()::show, may(SEE_AUDIT));
    String links = "/studios/{studio}/setups/{setup}/share-links";
    routes.get("/api" + links, api.shareLinks()::list, may(SHARE_SETUPS));
    routes.post("/api" + links, api.shareLinks()::create, may(SHARE_SETUPS));
    routes.delete("/api" + links + "/{link}", api.shareLinks()::delete, may(SHARE_SETUPS));
    routes.get(links, pages.share()::leadBack, may(SHARE_SETUPS));
    routes.post(links, pages.share()::make, may(SHARE_SETUPS));
    routes.post(links + "/{link}/removal", pages.share()::withdraw, may(SHARE_SETUPS));
    routes.get("/shared/{secret}", pages.shared()::show, BY_LINK);
    routes.get("/shared/{secret}/pictures/{picture}", pages.shared()::picture, BY_LINK);
  }

  private void whoBelongs(RouteList routes) {
    routes.post("/api/studios", api.studios()::found, IN_PERSON);
    String studio = "/api/studios/{studio}";
    routes.get(studio, api.studios()::get, may(READ_SETUPS));
    routes.patch(studio, api.studios()::change, may(MANAGE_MEMBERS));
    String member = studio + "/members/{person}";
    routes.get(studio + "/members", api.members()::list, may(READ_SETUPS));
    routes.get(member, api.members()::get, may(READ_SETUPS));
    routes.put(member, api.members()::replace, may(MANAGE_MEMBERS));
    // Everybody may leave; whoever takes somebody else out is asked inside.
    routes.delete(member, api.members()::delete, may(READ_SETUPS));
    routes.post(member + "/reset-links", api.members()::makeResetLink, may(MANAGE_MEMBERS));
    String invitations = studio + "/invitations";
    routes.get(invitations, api.invitations()::list, may(MANAGE_MEMBERS));
    routes.post(invitations, api.invitations()::create, may(MANAGE_MEMBERS));
    routes.delete(invitations + "/{invitation}", api.invitations()::withdraw, may(MANAGE_MEMBERS));
    routes.get("/api/invitations/{secret}", api.invitations()::look, BY_LINK);
    routes.post("/api/invitations/{secret}", api.invitations()::accept, BY_LINK);
    routes.get("/studios", pages.studios()::show, SIGNED_IN);
    routes.post("/studios", pages.studios()::found, IN_PERSON);
    routes.post("/studios/{studio}/name", pages.studios()::rename, may(MANAGE_MEMBERS));
    String people = "/studios/{studio}/people";
    routes.post(people + "/invitations", pages.people()::invite, may(MANAGE_MEMBERS));
    routes.post(
        people + "/invitations/{invitation}/withdrawal",
        pages.people()::withdraw,
        may(MANAGE_MEMBERS));
    routes.post(people + "/{person}/role", pages.people()::changeRole, may(MANAGE_MEMBERS));
    routes.post(people + "/{person}/removal", pages.people()::remove, may(READ_SETUPS));
    routes.post(
        people + "/{person}/reset-links", pages.people()::makeResetLink, may(MANAGE_MEMBERS));
    routes.get("/invitations/{secret}", pages.accountLinks()::showInvitation, BY_LINK);
    routes.post("/invitations/{secret}", pages.accountLinks()::acceptInvitation, BY_LINK);
    routes.get("/password-reset/{secret}", pages.accountLinks()::showReset, BY_LINK);
    routes.post("/password-reset/{secret}", pages.accountLinks()::reset, BY_LINK);
  }

  private void glossary(RouteList routes) {
    routes.get(Term.PAGE, pages.glossary()::show, SIGNED_IN);
  }

  private void reactions(RouteList routes) {
    String setup = "/studios/{studio}/setups/{setup}";
    routes.post("/api" + setup + "/reactions", api.reactions()::react, may(READ_SETUPS));
    routes.post("/api/studios/{studio}/reactions", api.reactions()::reactBody, may(READ_SETUPS));
    routes.get(setup + "/now", pages.now()::show, may(READ_SETUPS));
  }

  private void learning(RouteList routes) {
    routes.get("/studios/{studio}/learning", pages.learning()::show, may(READ_SETUPS));
    String drills = "/studios/{studio}/drills";
    routes.get(drills, pages.drills()::show, may(READ_SETUPS));
    routes.post(drills, pages.drills()::answer, may(READ_SETUPS));
    routes.get("/api" + drills, api.drills()::ask, may(READ_SETUPS));
    routes.post("/api" + drills + "/answers", api.drills()::answer, may(READ_SETUPS));
    routes.get("/api" + drills + "/progress", api.drills()::progress, may(READ_SETUPS));
    trails(routes);
  }

  private void trails(RouteList routes) {
    String trails = "/api/studios/{studio}/trails";
    String trail = trails + "/{trail}";
    routes.get(trails, api.trails()::list, may(READ_SETUPS));
    routes.post(trails, api.trails()::create, may(WRITE_TRAILS));
    routes.get(trail, api.trails()::get, may(READ_SETUPS));
    routes.put(trail, api.trails()::replace, may(WRITE_TRAILS));
    routes.patch(trail, api.trails()::change, may(WRITE_TRAILS));
    routes.delete(trail, api.trails()::delete, may(WRITE_TRAILS));
    routes.get(trail + "/way", api.trails()::way, may(READ_SETUPS));
    routes.post(trail + "/stages/{stage}/done", api.trails()::done, may(READ_SETUPS));
    routes.post(trail + "/stages/{stage}/builds", api.trails()::handIn, may(LOG_TAKES));
    String builds = "/api/studios/{studio}/builds";
    routes.get(builds, api.trails()::builds, may(READ_SETUPS));
    routes.get(builds + "/{build}", api.trails()::build, may(READ_SETUPS));
    routes.post(builds + "/{build}/judgement", api.trails()::judge, may(SIGN_OFF));
    routes.get("/api/studios/{studio}/learning", api.trails()::report, may(SEE_LEARNING));
    String pages = "/studios/{studio}/trails";
    routes.get(pages + "/new", this.pages.trailForms()::showNew, may(WRITE_TRAILS));
    routes.post(pages + "/new", this.pages.trailForms()::create, may(WRITE_TRAILS));
    routes.get(pages + "/{trail}", this.pages.trails()::show, may(READ_SETUPS));
    routes.post(pages + "/{trail}/stages/{stage}", this.pages.trails()::go, may(READ_SETUPS));
    routes.get(pages + "/{trail}/change", this.pages.trailForms()::showChange, may(WRITE_TRAILS));
    routes.post(pages + "/{trail}/change", this.pages.trailForms()::change, may(WRITE_TRAILS));
    String signOffs = "/studios/{studio}/builds/{build}";
    routes.get(signOffs, this.pages.signOffs()::show, may(READ_SETUPS));
    routes.post(signOffs, this.pages.signOffs()::judge, may(SIGN_OFF));
    routes.get(
        "/studios/{studio}/learning/report", this.pages.signOffs()::report, may(SEE_LEARNING));
  }

  private void onLocation(RouteList routes) {
    routes.get("/studios/{studio}/setups/{setup}/field", pages.field()::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/field", pages.field()::list, may(READ_SETUPS));
    routes.get("/studios/{studio}/packing", pages.packing()::show, may(READ_SETUPS));
    routes.get("/worker.js", pages.field()::worker, ANYONE);
    routes.get("/manifest.webmanifest", pages.field()::manifest, ANYONE);
  }

  private void lightByLight(RouteList routes) {
    routes.get("/studios/{studio}/setups/{setup}/lights", pages.without()::show, may(READ_SETUPS));
  }

  private void fieldSheets(RouteList routes) {
    String sheet = "/studios/{studio}/setups/{setup}/sheet";
    routes.get(sheet, pages.sheets()::show, may(READ_SETUPS));
    routes.get(sheet + ".pdf", pages.sheets()::file, may(READ_SETUPS));
    routes.get("/api" + sheet + ".pdf", pages.sheets()::file, may(READ_SETUPS));
  }

  private void pagesOfTheDay(RouteList routes) {
    String locations = "/studios/{studio}/locations";
    routes.get(locations, pages.locations()::list, may(READ_SETUPS));
    routes.get(locations + "/new", pages.locations()::showNew, may(WRITE_SETUPS));
    routes.post(locations + "/new", pages.locations()::create, may(WRITE_SETUPS));
    routes.get(locations + "/{location}", pages.locations()::show, may(READ_SETUPS));
    routes.get(locations + "/{location}/change", pages.locations()::showChange, may(WRITE_SETUPS));
    routes.post(locations + "/{location}/change", pages.locations()::change, may(WRITE_SETUPS));
    String setup = "/studios/{studio}/setups/{setup}";
    routes.get(setup + "/takes", pages.takes()::show, may(READ_SETUPS));
    routes.post(setup + "/takes", pages.takes()::log, may(LOG_TAKES));
    routes.get(setup + "/takes/{take}", pages.takes()::showLog, may(LOG_TAKES));
    routes.post(setup + "/takes/{take}", pages.takes()::correct, may(LOG_TAKES));
    routes.post(setup + "/takes/{take}/withdrawal", pages.takes()::withdraw, may(LOG_TAKES));
    routes.post(setup + "/takes/{take}/readings", pages.takes()::keepReadings, may(WRITE_SETUPS));
    routes.get(setup + "/notes", pages.takes()::showLog, may(READ_SETUPS));
    routes.post(setup + "/notes", pages.takes()::note, may(LOG_TAKES));
  }

  private void pagesOfPictures(RouteList routes) {
    String all = "/studios/{studio}/setups/{setup}/pictures";
    routes.get(all, pages.pictures()::list, may(READ_SETUPS));
    routes.post(all, pages.pictures()::add, may(LOG_TAKES));
    routes.post("/studios/{studio}/shown-pictures", pages.shownPictures()::show, may(READ_SETUPS));
    routes.get(all + "/{picture}", pages.pictures()::show, may(READ_SETUPS));
    routes.post(all + "/{picture}", pages.pictures()::change, may(WRITE_SETUPS));
    routes.get(all + "/{picture}/removal", pages.pictures()::showRemoval, may(READ_SETUPS));
    routes.post(all + "/{picture}/removal", pages.pictures()::remove, may(WRITE_SETUPS));
  }

  private void pagesOfTheStudio(RouteList routes) {
    String kits = "/studios/{studio}/kits";
    routes.get(kits, pages.kits()::list, may(READ_SETUPS));
    routes.get(kits + "/new", pages.kits()::showNew, may(WRITE_KITS));
    routes.post(kits + "/new", pages.kits()::create, may(WRITE_KITS));
    routes.get(kits + "/{kit}", pages.kits()::show, may(READ_SETUPS));
    routes.get(kits + "/{kit}/change", pages.kits()::showChange, may(WRITE_KITS));
    routes.post(kits + "/{kit}/change", pages.kits()::change, may(WRITE_KITS));
    routes.post(kits + "/{kit}/removal", pages.kits()::remove, may(WRITE_KITS));
    String gear = "/studios/{studio}/gear";
    routes.get(gear, pages.gear()::list, may(READ_SETUPS));
    routes.get(gear + "/new", pages.gearForms()::showNew, may(WRITE_KITS));
    routes.post(gear + "/new", pages.gearForms()::create, may(WRITE_KITS));
    routes.get(gear + "/{gear}", pages.gear()::show, may(READ_SETUPS));
    routes.get(gear + "/{gear}/change", pages.gearForms()::showChange, may(WRITE_KITS));
    routes.post(gear + "/{gear}/change", pages.gearForms()::change, may(WRITE_KITS));
    routes.post(gear + "/{gear}/removal", pages.gearForms()::retire, may(WRITE_KITS));
    routes.post(gear + "/{gear}/calibration", pages.gear()::adopt, may(WRITE_KITS));
    routes.get("/studios/{studio}/people", pages.people()::show, may(READ_SETUPS));
    routes.get("/studios/{studio}/archive", pages.archives()::show, may(READ_SETUPS));
    routes.post("/studios/{studio}/archive", pages.archives()::receive, may(WRITE_SETUPS));
    String index = "/studios/{studio}/index";
    routes.get(index, pages.index()::show, may(KEEP_INDEX));
    routes.post(index + "/rebuild", pages.index()::start, may(KEEP_INDEX));
    routes.post(index + "/stop", pages.index()::stop, may(KEEP_INDEX));
    String imports = "/studios/{studio}/imports/{import}";
    routes.get(imports, pages.archives()::showImport, may(WRITE_SETUPS));
    routes.post(imports + "/execution", pages.archives()::start, may(WRITE_SETUPS));
    routes.post(imports + "/removal", pages.archives()::discard, may(WRITE_SETUPS));
  }

  private void proposals(RouteList routes) {
    String proposals = "/api/studios/{studio}/setups/{setup}/proposals";
    String proposal = proposals + "/{proposal}";
    routes.get(proposals, api.proposals()::list, may(LOG_TAKES));
    routes.post(proposals, api.proposals()::create, may(LOG_TAKES));
    routes.get(proposal, api.proposals()::get, may(LOG_TAKES));
    routes.delete(proposal, api.proposals()::decline, may(LOG_TAKES));
    routes.post(proposal + "/acceptance", api.proposals()::accept, may(WRITE_SETUPS));
    String shown = "/studios/{studio}/setups/{setup}/proposals/{proposal}";
    routes.get(shown, pages.proposals()::leadBack, may(LOG_TAKES));
    routes.post(shown, pages.proposals()::accept, may(WRITE_SETUPS));
    routes.post(shown + "/withdrawal", pages.proposals()::decline, may(LOG_TAKES));
  }

  private void takesAndNotes(RouteList routes) {
    String takes = "/api/studios/{studio}/setups/{setup}/takes";
    String take = takes + "/{take}";
    routes.get(takes, api.takes()::list, may(READ_SETUPS));
    routes.post(takes, api.takes()::create, may(LOG_TAKES));
    routes.get(take, api.takes()::get, may(READ_SETUPS));
    routes.put(take, api.takes()::replace, may(LOG_TAKES));
    routes.patch(take, api.takes()::change, may(LOG_TAKES));
    routes.delete(take, api.takes()::delete, may(LOG_TAKES));
    routes.post(take + "/calibration", api.takes()::calibrate, may(WRITE_SETUPS));
    routes.post(take + "/gear-readings", api.takes()::keepWithGear, may(WRITE_KITS));
    String notes = "/api/studios/{studio}/setups/{setup}/notes";
    String note = notes + "/{note}";
    routes.get(notes, api.notes()::list, may(READ_SETUPS));
    routes.post(notes, api.notes()::create, may(LOG_TAKES));
    routes.get(note, api.notes()::get, may(READ_SETUPS));
    routes.put(note, api.notes()::replace, may(LOG_TAKES));
    routes.patch(note, api.notes()::change, may(LOG_TAKES));
    routes.delete(note, api.notes()::delete, may(LOG_TAKES));
  }

  private void gear(RouteList routes) {
    String all = "/api/studios/{studio}/gear";
    String one = all + "/{gear}";
    routes.get(all, api.gear()::list, may(READ_SETUPS));
    routes.post(all, api.gear()::create, may(WRITE_KITS));
    routes.get(all + "/export", api.gearFiles()::show, may(READ_SETUPS));
    routes.post(all + "/import", api.gearFiles()::take, may(WRITE_KITS));
    routes.get(one, api.gear()::get, may(READ_SETUPS));
    routes.put(one, api.gear()::replace, may(WRITE_KITS));
    routes.patch(one, api.gear()::change, may(WRITE_KITS));
    routes.delete(one, api.gear()::delete, may(WRITE_KITS));
    routes.post(one + "/calibration", api.gearCalibrations()::calibrate, may(READ_SETUPS));
    routes.get(one + "/kits", api.gear()::kits, may(READ_SETUPS));
    routes.get(one + "/revisions", api.gear()::revisions, may(READ_SETUPS));
    routes.get(one + "/revisions/{revision}", api.gear()::revision, may(READ_SETUPS));
  }

  private void archives(RouteList routes) {
    routes.get("/api/studios/{studio}/archive", api.archives()::studio, may(MOVE_STUDIO));
    routes.get(
        "/api/studios/{studio}/setups/{setup}/archive", api.archives()::setup, may(WRITE_SETUPS));
    String index = "/api/studios/{studio}/index";
    routes.get(index, api.index()::show, may(KEEP_INDEX));
    routes.post(index + "/rebuild", api.index()::start, may(KEEP_INDEX));
    routes.delete(index + "/rebuild", api.index()::stop, may(KEEP_INDEX));
    String imports = "/api/studios/{studio}/imports";
    routes.post(imports, api.archives()::receive, may(WRITE_SETUPS));
    routes.get(imports + "/{import}", api.archives()::showImport, may(WRITE_SETUPS));
    routes.delete(imports + "/{import}", api.archives()::discard, may(WRITE_SETUPS));
    routes.post(imports + "/{import}/execution", api.archives()::start, may(WRITE_SETUPS));
  }

  private void savedSearches(RouteList routes) {
    String all = "/api/studios/{studio}/saved-searches";
    String one = all + "/{search}";
    routes.get(all, api.savedSearches()::list, may(READ_SETUPS));
    routes.post(all, api.savedSearches()::create, may(READ_SETUPS));
    routes.get(one, api.savedSearches()::get, may(READ_SETUPS));
    routes.put(one, api.savedSearches()::replace, may(READ_SETUPS));
    routes.patch(one, api.savedSearches()::change, may(READ_SETUPS));
    routes.delete(one, api.savedSearches()::delete, may(READ_SETUPS));
    routes.get(one + "/news", api.savedSearches()::news, may(READ_SETUPS));
    routes.post(one + "/looks", api.savedSearches()::look, may(READ_SETUPS));
    String page = "/studios/{studio}/saved-searches";
    routes.get(page, pages.savedSearches()::list, may(READ_SETUPS));
    routes.post(page, pages.savedSearches()::keep, may(READ_SETUPS));
    routes.post(page + "/{search}/looks", pages.savedSearches()::open, may(READ_SETUPS));
    routes.post(page + "/{search}/name", pages.savedSearches()::rename, may(READ_SETUPS));
    routes.post(page + "/{search}/removal", pages.savedSearches()::remove, may(READ_SETUPS));
  }

  private void places(RouteList routes) {
    String all = "/api/studios/{studio}/locations";
    String one = all + "/{location}";
    routes.get(all, api.locations()::list, may(READ_SETUPS));
    routes.post(all, api.locations()::create, may(WRITE_SETUPS));
    routes.get(one, api.locations()::get, may(READ_SETUPS));
    routes.put(one, api.locations()::replace, may(WRITE_SETUPS));
    routes.patch(one, api.locations()::change, may(WRITE_SETUPS));
    routes.delete(one, api.locations()::delete, may(WRITE_SETUPS));
    routes.get(one + "/sun", api.locations()::sun, may(READ_SETUPS));
    routes.get(one + "/ambient", api.locations()::ambient, may(READ_SETUPS));
    routes.get(one + "/setups", api.locations()::setups, may(READ_SETUPS));
  }
}
