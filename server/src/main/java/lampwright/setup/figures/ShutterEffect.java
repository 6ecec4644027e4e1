package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
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
 */
public record ShutterEffect(
    boolean longBurst,
    Optional<Stops> wholeFrame,
    Optional<Stops> worstEdge,
    double litShare,
    Known known,
    List<String> warnings) {

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
                Working.of(
                    "loss of the whole frame in the shutter",
                    loss.value(),
                    "stops",
                    longBurst ? "−log2(η · t / (t + Tx))" : "−log2((1 − e^(−t/τ)) / 2^−s)",
                    Source.FLASH_MAKERS_NOTES)));
    worstEdge.ifPresent(
        loss ->
            workings.add(
                Working.of(
                    "loss at the edge that is exposed first",
                    loss.value(),
                    "stops",
                    "−log2((1 − e^(−(t − Tx)/τ)) / 2^−s)",
                    Source.FLASH_MAKERS_NOTES)));
    return workings;
  }
}
