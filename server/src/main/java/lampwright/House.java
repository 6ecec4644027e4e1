package lampwright;

import java.io.PrintStream;
import java.net.URI;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Definitions;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.WrittenKit;
import lampwright.people.Ids;
import lampwright.place.Location;
import lampwright.schema.WorkingDatabase;
import lampwright.setup.SetupDocument;
import lampwright.store.Database;
import lampwright.store.DatabaseUnavailable;
import lampwright.tasks.AccountKeeping;
import lampwright.tasks.Auditing;
import lampwright.tasks.Closed;
import lampwright.tasks.DayPacking;
import lampwright.tasks.DemoLoader;
import lampwright.tasks.DemoStudio;
import lampwright.tasks.Drilling;
import lampwright.tasks.FailedSignIns;
import lampwright.tasks.FirstOwner;
import lampwright.tasks.Inviting;
import lampwright.tasks.LearningReporting;
import lampwright.tasks.Leaving;
import lampwright.tasks.MemberKeeping;
import lampwright.tasks.MemberListing;
import lampwright.tasks.PasswordResetting;
import lampwright.tasks.Passwords;
import lampwright.tasks.PhotometricFiles;
import lampwright.tasks.Preferring;
import lampwright.tasks.Reacting;
import lampwright.tasks.SecondFactorKeeping;
import lampwright.tasks.SessionKeeping;
import lampwright.tasks.Sharing;
import lampwright.tasks.SigningIn;
import lampwright.tasks.SigningOff;
import lampwright.tasks.StudioKeeping;
import lampwright.tasks.Studios;
import lampwright.tasks.Tokens;
import lampwright.tasks.TrailKeeping;
import lampwright.tasks.TrailWalking;
import lampwright.web.Routes;
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
import lampwright.web.http.CsrfTokens;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;
import lampwright.web.http.HostNames;
import lampwright.web.http.HttpServer;
import lampwright.web.http.LinkAddresses;
import lampwright.web.http.Patience;
import lampwright.web.http.ProblemKind;
import lampwright.web.http.ProblemPage;
import lampwright.web.http.ServedRoute;
import lampwright.web.http.SessionCookie;
import lampwright.web.http.Visitors;
import lampwright.web.pages.AccountLinkPages;
import lampwright.web.pages.AccountPages;
import lampwright.web.pages.AdaptedPages;
import lampwright.web.pages.ArchivePages;
import lampwright.web.pages.AssetFiles;
import lampwright.web.pages.Assets;
import lampwright.web.pages.AuditPages;
import lampwright.web.pages.BesidePages;
import lampwright.web.pages.DrawnSetups;
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
import lampwright.web.pages.Layouts;
import lampwright.web.pages.LearningPages;
import lampwright.web.pages.LeavingPages;
import lampwright.web.pages.LifePages;
import lampwright.web.pages.LocationPages;
import lampwright.web.pages.Notations;
import lampwright.web.pages.NowPages;
import lampwright.web.pages.OwnLayouts;
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
import lampwright.web.pages.StudioLayouts;
import lampwright.web.pages.StudiosPages;
import lampwright.web.pages.TakePages;
import lampwright.web.pages.Templates;
import lampwright.web.pages.TokenPages;
import lampwright.web.pages.TrailEditPages;
import lampwright.web.pages.TrailPages;
import lampwright.web.pages.WithoutPages;

/**
 * The whole server on a database, each object built by hand; the tests start it too. What was
 * opened first is closed last.
 */
public final class House implements AutoCloseable {

  private static final String DEMO_FOLDER = "demo";

  private final Settings settings;
  private final PrintStream console;
  private final Clock clock;
  private final SecureRandom random = new SecureRandom();
  private final Deque<AutoCloseable> opened = new ArrayDeque<>();

  private final Database database;
  private final FirstOwner firstOwner;
  private final DemoStudio demoStudio;
  private final Catalogue catalogue;
  private final HttpServer server;

