package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.Occasion;
import lampwright.setup.adapting.HeadTonight;
import lampwright.setup.adapting.Limits;
import lampwright.setup.adapting.Pin;
import lampwright.setup.adapting.WeightChanges;
import lampwright.setup.adapting.Weights;
import lampwright.setup.adapting.Wishes;
import org.junit.jupiter.api.Test;

class AdaptedQueryTest {

  private static final String HEAD = "400 W·s head, 50 % grid & co.";

  @Test
  void anAddressThatSaysNothingWishesNothing() {
    assertEquals(Wishes.none(), wishes(Map.of()));
    assertEquals(List.of(), AdaptedQuery.write(Wishes.none()).pairs());
  }

  @Test
  void emptyFieldsSayNothing() {
    assertEquals(Wishes.none(), wishes(Map.of("iso", List.of(""), "head.key", List.of("  "))));
  }

  @Test
  void everythingThatCanBeSaidComesBackAsItWas() {
    assertEquals(everything(), there(everything()));
  }

  @Test
  void anyMixOfWishesComesBackAsItWas() {
    for (long seed = 1; seed <= 500; seed++) {
      Wishes some = some(new Random(seed));
      assertEquals(some, there(some), "seed " + seed);
    }
  }

  @Test
  void numbersAreReadAsPeopleWriteThem() {
    Wishes wishes = wishes(Map.of("aperture", List.of("f/5,6"), "ambient", List.of("-1,5")));
    assertEquals(Optional.of(FNumber.ofMark(5.6)), wishes.limits().keepFNumber());
    assertEquals(Optional.of(new Ev100(-1.5)), wishes.ambient());
  }

  @Test
  void whatIsDecidedOfOneLightIsOneDecision() {
    Wishes wishes =
        wishes(
            Map.of(
                "head.key", List.of("big head"),
                "modifier.key", List.of("octagon"),
                "count.key", List.of("2"),
                "without", List.of("rim-left")));
    assertEquals(
        List.of(
            new Pin(id("rim-left"), Optional.empty(), Optional.empty(), Optional.empty(), false),
            new Pin(
                id("key"), Optional.of("big head"), Optional.of("octagon"), Optional.of(2), true)),
        wishes.pins());
  }

  @Test
  void whatIsWrongIsToldAtItsName() {
    Map<String, List<String>> query = new LinkedHashMap<>();
    query.put("iso", List.of("many"));
    query.put("aperture", List.of("0"));
    query.put("time", List.of("soon"));
    query.put("preset", List.of("prettiest"));
    query.put("move", List.of("perhaps"));
    query.put("clock", List.of("25:00"));
    query.put("lat", List.of("91"));
    query.put("give_up", List.of("key", "Not A Light"));
    query.put("head.Not A Light", List.of("big head"));
    query.put("count.key", List.of("0"));
    query.put("dead.big head", List.of("1.5"));
    query.put("charge.big head", List.of("101"));
    query.put("weight.iso", List.of("-1"));
    query.put("weight.mood", List.of("1"));
    FormErrors errors =
        assertInstanceOf(AdaptedQuery.Read.Wrong.class, AdaptedQuery.read(WishPairs.of(query)))
            .errors();
    for (String name : query.keySet()) {
      assertTrue(errors.find(name).isPresent(), () -> name + " is not among " + errors);
    }
    // A place needs a name and both of its degrees; the message stands at a field of the place.
    assertTrue(errors.items().stream().noneMatch(error -> error.field().isEmpty()));
  }

  @Test
  void anotherKitForgetsWhatOnlyTheFirstCouldFulfil() {
    WishPairs asked =
        WishPairs.of(
            Map.of(
                "iso", List.of("400"),
                "body", List.of("wide body"),
                "head.key", List.of("big head"),
                "count.key", List.of("2"),
                "dead.big head", List.of("1"),
                "without", List.of("rim")));
    assertEquals(
        List.of("count.key", "iso", "without"),
        asked.forAnyKit().pairs().stream().map(WishPairs.Pair::name).sorted().toList());
  }

  private static Wishes wishes(Map<String, List<String>> query) {
    return assertInstanceOf(AdaptedQuery.Read.Sound.class, AdaptedQuery.read(WishPairs.of(query)))
        .wishes();
  }

