package lampwright.setup.figures;

import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.power.FlashPulse;
import lampwright.engine.power.ShutterLoss;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Head;

/** What a body's shutter does to flashes, at any time. */
public final class ShutterComputation {

  /** Rounding of doubles, as a share of the time. */
  private static final double ROUNDING = 1e-9;

  /** A shorter window lets nothing through that anybody could see, in seconds. */
  private static final double NO_WINDOW_S = 1e-8;

  private static final Optional<Stops> NO_LOSS = Optional.of(Stops.ZERO);
  private static final Optional<Stops> NOT_KNOWN = Optional.empty();

  private final Body body;

  public ShutterComputation(Body body) {
    this.body = body;
  }

  /** Asks whether a time is shorter than the body's sync time. */
  public boolean isFasterThanSync(ShutterTime time) {
    return isFaster(time, body.sync());
  }

  static boolean isFaster(ShutterTime time, ShutterTime sync) {
    return time.seconds() < sync.seconds() * (1 - ROUNDING);
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

  /**
   * What the shutter takes from a head whose power is so far down, at a time.
   *
   * @param down below full; what depends on it is absent where it is not known
   */
  public ShutterEffect effect(Head head, Optional<Stops> down, ShutterTime time) {
    return body.shutter() == Body.Shutter.LEAF
        ? leaf(head, down, time)
        : focalPlane(head, down, time);
  }

  private ShutterEffect.Inputs inputs(Head head, Optional<Stops> down, ShutterTime time) {
    boolean leaf = body.shutter() == Body.Shutter.LEAF;
    return new ShutterEffect.Inputs(
        leaf,
        body.sync(),
        time,
        leaf
            ? Optional.empty()
            : body.curtainTravel().or(() -> Optional.of(body.sync().toSeconds())),
        head.durationT05(),
        down,
        head.longBurstEfficiency());
  }

  private ShutterEffect leaf(Head head, Optional<Stops> down, ShutterTime time) {
    Optional<Stops> loss =
        pulse(head).flatMap(pulse -> down.map(d -> ShutterLoss.leaf(pulse, d, time.toSeconds())));
    return new ShutterEffect(
        false, loss, loss.map(whole -> Stops.ZERO), 1, Known.COMPUTED, inputs(head, down, time));
  }

  private ShutterEffect focalPlane(Head head, Optional<Stops> down, ShutterTime time) {
    boolean faster = isFasterThanSync(time);
    Optional<Double> burst = head.longBurstEfficiency();
    Known known = body.curtainTravel().isPresent() ? Known.COMPUTED : Known.ESTIMATED;
    Seconds travel = body.curtainTravel().orElseGet(() -> body.sync().toSeconds());
    if (faster && burst.isPresent()) {
      Stops loss = ShutterLoss.longBurst(time.toSeconds(), travel, burst.get());
      return new ShutterEffect(
          true, Optional.of(loss), NO_LOSS, 1, known, inputs(head, down, time));
    }
    if (body.curtainTravel().isEmpty() && !faster) {
      return new ShutterEffect(
          false, NO_LOSS, Optional.empty(), 1, Known.COMPUTED, inputs(head, down, time));
    }
    double window = time.seconds() - travel.value();
    if (window < NO_WINDOW_S) {
      double share = ShutterLoss.litShare(time.toSeconds(), travel);
      return new ShutterEffect(
          false, NO_LOSS, Optional.empty(), share, known, inputs(head, down, time));
    }
    Optional<Stops> edge =
        pulse(head)
            .flatMap(
                pulse ->
                    down.flatMap(d -> ShutterLoss.syncEdge(pulse, d, time.toSeconds(), travel)));
    return new ShutterEffect(false, NO_LOSS, edge, 1, known, inputs(head, down, time));
  }

  /** What the whole frame loses, none where that is not known; no more than that is computed. */
  Stops wholeFrameLoss(Head head, Optional<Stops> down, ShutterTime time) {
    if (body.shutter() == Body.Shutter.LEAF
        || (isFasterThanSync(time) && head.longBurstEfficiency().isPresent())) {
      return effect(head, down, time).wholeFrameOrNone();
    }
    return Stops.ZERO;
  }

  /** Asks whether the body or the head cannot do a time: part of the frame stays dark. */
  boolean isOutOfReach(Head head, ShutterTime time) {
    return isFasterThanSync(time)
        && (body.shutter() == Body.Shutter.LEAF || effect(head, NOT_KNOWN, time).litShare() < 1);
  }

  /** What a light or the body would have to say for all of its effect. */
  void addNeeds(Head head, String pointer, ShutterTime time, List<String> needs) {
    boolean leaf = body.shutter() == Body.Shutter.LEAF;
    boolean burst = isFasterThanSync(time) && head.longBurstEfficiency().isPresent();
    if (!leaf && body.curtainTravel().isEmpty()) {
      needs.add("/camera/body/curtain_travel_ms");
    }
    if (head.durationT05().isEmpty() && (leaf || !burst)) {
      needs.add(pointer + "/head/duration_t05_ms");
    }
  }
}
