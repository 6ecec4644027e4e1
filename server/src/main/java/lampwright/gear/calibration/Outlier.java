package lampwright.gear.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.FallOff;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * A reading that the others contradict.
 *
 * @param number its place on the sheet, from 1
 * @param off what was read less what the others say
 * @param causes the likely ones, the likeliest first; never empty
 * @param fittingDistance the distance at which the reading would be right, where a slip of the tape
 *     may explain it
 * @param certain whether the others agree among themselves; else this reading or another may be the
 *     wrong one
 */
public record Outlier(
    int number,
    Stops off,
    List<OutlierCause> causes,
    Optional<Metres> fittingDistance,
    boolean certain) {

  /** Dials that are misread are misread by most of a stop or more. */
  private static final double DIAL_STOPS = 0.7;

  /** A tape or a pace is hardly ever wrong by more than this share. */
  private static final double LARGEST_SLIP = 0.35;

  /** How close to a telling number of stops an error must come to be taken for it. */
  private static final double TELLING_STOPS = 0.15;

  /** A distance in feet, written as so many metres, looks further away by this many stops. */
  private static final double FEET_STOPS = Stops.ofRatio(1 / square(Metres.PER_FOOT)).value();

  /** Copies the causes. */
  public Outlier {
    causes = List.copyOf(causes);
  }

  static Outlier of(
      int number, CalibrationReading reading, EmittingFace face, Stops off, boolean certain) {
    Optional<Metres> fitting =
        FallOff.distanceForGain(face, reading.distance(), off)
            .filter(d -> Math.abs(d.value() / reading.distance().value() - 1) <= LARGEST_SLIP);
    return new Outlier(number, off, causes(reading, off.value(), fitting), fitting, certain);
  }

  private static List<OutlierCause> causes(
      CalibrationReading reading, double off, Optional<Metres> fitting) {
    List<OutlierCause> causes = new ArrayList<>();
    double wholeStops = Math.floor(Math.abs(off) + 0.5);
    boolean whole = wholeStops >= 1 && isNear(Math.abs(off), wholeStops);
    if (isNear(off, FEET_STOPS)) {
      causes.add(OutlierCause.FEET);
    }
    if (Math.abs(off) >= DIAL_STOPS) {
      causes.add(OutlierCause.POWER_DIAL);
    }
    if (whole) {
      causes.add(OutlierCause.ISO);
    }
    double dome = MeterConstant.DOME.stopsOver(MeterConstant.FLAT).value();
    if (isNear(-off, dome) && reading.constant().equals(MeterConstant.FLAT)) {
      causes.add(OutlierCause.RECEPTOR);
    }
    if (fitting.isPresent()) {
      causes.add(OutlierCause.DISTANCE);
    }
    if (causes.isEmpty()) {
      causes.add(OutlierCause.OTHER_LIGHT);
    }
    return causes;
  }

  private static boolean isNear(double stops, double telling) {
    return Math.abs(stops - telling) <= TELLING_STOPS;
  }

  private static double square(double value) {
    return value * value;
  }

  /** Returns it in a sentence or two: "Reading 4 is 0.8 stop too high: power dial or distance?" */
  public String sentence() {
    String size = Bounds.fixed(off.abs().value(), 1);
    StringBuilder text =
        new StringBuilder("Reading ")
            .append(number)
            .append(" is ")
            .append(size)
            .append(off.abs().value() <= 1 ? " stop" : " stops")
            .append(off.value() > 0 ? " too high: " : " too low: ")
            .append(causes.stream().map(OutlierCause::words).collect(Collectors.joining(" or ")))
            .append("?");
    fittingDistance.ifPresent(
        d -> text.append(" It would fit at ").append(Bounds.rounded(d.value(), 2)).append(" m."));
    if (!certain) {
      text.append(" Too few readings of this gear to tell which is wrong. Read it once more?");
    }
    return text.toString();
  }
}
