package lampwright;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import lampwright.people.Ids;
import lampwright.store.Database;
import lampwright.tasks.DayPacking;
import lampwright.tasks.Drilling;
import lampwright.tasks.LearningReporting;
import lampwright.tasks.Opening;
import lampwright.tasks.PhotometricFiles;
import lampwright.tasks.Reacting;
import lampwright.tasks.SigningOff;
import lampwright.tasks.TrailKeeping;
import lampwright.tasks.TrailWalking;
import lampwright.web.ArchiveRoutes;
import lampwright.web.DayRoutes;
import lampwright.web.FiguresRoutes;
import lampwright.web.FindingRoutes;
import lampwright.web.GearRoutes;
import lampwright.web.LearningRoutes;
import lampwright.web.OutcomeRoutes;
import lampwright.web.Routes;
import lampwright.web.SetupRoutes;
import lampwright.web.api.ArchiveApi;
import lampwright.web.api.CalibrationApi;
import lampwright.web.api.CandelaTableApi;
import lampwright.web.api.ComparisonApi;
import lampwright.web.api.ComputingApi;
import lampwright.web.api.DrillApi;
import lampwright.web.api.GearApi;
import lampwright.web.api.GearCalibrationApi;
import lampwright.web.api.GearFileApi;
import lampwright.web.api.HistoryApi;
import lampwright.web.api.IndexApi;
import lampwright.web.api.KitApi;
import lampwright.web.api.LocationApi;
import lampwright.web.api.NoteApi;
import lampwright.web.api.PackingApi;
import lampwright.web.api.PictureApi;
import lampwright.web.api.ProposalApi;
import lampwright.web.api.ReactionApi;
import lampwright.web.api.ReadingMapApi;
import lampwright.web.api.SavedSearchApi;
import lampwright.web.api.SetupApi;
import lampwright.web.api.ShownPictureApi;
import lampwright.web.api.SignatureApi;
import lampwright.web.api.SuggestionApi;
import lampwright.web.api.SunApi;
import lampwright.web.api.TakeApi;
import lampwright.web.api.TrailApi;
import lampwright.web.api.UsedApi;
import lampwright.web.pages.AdaptedPages;
import lampwright.web.pages.ArchivePages;
import lampwright.web.pages.BesidePages;
import lampwright.web.pages.DrillPages;
import lampwright.web.pages.EditorPages;
import lampwright.web.pages.FieldPages;
import lampwright.web.pages.FindPages;
import lampwright.web.pages.GearEditPages;
import lampwright.web.pages.GearPages;
import lampwright.web.pages.GlossaryPages;
import lampwright.web.pages.IndexPages;
import lampwright.web.pages.KeptPages;
import lampwright.web.pages.KitPages;
import lampwright.web.pages.LearningPages;
import lampwright.web.pages.LifePages;
import lampwright.web.pages.LocationPages;
import lampwright.web.pages.NowPages;
import lampwright.web.pages.PackPages;
import lampwright.web.pages.PicturePages;
import lampwright.web.pages.ProposalPages;
import lampwright.web.pages.SavedSearchPages;
import lampwright.web.pages.SetupPages;
import lampwright.web.pages.SharePages;
import lampwright.web.pages.SheetPages;
import lampwright.web.pages.ShownPicturePages;
import lampwright.web.pages.SignOffPages;
import lampwright.web.pages.TakePages;
import lampwright.web.pages.TrailEditPages;
import lampwright.web.pages.TrailPages;
import lampwright.web.pages.WithoutPages;

/** The rooms in which setups are found, kept, computed, carried into the field and learnt from. */
final class WorkRooms {

  private final Database database;
  private final Clock clock;
  private final Catalogue catalogue;
  private final PeopleTasks people;
  private final PageTools tools;
  private final SharePages share;
  private final LifePages life;
  private final PicturePages pictures;
  private final KeptPages kept;
  private final Ids ids;
  private final SecureRandom random;

  WorkRooms(
      Database database,
      Clock clock,
      Catalogue catalogue,
      PeopleTasks people,
      PageTools tools,
      SharePages share,
      SecureRandom random) {
    this.database = database;
    this.clock = clock;
    this.catalogue = catalogue;
    this.people = people;
    this.tools = tools;
    this.share = share;
    this.random = random;
    kept = new KeptPages(people.glancing(), catalogue.finding(), clock);
    ids = new Ids(random);
    life =
        new LifePages(
            tools.door(),
            new LifePages.Tasks(catalogue.histories(), catalogue.stating(), catalogue.comparing()),
            tools.templates(),
            tools.studioLayouts());
    pictures =
        new PicturePages(
            tools.door(),
            new PicturePages.Tasks(
                catalogue.cataloguing(),
                catalogue.pictures().keeping(),
                catalogue.pictures().adding(),
                catalogue.pictures().giving(),
                catalogue.pictures().comparing(),
                catalogue.notes()),
            tools.templates(),
            tools.studioLayouts());
  }

