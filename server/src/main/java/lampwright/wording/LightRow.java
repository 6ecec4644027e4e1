package lampwright.wording;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.language.Notation;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;

/**
 * One light of a setup, as the table of lights prints it.
 *
 * @param number its place in the build order, as on the plan
 * @param role what it is for ("Key")
 * @param gear head, modifier and gel in words
 * @param power as its head shows it
 * @param reading what a meter gives at its target ("f/5.6"); "–" where that is not known
 * @param known how the reading is known, in a word; empty where it is not
 * @param level stops from the shooting exposure ("−1.7"), or that they are not known
 * @param uncertainty of the level, as "±0.3"; empty where none is known
 * @param distance from its target
 * @param off how far the reading is from what the model gives, where both are known
 * @param reason why the light is there; may be empty
 * @param onRuler where it stands on the stop ruler, and how sure that is
 * @param workings how the reading was computed, and what its uncertainty is made of; may be empty
 */
public record LightRow(
    LightId id,
    int number,
    String role,
    String gear,
    String power,
    String reading,
    String known,
    String level,
    String uncertainty,
    String distance,
    Optional<Deviation> off,
    String reason,
    Optional<OnRuler> onRuler,
    List<WorkingStep> workings) {

  public LightRow {
    workings = List.copyOf(workings);
  }

  /**
   * A place on the stop ruler.
   *
   * @param fromShooting from the shooting exposure
   * @param uncertainty one standard deviation
   */
  public record OnRuler(Stops fromShooting, Stops uncertainty) {}

  /** The rows of a setup's lights, in build order. */
  public static List<LightRow> all(SetupDocument setup, Figures figures, Notation notation) {
    Wording words = new Wording(notation);
    return setup.lightsInBuildOrder().stream()
        .map(
            light ->
                of(
                    figures.get(light.id()),
                    setup.numbersInBuildOrder().getOrDefault(light.id(), 0),
                    words))
        .toList();
  }

  private static LightRow of(LightFigures figures, int number, Wording words) {
    Light light = figures.light();
    Optional<Level> level = figures.level();
    return new LightRow(
        light.id(),
        number,
        words.role(light.role()),
        words.gear(light.heads(), light.head(), light.modifier(), light.gels()),
        words.power(light.head(), light.stopsDown()),
        level.map(l -> words.reading(l.reading())).orElse("–"),
        level.map(Level::known).map(words::known).orElse(""),
        level.map(l -> words.signed(l.fromShooting())).orElseGet(words::notKnown),
        level.map(l -> words.giveOrTake(l.uncertainty())).orElse(""),
        words.length(figures.distance()),
        figures.computedMinusMetered().map(Stops::negated).map(off -> Deviation.of(off, words)),
        light.reason().orElse(""),
        level.map(l -> new OnRuler(l.fromShooting(), l.uncertainty())),
        level.map(l -> workings(l, words)).orElse(List.of()));
  }

  private static List<WorkingStep> workings(Level level, Wording words) {
    return List.of(
        WorkingStep.of(level.working(), words), WorkingStep.of(level.budget().working(), words));
  }
}
