package lampwright.setup.adapting;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.gear.Kit;
import lampwright.setup.Documents;
import lampwright.setup.LightId;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.WorkedExamples;
import org.junit.jupiter.api.Test;

/**
 * What can be wished of an adaptation, on a small portrait whose figures can be checked by hand.
 */
class WishesTest {

  private static final LightId KEY = new LightId("key");
  private static final LightId FILL = new LightId("fill");
  private static final Patience HASTE = new Patience(() -> true, () -> () -> true);

  private static Map<String, Object> head(String name, double guideNumber, Object... more) {
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("name", name);
    head.put("energy_ws", 400.0);
    head.put("output", Map.of("kind", "guide_number", "guide_number_m", guideNumber));
    head.put("recycle_s", 2.0);
    head.put("flashes_per_charge", 300.0);
    head.put("weight_kg", 2.0);
    for (int i = 0; i < more.length; i += 2) {
      head.put((String) more[i], more[i + 1]);
    }
    return head;
  }

  private static Map<String, Object> light(
      String role, double distance, double stopsDown, Object... more) {
    Map<String, Object> light = new LinkedHashMap<>();
    light.put("id", role);
    light.put("role", role);
    light.put("head", head("own head", 64));
    light.put("place", point(0, -distance, 1.6));
    light.put("target", Map.of("name", "face", "at", point(0, 0, 1.6)));
    light.put("stops_down", stopsDown);
    for (int i = 0; i < more.length; i += 2) {
      light.put((String) more[i], more[i + 1]);
    }
    return light;
  }

  private static Map<String, Object> point(double x, double y, double z) {
    return Map.of("x_m", x, "y_m", y, "z_m", z);
  }

  /** At f/8 a head of guide number 64 m from 4 m gives f/16: two stops down are right. */
  private static Map<String, Object> portrait(Object... lights) {
    Map<String, Object> setup = new LinkedHashMap<>();
    setup.put("title", "A portrait");
    setup.put("exposure", Map.of("f_number", 8.0, "time", "1/125", "iso", 100.0));
    setup.put("lights", List.of(lights));
    return setup;
  }

  private static SetupDocument keyAndFill() {
    return Documents.setup(portrait(light("key", 4, 2), light("fill", 4, 3)));
  }

  private static Map<String, Object> kit(Object... heads) {
    Map<String, Object> kit = new LinkedHashMap<>();
    kit.put("name", "kit");
    List<Object> all = new ArrayList<>();
    for (Object head : heads) {
      all.add(Map.of("head", head));
    }
    kit.put("heads", all);
    return kit;
  }

  private static Map<String, Object> with(Map<String, Object> map, String name, Object value) {
    Map<String, Object> copy = new LinkedHashMap<>(map);
    copy.put(name, value);
    return copy;
  }

