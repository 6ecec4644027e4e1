package lampwright.setup.adapting;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.GearForms;
import lampwright.setup.LightId;

/**
 * What an adaptation must not do, and how far it may go.
 *
 * @param body the only body to be used, by its name in the kit
 * @param lens the only lens to be used, by its name in the kit
 * @param ambientWithin by how much the ambient's offset may differ from the setup's
 * @param lightWithin by how much a light may miss its level, whatever that costs in other matters;
 *     absent leaves it to the cost, and a light counts as made within {@link #USUALLY_MADE_WITHIN}
 * @param softnessWithin by how many doublings a light may look larger or smaller from its target
 * @param lightsMayMove whether a light may come nearer or go farther on its line to its target
 * @param nearest no light is moved nearer to its target than this
 * @param headsPerLight as many heads as may make one light
 * @param popsPerLight as many flashes as a light may give for one picture, where the subject stands
 *     still; absent leaves each light its own
 * @param frames that the batteries must last for; absent means the setup's plan, if it has one
 * @param betweenFrames that every head must be ready after; absent means the setup's plan
 * @param mayGiveUp lights that may be left out
 */
public record Limits(
    Optional<Iso> isoAtMost,
    Optional<FNumber> keepFNumber,
    Optional<ShutterTime> keepTime,
    Optional<String> body,
    Optional<String> lens,
    Optional<Stops> ambientWithin,
    Optional<Stops> lightWithin,
    Optional<Double> softnessWithin,
    boolean lightsMayMove,
    Metres nearest,
    int headsPerLight,
    Optional<Integer> popsPerLight,
    Optional<Integer> frames,
    Optional<Seconds> betweenFrames,
    List<LightId> mayGiveUp) {

  /** A light a whole stop beside its level is another light; common practice, no source. */
  public static final Stops USUALLY_MADE_WITHIN = Stops.ONE;

  /** Nearer than this a head is in somebody's face; common practice, no source. */
  private static final Metres USUAL_NEAREST = new Metres(0.5);

  /** Two heads on a bracket are common, more are an effort. */
  private static final int USUAL_HEADS = 2;

  private static final Field<Limits, Optional<Iso>> ISO =
      optional("iso_at_most", GearForms.iso(), Limits::isoAtMost, "No higher ISO than this.");
  private static final Field<Limits, Optional<FNumber>> F_NUMBER =
      optional("keep_f_number", GearForms.fNumber(), Limits::keepFNumber, "This aperture only.");
  private static final Field<Limits, Optional<ShutterTime>> TIME =
      optional("keep_time", GearForms.shutterTime(), Limits::keepTime, "This shutter time only.");
  private static final Field<Limits, Optional<String>> BODY =
      optional("body", GearForms.name(), Limits::body, "This body of the kit only, by its name.");
  private static final Field<Limits, Optional<String>> LENS =
      optional("lens", GearForms.name(), Limits::lens, "This lens of the kit only, by its name.");
  private static final Field<Limits, Optional<Stops>> AMBIENT_WITHIN =
      optional(
          "ambient_within_stops",
          GearForms.stops(0, 20),
          Limits::ambientWithin,
          "The ambient's offset must not differ by more than this.");
  private static final Field<Limits, Optional<Stops>> LIGHT_WITHIN =
      optional(
          "light_within_stops",
          GearForms.stops(0, 20),
          Limits::lightWithin,
          "No light may miss its level by more than this, whatever else suffers. Left out, levels"
              + " are weighed against the rest, and a light within 1 stop counts as made.");
  private static final Field<Limits, Optional<Double>> SOFTNESS_WITHIN =
      optional(
          "softness_within_doublings",
          Forms.number("").atLeast(0).atMost(20).maybe(1),
          Limits::softnessWithin,
          "No light may look larger or smaller from its target by more doublings than this.");
  private static final Field<Limits, Boolean> MAY_MOVE =
      usually(
          false,
          "lights_may_move",
          Forms.flag(),
          Limits::lightsMayMove,
          "Whether a light may come nearer or go farther on its line to its target, out of the"
              + " frame; usually not.");
  private static final Field<Limits, Metres> NEAREST =
      usually(
          USUAL_NEAREST,
          "nearest_m",
          GearForms.length(50, 0.5),
          Limits::nearest,
          "No light is moved nearer to its target than this; usually 0.5 m.");
  private static final Field<Limits, Integer> HEADS =
      usually(
          USUAL_HEADS,
          "heads_per_light_at_most",
          Forms.count(1, 12),
          Limits::headsPerLight,
          "As many heads as may make one light; usually 2, and no fewer than the setup has there.");
  private static final Field<Limits, Optional<Integer>> POPS =
      optional(
          "pops_per_light_at_most",
          Forms.count(1, 64),
          Limits::popsPerLight,
          "As many flashes as a light may give for one picture while the shutter is open, where"
              + " nobody moves; left out, each light keeps its own.");
  private static final Field<Limits, Optional<Integer>> FRAMES =
      optional(
          "frames",
          Forms.count(1, 100_000),
          Limits::frames,
          "The batteries must last for so many frames; left out, for those of the setup's plan.");
  private static final Field<Limits, Optional<Seconds>> BETWEEN =
      optional(
          "seconds_between_frames",
          Forms.number("s")
              .moreThan(0)
              .atLeast(0.01)
              .atMost(3_600)
              .maybe(2)
              .as(Seconds::new, Seconds::value),
          Limits::betweenFrames,
          "Every head must be ready again after this; left out, the pace of the setup's plan.");
  private static final Field<Limits, List<LightId>> MAY_GIVE_UP =
      list("may_give_up", LightId.FORM, 40, Limits::mayGiveUp, "Lights that may be left out.");

  public static final ObjectForm<Limits> FORM =
      ObjectForm.of(
          "limits",
          "What an adaptation must not do, and how far it may go.",
          values ->
              new Limits(
                  values.get(ISO),
                  values.get(F_NUMBER),
                  values.get(TIME),
                  values.get(BODY),
                  values.get(LENS),
                  values.get(AMBIENT_WITHIN),
                  values.get(LIGHT_WITHIN),
                  values.get(SOFTNESS_WITHIN),
                  values.get(MAY_MOVE),
                  values.get(NEAREST),
                  values.get(HEADS),
                  values.get(POPS),
                  values.get(FRAMES),
                  values.get(BETWEEN),
                  values.get(MAY_GIVE_UP)),
          List.of(
              ISO,
              F_NUMBER,
              TIME,
              BODY,
              LENS,
              AMBIENT_WITHIN,
              LIGHT_WITHIN,
              SOFTNESS_WITHIN,
              MAY_MOVE,
              NEAREST,
              HEADS,
              POPS,
              FRAMES,
              BETWEEN,
              MAY_GIVE_UP));

  public Limits {
    mayGiveUp = List.copyOf(mayGiveUp);
  }

  /** No limits beyond what the gear can do and what usually holds. */
  public static Limits none() {
    return camera(Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** Limits of the camera's settings only. */
  public static Limits camera(
      Optional<Iso> isoAtMost, Optional<FNumber> keepFNumber, Optional<ShutterTime> keepTime) {
    return new Limits(
        isoAtMost,
        keepFNumber,
        keepTime,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        USUAL_NEAREST,
        USUAL_HEADS,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  /** By how much a light may miss its level and still count as made. */
  Stops madeWithin() {
    return lightWithin.orElse(USUALLY_MADE_WITHIN);
  }

  /** The same with levels and ambient held so near, and softness within so many doublings. */
  Limits within(Stops stops, double doublings) {
    return new Limits(
        isoAtMost,
        keepFNumber,
        keepTime,
        body,
        lens,
        Optional.of(stops),
        Optional.of(stops),
        Optional.of(doublings),
        lightsMayMove,
        nearest,
        headsPerLight,
        popsPerLight,
        frames,
        betweenFrames,
        mayGiveUp);
  }

  /** The same with so many flashes for each picture at most. */
  Limits withPops(int pops) {
    return new Limits(
        isoAtMost,
        keepFNumber,
        keepTime,
        body,
        lens,
        ambientWithin,
        lightWithin,
        softnessWithin,
        lightsMayMove,
        nearest,
        headsPerLight,
        Optional.of(pops),
        frames,
        betweenFrames,
        mayGiveUp);
  }
}
