package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.stream.Stream;
import lampwright.document.Reading;
import lampwright.drawing.Elevation;
import lampwright.drawing.Plan;
import lampwright.drawing.Svg;
import lampwright.language.Notation;
import lampwright.language.StopFraction;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.wording.WordsForTests;
import org.junit.jupiter.api.Test;

class DrawnSetupsTest {

  private static final Notation USUAL = WordsForTests.usual().notation();

  private final DrawnSetups drawn = new DrawnSetups();

  /** As another request reads the same document. */
  private static SetupDocument readAgain(SetupDocument setup) {
    return switch (SetupDocument.FORM.read(SetupDocument.FORM.writeObject(setup))) {
      case Reading.Sound<SetupDocument>(SetupDocument sound) -> sound;
      case Reading.Faulty<SetupDocument> faulty ->
          throw new AssertionError(faulty.problems().toString());
    };
  }

  private PlanView sheet(SetupDocument setup, Notation notation) {
    return drawn.sheet(setup, FiguresComputation.of(setup), notation);
  }

  private static List<String> markup(PlanView sheet) {
    return Stream.concat(Stream.of(sheet.drawing()), sheet.elevations().stream())
        .map(Svg::markup)
        .toList();
  }

  /** What is kept packed comes out as it went in. */
  private static List<String> drawnAnew(SetupDocument setup) {
    Figures figures = FiguresComputation.of(setup);
    return Stream.of(
            Plan.of(setup, figures, USUAL),
            Elevation.side(setup, figures, USUAL),
            Elevation.front(setup, figures, USUAL))
        .map(Svg::markup)
        .toList();
  }

  @Test
  void whoeverLooksNextGetsTheSameSheetAndCard() {
    new DemoSeeds()
        .setups()
        .forEach(
            (name, setup) -> {
              PlanView first = sheet(setup, USUAL);
              PlanView next = sheet(readAgain(setup), USUAL);
              assertSame(first.places(), next.places(), name + " was drawn anew");
              assertEquals(markup(first), markup(next), name);
              assertEquals(drawnAnew(setup), markup(next), name);
              assertSame(drawn.card(setup, USUAL), drawn.card(readAgain(setup), USUAL), name);
            });
  }

  @Test
  void whoReadsOtherwiseGetsASheetOfTheirOwn() {
    SetupDocument setup = new DemoSeeds().setup("ember-coat");
    Notation thirds = new Notation(USUAL.phrases(), USUAL.lengths(), StopFraction.THIRDS);
    assertNotSame(sheet(setup, USUAL).places(), sheet(setup, thirds).places());
  }

  @Test
  void aChangedSetupIsDrawnAnew() {
    DemoSeeds seeds = new DemoSeeds();
    PlanView one = sheet(seeds.setup("ember-coat"), USUAL);
    PlanView other = sheet(seeds.setup("one-chair-too-many"), USUAL);
    assertNotEquals(markup(one), markup(other));
    assertEquals(markup(one), markup(sheet(seeds.setup("ember-coat"), USUAL)));
  }
}