  List<Routes> all() {
    return List.of(
        setups(), finding(), figures(), outcomes(), gear(), days(), archives(), learning());
  }

  private FindingRoutes finding() {
    return new FindingRoutes(
        new SuggestionApi(tools.door(), catalogue.suggesting()),
        new SavedSearchApi(tools.door(), catalogue.searchKeeping(), catalogue.searchNews()),
        new ShownPictureApi(
            tools.door(), catalogue.pictures().adding(), catalogue.pictures().showing()),
        new IndexApi(tools.door(), catalogue.indexKeeping()),
        new FindPages(
            tools.door(),
            catalogue.finding(),
            catalogue.pictures().giving(),
            tools.drawings(),
            tools.templates(),
            tools.studioLayouts()),
        new SavedSearchPages(
            tools.door(),
            catalogue.searchKeeping(),
            catalogue.searchNews(),
            tools.templates(),
            tools.studioLayouts()),
        new ShownPicturePages(
            tools.door(), catalogue.pictures().adding(), catalogue.pictures().showing()),
        new IndexPages(
            tools.door(), catalogue.indexKeeping(), tools.templates(), tools.studioLayouts()),
        kept);
  }

  private SetupRoutes setups() {
    return new SetupRoutes(
        new SetupApi(
            tools.door(),
            catalogue.cataloguing(),
            people.glancing(),
            catalogue.finding(),
            catalogue.tracing()),
        new UsedApi(tools.door(), catalogue.cataloguing(), catalogue.recording()),
        new HistoryApi(
            tools.door(), catalogue.cataloguing(), catalogue.histories(), catalogue.stating()),
        new ComparisonApi(tools.door(), catalogue.comparing()),
        new ProposalApi(tools.door(), catalogue.cataloguing(), catalogue.proposing()),
        new EditorPages(
            tools.door(),
            new EditorPages.Tasks(catalogue.editing(), catalogue.cataloguing()),
            tools.templates(),
            tools.studioLayouts()),
        new SetupPages(
            tools.door(),
            new SetupPages.Tasks(
                new Opening(database),
                catalogue.cataloguing(),
                catalogue.recording(),
                catalogue.proposing()),
            tools.templates(),
            tools.studioLayouts(),
            life,
            pictures,
            share,
            tools.drawings()),
        life,
        new BesidePages(
            tools.door(),
            new BesidePages.Tasks(
                catalogue.cataloguing(),
                catalogue.comparing(),
                catalogue.tracing(),
                catalogue.signing(),
                catalogue.finding()),
            pictures,
            tools.templates(),
            tools.studioLayouts()),
        new ProposalPages(tools.door(), catalogue.proposing()),
        kept);
  }

  private FiguresRoutes figures() {
    Reacting reacting = new Reacting(database);
    return new FiguresRoutes(
        new ComputingApi(tools.door(), catalogue.cataloguing(), catalogue.adapting()),
        new SignatureApi(tools.door(), catalogue.signing()),
        new ReadingMapApi(tools.door(), catalogue.adapting()),
        new ReactionApi(tools.door(), reacting),
        new SunApi(tools.door(), catalogue.sun()),
        new CandelaTableApi(tools.door(), new PhotometricFiles(database)),
        new CalibrationApi(tools.door(), catalogue.calibrating()),
        new AdaptedPages(
            tools.door(),
            new AdaptedPages.Tasks(
                catalogue.cataloguing(),
                catalogue.recording(),
                catalogue.kits(),
                catalogue.adapting()),
            tools.templates(),
            tools.studioLayouts()),
        new NowPages(
            tools.door(),
            catalogue.cataloguing(),
            catalogue.kits(),
            reacting,
            tools.templates(),
            tools.studioLayouts()),
        new WithoutPages(
            tools.door(),
            catalogue.cataloguing(),
            tools.drawings(),
            tools.templates(),
            tools.studioLayouts()));
  }

