package lampwright.web.api;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.place.LocationPermission;
import lampwright.setup.LightId;
import lampwright.setup.packing.BatteryPlan;
import lampwright.setup.packing.DayCautions;
import lampwright.setup.packing.DayPlan;
import lampwright.setup.packing.MainsNeed;
import lampwright.setup.packing.PackedKind;
import lampwright.setup.packing.PackingList;
import lampwright.setup.packing.Stage;
import lampwright.setup.packing.Stint;
import lampwright.tasks.DayPacking;

/** What a day takes, as the API tells it. Setups are named by their place in the day, from 0. */
record PackingJson(
    LocalDate day,
    String utcOffset,
    List<SetupJson> setups,
    ListJson list,
    BatteriesJson batteries,
    PlanJson plan,
    List<SunJson> sun,
    List<String> leaveIsOver,
    List<String> cautions) {

  static PackingJson of(DayPacking.Packed packed) {
    return new PackingJson(
        packed.day(),
        packed.offset().getId().equals("Z") ? "+00:00" : packed.offset().getId(),
        packed.setups().stream().map(SetupJson::of).toList(),
        ListJson.of(packed.list()),
        BatteriesJson.of(packed.batteries()),
        PlanJson.of(packed.plan()),
        packed.sun().stream().map(of -> new SunJson(of.event().key(), of.at())).toList(),
        packed.leaveIsOver().stream().map(LocationPermission::text).toList(),
        DayCautions.ALL.stream().map(InEnglish::say).toList());
  }

  private static String lower(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** One setup; {@code short_of_gear} where the kits cannot make all of its lights. */
  record SetupJson(String id, String title, boolean shortOfGear, Optional<Instant> wantedAt) {

    static SetupJson of(DayPacking.OfDay one) {
      return new SetupJson(
          one.setup().id().toString(), one.made().title(), one.isShort(), one.wanted());
    }
  }

  /** What is carried. */
  record ListJson(
      List<KindJson> kinds,
      double knownKg,
      int withoutWeight,
      int ballastKg,
      List<Integer> windUnknown) {

    static ListJson of(PackingList list) {
      return new ListJson(
          list.kinds().stream().map(KindJson::of).toList(),
          list.weight().kg(),
          list.weight().withoutWeight(),
          list.mostBallastKg(),
          list.windUnknown());
    }
  }

  /** One kind of gear. */
  record KindJson(
      String section,
      String name,
      int count,
      Optional<Double> eachKg,
      List<NeedJson> needs,
      Optional<Integer> inKits,
      int lacking) {

    static KindJson of(PackedKind kind) {
      return new KindJson(
          lower(kind.section()),
          kind.name(),
          kind.count(),
          kind.eachKg(),
          kind.needs().stream().map(need -> new NeedJson(need.setup(), need.count())).toList(),
          kind.inKits(),
          kind.lacking());
    }
  }

  record NeedJson(int setup, int count) {}

  /** What is charged, and what is drawn. */
  record BatteriesJson(List<FeedJson> feeds, List<UnknownJson> unknown, List<MainsJson> mains) {

    static BatteriesJson of(BatteryPlan plan) {
      return new BatteriesJson(
          plan.feeds().stream().map(FeedJson::of).toList(),
          plan.unknown().stream()
              .map(light -> new UnknownJson(light.setup(), light.light().text()))
              .toList(),
          plan.onMains().stream().map(MainsJson::of).toList());
    }
  }

  record SunJson(String event, Instant at) {}

  record UnknownJson(int setup, String light) {}

  /** One head's or pack's batteries. */
  record FeedJson(
      String name,
      int number,
      int batteries,
      int lacking,
      double charges,
      List<UseJson> uses,
      List<ChangeJson> changes) {

    static FeedJson of(BatteryPlan.Feed feed) {
      return new FeedJson(
          feed.name(),
          feed.number(),
          feed.batteries(),
          feed.lacking(),
          feed.charges(),
          feed.uses().stream().map(UseJson::of).toList(),
          feed.changes().stream()
              .map(change -> new ChangeJson(change.setup(), change.afterFrame()))
              .toList());
    }
  }

  record UseJson(
      int setup,
      String light,
      int frames,
      boolean framesPlanned,
      int testPops,
      double energyWs,
      double charges) {

    static UseJson of(BatteryPlan.Use use) {
      return new UseJson(
          use.setup(),
          use.light().text(),
          use.frames(),
          use.framesPlanned(),
          use.testPops(),
          use.energyWs(),
          use.charges());
    }
  }

  record ChangeJson(int setup, int afterFrame) {}

  record MainsJson(
      int setup, double totalW, double currentA, double generatorVa, Optional<Integer> circuits) {

    static MainsJson of(MainsNeed need) {
      return new MainsJson(
          need.setup(),
          need.figures().total().value(),
          need.figures().current().value(),
          need.figures().generator().value(),
          need.circuits());
    }
  }

  /** Who does what when. */
  record PlanJson(
      int hands,
      Optional<Instant> begins,
      boolean shortest,
      List<StageJson> stages,
      List<ShortfallJson> shortfalls) {

    static PlanJson of(DayPlan plan) {
      return new PlanJson(
          plan.hands(),
          plan.begins(),
          plan.isShortest(),
          plan.stages().stream().map(stage -> StageJson.of(stage, plan)).toList(),
          plan.shortfalls().stream()
              .map(late -> new ShortfallJson(late.setup(), late.minutes(), late.enoughHands()))
              .toList());
    }
  }

  record ShortfallJson(int setup, int minutes, Optional<Integer> enoughHands) {}

  /** One stage; minutes count from the start of the day, those of stints from the stage's. */
  record StageJson(
      int setup,
      String kind,
      int from,
      int minutes,
      int atLeastMinutes,
      Optional<Instant> at,
      List<StintJson> stints) {

    static StageJson of(Stage stage, DayPlan plan) {
      return new StageJson(
          stage.setup(),
          lower(stage.kind()),
          stage.from(),
          stage.minutes(),
          stage.atLeast(),
          plan.at(stage.from()),
          stage.stints().stream().map(StintJson::of).toList());
    }
  }

  record StintJson(
      String work,
      Optional<String> light,
      Optional<String> words,
      int from,
      int minutes,
      List<Integer> who,
      boolean shortHanded) {

    static StintJson of(Stint stint) {
      return new StintJson(
          lower(stint.errand().work()),
          stint.errand().light().map(LightId::text),
          stint.errand().words(),
          stint.from(),
          stint.errand().minutes(),
          stint.who(),
          stint.errand().isShortHanded());
    }
  }
}