  private House(Settings settings, WorkingDatabase where, Clock clock, PrintStream console) {
    this.settings = settings;
    this.console = console;
    this.clock = clock;
    try {
      database = keep(new Database(where, Database.CONNECTIONS, clock));
      Ids ids = new Ids(random);
      Passwords passwords = new Passwords();
      Closed closed = DemoStudio.closed(settings.demo().isOpen());
      FailedSignIns failures = new FailedSignIns(clock);
      SigningIn signingIn = new SigningIn(database, ids, passwords, failures, closed);
      AccountPages.Tasks own =
          new AccountPages.Tasks(
              new AccountKeeping(database, ids, passwords, failures, closed),
              new SessionKeeping(database),
              new SecondFactorKeeping(database, ids, passwords, failures, closed));
      Tokens tokens = new Tokens(database, ids, closed);
      firstOwner = new FirstOwner(database, ids, passwords, signingIn);
      demoStudio = new DemoStudio(database, ids, passwords);
      catalogue =
          keep(
              new Catalogue(
                  database,
                  new Catalogue.Choices(settings.data(), settings.pictures(), settings.byMeaning()),
                  ids,
                  clock));
      furnish();
      Leaving leaving = new Leaving(database, passwords, failures, closed);
      server = keep(serve(signingIn, own, tokens, leaving, passwords));
    } catch (RuntimeException | Error e) {
      close();
      throw e;
    }
  }

  /**
   * Opens the server.
   *
   * @param where a database that has been migrated
   * @param console where it says how to come in
   * @throws lampwright.web.http.AddressUnusable when it cannot listen where the settings say
   */
  public static House open(
      Settings settings, WorkingDatabase where, Clock clock, PrintStream console) {
    House house = new House(settings, where, clock, console);
    house.welcome();
    return house;
  }

  /** The port that it listens on. */
  public int port() {
    return server.port();
  }

  /** Everything that it answers to. */
  public List<ServedRoute> routes() {
    return server.routes();
  }

  private <T extends AutoCloseable> T keep(T room) {
    opened.push(room);
    return room;
  }

  /** Sees to it that somebody can come in. */
  private void furnish() {
    settings
        .firstOwner()
        .ifPresent(
            owner ->
                firstOwner.ensure(
                    new FirstOwner.Wish("Studio", owner.name(), owner.email(), owner.password())));
    settings.demo().part().ifPresent(this::bringDemo);
  }

  private void bringDemo(DemoStudio.Part part) {
    DemoLoader loader =
        new DemoLoader(
            database, catalogue.importing(), clock, settings.data().resolve(DEMO_FOLDER));
    loader.load(
        demoStudio.ensure(loader.studioName(), settings.demoPassword()), part, console::println);
  }

