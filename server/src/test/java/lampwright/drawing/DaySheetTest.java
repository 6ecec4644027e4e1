package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.packing.DayPlan;
import lampwright.setup.packing.DayWishes;
import lampwright.setup.packing.Stage;
import lampwright.setup.packing.SunEvent;
import lampwright.setup.packing.WorkTimes;
import lampwright.wording.WordsForTests;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** The sheet of who does what when, read back from its drawing. */
class DaySheetTest {

  private static final SetupDocument SETUP = new DemoSeeds().setup("over-the-cut");
  private static final ZoneOffset OFFSET = ZoneOffset.ofHours(1);
  private static final Instant LIGHT = Instant.parse("2026-10-03T17:00:00Z");

  private static DayPlan plan(int hands, Optional<Instant> light) {
    return DayPlan.of(
        List.of(SETUP), new DayWishes(hands, WorkTimes.usual(), List.of(light), Optional.empty()));
  }

  private static DaySheet sheet(DayPlan plan, Optional<Instant> light) {
    return new DaySheet(
        plan,
        List.of(SETUP),
        List.of(light),
        SunEvent.of(SETUP, LocalDate.of(2026, 10, 3), OFFSET),
        OFFSET,
        WordsForTests.usual().notation());
  }

  private static Document drawn(DaySheet sheet) {
    return Jsoup.parse(sheet.svg().markup(), "", Parser.xmlParser());
  }

  @Test
  void everyErrandHasItsBoxForEachWhoDoesItAndItsRowInTheTable() {
    DayPlan plan = plan(3, Optional.of(LIGHT));
    DaySheet sheet = sheet(plan, Optional.of(LIGHT));
    long boxes =
        plan.stages().stream()
            .flatMap(stage -> stage.stints().stream())
            .mapToLong(stint -> stint.who().size())
            .sum();
    assertEquals(boxes, drawn(sheet).select("rect.day-box").size());
    assertEquals(
        plan.stages().stream().mapToInt(stage -> stage.stints().size()).sum(),
        sheet.table().rows().size());
  }

  /** Nobody can be in two places: boxes of one hand share no minute. */
  @Test
  void noBoxLiesOverAnotherOfTheSameHand() {
    List<Element> boxes =
        drawn(sheet(plan(3, Optional.of(LIGHT)), Optional.of(LIGHT))).select("rect");
    for (int i = 0; i < boxes.size(); i++) {
      Element one = boxes.get(i);
      for (Element other : boxes.subList(i + 1, boxes.size())) {
        if (one.attr("x").equals(other.attr("x"))) {
          double top = number(one, "y");
          double bottom = top + number(one, "height");
          double from = number(other, "y");
          double to = from + number(other, "height");
          assertTrue(bottom <= from + 0.11 || to <= top + 0.11, one + " and " + other);
        }
      }
    }
  }

  private static double number(Element of, String attribute) {
    return Double.parseDouble(of.attr(attribute));
  }

  @Test
  void theFirstFrameIsAtTheLightByTheClocksOfThePlace() {
    DayPlan plan = plan(2, Optional.of(LIGHT));
    Document drawn = drawn(sheet(plan, Optional.of(LIGHT)));
    assertTrue(drawn.select("text.day-clock").eachText().contains("18:00"), drawn.text());
    assertEquals(1, drawn.select("path.day-wanted").size());
    assertEquals(
        plan.stages().stream().filter(stage -> stage.kind() == Stage.Kind.SHOOT).count(),
        drawn.select("text.day-stage").eachText().stream()
            .filter(words -> words.startsWith("Shoot: "))
            .count());
  }

  @Test
  void withoutALightMinutesCountFromTheStart() {
    Document drawn = drawn(sheet(plan(2, Optional.empty()), Optional.empty()));
    assertEquals("+0:00", drawn.select("text.day-clock").eachText().getFirst());
    assertEquals(List.of(), drawn.select("path.day-wanted"));
  }

  @Test
  void itSaysInWordsWhatItShows() {
    Document drawn = drawn(sheet(plan(2, Optional.of(LIGHT)), Optional.of(LIGHT)));
    assertEquals("The day, hand by hand", drawn.select("title").text());
    assertTrue(drawn.select("desc").text().startsWith("2 hands, from "), drawn.text());
  }
}
