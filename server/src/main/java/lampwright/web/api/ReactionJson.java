package lampwright.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.reacting.Miss;
import lampwright.setup.reacting.Reaction;
import lampwright.setup.reacting.Turn;
import lampwright.setup.reacting.Way;
import lampwright.wording.ReactionLines;

/**
 * What to change now, as the API tells it.
 *
 * @param outcome {@code turns}, {@code change_nothing}, {@code nothing_helps} or {@code not_known}
 * @param happened in words
 * @param untouched what the setup is like if nobody touches anything
 * @param ways best first
 * @param instead in words, where there are no ways; else empty
 * @param needs what the setup would have to say, as JSON Pointers
 */
public record ReactionJson(
    String outcome,
    String happened,
    StateJson untouched,
    List<WayJson> ways,
    String instead,
    List<String> needs,
    List<String> cautions) {

  static ReactionJson of(SetupDocument setup, Reaction reaction) {
    ReactionLines lines = ReactionLines.of(setup, reaction, InEnglish.NOTATION);
    StateJson untouched = StateJson.of(reaction.untouched(), lines.untouched());
    return switch (reaction) {
      case Reaction.Turns turns ->
          new ReactionJson(
              "turns",
              lines.happened(),
              untouched,
              ways(turns.ways(), lines.ways()),
              "",
              List.of(),
              lines.cautions());
      case Reaction.ChangeNothing _ -> without("change_nothing", untouched, List.of(), lines);
      case Reaction.NothingHelps _ -> without("nothing_helps", untouched, List.of(), lines);
      case Reaction.NotKnown notKnown -> without("not_known", untouched, notKnown.needs(), lines);
    };
  }

  private static ReactionJson without(
      String outcome, StateJson untouched, List<String> needs, ReactionLines lines) {
    return new ReactionJson(
        outcome, lines.happened(), untouched, List.of(), lines.instead(), needs, lines.cautions());
  }

  private static List<WayJson> ways(List<Way> ways, List<ReactionLines.WayLines> lines) {
    List<WayJson> told = new ArrayList<>();
    for (int i = 0; i < ways.size(); i++) {
      told.add(WayJson.of(ways.get(i), lines.get(i)));
    }
    return told;
  }

  /**
   * How a setup is then.
   *
   * @param holdsAll whether every light shines and everything is within a third of where it was
   * @param givenUp lights that do not shine
   * @param loss everything that is lost, in weighted stops
   */
  public record StateJson(
      String words,
      boolean holdsAll,
      List<String> givenUp,
      List<MissJson> misses,
      double loss,
      Map<String, Object> document) {

    static StateJson of(Way way, String words) {
      return new StateJson(
          words,
          way.holdsAll(),
          way.givenUp().stream().map(LightId::text).toList(),
          way.misses().stream().map(MissJson::of).toList(),
          way.loss(),
          SetupDocument.FORM.writeObject(way.document()));
    }
  }

  /**
   * How far something is from where it was.
   *
   * @param light absent for the ambient
   * @param stops plus is brighter
   */
  public record MissJson(Optional<String> light, double stops) {

    static MissJson of(Miss miss) {
      return new MissJson(miss.light().map(LightId::text), miss.stops().value());
    }
  }

  /**
   * One way.
   *
   * @param dials how many things a hand turns
   * @param costs what it costs besides, in words
   * @param longerStops how much longer the shutter is open
   * @param deeperStops how much smaller the aperture is
   * @param noisierStops how much more sensitive the camera is
   * @param strongerStops how much more energy a frame takes
   */
  public record WayJson(
      int dials,
      List<TurnJson> turns,
      StateJson then,
      List<String> costs,
      double longerStops,
      double deeperStops,
      double noisierStops,
      double strongerStops) {

    static WayJson of(Way way, ReactionLines.WayLines lines) {
      List<TurnJson> turns = new ArrayList<>();
      for (int i = 0; i < way.turns().size(); i++) {
        turns.add(TurnJson.of(way.turns().get(i), lines.turns().get(i)));
      }
      return new WayJson(
          way.dials(),
          turns,
          StateJson.of(way, lines.then()),
          lines.costs(),
          way.price().longer().value(),
          way.price().deeper().value(),
          way.price().noisier().value(),
          way.price().stronger().value());
    }
  }

  /**
   * One thing to turn.
   *
   * @param what {@code time}, {@code aperture}, {@code iso}, {@code filter}, {@code power} or
   *     {@code head}
   * @param light that it is about; absent for the camera
   */
  public record TurnJson(String what, Optional<String> light, String words) {

    static TurnJson of(Turn turn, String words) {
      return switch (turn) {
        case Turn.Time _ -> new TurnJson("time", Optional.empty(), words);
        case Turn.Aperture _ -> new TurnJson("aperture", Optional.empty(), words);
        case Turn.Speed _ -> new TurnJson("iso", Optional.empty(), words);
        case Turn.Filter _ -> new TurnJson("filter", Optional.empty(), words);
        case Turn.Power of -> new TurnJson("power", Optional.of(of.light().text()), words);
        case Turn.Replacement of -> new TurnJson("head", Optional.of(of.light().text()), words);
      };
    }
  }
}
