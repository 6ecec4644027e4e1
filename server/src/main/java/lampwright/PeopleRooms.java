package lampwright;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Definitions;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.WrittenKit;
import lampwright.place.Location;
import lampwright.setup.SetupDocument;
import lampwright.web.FrontRoutes;
import lampwright.web.OwnRoutes;
import lampwright.web.StudioRoutes;
import lampwright.web.api.AccountApi;
import lampwright.web.api.AuditApi;
import lampwright.web.api.HealthApi;
import lampwright.web.api.InvitationApi;
import lampwright.web.api.LeavingApi;
import lampwright.web.api.MemberApi;
import lampwright.web.api.MetricsApi;
import lampwright.web.api.OpenApi;
import lampwright.web.api.PreferencesApi;
import lampwright.web.api.SchemaApi;
import lampwright.web.api.SecondFactorApi;
import lampwright.web.api.SessionApi;
import lampwright.web.api.ShareLinkApi;
import lampwright.web.api.StudioApi;
import lampwright.web.api.TokenApi;
import lampwright.web.http.ProblemKind;
import lampwright.web.http.ProblemPage;
import lampwright.web.pages.AccountEventPages;
import lampwright.web.pages.AccountLinkPages;
import lampwright.web.pages.AccountPages;
import lampwright.web.pages.AssetFiles;
import lampwright.web.pages.AuditPages;
import lampwright.web.pages.FirstOwnerPages;
import lampwright.web.pages.HomePages;
import lampwright.web.pages.LeavingPages;
import lampwright.web.pages.PeoplePages;
import lampwright.web.pages.PreferencesPages;
import lampwright.web.pages.ProblemPages;
import lampwright.web.pages.SecondFactorPages;
import lampwright.web.pages.SharePages;
import lampwright.web.pages.SharedPages;
import lampwright.web.pages.SignInPages;
import lampwright.web.pages.StudiosPages;
import lampwright.web.pages.TokenPages;

/** The rooms in which people come in, keep their own matters, and see to their studios. */
final class PeopleRooms {

  private final PeopleTasks people;
  private final Catalogue catalogue;
  private final PageTools tools;
  private final Clock clock;
  private final SignInPages signIn;
  private final ProblemPages problems;
  private final SharePages share;

  PeopleRooms(
      Settings settings, PeopleTasks people, Catalogue catalogue, PageTools tools, Clock clock) {
    this.people = people;
    this.catalogue = catalogue;
    this.tools = tools;
    this.clock = clock;
    signIn =
        new SignInPages(
            tools.door(),
            people.signingIn(),
            tools.entrance(),
            tools.templates(),
            tools.layouts(),
            settings.demo().isOpen() ? Optional.of(settings.demoPassword()) : Optional.empty());
    problems = new ProblemPages(tools.templates(), tools.layouts());
    share =
        new SharePages(
            tools.door(),
            people.sharing(),
            catalogue.cataloguing(),
            tools.links(),
            tools.templates(),
            tools.studioLayouts());
  }

  /** What is shown to a person whose request is refused. */
  ProblemPage problemPage() {
    return (problem, context) ->
        problem.kind() == ProblemKind.NOT_SIGNED_IN
            ? signIn.inPlaceOf(context)
            : problems.render(problem, context);
  }

  /**
   * @param health what this server looks at when it is asked how it is
   * @param metrics what is measured of it
   */
  FrontRoutes front(HealthApi health, MetricsApi metrics) {
    return new FrontRoutes(
        health,
        metrics,
        new SessionApi(tools.door(), people.signingIn(), tools.entrance()),
        new SchemaApi(
            Map.of(
                "setup",
                () -> Definitions.schemaOf(SetupDocument.FORM, "/api/schemas/setup.json"),
                "kit",
                () -> Definitions.schemaOf(WrittenKit.FORM, "/api/schemas/kit.json"),
                "gear",
                () -> Definitions.schemaOf(GearItem.FORM, "/api/schemas/gear.json"),
                "location",
                () -> Definitions.schemaOf(Location.FORM, "/api/schemas/location.json"))),
        new OpenApi(),
        new HomePages(
            tools.door(), people.studios(), studio -> "/studios/" + studio.text() + "/setups"),
        signIn,
        new FirstOwnerPages(tools.door(), people.firstOwner(), tools.templates(), tools.layouts()),
        problems,
        new AssetFiles(tools.assets()));
  }

  OwnRoutes own() {
    return new OwnRoutes(
        new AccountApi(
            tools.door(), tools.entrance(), people.own().accounts(), people.own().sessions()),
        new SecondFactorApi(tools.door(), tools.entrance(), people.own().factors()),
        new AuditApi(tools.door(), people.auditing()),
        new TokenApi(tools.door(), people.tokens()),
        new LeavingApi(tools.door(), tools.entrance(), catalogue.takingOut(), people.leaving()),
        new PreferencesApi(tools.door(), people.preferring()),
        new AccountPages(
            tools.door(), tools.entrance(), people.own(), tools.templates(), tools.ownLayouts()),
        new SecondFactorPages(
            tools.door(),
            tools.entrance(),
            people.own().factors(),
            tools.templates(),
            tools.ownLayouts()),
        new AccountEventPages(
            tools.door(), people.auditing(), tools.templates(), tools.ownLayouts()),
        new TokenPages(
            tools.door(),
            people.tokens(),
            people.studios(),
            clock,
            tools.links(),
            tools.templates(),
            tools.ownLayouts()),
        new LeavingPages(
            tools.door(),
            tools.entrance(),
            people.leaving(),
            tools.templates(),
            tools.ownLayouts()),
        new PreferencesPages(
            tools.door(), people.preferring(), tools.templates(), tools.ownLayouts()));
  }

  /** The links of a setup, which its own page shows too. */
  SharePages share() {
    return share;
  }

  StudioRoutes studios() {
    return new StudioRoutes(
        new StudioApi(tools.door(), people.studios(), people.studioKeeping()),
        new MemberApi(tools.door(), people.members(), people.resetting(), tools.links()),
        new InvitationApi(tools.door(), people.inviting(), tools.links()),
        new AuditApi(tools.door(), people.auditing()),
        new ShareLinkApi(tools.door(), people.sharing(), tools.links()),
        new StudiosPages(
            tools.door(),
            people.studios(),
            people.studioKeeping(),
            tools.templates(),
            tools.ownLayouts()),
        new PeoplePages(
            tools.door(),
            new PeoplePages.Tasks(people.members(), people.inviting(), people.resetting()),
            tools.links(),
            tools.templates(),
            tools.studioLayouts()),
        new AccountLinkPages(
            tools.door(),
            people.inviting(),
            people.resetting(),
            tools.templates(),
            tools.layouts()),
        new AuditPages(
            tools.door(),
            people.auditing(),
            people.members(),
            tools.templates(),
            tools.studioLayouts()),
        share,
        new SharedPages(
            people.sharing(),
            catalogue.pictures().giving(),
            tools.drawings(),
            tools.templates(),
            tools.layouts()));
  }
}
