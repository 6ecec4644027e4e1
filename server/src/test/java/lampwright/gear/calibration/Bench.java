package lampwright.gear.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.GuideNumber;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * Two heads and two modifiers whose truth is known, and readings of them with invented errors. The
 * geometry is written out here, so that it does not come from the code under test.
 */
final class Bench {

  static final double BIG_GUIDE_NUMBER_M = 64;
  static final double SMALL_GUIDE_NUMBER_M = 37;
  static final double BOX_LOSS_STOPS = 1.6;
  static final double DISH_LOSS_STOPS = 0.7;
  static final double BOX_RADIUS_M = 0.6;

  static final ModifierOnSheet BOX =
      new ModifierOnSheet("box", new EmittingFace.Disc(new Metres(BOX_RADIUS_M)));
  static final ModifierOnSheet DISH = new ModifierOnSheet("dish", new EmittingFace.PointSource());

  private final List<CalibrationReading> readings = new ArrayList<>();
  private final DoubleSupplier errorStops;

  /** Readings with errors in stops from a supplier. */
  Bench(DoubleSupplier errorStops) {
    this.errorStops = errorStops;
  }

  static Bench withoutErrors() {
    return new Bench(() -> 0);
  }

  static HeadOnSheet head(String name) {
    return new HeadOnSheet(name, Optional.empty(), HeadOnSheet.USUAL_UNCERTAINTY);
  }

  static HeadOnSheet head(String name, double makersM) {
    return new HeadOnSheet(
        name, Optional.of(GuideNumber.of(makersM)), HeadOnSheet.USUAL_UNCERTAINTY);
  }

  /** Reads a head with a modifier, or "" for the standard reflector. */
  Bench read(String head, String modifier, double distanceM, double stopsDown) {
    return read(head, modifier, distanceM, stopsDown, 0);
  }

  /** The same with a gross error besides. */
  Bench read(String head, String modifier, double distanceM, double stopsDown, double grossStops) {
    double guideNumber = head.equals("big") ? BIG_GUIDE_NUMBER_M : SMALL_GUIDE_NUMBER_M;
    double stops = -stopsDown + errorStops.getAsDouble() + grossStops;
    double factor = 1 / (distanceM * distanceM);
    if (modifier.equals("box")) {
      double square = BOX_RADIUS_M * BOX_RADIUS_M;
      // Howell B-12 on the axis, scaled so that the loss holds at 2 m.
      factor = (square + 4) / (square + distanceM * distanceM) / 4;
      stops -= BOX_LOSS_STOPS;
    } else if (modifier.equals("dish")) {
      stops -= DISH_LOSS_STOPS;
    }
    double fNumber = guideNumber * Math.sqrt(factor * Math.pow(2, stops));
    readings.add(
        new CalibrationReading(
            head,
            modifier.isEmpty() ? Optional.empty() : Optional.of(modifier),
            FNumber.of(fNumber),
            0,
            new Iso(100),
            new Metres(distanceM),
            new Stops(stopsDown),
            MeterConstant.FLAT));
    return this;
  }

  /** Sixteen readings that bear on both heads and both modifiers. */
  Bench readAll() {
    for (String head : List.of("big", "small")) {
      read(head, "", 2, 0).read(head, "", 3, 1).read(head, "", 2, 3).read(head, "", 4, 0);
      read(head, "box", 1.2, 0).read(head, "box", 2.5, 1);
      read(head, "dish", 2, 0).read(head, "dish", 3, 2);
    }
    return this;
  }

  List<CalibrationReading> readings() {
    return readings;
  }

  CalibrationSheet sheet(HeadOnSheet... heads) {
    return new CalibrationSheet(List.of(heads), List.of(BOX, DISH), readings);
  }

  Calibration calibration() {
    return Calibration.of(sheet(head("big"), head("small")));
  }

  /** By how much a head's guide number is above the truth, in stops. */
  static double outputErrorStops(Calibration.CalibratedHead head) {
    double truth = head.name().equals("big") ? BIG_GUIDE_NUMBER_M : SMALL_GUIDE_NUMBER_M;
    return 2 * Math.log(head.guideNumber().metresAtIso100() / truth) / Math.log(2);
  }

  static double lossErrorStops(Calibration.CalibratedModifier modifier) {
    double truth = modifier.name().equals("box") ? BOX_LOSS_STOPS : DISH_LOSS_STOPS;
    return modifier.loss().value() - truth;
  }
}
