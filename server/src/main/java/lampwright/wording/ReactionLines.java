package lampwright.wording;

import java.util.ArrayList;
import java.util.List;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.unit.Stops;
import lampwright.language.Notation;
import lampwright.setup.Ambient;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.reacting.Happening;
import lampwright.setup.reacting.Reaction;
import lampwright.setup.reacting.Way;

/**
 * What to change now, as it is read.
 *
 * @param happened what happened, in a sentence
 * @param untouched what the setup is like if nobody touches anything, in a sentence or a few
 * @param ways best first; empty where nothing is to be changed, or nothing helps
 * @param instead in the place of ways: that nothing is to be changed, that nothing helps and what
 *     falls short, or what is not known; empty where there are ways
 * @param cautions what can hurt while it is done, where something can
 */
public record ReactionLines(
    String happened, String untouched, List<WayLines> ways, String instead, List<String> cautions) {

  public ReactionLines {
    ways = List.copyOf(ways);
    cautions = List.copyOf(cautions);
  }

  /**
   * One way.
   *
   * @param dials how many things a hand turns: "1 dial"
   * @param holdsAll whether everything is then within a third of where it was
   * @param turns what to do, one line each: "Shutter 1/60 → 1/30"
   * @param then what the setup is like then: "Ambient back at −1.3. Every light where it was."
   * @param costs what it costs besides, one sentence each: "The ambient draws movement twice as
   *     far."
   */
  public record WayLines(
      String dials, boolean holdsAll, List<String> turns, String then, List<String> costs) {
    public WayLines {
      turns = List.copyOf(turns);
      costs = List.copyOf(costs);
    }
  }

  /**
   * The lines of a reaction.
   *
   * @param setup as it was before something happened
   */
  public static ReactionLines of(SetupDocument setup, Reaction reaction, Notation notation) {
    return new Telling(setup, reaction, new Wording(notation)).lines();
  }

  /** Tells one reaction. */
  private record Telling(SetupDocument setup, Reaction reaction, Wording words, Figures before) {

    Telling(SetupDocument setup, Reaction reaction, Wording words) {
      this(setup, reaction, words, FiguresComputation.of(setup));
    }

    ReactionLines lines() {
      WayWords ways = new WayWords(setup, before, words);
      String untouched = sentences(untouched(ways, reaction.untouched()));
      return switch (reaction) {
        case Reaction.Turns turns ->
            lines(
                untouched(untouched),
                turns.ways().stream().map(way -> ways.lines(way)).toList(),
                "");
        case Reaction.ChangeNothing _ ->
            lines(
                words.say("reacting.untouched.asItWas"),
                List.of(),
                words.say("reacting.instead.nothing"));
        case Reaction.NothingHelps _ ->
            lines(untouched(untouched), List.of(), words.say("reacting.instead.noDial"));
        case Reaction.NotKnown(_, _, List<String> needs) ->
            lines(
                untouched(untouched),
                List.of(),
                words.say(
                    "reacting.instead.notKnown",
                    new MissingWords(setup, words).sentence(needs, ".*")));
      };
    }

    private ReactionLines lines(String untouched, List<WayLines> ways, String instead) {
      return new ReactionLines(happened(), untouched, ways, instead, cautions());
    }

    private String untouched(String said) {
      return said.isEmpty()
          ? words.say("reacting.untouched.asItWas")
          : words.say("reacting.untouched", said);
    }

    private List<String> untouched(WayWords ways, Way untouched) {
      List<String> said = new ArrayList<>(ways.left(untouched));
      if (reaction.happening() instanceof Happening.LightMoved(LightId id, _)) {
        ways.softness(id, untouched).ifPresent(said::add);
        said.add(words.say("reacting.cost.meter", name(id)));
      }
      return said;
    }

    private String happened() {
      return switch (reaction.happening()) {
        case Happening.AmbientReads(Ev100 level) -> reads(level);
        case Happening.AmbientFalls(Stops stops) ->
            words.say(
                stops.value() < 0 ? "reacting.happened.rises" : "reacting.happened.falls",
                words.stops(stops.abs().value()));
        case Happening.LightMoved(LightId id, _) -> moved(id);
        case Happening.HeadDead(LightId id) -> dead(id);
      };
    }

    private String reads(Ev100 level) {
      Stops change = setup.ambient().map(Ambient::level).map(level::minus).orElse(Stops.ZERO);
      return words.isNothing(change)
          ? words.say("reacting.happened.readsAlike", words.level(level))
          : words.say("reacting.happened.reads", words.level(level), words.change(change));
    }

    private String moved(LightId id) {
      LightFigures was = before.get(id);
      LightFigures is = reaction.untouched().figures().get(id);
      return words.say(
          "reacting.happened.moved",
          name(id),
          words.length(is.distance()),
          words.length(was.distance()));
    }

    private String dead(LightId id) {
      Light light = before.get(id).light();
      return light.heads() > 1
          ? words.say("reacting.happened.deadOf", name(id), light.heads())
          : words.say("reacting.happened.dead", name(id));
    }

    private String name(LightId id) {
      return words.light(setup.numbersInBuildOrder().getOrDefault(id, 0), before.get(id).light());
    }

    private List<String> cautions() {
      String first = words.say("reacting.caution.first");
      return switch (reaction.happening()) {
        case Happening.LightMoved _ -> List.of(words.say("reacting.caution.moved"), first);
        case Happening.HeadDead _ -> List.of(words.say("reacting.caution.dead"), first);
        case Happening.AmbientReads _, Happening.AmbientFalls _ -> List.of();
      };
    }

    private static String sentences(List<String> said) {
      return String.join(" ", said);
    }
  }
}
