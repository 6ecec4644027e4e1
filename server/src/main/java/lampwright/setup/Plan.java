package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.power.Mains;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Volts;

/**
 * The pace and the number of frames that somebody wishes for.
 *
 * @param betweenFrames from one frame to the next
 * @param frames of the whole session
 * @param mains the supply of the heads that hang on it
 */
public record Plan(Optional<Seconds> betweenFrames, Optional<Integer> frames, Mains mains) {

  /** A supply as it is where nothing is said: its voltage, and what plain chargers make of it. */
  public static final Mains USUAL_MAINS = new Mains(new Volts(230), 0.65);

  private static final Field<Plan, Optional<Seconds>> BETWEEN =
      optional(
          "seconds_between_frames",
          Forms.number("s")
              .moreThan(0)
              .atLeast(0.01)
              .atMost(3_600)
              .maybe(2)
              .as(Seconds::new, Seconds::value),
          Plan::betweenFrames,
          "Seconds from one frame to the next.");
  private static final Field<Plan, Optional<Integer>> FRAMES =
      optional("frames", Forms.count(1, 100_000), Plan::frames, "Frames of the whole session.");
  private static final Field<Plan, Volts> VOLTS =
      usually(
          USUAL_MAINS.voltage(),
          "mains_volts",
          Forms.number("V").atLeast(80).atMost(480).maybe(230).as(Volts::new, Volts::value),
          plan -> plan.mains().voltage(),
          "The voltage of the mains; usually 230.");
  private static final Field<Plan, Double> POWER_FACTOR =
      usually(
          USUAL_MAINS.powerFactor(),
          "power_factor",
          Forms.number("").atLeast(0.3).atMost(1).maybe(0.65),
          plan -> plan.mains().powerFactor(),
          "What part of the current does work; usually 0.65, as chargers without correction draw.");

  static final ObjectForm<Plan> FORM =
      ObjectForm.of(
          "plan",
          "The pace and the number of frames that are wished for, and the mains that feed it.",
          values ->
              new Plan(
                  values.get(BETWEEN),
                  values.get(FRAMES),
                  new Mains(values.get(VOLTS), values.get(POWER_FACTOR))),
          List.of(BETWEEN, FRAMES, VOLTS, POWER_FACTOR));
}
