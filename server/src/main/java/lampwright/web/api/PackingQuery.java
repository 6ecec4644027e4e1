package lampwright.web.api;

import io.javalin.http.Context;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampwright.document.Forms;
import lampwright.document.Reading;
import lampwright.people.Ids;
import lampwright.setup.SetupId;
import lampwright.setup.packing.DayWishes;
import lampwright.setup.packing.SunEvent;
import lampwright.setup.packing.WantedLight;
import lampwright.setup.packing.WorkTimes;
import lampwright.tasks.DayPacking;
import lampwright.tasks.Refused;

/** What is asked of a day in an address. */
final class PackingQuery {

  private static final String ANY_TIME = "any_time";

  private static final String SUN_AS_IT_WAS = "sun_as_it_was";

  /** The lights that have a name: the setup's own, and what the sun does on every day. */
  private static final Map<String, WantedLight> BY_NAME =
      Stream.concat(
              Stream.of(Map.entry(SUN_AS_IT_WAS, new WantedLight.SunAsItWas())),
              Stream.of(SunEvent.values())
                  .map(event -> Map.entry(PackingJson.lower(event), event.light())))
          .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

  private static final List<String> WORK =
      List.of(
          "ground",
          "carry",
          "stand",
          "head",
          "aim",
          "meter",
          "step",
          "camera",
          "run_through",
          "subject",
          "shoot",
          "strike",
          "move",
          "reserve");

  private static final Set<String> KNOWN =
      Stream.concat(
              Stream.of(
                  "setup", "kit", "adapted", "hands", "ready_by", "not_before", "day", "cold"),
              WORK.stream().map(PackingQuery::minutes))
          .collect(Collectors.toUnmodifiableSet());

  private PackingQuery() {}

  /**
   * Reads it.
   *
   * @throws Refused Invalid for an unknown name or a value out of bounds
   */
  static DayPacking.Asked asked(Context context) {
    Query query = new Query(context, KNOWN);
    int hands = query.number("hands", Forms.count(1, DayWishes.MOST_HANDS)).orElse(2);
    WorkTimes times = times(query);
    Optional<LocalTime> notBefore = query.text("not_before", Forms.timeOfDay());
    boolean isAdapted = query.flag("adapted");
    boolean isCold = query.flag("cold");
    var day = query.text("day", Forms.date());
    query.mustBeSound();
    List<SetupId> setups = context.queryParams("setup").stream().map(PackingQuery::setup).toList();
    List<Optional<WantedLight>> wanted =
        context.queryParams("ready_by").stream().map(PackingQuery::wanted).toList();
    if (wanted.size() > setups.size()) {
      throw Refused.invalid(
          "/ready_by",
          "Lights (%d) must be at most as many as setups (%d). Leave the last ones out."
              .formatted(wanted.size(), setups.size()));
    }
    return new DayPacking.Asked(
        setups,
        context.queryParams("kit"),
        isAdapted,
        hands,
        times,
        wanted,
        notBefore,
        day,
        isCold);
  }

  private static SetupId setup(String text) {
    if (!Ids.isId(text)) {
      throw Refused.invalid("/setup", "Setup must be the id of one of the studio's setups.");
    }
    return new SetupId(text);
  }

  private static Optional<WantedLight> wanted(String text) {
    if (text.equals(ANY_TIME)) {
      return Optional.empty();
    }
    WantedLight named = BY_NAME.get(text);
    if (named != null) {
      return Optional.of(named);
    }
    if (Forms.timeOfDay().read(text) instanceof Reading.Sound<LocalTime>(LocalTime time)) {
      return Optional.of(new WantedLight.At(time));
    }
    throw Refused.invalid(
        "/ready_by",
        "Light must be a time of day such as 18:40, %s or one of: %s."
            .formatted(ANY_TIME, String.join(", ", new TreeSet<>(BY_NAME.keySet()))));
  }

  private static String minutes(String work) {
    return work + "_minutes";
  }

  private static WorkTimes times(Query query) {
    WorkTimes usual = WorkTimes.usual();
    List<Integer> usually =
        List.of(
            usual.ground(),
            usual.carry(),
            usual.stand(),
            usual.head(),
            usual.aim(),
            usual.meter(),
            usual.step(),
            usual.camera(),
            usual.runThrough(),
            usual.subject(),
            usual.shoot(),
            usual.strike(),
            usual.move(),
            usual.reserve());
    List<Integer> asked = new ArrayList<>();
    for (int i = 0; i < WORK.size(); i++) {
      int fewest = WORK.get(i).equals("reserve") ? 0 : 1;
      asked.add(
          query
              .number(minutes(WORK.get(i)), Forms.count(fewest, WorkTimes.MOST))
              .orElse(usually.get(i)));
    }
    return new WorkTimes(
        asked.get(0),
        asked.get(1),
        asked.get(2),
        asked.get(3),
        asked.get(4),
        asked.get(5),
        asked.get(6),
        asked.get(7),
        asked.get(8),
        asked.get(9),
        asked.get(10),
        asked.get(11),
        asked.get(12),
        asked.get(13));
  }
}
