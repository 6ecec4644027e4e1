package lampwright.setup.reacting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Stops;
import lampwright.setup.DemoSeeds;
import lampwright.setup.Documents;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import org.junit.jupiter.api.Test;

/** What a photographer does when something changes: common practice of the trade, no source. */
class ReactionsTest {

  private static final Happening A_STOP_LESS = new Happening.AmbientFalls(Stops.ONE);
  private static final LightId KEY = new LightId("key");
  private static final LightId RIM = new LightId("rim");

  /** Two small bare heads, the key 2 m before the face, and ambient a stop under. */
  private static Object document() {
    return Map.of(
        "title",
        "Two small lights",
        "exposure",
        Map.of("f_number", 5.6, "time", "1/60", "iso", 400),
        "camera",
        Map.of(
            "body",
            Map.of("name", "body", "width_mm", 36, "height_mm", 24, "sync", "1/200"),
            "lens",
            Map.of("name", "lens", "focal_length_mm", 50),
            "place",
            place(0, -4, 1.6)),
        "lights",
        List.of(light("key", "key", place(0, -2, 1.6)), light("rim", "rim", place(0, 2, 1.6))),
        "ambient",
        Map.of("ev100", 7.9));
  }

  private static Map<String, Object> light(String id, String role, Map<String, Object> at) {
    return Map.of(
        "id",
        id,
        "role",
        role,
        "head",
        Map.of(
            "name",
            "small head",
            "energy_ws",
            100,
            "output",
            Map.of("kind", "guide_number", "guide_number_m", 40)),
        "place",
        at,
        "target",
        Map.of("name", "face", "at", place(0, 0, 1.6)),
        "stops_down",
        3);
  }

