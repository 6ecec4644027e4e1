package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.power.ShutterLoss;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Head;
import lampwright.setup.Light;

/** What a body's shutter does to flashes, at any time. */
final class ShutterComputation {

  /** Rounding of doubles, as a share of the time. */
  private static final double ROUNDING = 1e-9;

  /** A shorter window lets nothing through that anybody could see, in seconds. */
  private static final double NO_WINDOW_S = 1e-8;

  /** Less than this at an edge is not worth a warning: a tenth of a stop. */
  private static final double SEEN = 0.1;

  private final Body body;

  ShutterComputation(Body body) {
    this.body = body;
  }

  /** Asks whether a time is shorter than the body's sync time. */
  boolean isFasterThanSync(ShutterTime time) {
    return time.seconds() < body.sync().seconds() * (1 - ROUNDING);
  }

  /** How a head's flash dies away; absent where its duration is not known. */
  static Optional<FlashPulse> pulse(Head head) {
    return head.durationT05()
        .map(
            half ->
                head.control() == Head.FlashControl.CUT
                    ? new FlashPulse.Cut(half)
                    : new FlashPulse.Voltage(half));
  }

  /** What the shutter takes from a light whose power is so far down, at a time. */
  ShutterEffect effect(Light light, Optional<Stops> down, ShutterTime time) {
    return body.shutter() == Body.Shutter.LEAF
        ? leaf(light, down, time)
        : focalPlane(light, down, time);
  }

  private ShutterEffect.Inputs inputs(Light light, Optional<Stops> down, ShutterTime time) {
    boolean leaf = body.shutter() == Body.Shutter.LEAF;
    return new ShutterEffect.Inputs(
        time,
        leaf
            ? Optional.empty()
            : body.curtainTravel().or(() -> Optional.of(body.sync().toSeconds())),
        light.head().durationT05(),
        down,
        light.head().longBurstEfficiency());
  }

  private ShutterEffect leaf(Light light, Optional<Stops> down, ShutterTime time) {
    Optional<Stops> loss =
        pulse(light.head())
            .flatMap(pulse -> down.map(d -> ShutterLoss.leaf(pulse, d, time.toSeconds())));
    List<String> warnings = new ArrayList<>(1);
    if (isFasterThanSync(time)) {
      warnings.add("The shutter's shortest time is " + body.sync() + ".");
    }
    if (loss.isPresent() && loss.get().value() > SEEN) {
      warnings.add(
          "The leaf shutter closes before the flash is over and takes "
              + stops(loss.get())
              + " from the whole frame; a meter at the target does not see it.");
    }
    return new ShutterEffect(
        false,
        loss,
        loss.map(whole -> Stops.ZERO),
        1,
        Known.COMPUTED,
        warnings,
        inputs(light, down, time));
  }

  private ShutterEffect focalPlane(Light light, Optional<Stops> down, ShutterTime time) {
    boolean faster = isFasterThanSync(time);
    Optional<Double> burst = light.head().longBurstEfficiency();
    Known known = body.curtainTravel().isPresent() ? Known.COMPUTED : Known.ESTIMATED;
    Seconds travel = body.curtainTravel().orElseGet(() -> body.sync().toSeconds());
    if (faster && burst.isPresent()) {
      Stops loss = ShutterLoss.longBurst(time.toSeconds(), travel, burst.get());
      return new ShutterEffect(
          true,
          Optional.of(loss),
          Optional.of(Stops.ZERO),
          1,
          known,
          List.of(
              "Long burst, because the time is shorter than sync ("
                  + body.sync()
                  + "): it takes "
                  + stops(loss)
                  + ", and movement blurs with the shutter."),
          inputs(light, down, time));
    }
    if (body.curtainTravel().isEmpty() && !faster) {
      return new ShutterEffect(
          false,
          Optional.of(Stops.ZERO),
          Optional.empty(),
          1,
          Known.COMPUTED,
          List.of(),
          inputs(light, down, time));
    }
    double window = time.seconds() - travel.value();
    if (window < NO_WINDOW_S) {
      double share = ShutterLoss.litShare(time.toSeconds(), travel);
      return new ShutterEffect(
          false,
          Optional.of(Stops.ZERO),
          Optional.empty(),
          share,
          known,
          List.of(
              "The flash lights only "
                  + Bounds.rounded(share * 100, 0)
                  + " % of the frame: "
                  + time
                  + " is shorter than sync ("
                  + body.sync()
                  + ") and the head has no long burst."),
          inputs(light, down, time));
    }
    Optional<Stops> edge =
        pulse(light.head())
            .flatMap(
                pulse ->
                    down.flatMap(d -> ShutterLoss.syncEdge(pulse, d, time.toSeconds(), travel)));
    return new ShutterEffect(
        false,
        Optional.of(Stops.ZERO),
        edge,
        1,
        known,
        edgeWarnings(edge, faster),
        inputs(light, down, time));
  }

  private List<String> edgeWarnings(Optional<Stops> edge, boolean faster) {
    List<String> warnings = new ArrayList<>(2);
    if (faster) {
      warnings.add("The time is shorter than sync (" + body.sync() + ").");
    }
    if (edge.isPresent() && edge.get().value() > SEEN) {
      warnings.add(
          "The edge of the frame that is exposed first loses "
              + stops(edge.get())
              + " of this flash, because it lasts longer than the whole frame is open. Maybe a"
              + " longer time, or less power?");
    }
    return warnings;
  }

  private static String stops(Stops loss) {
    return Bounds.fixed(loss.value(), 1) + " stops";
  }

  /** What a light or the body would have to say for all of its effect. */
  void addNeeds(Light light, String pointer, ShutterTime time, List<String> needs) {
    boolean leaf = body.shutter() == Body.Shutter.LEAF;
    boolean burst = isFasterThanSync(time) && light.head().longBurstEfficiency().isPresent();
    if (!leaf && body.curtainTravel().isEmpty()) {
      needs.add("/camera/body/curtain_travel_ms");
    }
    if (light.head().durationT05().isEmpty() && (leaf || !burst)) {
      needs.add(pointer + "/head/duration_t05_ms");
    }
  }
}
