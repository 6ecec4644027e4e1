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
 * @param warnings in words
 * @param inputs what the losses were computed from
 */
public record ShutterEffect(
    boolean longBurst,
    Optional<Stops> wholeFrame,
    Optional<Stops> worstEdge,
    double litShare,
    Known known,
    List<String> warnings,
    Inputs inputs) {

  /**
   * What the losses were computed from.
   *
   * @param open how long the shutter is open
   * @param travel of the curtain, where there is one
   * @param halfTime t0.5 of the flash at full power
   * @param down its power below full
   * @param efficiency of the head's long burst
   */
  public record Inputs(
      ShutterTime open,
      Optional<Seconds> travel,
      Optional<Seconds> halfTime,
      Optional<Stops> down,
      Optional<Double> efficiency) {}

  public ShutterEffect {
    warnings = List.copyOf(warnings);
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