  private HttpServer serve(
      SigningIn signingIn,
      AccountPages.Tasks own,
      Tokens tokens,
      Leaving leaving,
      Passwords passwords) {
    boolean secure = settings.isSecure();
    Studios studios = new Studios(database);
    Door door =
        new Door(
            signingIn::find,
            tokens::find,
            studios::mustMay,
            new SessionCookie(secure),
            new CsrfTokens(random));
    Entrance entrance = new Entrance(door, new Visitors(settings.isBehindProxy()), secure);
    Templates templates = new Templates();
    Assets assets = Assets.fromClassPath();
    Layouts layouts = new Layouts(door, assets, Notations.fromClassPath());
    Preferring preferring = new Preferring(database);
    StudioLayouts studioLayouts = new StudioLayouts(door, studios, layouts, catalogue.searchNews());
    OwnLayouts ownLayouts = new OwnLayouts(door, studios, studioLayouts);
    Reacting reacting = new Reacting(database);
    Drilling drilling = new Drilling(database, random, clock);
    Ids ids = new Ids(random);
    TrailKeeping trails = new TrailKeeping(database, ids);
    TrailWalking walking = new TrailWalking(database, ids);
    LearningReporting reporting = new LearningReporting(database);
    SigningOff signingOff = new SigningOff(database, catalogue.takes());
    MemberKeeping members = new MemberKeeping(database);
    Inviting inviting = new Inviting(database, ids, passwords, signingIn);
    PasswordResetting resetting = new PasswordResetting(database, ids, passwords);
    LinkAddresses links = new LinkAddresses(settings.publicUrl());
    DayPacking packing = new DayPacking(database, catalogue.adapting(), clock);
    Auditing auditing = new Auditing(database);
    Sharing sharing = new Sharing(database, ids, DemoStudio.closed(settings.demo().isOpen()));
    Routes.Api api =
        new Routes.Api(
            new HealthApi(
                List.of(
                    new HealthApi.Check("database", this::databaseTrouble),
                    new HealthApi.Check("search", catalogue::trouble),
                    new HealthApi.Check("pictures", catalogue.pictures().upkeep()::trouble)),
                catalogue::indexLag),
            new SessionApi(door, signingIn, entrance),
            new AccountApi(door, entrance, own.accounts(), own.sessions()),
            new SecondFactorApi(door, entrance, own.factors()),
            new TokenApi(door, tokens),
            new LeavingApi(door, entrance, catalogue.takingOut(), leaving),
            new StudioApi(door, studios, new StudioKeeping(database, ids)),
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
            new SetupApi(door, catalogue.cataloguing(), catalogue.finding(), catalogue.tracing()),
            new KitApi(door, catalogue.kits()),
            new ComputingApi(door, catalogue.cataloguing(), catalogue.adapting()),
            new ReadingMapApi(door, catalogue.adapting()),
            new ReactionApi(door, reacting),
            new PackingApi(door, packing),
            new SunApi(door, catalogue.sun()),
            new CandelaTableApi(door, new PhotometricFiles(database)),
            new CalibrationApi(door, catalogue.calibrating()),
            new UsedApi(door, catalogue.cataloguing(), catalogue.recording()),
            new ProposalApi(door, catalogue.cataloguing(), catalogue.proposing()),
            new HistoryApi(
                door, catalogue.cataloguing(), catalogue.histories(), catalogue.stating()),
            new LocationApi(door, catalogue.locations(), catalogue.sun()),
            new TakeApi(door, catalogue.cataloguing(), catalogue.takes(), catalogue.gearMetering()),
            new NoteApi(door, catalogue.notes()),
            new PictureApi(
                door,
                new PictureApi.Tasks(
                    catalogue.pictures().keeping(),
                    catalogue.pictures().adding(),
                    catalogue.pictures().giving(),
                    catalogue.pictures().comparing())),
            new ComparisonApi(door, catalogue.comparing()),
            new GearApi(door, catalogue.gear()),
            new GearFileApi(door, catalogue.gear(), catalogue.gearImporting()),
            new GearCalibrationApi(door, catalogue.gear(), catalogue.gearCalibrating()),
            new ArchiveApi(door, catalogue.exporting(), catalogue.importing()),
            new IndexApi(door, catalogue.indexKeeping()),
            new SignatureApi(door, catalogue.signing()),
            new PreferencesApi(door, preferring),
            new SuggestionApi(door, catalogue.suggesting()),
            new SavedSearchApi(door, catalogue.searchKeeping(), catalogue.searchNews()),
            new ShownPictureApi(
                door, catalogue.pictures().adding(), catalogue.pictures().showing()),
            new DrillApi(door, drilling),
            new TrailApi(door, new TrailApi.Tasks(trails, walking, signingOff, reporting)),
            new AuditApi(door, auditing),
            new ShareLinkApi(door, sharing, settings.publicUrl()),
            new MemberApi(door, members, resetting, links),
            new InvitationApi(door, inviting, links));
    SignInPages signInPages =
        new SignInPages(
            door,
            signingIn,
            entrance,
            templates,
            layouts,
            settings.demo().isOpen() ? Optional.of(settings.demoPassword()) : Optional.empty());
    DrawnSetups drawings = new DrawnSetups();
    ProblemPages problemPages = new ProblemPages(templates, layouts);
    LifePages life =
        new LifePages(
            door,
            new LifePages.Tasks(catalogue.histories(), catalogue.stating(), catalogue.comparing()),
            templates,
            studioLayouts);
    PicturePages picturePages =
        new PicturePages(
            door,
            new PicturePages.Tasks(
                catalogue.cataloguing(),
                catalogue.pictures().keeping(),
                catalogue.pictures().adding(),
                catalogue.pictures().giving(),
                catalogue.pictures().comparing(),
                catalogue.notes()),
            templates,
            studioLayouts);
    SharePages share =
        new SharePages(
            door, sharing, catalogue.cataloguing(), settings.publicUrl(), templates, studioLayouts);
    Routes.Pages pages =
        new Routes.Pages(
            new HomePages(door, studios, studio -> "/studios/" + studio.text() + "/setups"),
            signInPages,
            new FirstOwnerPages(door, firstOwner, templates, layouts),
            problemPages,
            new AssetFiles(assets),
            new FindPages(
                door,
                catalogue.finding(),
                catalogue.pictures().giving(),
                drawings,
                templates,
                studioLayouts),
            new SetupPages(
                door,
                catalogue.cataloguing(),
                catalogue.tracing(),
                catalogue.recording(),
                catalogue.proposing(),
                catalogue.signing(),
                catalogue.kits(),
                templates,
                studioLayouts,
                life,
                picturePages,
                share,
                drawings),
            new ProposalPages(door, catalogue.proposing()),
            new AdaptedPages(
                door,
                new AdaptedPages.Tasks(
                    catalogue.cataloguing(),
                    catalogue.recording(),
                    catalogue.kits(),
                    catalogue.adapting()),
                templates,
                studioLayouts),
            new NowPages(
                door,
                catalogue.cataloguing(),
                catalogue.kits(),
                reacting,
                templates,
                studioLayouts),
            new WithoutPages(door, catalogue.cataloguing(), drawings, templates, studioLayouts),
            new SheetPages(
                door,
                catalogue.cataloguing(),
                catalogue.adapting(),
                settings.publicUrl(),
                templates,
                studioLayouts),
            new FieldPages(
                door,
                new FieldPages.Tasks(catalogue.cataloguing(), catalogue.kits(), catalogue.takes()),
                assets,
                templates,
                studioLayouts),
            new PackPages(
                door,
                new PackPages.Tasks(
                    packing, catalogue.cataloguing(), catalogue.kits(), catalogue.finding()),
                templates,
                studioLayouts),
            new LocationPages(
                door, catalogue.locations(), catalogue.sun(), clock, templates, studioLayouts),
            new TakePages(
                door,
                new TakePages.Tasks(
                    catalogue.cataloguing(),
                    catalogue.takes(),
                    catalogue.notes(),
                    catalogue.gearMetering()),
                new Ids(random),
                clock,
                templates,
                studioLayouts),
            life,
            picturePages,
            new SavedSearchPages(
                door, catalogue.searchKeeping(), catalogue.searchNews(), templates, studioLayouts),
            new PreferencesPages(door, preferring, templates, ownLayouts),
            new AccountPages(door, entrance, own, templates, ownLayouts),
            new SecondFactorPages(door, entrance, own.factors(), templates, ownLayouts),
            new TokenPages(
                door, tokens, studios, clock, settings.publicUrl(), templates, ownLayouts),
            new LeavingPages(door, entrance, leaving, templates, ownLayouts),
            new ShownPicturePages(
                door, catalogue.pictures().adding(), catalogue.pictures().showing()),
            new KitPages(
                door,
                new KitPages.Tasks(studios, catalogue.kits(), catalogue.gear()),
                templates,
                studioLayouts),
            new GearPages(
                door,
                new GearPages.Tasks(studios, catalogue.gear(), catalogue.gearCalibrating()),
                templates,
                studioLayouts),
            new GearEditPages(
                door, new GearEditPages.Tasks(studios, catalogue.gear()), templates, studioLayouts),
            new PeoplePages(
                door,
                new PeoplePages.Tasks(members, inviting, resetting),
                links,
                templates,
                studioLayouts),
            new ArchivePages(door, studios, catalogue.importing(), templates, studioLayouts),
            new IndexPages(door, catalogue.indexKeeping(), templates, studioLayouts),
            new EditorPages(
                door,
                new EditorPages.Tasks(catalogue.editing(), catalogue.cataloguing()),
                templates,
                studioLayouts),
            new BesidePages(
                door,
                new BesidePages.Tasks(
                    catalogue.cataloguing(),
                    catalogue.comparing(),
                    catalogue.tracing(),
                    catalogue.signing(),
                    catalogue.finding()),
                picturePages,
                templates,
                studioLayouts),
            new LearningPages(
                door,
                new LearningPages.Tasks(drilling, walking, signingOff, studios),
                templates,
                studioLayouts),
            new DrillPages(door, drilling, templates, studioLayouts),
            new TrailPages(
                door,
                new TrailPages.Tasks(trails, walking, catalogue.cataloguing()),
                templates,
                studioLayouts),
            new TrailEditPages(
                door,
                new TrailEditPages.Tasks(trails, catalogue.cataloguing()),
                templates,
                studioLayouts),
            new SignOffPages(door, signingOff, reporting, templates, studioLayouts),
            new GlossaryPages(door, studios, templates, studioLayouts),
            new AuditPages(door, auditing, new MemberListing(database), templates, studioLayouts),
            share,
            new SharedPages(sharing, catalogue.pictures().giving(), drawings, templates, layouts),
            new AccountLinkPages(door, inviting, resetting, templates, layouts),
            new StudiosPages(
                door, studios, new StudioKeeping(database, ids), templates, ownLayouts));
    ProblemPage problemPage =
        (problem, context) ->
            problem.kind() == ProblemKind.NOT_SIGNED_IN
                ? signInPages.inPlaceOf(context)
                : problemPages.render(problem, context);
    return HttpServer.start(
        new HttpServer.Place(
            settings.host(),
            settings.port(),
            secure,
            hostNames(),
            settings.isBehindProxy(),
            settings.certificate(),
            Patience.USUAL),
        door,
        problemPage,
        random,
        new Routes(api, pages)::addTo);
  }