  private OutcomeRoutes outcomes() {
    return new OutcomeRoutes(
        new TakeApi(
            tools.door(), catalogue.cataloguing(), catalogue.takes(), catalogue.gearMetering()),
        new NoteApi(tools.door(), catalogue.notes()),
        new PictureApi(
            tools.door(),
            new PictureApi.Tasks(
                catalogue.pictures().keeping(),
                catalogue.pictures().adding(),
                catalogue.pictures().giving(),
                catalogue.pictures().comparing())),
        new TakePages(
            tools.door(),
            new TakePages.Tasks(
                catalogue.cataloguing(),
                catalogue.takes(),
                catalogue.notes(),
                catalogue.gearMetering()),
            ids,
            clock,
            tools.templates(),
            tools.studioLayouts()),
        pictures);
  }

  private GearRoutes gear() {
    return new GearRoutes(
        new KitApi(tools.door(), catalogue.kits()),
        new GearApi(tools.door(), catalogue.gear()),
        new GearFileApi(tools.door(), catalogue.gear(), catalogue.gearImporting()),
        new GearCalibrationApi(tools.door(), catalogue.gear(), catalogue.gearCalibrating()),
        new KitPages(
            tools.door(),
            new KitPages.Tasks(people.studios(), catalogue.kits(), catalogue.gear()),
            tools.templates(),
            tools.studioLayouts()),
        new GearPages(
            tools.door(),
            new GearPages.Tasks(people.studios(), catalogue.gear(), catalogue.gearCalibrating()),
            tools.templates(),
            tools.studioLayouts()),
        new GearEditPages(
            tools.door(),
            new GearEditPages.Tasks(people.studios(), catalogue.gear()),
            tools.templates(),
            tools.studioLayouts()));
  }

  private DayRoutes days() {
    DayPacking packing = new DayPacking(database, catalogue.adapting(), clock);
    return new DayRoutes(
        new LocationApi(tools.door(), catalogue.locations(), catalogue.sun()),
        new PackingApi(tools.door(), packing),
        new LocationPages(
            tools.door(),
            catalogue.locations(),
            catalogue.sun(),
            clock,
            tools.templates(),
            tools.studioLayouts()),
        new PackPages(
            tools.door(),
            new PackPages.Tasks(
                packing, catalogue.cataloguing(), catalogue.kits(), catalogue.finding()),
            tools.templates(),
            tools.studioLayouts()),
        new FieldPages(
            tools.door(),
            new FieldPages.Tasks(catalogue.cataloguing(), catalogue.kits(), catalogue.takes()),
            tools.assets(),
            tools.templates(),
            tools.studioLayouts()),
        new SheetPages(
            tools.door(),
            catalogue.cataloguing(),
            catalogue.adapting(),
            tools.links(),
            tools.templates(),
            tools.studioLayouts()));
  }

  private ArchiveRoutes archives() {
    return new ArchiveRoutes(
        new ArchiveApi(tools.door(), catalogue.exporting(), catalogue.importing()),
        new ArchivePages(
            tools.door(),
            people.studios(),
            catalogue.importing(),
            tools.templates(),
            tools.studioLayouts()));
  }

  private LearningRoutes learning() {
    Drilling drilling = new Drilling(database, random, clock);
    TrailKeeping trails = new TrailKeeping(database, ids);
    TrailWalking walking = new TrailWalking(database, ids);
    LearningReporting reporting = new LearningReporting(database);
    SigningOff signingOff = new SigningOff(database, catalogue.takes());
    return new LearningRoutes(
        new DrillApi(tools.door(), drilling),
        new TrailApi(tools.door(), new TrailApi.Tasks(trails, walking, signingOff, reporting)),
        new LearningPages(
            tools.door(),
            new LearningPages.Tasks(drilling, walking, signingOff, people.studios()),
            tools.templates(),
            tools.studioLayouts()),
        new DrillPages(tools.door(), drilling, tools.templates(), tools.studioLayouts()),
        new TrailPages(
            tools.door(),
            new TrailPages.Tasks(trails, walking, catalogue.cataloguing()),
            tools.templates(),
            tools.studioLayouts()),
        new TrailEditPages(
            tools.door(),
            new TrailEditPages.Tasks(trails, catalogue.cataloguing()),
            tools.templates(),
            tools.studioLayouts()),
        new SignOffPages(
            tools.door(), signingOff, reporting, tools.templates(), tools.studioLayouts()),
        new GlossaryPages(
            tools.door(), people.studios(), tools.templates(), tools.studioLayouts()));
  }
}