  private static Map<String, Object> place(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  private static SetupDocument setup() {
    return Documents.setup(document());
  }

  private static List<Way> ways(Reaction reaction) {
    return assertInstanceOf(Reaction.Turns.class, reaction).ways();
  }

  @Test
  void aLongerShutterTimeKeepsEverythingWhenTheAmbientFalls() {
    Way best = ways(Reactions.to(setup(), A_STOP_LESS)).getFirst();
    assertEquals(
        List.of(new Turn.Time(ShutterTime.parse("1/60"), ShutterTime.parse("1/30"))), best.turns());
    assertEquals(1, best.dials());
    assertTrue(best.holdsAll());
    assertEquals(1, best.price().longer().value(), 1e-9);
    best.misses().forEach(miss -> assertEquals(0, miss.stops().value(), 1e-9));
  }

  @Test
  void withTheTimeBoundIsoGoesUpAndEveryHeadDown() {
    Means bound = Means.ofSetup().keeping(Set.of(CameraDial.TIME));
    Way best = ways(Reactions.to(setup(), A_STOP_LESS, bound)).getFirst();
    assertEquals(3, best.dials());
    assertEquals(new Turn.Speed(Iso.ofMark(400), Iso.ofMark(800)), best.turns().getFirst());
    for (Turn turn : best.turns().subList(1, 3)) {
      Turn.Power power = assertInstanceOf(Turn.Power.class, turn);
      assertEquals(1, power.to().minus(power.from()).value(), 1e-9);
    }
    assertTrue(best.holdsAll());
  }

  @Test
  void anOpenerApertureIsAWayTooAndCostsDepthOfField() {
    Means bound = Means.ofSetup().keeping(Set.of(CameraDial.TIME, CameraDial.ISO));
    Way best = ways(Reactions.to(setup(), A_STOP_LESS, bound)).getFirst();
    assertEquals(
        new Turn.Aperture(FNumber.ofMark(5.6), FNumber.ofMark(4)), best.turns().getFirst());
    assertEquals(-1, best.price().deeper().value(), 1e-9);
    assertEquals(3, best.dials());
  }

  @Test
  void withinAThirdNothingIsChanged() {
    Reaction reaction = Reactions.to(setup(), new Happening.AmbientFalls(new Stops(0.3)));
    assertInstanceOf(Reaction.ChangeNothing.class, reaction);
    assertInstanceOf(
        Reaction.Turns.class, Reactions.to(setup(), new Happening.AmbientFalls(new Stops(0.4))));
  }

  @Test
  void aReadingSaysTheSameAsTheFallToIt() {
    Reaction reads = Reactions.to(setup(), new Happening.AmbientReads(new Ev100(6.9)));
    Reaction falls = Reactions.to(setup(), A_STOP_LESS);
    assertEquals(
        ways(falls).stream().map(Way::turns).toList(),
        ways(reads).stream().map(Way::turns).toList());
  }

  /** A point source loses 2 log2(d/d') stops: the inverse square law. */
  @Test
  void aSmallLightThatIsMovedBackByRootTwoNeedsAStopMoreByTheInverseSquareLaw() {
    Point back = new Point(0, -2 * Math.sqrt(2), 1.6);
    Reaction reaction = Reactions.to(setup(), new Happening.LightMoved(KEY, back));
    Miss key =
        reaction.untouched().misses().stream()
            .filter(miss -> miss.light().filter(KEY::equals).isPresent())
            .findFirst()
            .orElseThrow();
    assertEquals(-1, key.stops().value(), 0.02);
    Turn.Power power =
        assertInstanceOf(Turn.Power.class, ways(reaction).getFirst().turns().getFirst());
    assertEquals(KEY, power.light());
    assertEquals(2, power.to().value(), 1e-9);
    assertEquals(1, ways(reaction).getFirst().dials());
  }

  @Test
  void aMovedLightAtFullPowerIsHeldByTheCameraAndAllOthers() {
    Object full = Documents.with(document(), "/lights/0/stops_down", 0);
    Point back = new Point(0, -4, 1.6);
    Reaction reaction = Reactions.to(Documents.setup(full), new Happening.LightMoved(KEY, back));
    Way best = ways(reaction).getFirst();
    assertTrue(best.holdsAll());
    assertTrue(
        best.turns().stream().noneMatch(ReactionsTest::isPowerOfTheKey), best.turns()::toString);
    assertTrue(best.dials() >= 3, best.turns()::toString);
  }

  private static boolean isPowerOfTheKey(Turn turn) {
    return turn instanceof Turn.Power power && power.light().equals(KEY);
  }

  @Test
  void theHeadOfALesserLightTakesADeadKeysPlace() {
    Way best = ways(Reactions.to(setup(), new Happening.HeadDead(KEY))).getFirst();
    Turn.Replacement turn = assertInstanceOf(Turn.Replacement.class, best.turns().getFirst());
    assertEquals(KEY, turn.light());
    assertEquals(RIM, turn.from().orElseThrow());
    assertEquals(List.of(RIM), best.givenUp());
    assertEquals(2, best.dials());
    assertTrue(best.off().isEmpty(), best.off()::toString);
  }

  @Test
  void aKeyIsNotGivenUpForARim() {
    assertInstanceOf(
        Reaction.NothingHelps.class, Reactions.to(setup(), new Happening.HeadDead(RIM)));
  }

  @Test
  void aSpareHeadHoldsEverythingAndThenNothingElseIsTold() {
    SetupDocument setup = setup();
    Means spare = new Means(Set.of(), List.of(setup.lights().getFirst().head()), List.of());
    List<Way> ways = ways(Reactions.to(setup, new Happening.HeadDead(RIM), spare));
    assertTrue(ways.getFirst().holdsAll());
    Turn.Replacement turn =
        assertInstanceOf(Turn.Replacement.class, ways.getFirst().turns().getFirst());
    assertTrue(turn.from().isEmpty());
    assertEquals(3, turn.to().value(), 1e-9);
    assertTrue(ways.stream().allMatch(Way::holdsAll));
  }

  @Test
  void theOtherHeadOfALightGivesAStopMoreWhenOneDies() {
    Object two = Documents.with(document(), "/lights/0/heads", 2);
    Way best = ways(Reactions.to(Documents.setup(two), new Happening.HeadDead(KEY))).getFirst();
    Turn.Power power = assertInstanceOf(Turn.Power.class, best.turns().getFirst());
    assertEquals(1, power.heads());
    assertEquals(2, power.to().value(), 1e-9);
    assertTrue(best.holdsAll());
  }

  @Test
  void aLightForTheSameThingCarriesADeadOnesShare() {
    Object twice =
        Documents.with(document(), "/lights/2", light("key-two", "key", place(0.4, -2, 1.6)));
    Reaction reaction =
        Reactions.to(Documents.setup(twice), new Happening.HeadDead(new LightId("key-two")));
    Way neighbour =
        ways(reaction).stream()
            .filter(way -> way.turns().stream().anyMatch(ReactionsTest::isPowerOfTheKey))
            .findFirst()
            .orElseThrow();
    Turn.Power power = assertInstanceOf(Turn.Power.class, neighbour.turns().getFirst());
    assertEquals(1, power.from().minus(power.to()).value(), 0.1);
  }

  @Test
  void anAmbientThatIsNotKnownIsAskedFor() {
    SetupDocument dark = Documents.setup(Documents.without(document(), "/ambient"));
    Reaction.NotKnown notKnown =
        assertInstanceOf(Reaction.NotKnown.class, Reactions.to(dark, A_STOP_LESS));
    assertEquals(List.of("/ambient"), notKnown.needs());
  }

  @Test
  void theOnlyHeadCannotBeMadeUpFor() {
    SetupDocument one = Documents.setup(Documents.without(document(), "/lights/1"));
    Reaction reaction = Reactions.to(one, new Happening.HeadDead(KEY));
    assertInstanceOf(Reaction.NothingHelps.class, reaction);
    assertEquals(List.of(KEY), reaction.untouched().givenUp());
  }

  @Test
  void aLightThatIsNotThereIsASlip() {
    Happening dead = new Happening.HeadDead(new LightId("nobody"));
    assertThrows(IllegalArgumentException.class, () -> Reactions.to(setup(), dead));
  }

  @Test
  void noTimeShorterThanSyncIsAsked() {
    for (SetupDocument setup : new DemoSeeds().setups().values().stream().limit(12).toList()) {
      Reaction reaction = Reactions.to(setup, new Happening.AmbientFalls(new Stops(-3)));
      if (reaction instanceof Reaction.Turns turns) {
        for (Way way : turns.ways()) {
          ShutterTime sync = setup.camera().orElseThrow().body().orElseThrow().sync();
          ShutterTime old = setup.exposure().time();
          ShutterTime shortest = old.compareTo(sync) < 0 ? old : sync;
          assertTrue(
              way.document().exposure().time().stopsOver(shortest).value() > -1e-9, setup.title());
        }
      }
    }
  }
}
