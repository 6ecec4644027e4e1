package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.setup.DemoSeeds;
import lampwright.wording.WordsForTests;

/** Two setups side by side, and where the second is chosen. */
final class BesidePreviews {

  private static final String SETUP = "/demo/setups/k3v9";

  private BesidePreviews() {}

  static BesidePage two() {
    DemoSeeds seeds = new DemoSeeds();
    BesideView view =
        new BesideView(
            new BesideView.One(seeds.setup("one-chair-too-many"), SignaturePreviews.full()),
            new BesideView.One(seeds.setup("ember-coat"), SignaturePreviews.none()),
            WordsForTests.usual());
    return new BesidePage(
        PagePreviews.layout("Two setups side by side"),
        new BesidePage.Column(
            "Tea at low water",
            SETUP,
            "The spit, 22 August 2020",
            PicturePreviews.part().finished()),
        new BesidePage.Column(
            "Embercoatwithatitlethathasnospacesinitatall".repeat(2), SETUP, "", Optional.empty()),
        view.groups(),
        view.lights(),
        view.overlay(),
        SETUP + "/beside",
        SETUP + "/beside?with=k3v9");
  }

  static BesideChoicePage choice() {
    return new BesideChoicePage(
        PagePreviews.layout("Beside Tea at low water"),
        "Tea at low water",
        SETUP,
        SETUP + "/beside",
        "",
        List.of(new Link("Tea for one", SETUP + "/beside?with=a")),
        List.of(
            new BesideChoicePage.Choice(
                "Ember coat",
                SETUP + "/beside?with=b",
                "Ring kiln, 15 February 2020",
                "key fairly soft in both; here 0.3 stop less ambient")));
  }

  static BesideChoicePage noChoice() {
    return new BesideChoicePage(
        PagePreviews.layout("Beside Tea at low water"),
        "Tea at low water",
        SETUP,
        SETUP + "/beside",
        "zzzz",
        List.of(),
        List.of());
  }
}