  private static Limits limits(Object... fields) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("keep_f_number", 8.0);
    json.put("keep_time", "1/125");
    json.put("iso_at_most", 100.0);
    for (int i = 0; i < fields.length; i += 2) {
      json.put((String) fields[i], fields[i + 1]);
    }
    return Documents.sound(Limits.FORM, json);
  }

  private static Answer adapt(SetupDocument setup, Map<String, Object> kit, Wishes wishes) {
    return AdaptationSearch.adapt(setup, Documents.kit(kit), wishes);
  }

  private static Adaptation best(SetupDocument setup, Map<String, Object> kit, Wishes wishes) {
    return assertInstanceOf(Answer.Adapted.class, adapt(setup, kit, wishes))
        .adaptations()
        .getFirst();
  }

  private static Answer.NotEnoughGear notEnough(
      SetupDocument setup, Map<String, Object> kit, Wishes wishes) {
    return assertInstanceOf(Answer.NotEnoughGear.class, adapt(setup, kit, wishes));
  }

  private static AdaptedLight.Made made(Adaptation adaptation, LightId light) {
    return adaptation.lights().stream()
        .filter(l -> l.original().light().id().equals(light))
        .findFirst()
        .orElseThrow()
        .made()
        .orElseThrow();
  }

  private static Wishes kept(Object... fields) {
    return Wishes.none().withLimits(limits(fields));
  }

  private static Pin pin(Object... fields) {
    Map<String, Object> json = new LinkedHashMap<>();
    for (int i = 0; i < fields.length; i += 2) {
      json.put((String) fields[i], fields[i + 1]);
    }
    return Documents.sound(Pin.FORM, json);
  }

  /** Two heads are a stop: common arithmetic, REFERENCE section 5. */
  @Test
  void twoWeakHeadsMakeOneKeyWhereOneIsAStopTooWeak() {
    SetupDocument key = Documents.setup(portrait(light("key", 4, 0)));
    Map<String, Object> weak = head("weak", 64 / StrictMath.sqrt(2));
    Map<String, Object> kit =
        Map.of("name", "k", "heads", List.of(Map.of("count", 2.0, "head", weak)));
    AdaptedLight.Made two = made(best(key, kit, kept()), KEY);
    assertEquals(2, two.heads());
    assertEquals(0, two.deviation().value(), 1e-9);
    AdaptedLight.Made one = made(best(key, kit, kept("heads_per_light_at_most", 1.0)), KEY);
    assertEquals(1, one.heads());
    assertEquals(-1, one.deviation().value(), 1e-9);
  }

  @Test
  void aStillSubjectMayBeFlashedTwiceWhileTheShutterIsOpen() {
    SetupDocument key = Documents.setup(portrait(light("key", 4, 0)));
    Map<String, Object> kit = kit(head("weak", 64 / StrictMath.sqrt(2)));
    Wishes wishes =
        Wishes.none()
            .withLimits(
                Documents.sound(
                    Limits.FORM,
                    Map.of(
                        "keep_f_number", 8.0,
                        "iso_at_most", 100.0,
                        "pops_per_light_at_most", 2.0,
                        "keep_time", "2")));
    AdaptedLight.Made twice = made(best(key, kit, wishes), KEY);
    assertEquals(2, twice.pops());
    assertEquals(0, twice.deviation().value(), 1e-9);
    SetupDocument moving =
        Documents.setup(
            with(
                portrait(light("key", 4, 0)),
                "subjects",
                List.of(Map.of("name", "dancer", "place", point(0, 0, 0), "speed_m_per_s", 2.0))));
    assertEquals(1, made(best(moving, kit, wishes), KEY).pops());
  }

  @Test
  void aModifierThatDoesNotFitTheHeadIsNotUsed() {
    Map<String, Object> box =
        Map.of(
            "name", "box",
            "kind", "softbox",
            "face", Map.of("shape", "rectangle", "width_m", 0.9, "height_m", 0.9),
            "loss_stops", 1.0,
            "mount", "claw");
    SetupDocument key =
        Documents.setup(portrait(light("key", 2, 3, "modifier", with(box, "mount", "claw"))));
    Map<String, Object> bayonet =
        with(kit(head("h", 64, "mount", "bayonet")), "modifiers", List.of(Map.of("modifier", box)));
    Map<String, Object> claw =
        with(kit(head("h", 64, "mount", "Claw")), "modifiers", List.of(Map.of("modifier", box)));
    assertEquals("box", made(best(key, claw, kept()), KEY).modifier().name());
    assertEquals("standard reflector", made(best(key, bayonet, kept()), KEY).modifier().name());
  }

  /** 300 flashes to a charge at full power are 600 at half: one stop down for 600 frames. */
  @Test
  void theBatteriesLastForTheFramesOrTheLightIsTurnedDown() {
    SetupDocument key = Documents.setup(portrait(light("key", 4, 0)));
    Map<String, Object> kit = kit(head("h", 64));
    assertEquals(0, made(best(key, kit, kept("frames", 300.0)), KEY).power().set().value(), 1e-9);
    assertEquals(1, made(best(key, kit, kept("frames", 600.0)), KEY).power().set().value(), 1e-9);
    Map<String, Object> spare = kit(head("h", 64, "batteries", 2.0));
    assertEquals(0, made(best(key, spare, kept("frames", 600.0)), KEY).power().set().value(), 1e-9);
  }

  @Test
  void aHalfEmptyBatteryCountsAsHalf() {
    SetupDocument key = Documents.setup(portrait(light("key", 4, 0)));
    Wishes half = kept("frames", 300.0).withTonight(List.of(new HeadTonight("h", 0, 0.5)));
    assertEquals(1, made(best(key, kit(head("h", 64)), half), KEY).power().set().value(), 1e-9);
  }

  /** Two seconds at full power are one second a stop down. */
  @Test
  void everyHeadIsReadyAgainInTime() {
    SetupDocument key = Documents.setup(portrait(light("key", 4, 0)));
    Adaptation paced = best(key, kit(head("h", 64)), kept("seconds_between_frames", 1.0));
    assertEquals(1, made(paced, KEY).power().set().value(), 1e-9);
    assertTrue(paced.figures().power().pace().orElseThrow().betweenFrames().value() <= 1 + 1e-9);
  }

  @Test
  void aLightMustHaveAStandThatReachesOrMayBeLowered() {
    SetupDocument high =
        Documents.setup(portrait(with(light("key", 4, 2), "place", point(0, -4, 3.6))));
    Map<String, Object> kit =
        with(
            kit(head("h", 64)),
            "stands",
            List.of(Map.of("stand", Map.of("name", "low", "highest_m", 2.4))));
    Answer.NotEnoughGear answer = notEnough(high, kit, kept());
    assertEquals(
        "No stand of the kit carries “key” as high as 3.6 m.",
        english(answer.reasons().getFirst()));
    assertTrue(
        answer.remedies().stream()
            .anyMatch(r -> r.kind() == Remedy.Kind.LOWER && r.leaves().isPresent()),
        answer.remedies().toString());
    assertTrue(answer.remedies().stream().anyMatch(r -> r.kind() == Remedy.Kind.OTHER_STAND));
    Adaptation lowered = best(high, kit, kept("lights_may_move", true));
    assertEquals(2.4, lowered.document().lights().getFirst().place().z(), 1e-9);
    assertEquals("low", made(lowered, KEY).stand().orElseThrow().name());
  }

  /** 4 m to 2.83 m is a stop by the inverse square law; the tape says 2.85 m. */
  @Test
  void aLightMayComeNearerButNoNearerThanSaidAndNotIntoTheFrame() {
    SetupDocument key = Documents.setup(portrait(light("key", 4, 0)));
    Map<String, Object> kit = kit(head("weak", 64 / StrictMath.sqrt(2)));
    Adaptation nearer = best(key, kit, kept("lights_may_move", true));
    assertEquals(2.85, made(nearer, KEY).distance().value(), 1e-9);
    assertEquals(-1.15, made(nearer, KEY).movedM(), 1e-9);
    Adaptation kept = best(key, kit, kept("lights_may_move", true, "nearest_m", 3.5));
    assertTrue(made(kept, KEY).distance().value() >= 3.5);
    Map<String, Object> seen =
        with(
            portrait(with(light("key", 4, 0), "place", point(0, 4, 1.6))),
            "camera",
            Map.of(
                "place", point(0, -5, 1.6),
                "aim", point(0, 0, 1.6),
                "body", Map.of("name", "b", "width_mm", 36.0, "height_mm", 24.0, "sync", "1/125"),
                "lens", Map.of("name", "l", "focal_length_mm", 400.0)));
    Map<String, Object> beside =
        with(seen, "lights", List.of(with(light("key", 4, 0), "place", point(3.9, 0.9, 1.6))));
    assertTrue(
        made(best(Documents.setup(beside), kit, kept("lights_may_move", true)), KEY)
                .distance()
                .value()
            < 4,
        "beside the frame it may come nearer");
    Object wide =
        Documents.with(beside, "/camera/lens", Map.of("name", "l", "focal_length_mm", 45.0));
    Adaptation still = best(Documents.setup(wide), kit, kept("lights_may_move", true));
    assertTrue(made(still, KEY).distance().value() >= 3.3, "a wider lens would see it nearer");
  }

  /** A pack of 400 W·s cannot give 400 W·s to one head and more to another. */
  @Test
  void headsOfAPackShareItsEnergy() {
    SetupDocument two = Documents.setup(portrait(light("key", 4, 0), light("fill", 4, 1)));
    Map<String, Object> onPack = head("pack head", 64, "pack", "pack", "energy_ws", 400.0);
    Map<String, Object> kit = new LinkedHashMap<>();
    kit.put("name", "k");
    kit.put("heads", List.of(Map.of("count", 2.0, "head", onPack)));
    kit.put(
        "packs",
        List.of(Map.of("pack", Map.of("name", "pack", "energy_ws", 400.0, "outlets", 2.0))));
    Adaptation shared = best(two, kit, kept());
    double energy = made(shared, KEY).energy().value() + made(shared, FILL).energy().value();
    assertTrue(energy <= 400 + 1e-6, energy + " W·s");
    assertTrue(made(shared, KEY).deviation().value() < -0.3, "something must give");
    Map<String, Object> large =
        with(
            kit,
            "packs",
            List.of(Map.of("pack", Map.of("name", "pack", "energy_ws", 800.0, "outlets", 2.0))));
    assertEquals(0, made(best(two, large, kept()), KEY).deviation().value(), 1e-9);
    Map<String, Object> oneOutlet =
        with(
            kit,
            "packs",
            List.of(Map.of("pack", Map.of("name", "pack", "energy_ws", 800.0, "outlets", 1.0))));
    assertEquals(List.of(FILL), notEnough(two, oneOutlet, kept()).unlit());
  }

  @Test
  void aPinnedHeadStaysAndOnlyTheRestIsSolved() {
    Map<String, Object> kit = kit(head("strong", 64), head("weak", 50));
    Adaptation free = best(keyAndFill(), kit, kept());
    Adaptation pinned =
        best(keyAndFill(), kit, kept().withPins(List.of(pin("light", "key", "head", "weak"))));
    assertEquals("weak", made(pinned, KEY).head().name());
    assertEquals("strong", made(pinned, FILL).head().name());
    assertTrue(pinned.cost() >= free.cost() - 1e-9);
  }

  @Test
  void aLightThatIsLeftOutOrMayBeGivenUpIsNoShortage() {
    Map<String, Object> kit = kit(head("strong", 64));
    Adaptation without =
        best(keyAndFill(), kit, kept().withPins(List.of(pin("light", "fill", "lit", false))));
    assertEquals(1, without.document().lights().size());
    Adaptation givenUp = best(keyAndFill(), kit, kept("may_give_up", List.of("fill")));
    assertEquals(KEY, givenUp.document().lights().getFirst().id());
    assertEquals(List.of(FILL), notEnough(keyAndFill(), kit, kept()).unlit());
  }

  @Test
  void whatContradictsItselfIsNamed() {
    Map<String, Object> kit = kit(head("strong", 64, "mount", "claw"));
    Wishes wishes =
        Wishes.none()
            .withPins(
                List.of(
                    pin("light", "rim", "head", "strong"),
                    pin("light", "key", "head", "ghost"),
                    pin("light", "fill", "heads", 3.0, "head", "strong")))
            .withTonight(List.of(new HeadTonight("phantom", 1, 1)))
            .withLimits(limits("body", "no such body", "may_give_up", List.of("hair")));
    assertEquals(
        List.of(
            "“phantom” is said to be dead or used, but the kit has none.",
            "“rim” is pinned, but the setup has no such light.",
            "“key” is pinned to “ghost”, but the kit has no such head.",
            "“fill” is pinned to 3 of “strong”, but 1 of the kit's are left.",
            "“hair” may be given up, but the setup has no such light.",
            "“no such body” is to be used, but the kit has no such body."),
        english(notEnough(keyAndFill(), kit, wishes).reasons()));
  }

  @Test
  void anAmbientThatNoSettingHoldsIsSaid() {
    SetupDocument setup =
        Documents.setup(with(portrait(light("key", 4, 2)), "ambient", Map.of("ev100", 9.0)));
    Wishes wishes = kept("ambient_within_stops", 0.5).withAmbient(new Ev100(14));
    assertEquals(
        List.of("No setting of the camera keeps the ambient within 0.5 stop of the setup's."),
        english(notEnough(setup, kit(head("h", 64)), wishes).reasons()));
  }

  @Test
  void aHeadThatDiedIsNotUsed() {
    Map<String, Object> kit = kit(head("strong", 64), head("other", 60));
    Adaptation after =
        best(
            Documents.setup(portrait(light("key", 4, 2))),
            kit,
            kept().withTonight(List.of(new HeadTonight("strong", 1, 1))));
    assertEquals("other", made(after, KEY).head().name());
  }

  /** When the ambient falls by a stop, one dial does it: twice the time. */
  @Test
  void theFewestDialsAreTouchedWhenTheAmbientFalls() {
    SetupDocument setup =
        Documents.setup(
            with(
                portrait(light("key", 4, 2), light("fill", 4, 3)),
                "ambient",
                Map.of("ev100", 11.0)));
    Map<String, Object> own =
        Map.of("name", "own", "heads", List.of(Map.of("count", 2.0, "head", head("own head", 64))));
    Adaptation now =
        best(
            setup,
            own,
            Wishes.none().withPreset(Weights.Preset.FEWEST_DIALS).withAmbient(new Ev100(10)));
    assertEquals(List.of("Time: 1/125 s to 1/60 s."), english(now.changes()));
    assertEquals(0, now.ambientChange().orElseThrow().value(), 1e-9);
  }

  /** The sun's own model predicts the change; REFERENCE 17a has 10.0 at 18:13 near the sea. */
  @Test
  void anotherTimeOfDayBringsItsOwnAmbient() {
    SetupDocument dancer = WorkedExamples.dancer();
    Object dusk =
        Documents.with(
            SetupDocument.FORM.write(dancer),
            "/occasion",
            Map.of(
                "place", Map.of("name", "slip", "latitude_deg", 50.35, "longitude_deg", -4.15),
                "date", "2025-09-12",
                "time", "18:13",
                "utc_offset", "+00:00"));
    Kit kit = Documents.kit(WorkedExamples.dancerKitB());
    Occasion later = Documents.sound(Occasion.FORM, Map.of("time", "18:31"));
    Answer answer =
        AdaptationSearch.adapt(Documents.setup(dusk), kit, Wishes.none().withOccasion(later));
    Adaptation way = assertInstanceOf(Answer.Adapted.class, answer).adaptations().getFirst();
    double level = way.document().ambient().orElseThrow().level().value();
    assertEquals(26.0 / 3, level, 0.15, "reference 17a: EV100 8.667 after 17.9 minutes");
    assertEquals("18:31", way.document().occasion().orElseThrow().time().orElseThrow().toString());
    assertTrue(english(way.leftOut().getFirst()).contains("Meter it there"));
    Answer unknown =
        AdaptationSearch.adapt(
            dancer.withOccasion(Optional.empty()), kit, Wishes.none().withOccasion(later));
    assertTrue(
        english(assertInstanceOf(Answer.NotEnoughGear.class, unknown).reasons().getFirst())
            .contains("Maybe give ambient_ev100?"));
  }

  @Test
  void toldToStopAtOnceItGivesTheBestAtHandAndTheGap() {
    Kit kit = Documents.kit(WorkedExamples.dancerKitB());
    SetupDocument dancer = WorkedExamples.dancer();
    Answer hasty = AdaptationSearch.adapt(dancer, kit, Wishes.none(), HASTE);
    Answer.Adapted whole =
        assertInstanceOf(Answer.Adapted.class, AdaptationSearch.adapt(dancer, kit, Wishes.none()));
    Proof proof =
        switch (hasty) {
          case Answer.Adapted adapted -> adapted.proof();
          case Answer.NotEnoughGear falls -> falls.proof();
        };
    assertTrue(whole.proof().isOptimal());
    assertTrue(proof.atLeast() <= whole.adaptations().getFirst().cost() + 1e-9);
    assertTrue(proof.gap() >= 0);
  }

  @Test
  void thePresetsPullWhereTheySay() {
    Kit kit = Documents.kit(WorkedExamples.dancerKitB());
    SetupDocument dancer = WorkedExamples.dancer();
    ExposureSettings lowest =
        assertInstanceOf(
                Answer.Adapted.class,
                AdaptationSearch.adapt(
                    dancer, kit, Wishes.none().withPreset(Weights.Preset.LOWEST_ISO)))
            .adaptations()
            .getFirst()
            .settings();
    assertEquals(Iso.HUNDRED, lowest.iso());
    Adaptation closest = first(dancer, kit, Weights.Preset.CLOSEST_LOOK);
    Adaptation fastest = first(dancer, kit, Weights.Preset.FASTEST_PACE);
    assertTrue(pace(fastest) < pace(closest), pace(fastest) + " s");
    assertTrue(
        first(dancer, kit, Weights.Preset.LEAST_TO_CARRY).carried().kg()
            <= closest.carried().kg() + 1e-9);
    assertEquals(ShutterTime.parse("1/200"), closest.settings().time());
  }

  private static Adaptation first(SetupDocument setup, Kit kit, Weights.Preset preset) {
    return assertInstanceOf(
            Answer.Adapted.class,
            AdaptationSearch.adapt(setup, kit, Wishes.none().withPreset(preset)))
        .adaptations()
        .getFirst();
  }

  private static double pace(Adaptation adaptation) {
    return adaptation.figures().power().pace().orElseThrow().betweenFrames().value();
  }
}
