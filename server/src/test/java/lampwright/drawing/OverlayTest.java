package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import lampwright.setup.SetupDocument;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class OverlayTest {

  private static Document read(SetupDocument before, SetupDocument after) {
    return Jsoup.parse(
        Overlay.of(before, after, UsualNotation.READ).markup(), "", Parser.xmlParser());
  }

  @Test
  void aMovedLightHasAnArrowWithTheDistanceOverTheGround() {
    // 3 m aside and 4 m away make 5 m.
    SetupDocument before = InventedSetups.titled("Before").light(0, -2, -2, 2, null).read();
    SetupDocument after = InventedSetups.titled("After").light(0, 1, 2, 2.5, null).read();
    Document drawing = read(before, after);
    assertEquals(1, drawing.select("path.plan-move").size());
    assertEquals(1, drawing.select("path.plan-before").size());
    assertEquals("5.0 m", drawing.select("text.plan-label.plan-figure").text());
    assertEquals("Before, then After", drawing.expectFirst("svg > title").text());
    assertEquals(
        "moved 5 m, raised 0.5 m",
        Overlay.table(before, after, UsualNotation.READ).rows().getFirst().get(1));
  }

  @Test
  void whatStayedIsDrawnOnceAndWhatIsGoneOrNewIsSaid() {
    SetupDocument two =
        InventedSetups.titled("Two").light(0, -2, -2, 2, null).light(1, 2, 2, 2, null).read();
    SetupDocument other =
        InventedSetups.titled("Other").light(0, -2, -2, 2, null).light(2, 1, 2, 2, null).read();
    Document drawing = read(two, other);
    assertTrue(drawing.select("path.plan-move").isEmpty());
    assertEquals(1, drawing.select("path.plan-before").size(), "the one that is gone");
    var rows = Overlay.table(two, other, UsualNotation.READ).rows();
    assertEquals("as it was", rows.get(0).get(1));
    assertEquals("added", rows.get(1).get(1));
    assertEquals("taken away", rows.get(2).get(1));
  }

  @Test
  void labelsNeverCollideNorLeaveTheFrame() {
    for (long seed = 1; seed <= 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      DrawingChecks.check(
          Overlay.draw(
              InventedSetups.anywhere(random), InventedSetups.anywhere(random), UsualNotation.READ),
          "seed " + seed);
    }
  }

  @Test
  void wordsOfPeopleNeverBecomeMarkup() {
    SetupDocument hostile =
        InventedSetups.titled("</title><script>x</script>").light(0, -2, -2, 2, null).read();
    assertTrue(read(hostile, hostile).select("script").isEmpty());
  }
}
