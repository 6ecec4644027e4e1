package lampwright.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Form;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.gear.Kit;
import lampwright.language.Notation;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.reacting.Means;
import lampwright.setup.reacting.Miss;
import lampwright.setup.reacting.Reaction;
import lampwright.setup.reacting.ReactionQuestion;
import lampwright.setup.reacting.Reactions;
import lampwright.setup.reacting.Way;
import lampwright.wording.ReactionLines;

/**
 * What to change now. A request has {@code happening}, which is one of {@code {"ambient_ev100":
 * n}}, {@code {"ambient_falls_stops": n}}, {@code {"moved": {"light": id, "place": [x, y, z]}}} and
 * {@code {"dead": id}}; {@code keep} may list dials of the camera that must stay, and {@code kit}
 * may be a kit as REST writes it, of which the spare heads and filters count.
 *
 * <p>The answer has {@code outcome} ("turns", "change_nothing", "nothing_helps", "not_known"),
 * {@code happened}, {@code untouched}, {@code instead} and {@code cautions} in words, and {@code
 * ways}, best first: {@code dials} (a number), {@code dials_said}, {@code holds_all}, {@code
 * turns}, {@code then} and {@code costs} in words, {@code given_up} (ids), {@code misses} (of the
 * {@code ambient}, left out where it is not known, and by light's id in {@code lights}; exact, in
 * stops), {@code loss} and the changed {@code document}.
 */
record AskedNow(SetupDocument setup, ReactionQuestion question, Means means, Notation notation) {

  /** What is asked, where a request asks; problems point into it as into one document. */
  static Optional<AskedNow> find(Request request, SetupDocument setup, Problems problems) {
    if (request.question().isEmpty() || !request.wanted().contains(Part.NOW)) {
      return Optional.empty();
    }
    Optional<ReactionQuestion> question =
        read(ReactionQuestion.FORM, request.question().get(), Pointer.root(), problems);
    question.ifPresent(q -> q.check(setup, Pointer.root().field("happening"), problems));
    Optional<Kit> kit =
        request.kit().flatMap(k -> read(Kit.FORM, k, Pointer.root().field("kit"), problems));
    Means free = kit.map(k -> Means.of(setup, k)).orElseGet(Means::ofSetup);
    return question.map(q -> new AskedNow(setup, q, q.means(free), request.notation()));
  }

  private static <T> Optional<T> read(Form<T> form, Object plain, Pointer at, Problems problems) {
    return form.read(plain, at, problems);
  }

  Map<String, Object> answer() {
    Reaction reaction = Reactions.to(setup, question.happening(), means);
    ReactionLines lines = ReactionLines.of(setup, reaction, notation);
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("outcome", outcome(reaction));
    told.put("happened", lines.happened());
    told.put("untouched", lines.untouched());
    told.put("instead", lines.instead());
    told.put("cautions", lines.cautions());
    told.put("ways", ways(reaction, lines));
    return told;
  }

  private static String outcome(Reaction reaction) {
    return switch (reaction) {
      case Reaction.Turns _ -> "turns";
      case Reaction.ChangeNothing _ -> "change_nothing";
      case Reaction.NothingHelps _ -> "nothing_helps";
      case Reaction.NotKnown _ -> "not_known";
    };
  }

  private static List<Object> ways(Reaction reaction, ReactionLines lines) {
    List<Object> ways = new ArrayList<>();
    if (reaction instanceof Reaction.Turns turns) {
      for (int i = 0; i < turns.ways().size(); i++) {
        ways.add(way(turns.ways().get(i), lines.ways().get(i)));
      }
    }
    return ways;
  }

  private static Map<String, Object> way(Way way, ReactionLines.WayLines lines) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("dials", way.dials());
    told.put("dials_said", lines.dials());
    told.put("holds_all", lines.holdsAll());
    told.put("turns", lines.turns());
    told.put("then", lines.then());
    told.put("costs", lines.costs());
    told.put("given_up", way.givenUp().stream().map(LightId::text).toList());
    told.put("misses", misses(way));
    told.put("loss", way.loss());
    told.put("document", SetupDocument.FORM.writeObject(way.document()));
    return told;
  }

  private static Map<String, Object> misses(Way way) {
    Map<String, Object> lights = new LinkedHashMap<>();
    for (Miss miss : way.misses()) {
      miss.light().ifPresent(id -> lights.put(id.text(), miss.stops().value()));
    }
    Map<String, Object> told = new LinkedHashMap<>();
    way.ambientMiss().ifPresent(miss -> told.put("ambient", miss.value()));
    told.put("lights", lights);
    return told;
  }
}
