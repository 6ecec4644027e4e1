package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.power.Beaufort;
import lampwright.engine.power.StandInWind;
import lampwright.engine.power.Wind;
import lampwright.engine.unit.Kilograms;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.NewtonMetres;
import lampwright.engine.unit.Newtons;
import lampwright.language.Said;
import lampwright.setup.LightId;

/**
 * What the wind does to a light on its stand: whether a plan is plausible, and no permission.
 *
 * @param stand as it is loaded
 * @param wind with its gusts; absent where it is not known
 * @param assumptions what was taken where the document says nothing, in words
 */
public record WindFigures(
    LightId light, StandInWind stand, Optional<Wind> wind, List<Said> assumptions) {

  /** How many times over the moment must be held: common practice, no source; near people 2. */
  public static final double SAFETY_FACTOR = 1.5;

  /** Gusts over the mean: a judgement within the usual 1.5 to 2, from memory. */
  public static final double GUST_FACTOR = 1.6;

  /** What to mind; it goes before every number here. */
  public static final List<Said> CAUTIONS =
      List.of(Said.of("caution.wind.noPermission"), Said.of("caution.wind.ground"));

  /**
   * What the wind does without its gusts.
   *
   * @param massNeeded in all, with the safety factor
   * @param ballast what is missing of that
   */
  public record Push(Newtons force, NewtonMetres moment, Kilograms massNeeded, Kilograms ballast) {}

  public WindFigures {
    assumptions = List.copyOf(assumptions);
  }

  /** What the mean wind alone does; gusts decide. */
  public Optional<Push> steady() {
    return wind.map(w -> Wind.steady(w.mean()))
        .map(
            mean ->
                new Push(
                    stand.force(mean),
                    stand.moment(mean),
                    stand.massNeeded(mean, SAFETY_FACTOR),
                    stand.ballast(mean, SAFETY_FACTOR)));
  }

  /** Of a gust on the face. */
  public Optional<Newtons> force() {
    return wind.map(stand::force);
  }

  /** That would tip it. */
  public Optional<NewtonMetres> moment() {
    return wind.map(stand::moment);
  }

  /** What is missing, with the safety factor; 0 where it has as much as the factor asks. */
  public Optional<Kilograms> ballast() {
    return wind.map(w -> stand.ballast(w, SAFETY_FACTOR));
  }

  /** The mean wind whose gusts use up the safety factor. */
  public MetresPerSecond speedWithMargin() {
    return stand.speedHeld(gusts(), SAFETY_FACTOR);
  }

  /** The mean wind whose gusts tip it on firm level ground. */
  public MetresPerSecond speedAtWhichItGoes() {
    return stand.speedHeld(gusts(), 1);
  }

  /** The gust, or steady wind, that tips it on firm level ground. */
  public MetresPerSecond gustAtWhichItGoes() {
    return stand.speedHeld(Wind.steady(new MetresPerSecond(0)), 1);
  }

  /** Its force number; absent where the wind is not known. */
  public Optional<Beaufort> beaufort() {
    return wind.map(Wind::force);
  }

  private Wind gusts() {
    return wind.orElseGet(() -> Wind.of(new MetresPerSecond(0), GUST_FACTOR));
  }

  /** The steps to the figures. */
  public List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    wind.ifPresent(w -> workings.add(stand.ballastWorking(w, SAFETY_FACTOR)));
    workings.add(stand.speedHeldWorking(gusts(), 1));
    return workings;
  }
}
