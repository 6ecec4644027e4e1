package lampwright.engine.power;

import java.util.ArrayList;
import java.util.List;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;

/**
 * The powers that a head can be set to: from full down by equal steps.
 *
 * @param range stops from full to lowest power, 0 to 20; 0 for a head of one power
 * @param step stops between settings, 0.01 to 20; a tenth or a third on most heads
 */
public record PowerRange(Stops range, Stops step) {

  /** Rounding of doubles, in stops. */
  private static final double ROUNDING = 1e-9;

  /** Checks the bounds. */
  public PowerRange {
    // No head spans more; the bounds keep the list of settings short whatever somebody types.
    Bounds.requireBetween("Power range", range.value(), "stops", 0, 20);
    Bounds.requireBetween("Power step", step.value(), "stops", 0.01, 20);
  }

  /** Returns a range from stops. */
  public static PowerRange of(double rangeStops, double stepStops) {
    return new PowerRange(new Stops(rangeStops), new Stops(stepStops));
  }

  /**
   * Returns the nearest setting. Half way between two the one with less light is taken. What is
   * beyond full or below the lowest power is reported as shortfall or excess, against the exact
   * power and not against the rounded one.
   *
   * @param exact stops below full power; negative asks for more than full
   */
  public PowerSetting quantise(Stops exact) {
    double down = exact.value();
    long nearest = (long) Math.floor(down / step.value() + 0.5 + ROUNDING);
    long index = Math.max(0, Math.min(lastIndex(), nearest));
    return new PowerSetting(
        exact,
        setting(index),
        new Stops(Math.max(0, -down)),
        new Stops(Math.max(0, down - range.value())));
  }

  /** Returns all settings from full power down, in stops below full. */
  public List<Stops> settings() {
    List<Stops> settings = new ArrayList<>();
    for (long index = 0; index <= lastIndex(); index++) {
      settings.add(setting(index));
    }
    return List.copyOf(settings);
  }

  private long lastIndex() {
    return (long) Math.floor(range.value() / step.value() + ROUNDING);
  }

  /** Divides where the step is a whole part of a stop: 18 tenths are 1.8, 18 times 0.1 is not. */
  private Stops setting(long index) {
    double parts = Math.floor(1 / step.value() + 0.5);
    boolean whole = parts >= 1 && Math.abs(parts * step.value() - 1) < ROUNDING;
    return new Stops(whole ? index / parts : index * step.value());
  }
}