  private HostNames hostNames() {
    List<String> names = new ArrayList<>(List.of(settings.host()));
    settings.publicUrl().map(URI::getHost).ifPresent(names::add);
    return new HostNames(names);
  }

  private Optional<String> databaseTrouble() {
    try {
      database.check();
      return Optional.empty();
    } catch (DatabaseUnavailable e) {
      return Optional.of("The database does not answer.");
    }
  }

  /** Says where to go, and how to come in. */
  private void welcome() {
    String address = address();
    console.println("Lampwright is open at " + address + "/");
    if (settings.demo().isOpen()) {
      console.println(
          "The demo studio: sign in as %s with the password %s"
              .formatted(
                  String.join(
                      ", ", DemoStudio.MEMBERS.stream().map(DemoStudio.DemoMember::email).toList()),
                  settings.demoPassword()));
    }
    if (!settings.demo().isOpen() && firstOwner.isMissing()) {
      console.println(
          "Nobody owns a studio here yet. This link makes its bearer the first owner; it works once and for 24 hours: %s/first-owner/%s"
              .formatted(address, firstOwner.invite()));
    }
  }

  private String address() {
    String shown = settings.host().contains(":") ? "[" + settings.host() + "]" : settings.host();
    return settings
        .publicUrl()
        .map(url -> url.toString().replaceAll("/$", ""))
        .orElseGet(() -> (settings.isSecure() ? "https://" : "http://") + shown + ":" + port());
  }

  /** Takes no more requests, finishes those that are there, and lets go of everything. */
  @Override
  public void close() {
    RuntimeException trouble = null;
    while (!opened.isEmpty()) {
      try {
        opened.pop().close();
      } catch (Exception e) {
        if (trouble == null) {
          trouble = new IllegalStateException("Could not close everything.", e);
        } else {
          trouble.addSuppressed(e);
        }
      }
    }
    if (trouble != null) {
      throw trouble;
    }
  }
}
