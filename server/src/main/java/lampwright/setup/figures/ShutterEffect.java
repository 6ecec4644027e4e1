package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;

/**
 * What the shutter takes from one light. An incident meter at the target does not see it.
 *
 * @param longBurst whether the head fires its long burst, because the time is shorter than sync
 * @param wholeFrame what every part of the frame loses; absent where the flash's duration or power
 *     is not known
 * @param worstEdge what the rows lose that are exposed first, beyond the whole frame's loss; absent
 *     where it is not known
 * @param litShare the share of the frame that gets the flash at all, 0 to 1
 * @param known estimated where the curtain's travel was taken as long as the sync time
 * @param inputs what the losses were computed from
 */
public record ShutterEffect(
    boolean longBurst,
    Optional<Stops> wholeFrame,
    Optional<Stops> worstEdge,
    double litShare,
    Known known,
    Inputs inputs) {

  /** Less than this at an edge is not worth a warning: a tenth of a stop. */
  private static final double SEEN = 0.1;

  /**
   * What the losses were computed from.
   *
   * @param leaf whether the shutter sits in the lens
   * @param sync the shortest time with the whole frame open
   * @param open how long the shutter is open
   * @param travel of the curtain, where there is one
   * @param halfTime t0.5 of the flash at full power
   * @param down its power below full
   * @param efficiency of the head's long burst
   */
  public record Inputs(
      boolean leaf,
      ShutterTime sync,
      ShutterTime open,
      Optional<Seconds> travel,
      Optional<Seconds> halfTime,
      Optional<Stops> down,
      Optional<Double> efficiency) {

    /** Asks whether the time is shorter than sync. */
    boolean isFasterThanSync() {
      return ShutterComputation.isFaster(open, sync);
    }
  }

  /** What to mind, in words. */
  public List<Said> warnings() {
    List<Said> warnings = new ArrayList<>(2);
    if (longBurst) {
      warnings.add(
          Said.of(
              "figuring.shutter.longBurst",
              Filling.shown(inputs.sync()),
              new Filling.Size(wholeFrameOrNone().value())));
    } else if (inputs.leaf()) {
      addLeafWarnings(warnings);
    } else if (litShare < 1) {
      warnings.add(
          Said.of(
              "figuring.shutter.partly",
              Filling.number(litShare * 100, 0),
              Filling.shown(inputs.open()),
              Filling.shown(inputs.sync())));
    } else {
      addEdgeWarnings(warnings);
    }
    return warnings;
  }

  private void addLeafWarnings(List<Said> warnings) {
    if (inputs.isFasterThanSync()) {
      warnings.add(Said.of("figuring.shutter.shortest", Filling.shown(inputs.sync())));
    }
    if (wholeFrameOrNone().value() > SEEN) {
      warnings.add(Said.of("figuring.shutter.leaf", new Filling.Size(wholeFrameOrNone().value())));
    }
  }

  private void addEdgeWarnings(List<Said> warnings) {
    if (inputs.isFasterThanSync()) {
      warnings.add(Said.of("figuring.shutter.tooShort", Filling.shown(inputs.sync())));
    }
    if (worstEdge.isPresent() && worstEdge.get().value() > SEEN) {
      warnings.add(Said.of("figuring.shutter.edge", new Filling.Size(worstEdge.get().value())));
    }
  }

  /** What the whole frame loses, none where that is not known. */
  public Stops wholeFrameOrNone() {
    return wholeFrame.orElse(Stops.ZERO);
  }

  /** The losses with their formulas. */
  public List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    wholeFrame.ifPresent(
        loss ->
            workings.add(
                new Working(
                    "loss of the whole frame in the shutter",
                    loss.value(),
                    "stops",
                    longBurst ? "−log2(η · t / (t + Tx))" : "−log2((1 − e^(−t/τ)) / 2^−s)",
                    Source.FLASH_MAKERS_NOTES,
                    parts())));
    worstEdge.ifPresent(
        loss ->
            workings.add(
                new Working(
                    "loss at the edge that is exposed first",
                    loss.value(),
                    "stops",
                    "−log2((1 − e^(−(t − Tx)/τ)) / 2^−s)",
                    Source.FLASH_MAKERS_NOTES,
                    parts())));
    return workings;
  }

  private List<Working> parts() {
    List<Working> parts = new ArrayList<>();
    parts.add(Working.given("time", inputs.open().seconds(), "s"));
    inputs
        .travel()
        .ifPresent(
            travel ->
                parts.add(
                    Working.given(
                        "curtain travel",
                        travel.value(),
                        "s",
                        known == Known.ESTIMATED ? known : Known.SET)));
    if (longBurst) {
      inputs
          .efficiency()
          .ifPresent(eta -> parts.add(Working.given("efficiency of the burst", eta, "")));
      return parts;
    }
    inputs.halfTime().ifPresent(half -> parts.add(Working.given("t0.5", half.value(), "s")));
    inputs
        .down()
        .ifPresent(down -> parts.add(Working.given("power below full", down.value(), "stops")));
    return parts;
  }
}
