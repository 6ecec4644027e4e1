package lampwright.web.pages;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Catalogued;
import lampwright.wording.Wording;
import lampwright.wording.WordsForTests;

/** The pages on location, of a setup that somebody walks through. */
final class FieldPreviews {

  private static final String PATH = "/studios/demo/setups/k3v9";
  private static final String LIST = "/studios/demo/field";

  private FieldPreviews() {}

  static FieldPage full() {
    SetupDocument setup = new DemoSeeds().setup("over-the-cut");
    Wording words = WordsForTests.usual();
    Catalogued kept =
        new Catalogued(
            new SetupId("k3v9"),
            4,
            Instant.parse("2026-03-01T18:00:00Z"),
            "Imke Tal",
            Standing.DRAFT,
            Optional.empty(),
            setup);
    return new FieldView(setup, FiguresComputation.of(setup), words)
        .page(
            new FieldView.Around(
                layout(setup.title(), words),
                PATH,
                LIST,
                data(words).ofSetup(kept, PATH, List.of(), true),
                true,
                NowPages.form(PATH + "/now", setup, Map.of(), words)));
  }

  static FieldListPage list() {
    Wording words = WordsForTests.usual();
    return new FieldListPage(
        layout("On this phone", words), data(words).ofList(), "/studios/demo/setups");
  }

  private static FieldData data(Wording words) {
    return new FieldData(words.notation(), new PersonId("k3v9"), LIST, PagePreviews.ASSETS);
  }

  private static Layout layout(String title, Wording words) {
    return new Layout(
        title,
        Optional.of(PagePreviews.member("Veskarn Light")),
        Theme.DEVICE,
        words,
        PagePreviews.ASSETS);
  }
}
