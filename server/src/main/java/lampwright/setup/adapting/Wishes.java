package lampwright.setup.adapting;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.setup.Occasion;

/**
 * What an adaptation is asked for, beyond setup and kit.
 *
 * @param ambient to shoot in, where it is not the setup's
 * @param occasion another place, day or time; what it leaves open is as in the setup. Without an
 *     ambient the clear sky's level there is taken
 * @param changes weights set by hand in the place of the preset's
 * @param tonight what of the kit is dead or half empty
 * @param ways how many different adaptations to find at most
 */
public record Wishes(
    Optional<Ev100> ambient,
    Optional<Occasion> occasion,
    Limits limits,
    Weights.Preset preset,
    WeightChanges changes,
    List<Pin> pins,
    List<HeadTonight> tonight,
    int ways) {

  /** So many ways are enough to choose from. */
  public static final int USUAL_WAYS = 3;

  public Wishes {
    pins = List.copyOf(pins);
    tonight = List.copyOf(tonight);
  }

  /** As near to the look as the kit can. */
  public static Wishes none() {
    return new Wishes(
        Optional.empty(),
        Optional.empty(),
        Limits.none(),
        Weights.Preset.CLOSEST_LOOK,
        WeightChanges.none(),
        List.of(),
        List.of(),
        USUAL_WAYS);
  }

  /** The preset's weights but for those that are set by hand. */
  public Weights weights() {
    return changes.in(preset.weights());
  }

  /** The same with another ambient. */
  public Wishes withAmbient(Ev100 other) {
    return new Wishes(Optional.of(other), occasion, limits, preset, changes, pins, tonight, ways);
  }

  /** The same with other limits. */
  public Wishes withLimits(Limits other) {
    return new Wishes(ambient, occasion, other, preset, changes, pins, tonight, ways);
  }

  /** The same by another preset. */
  public Wishes withPreset(Weights.Preset other) {
    return new Wishes(ambient, occasion, limits, other, changes, pins, tonight, ways);
  }

  /** The same with weights set by hand. */
  public Wishes withChanges(WeightChanges other) {
    return new Wishes(ambient, occasion, limits, preset, other, pins, tonight, ways);
  }

  /** The same with other pins. */
  public Wishes withPins(List<Pin> other) {
    return new Wishes(ambient, occasion, limits, preset, changes, other, tonight, ways);
  }

  /** The same with gear in another state. */
  public Wishes withTonight(List<HeadTonight> other) {
    return new Wishes(ambient, occasion, limits, preset, changes, pins, other, ways);
  }

  /** The same at another place or time. */
  public Wishes withOccasion(Occasion other) {
    return new Wishes(ambient, Optional.of(other), limits, preset, changes, pins, tonight, ways);
  }

  /** The same with so many ways at most. */
  public Wishes withWays(int other) {
    return new Wishes(ambient, occasion, limits, preset, changes, pins, tonight, other);
  }
}
