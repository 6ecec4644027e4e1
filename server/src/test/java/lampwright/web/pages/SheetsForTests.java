package lampwright.web.pages;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.Catalogued;
import lampwright.wording.Wording;
import lampwright.wording.WordsForTests;

/** Field sheets of documents that nobody keeps. */
final class SheetsForTests {

  static final String ADDRESS = "http://light.example:7000/studios/demo/setups/k3v9";

  private SheetsForTests() {}

  /** The sheet of a setup in each room, for a reader's words and units. */
  static IntFunction<SheetPage> of(SetupDocument setup, Wording words) {
    SheetView view = new SheetView(setup, FiguresComputation.of(setup), words);
    SheetView.Around around = around(setup, words);
    return room -> view.page(around, SheetRoom.of(room));
  }

  static SheetPage preview() {
    SetupDocument setup = new DemoSeeds().setup("gate-nine");
    return of(setup, WordsForTests.usual()).apply(SheetRoom.firstFor(setup));
  }

  static SheetPrinter.Printed print(
      SheetPrinter printer, SetupDocument setup, Wording words, SheetFile.Paper paper) {
    return printer.print(SheetRoom.firstFor(setup), of(setup, words), paper);
  }

  private static SheetView.Around around(SetupDocument setup, Wording words) {
    return new SheetView.Around(
        new Layout(
            setup.title(),
            Optional.of(PagePreviews.member("Veskarn Light")),
            Theme.DEVICE,
            words,
            PagePreviews.ASSETS),
        new Catalogued(
            new SetupId("k3v9"),
            4,
            Instant.parse("2026-03-01T18:00:00Z"),
            "Imke Tal",
            Standing.DRAFT,
            Optional.empty(),
            setup),
        new Link("Back", "/studios/demo/setups/k3v9"),
        List.of(
            new Link("A4", "/demo/setups/k3v9/sheet.pdf?paper=a4"),
            new Link("Letter", "/demo/setups/k3v9/sheet.pdf?paper=letter")),
        "",
        ADDRESS,
        new SheetChanges(setup, setup.numbersInBuildOrder(), words).all());
  }
}
