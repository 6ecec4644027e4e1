package lampwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.reacting.Happening;
import lampwright.setup.reacting.Reactions;
import org.junit.jupiter.api.Test;

class ReactionLinesTest {

  private static final SetupDocument THROWN = new DemoSeeds().setup("heaving-line");

  private static ReactionLines lines(Happening happening, Wording words) {
    return ReactionLines.of(THROWN, Reactions.to(THROWN, happening), words.notation());
  }

  @Test
  void aFallOfTheAmbientIsToldInTheTradesWords() {
    ReactionLines lines = lines(new Happening.AmbientFalls(Stops.ONE), WordsForTests.usual());
    assertEquals("The ambient has fallen by 1.0 stop.", lines.happened());
    assertEquals("Untouched: Ambient at −3.0, 1.0 stop under.", lines.untouched());
    ReactionLines.WayLines best = lines.ways().getFirst();
    assertEquals("1 dial", best.dials());
    assertEquals(List.of("Shutter 1/500 → 1/250"), best.turns());
    assertEquals("Ambient back at −2.0. Every light where it was.", best.then());
    assertEquals(List.of("The ambient draws movement twice as far."), best.costs());
    assertTrue(lines.cautions().isEmpty());
  }

  @Test
  void noiseAndDepthOfFieldAreWhatTheOtherWaysCost() {
    ReactionLines lines = lines(new Happening.AmbientFalls(Stops.ONE), WordsForTests.usual());
    ReactionLines.WayLines byIso = lines.ways().get(1);
    assertEquals("5 dials", byIso.dials());
    assertEquals("ISO 200 → 400", byIso.turns().getFirst());
    assertEquals("2 Rim: 6.8 → 5.8", byIso.turns().get(1));
    assertEquals(List.of("More noise: 1.0 stop of ISO."), byIso.costs());
    ReactionLines.WayLines byAperture = lines.ways().get(2);
    assertEquals("Aperture f/5.6 → f/4", byAperture.turns().getFirst());
    assertEquals(List.of("Depth of field 1.7 m instead of 2.5 m."), byAperture.costs());
  }

  @Test
  void morePowerIsWaitedFor() {
    SetupDocument tally = new DemoSeeds().setup("the-tallyman");
    Light key = tally.lights().getFirst();
    Point at = key.target().at();
    Point back =
        new Point(
            at.x() + 1.414 * (key.place().x() - at.x()),
            at.y() + 1.414 * (key.place().y() - at.y()),
            at.z() + 1.414 * (key.place().z() - at.z()));
    ReactionLines lines =
        ReactionLines.of(
            tally,
            Reactions.to(tally, new Happening.LightMoved(key.id(), back)),
            WordsForTests.usual().notation());
    assertEquals(
        List.of(
            "Ready again after 0.4 s instead of 0.2 s, by 1 Key.",
            "Frames to a charge: about 1500 instead of 2900, by 1 Key."),
        lines.ways().getFirst().costs());
  }

  @Test
  void aGermanReadsItInThirds() {
    ReactionLines lines =
        lines(new Happening.AmbientFalls(Stops.ONE), WordsForTests.germanFeetAndThirds());
    assertEquals("Das Umgebungslicht ist um 1 Blende gefallen.", lines.happened());
    assertEquals(List.of("Verschluss 1/500 → 1/250"), lines.ways().getFirst().turns());
    assertEquals(
        "Umgebungslicht wieder bei −2. Jedes Licht wie zuvor.", lines.ways().getFirst().then());
  }

  @Test
  void nothingToChangeIsSaid() {
    ReactionLines lines = lines(new Happening.AmbientFalls(new Stops(0.2)), WordsForTests.usual());
    assertEquals(
        "Change nothing: everything is within a third of a stop of where it was.", lines.instead());
    assertTrue(lines.ways().isEmpty());
  }

  @Test
  void aMovedLightIsMeteredAgainAndMovedWithCare() {
    Light key =
        THROWN.lights().stream()
            .filter(of -> of.id().text().equals("key"))
            .findFirst()
            .orElseThrow();
    Point back = new Point(key.place().x() * 1.4, key.place().y() * 1.4, key.place().z());
    ReactionLines lines = lines(new Happening.LightMoved(key.id(), back), WordsForTests.usual());
    assertTrue(lines.untouched().contains("Meter 4 Key"), lines::untouched);
    assertTrue(lines.cautions().getFirst().contains("stand moves"), lines.cautions()::toString);
    assertTrue(lines.cautions().getLast().contains("come first"), lines.cautions()::toString);
  }

  @Test
  void aDeadHeadNamesWhatTakesItsPlaceAndWhatIsLost() {
    ReactionLines lines = lines(new Happening.HeadDead(new LightId("key")), WordsForTests.usual());
    ReactionLines.WayLines best = lines.ways().getFirst();
    assertFalse(best.holdsAll());
    assertEquals(List.of("Head of 2 Rim to 4 Key, power 5.8"), best.turns());
    assertTrue(best.then().startsWith("2 Rim is out."), best::then);
    assertEquals(2, lines.cautions().size());
  }
}
