package lampwright.setup.adapting;

import static lampwright.document.Field.optional;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;

/** Weights that somebody sets by hand in the place of a preset's; what is absent stays as it is. */
public record WeightChanges(
    Optional<Double> ambient,
    Optional<Double> depth,
    Optional<Double> time,
    Optional<Double> iso,
    Optional<Double> framing,
    Optional<Double> softness,
    Optional<Double> colour,
    Optional<Double> evenness,
    Optional<Double> carryPerKg,
    Optional<Double> pacePerSecond,
    Optional<Double> handling,
    Optional<Double> touch,
    Optional<Double> givenUp) {

  /** More would only drown every other matter. */
  private static final double MOST = 100;

  private static final Field<WeightChanges, Optional<Double>> AMBIENT =
      weight(
          "ambient",
          WeightChanges::ambient,
          "For a stop by which the ambient's offset differs; beyond a stop and a half it counts"
              + " twice.");
  private static final Field<WeightChanges, Optional<Double>> DEPTH =
      weight(
          "depth",
          WeightChanges::depth,
          "For a stop by which the aperture differs from the one with the setup's depth of field.");
  private static final Field<WeightChanges, Optional<Double>> TIME =
      weight(
          "time",
          WeightChanges::time,
          "For a stop by which the shutter time differs; three times that where a subject moves.");
  private static final Field<WeightChanges, Optional<Double>> ISO =
      weight("iso", WeightChanges::iso, "For a stop of ISO above the body's lowest.");
  private static final Field<WeightChanges, Optional<Double>> FRAMING =
      weight(
          "framing",
          WeightChanges::framing,
          "For a doubling or halving of what the lens takes in at the subject.");
  private static final Field<WeightChanges, Optional<Double>> COLOUR =
      weight(
          "colour", WeightChanges::colour, "For a hundred mired by which a light's gels differ.");
  private static final Field<WeightChanges, Optional<Double>> EVENNESS =
      weight(
          "evenness",
          WeightChanges::evenness,
          "For a stop that the shutter takes from an edge of the frame, times the light's role.");
  private static final Field<WeightChanges, Optional<Double>> HANDLING =
      weight(
          "handling",
          WeightChanges::handling,
          "For one more head or flash on a light than the setup has, or a light that is moved.");
  private static final Field<WeightChanges, Optional<Double>> TOUCH =
      weight(
          "touch",
          WeightChanges::touch,
          "For a dial that must be touched against the setup as it stands.");
  private static final Field<WeightChanges, Optional<Double>> GIVEN_UP =
      weight(
          "given_up",
          WeightChanges::givenUp,
          "A light that is given up counts as a miss by so many stops.");
  private static final Field<WeightChanges, Optional<Double>> SOFTNESS =
      weight(
          "softness",
          WeightChanges::softness,
          "For a doubling or halving of a light's size as its target sees it.");
  private static final Field<WeightChanges, Optional<Double>> CARRY =
      weight("carry_per_kg", WeightChanges::carryPerKg, "For a kilogram of head and modifier.");
  private static final Field<WeightChanges, Optional<Double>> PACE =
      weight(
          "pace_per_s",
          WeightChanges::pacePerSecond,
          "For a second of the longest wait from frame to frame.");

  public static final ObjectForm<WeightChanges> FORM =
      ObjectForm.of(
          "weights",
          "What counts how much, in stops, where the preset's weight does not fit: a stop by which"
              + " the key misses its level counts 3, a fill 1.5, an accent 0.75, any other light"
              + " 1.",
          values ->
              new WeightChanges(
                  values.get(AMBIENT),
                  values.get(DEPTH),
                  values.get(TIME),
                  values.get(ISO),
                  values.get(FRAMING),
                  values.get(SOFTNESS),
                  values.get(COLOUR),
                  values.get(EVENNESS),
                  values.get(CARRY),
                  values.get(PACE),
                  values.get(HANDLING),
                  values.get(TOUCH),
                  values.get(GIVEN_UP)),
          List.of(
              AMBIENT, DEPTH, TIME, ISO, FRAMING, SOFTNESS, COLOUR, EVENNESS, CARRY, PACE, HANDLING,
              TOUCH, GIVEN_UP));

  private static Field<WeightChanges, Optional<Double>> weight(
      String name, Function<WeightChanges, Optional<Double>> of, String what) {
    return optional(name, Forms.number("").atLeast(0).atMost(MOST).maybe(1), of, what);
  }

  /** Leaves every weight as the preset has it. */
  public static WeightChanges none() {
    return new WeightChanges(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The weights with these in the place of their own. */
  public Weights in(Weights weights) {
    return new Weights(
        ambient.orElse(weights.ambient()),
        depth.orElse(weights.depth()),
        time.orElse(weights.time()),
        iso.orElse(weights.iso()),
        framing.orElse(weights.framing()),
        softness.orElse(weights.softness()),
        colour.orElse(weights.colour()),
        evenness.orElse(weights.evenness()),
        carryPerKg.orElse(weights.carryPerKg()),
        pacePerSecond.orElse(weights.pacePerSecond()),
        handling.orElse(weights.handling()),
        touch.orElse(weights.touch()),
        givenUp.orElse(weights.givenUp()));
  }
}