  /** Into an address and out of it. */
  private static Wishes there(Wishes wishes) {
    Map<String, List<String>> query = new LinkedHashMap<>();
    for (WishPairs.Pair pair : AdaptedQuery.write(wishes).pairs()) {
      query.computeIfAbsent(pair.name(), _ -> new ArrayList<>()).add(pair.value());
    }
    return wishes(query);
  }

  private static LightId id(String text) {
    return new LightId(text);
  }

  private static Wishes everything() {
    return new Wishes(
        Optional.of(new Ev100(9.3)),
        Optional.of(
            new Occasion(
                Optional.of(
                    new Occasion.Place(
                        "Quarry",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Degrees(-12.345678)),
                        Optional.of(new Degrees(0.25)),
                        Optional.empty())),
                Optional.of(LocalDate.of(2024, 10, 3)),
                Optional.of(LocalTime.of(6, 5)),
                Optional.of(ZoneOffset.ofHours(1)),
                Optional.empty(),
                Optional.empty())),
        new Limits(
            Optional.of(Iso.ofMark(400)),
            Optional.of(FNumber.ofMark(5.6)),
            Optional.of(ShutterTime.parse("1/125")),
            Optional.of("a body"),
            Optional.of("a lens"),
            Optional.of(new Stops(0.5)),
            Optional.of(new Stops(0.3)),
            Optional.of(1.5),
            true,
            new Metres(0.8),
            3,
            Optional.of(4),
            Optional.of(200),
            Optional.of(new Seconds(1.2)),
            List.of(id("rim"), id("accent"))),
        Weights.Preset.FEWEST_DIALS,
        weights(Optional.of(2.5), Optional.of(0.3)),
        List.of(new Pin(id("key"), Optional.of(HEAD), Optional.of("box"), Optional.of(2), true)),
        List.of(new HeadTonight(HEAD, 1, 0.55), new HeadTonight("pack", 0, 1.0 / 3)),
        5);
  }

  private static WeightChanges weights(Optional<Double> iso, Optional<Double> carryPerKg) {
    Optional<Double> usual = Optional.empty();
    return new WeightChanges(
        usual,
        usual,
        usual,
        iso,
        usual,
        usual,
        usual,
        usual,
        carryPerKg,
        usual,
        usual,
        usual,
        usual);
  }

  /** Each wish with the chance of a coin. */
  private static Wishes some(Random coin) {
    Wishes all = everything();
    Limits limits = all.limits();
    Limits none = Limits.none();
    return new Wishes(
        all.ambient().filter(_ -> coin.nextBoolean()),
        all.occasion().filter(_ -> coin.nextBoolean()),
        new Limits(
            limits.isoAtMost().filter(_ -> coin.nextBoolean()),
            limits.keepFNumber().filter(_ -> coin.nextBoolean()),
            limits.keepTime().filter(_ -> coin.nextBoolean()),
            limits.body().filter(_ -> coin.nextBoolean()),
            limits.lens().filter(_ -> coin.nextBoolean()),
            limits.ambientWithin().map(_ -> new Stops(coin.nextInt(41) / 2.0)),
            coin.nextBoolean() ? limits.lightWithin() : none.lightWithin(),
            limits.softnessWithin().map(_ -> coin.nextDouble()),
            coin.nextBoolean(),
            coin.nextBoolean() ? limits.nearest() : none.nearest(),
            1 + coin.nextInt(12),
            limits.popsPerLight().filter(_ -> coin.nextBoolean()),
            limits.frames().map(_ -> 1 + coin.nextInt(100_000)),
            limits.betweenFrames().filter(_ -> coin.nextBoolean()),
            coin.nextBoolean() ? limits.mayGiveUp() : List.of()),
        List.of(Weights.Preset.values()).get(coin.nextInt(Weights.Preset.values().length)),
        coin.nextBoolean() ? all.changes() : WeightChanges.none(),
        coin.nextBoolean() ? all.pins() : List.of(),
        coin.nextBoolean() ? all.tonight() : List.of(),
        1 + coin.nextInt(6));
  }
}
