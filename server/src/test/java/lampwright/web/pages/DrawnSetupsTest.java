package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import lampwright.document.Reading;
import lampwright.language.Notation;
import lampwright.language.StopFraction;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
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

  @Test
  void whoeverLooksNextGetsTheSameSheetAndCard() {
    new DemoSeeds()
        .setups()
        .forEach(
            (name, setup) -> {
              assertSame(sheet(setup, USUAL), sheet(readAgain(setup), USUAL), name);
              assertSame(drawn.card(setup, USUAL), drawn.card(readAgain(setup), USUAL), name);
            });
  }

  @Test
  void whoReadsOtherwiseGetsASheetOfTheirOwn() {
    SetupDocument setup = new DemoSeeds().setup("ember-coat");
    Notation thirds = new Notation(USUAL.phrases(), USUAL.lengths(), StopFraction.THIRDS);
    assertNotSame(sheet(setup, USUAL), sheet(setup, thirds));
  }

  @Test
  void aChangedSetupIsDrawnAnew() {
    DemoSeeds seeds = new DemoSeeds();
    PlanView one = sheet(seeds.setup("ember-coat"), USUAL);
    PlanView other = sheet(seeds.setup("one-chair-too-many"), USUAL);
    assertNotSame(one, other);
    assertEquals(one, sheet(seeds.setup("ember-coat"), USUAL));
  }
}
