package lampwright.web.api;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.calibration.Calibration;
import lampwright.gear.calibration.DialCheck;
import lampwright.gear.calibration.Outlier;

/** A calibration, as the API tells it. Numbers are unrounded; keys carry the unit. */
public record CalibrationJson(
    double referenceDistanceM,
    List<HeadJson> heads,
    List<ModifierJson> modifiers,
    List<PairJson> pairs,
    List<ReadingJson> readings,
    List<OutlierJson> outliers,
    List<DialJson> dials,
    List<String> undetermined,
    double scatterStops,
    PlainFitJson plainFit) {

  static CalibrationJson of(Calibration calibration) {
    return new CalibrationJson(
        Calibration.REFERENCE.value(),
        calibration.heads().stream().map(HeadJson::of).toList(),
        calibration.modifiers().stream().map(ModifierJson::of).toList(),
        calibration.pairs().stream().map(PairJson::of).toList(),
        calibration.readings().stream().map(ReadingJson::of).toList(),
        calibration.outliers().stream().map(OutlierJson::of).toList(),
        calibration.dials().stream().map(DialJson::of).toList(),
        calibration.undetermined(),
        calibration.scatter().value(),
        new PlainFitJson(
            calibration.plainFit().largestDifference().value(), calibration.plainFit().differs()));
  }

  /** A head's output. */
  record HeadJson(
      String name,
      double guideNumberM,
      double standardErrorStops,
      double within95Stops,
      Optional<Double> aboveMakersStops) {

    static HeadJson of(Calibration.CalibratedHead head) {
      return new HeadJson(
          head.name(),
          head.guideNumber().metresAtIso100(),
          head.uncertainty().standardError().value(),
          head.uncertainty().within95().value(),
          head.aboveMakers().map(Stops::value));
    }
  }

  /** A modifier's loss. */
  record ModifierJson(
      String name,
      double lossStops,
      double lossAtM,
      double standardErrorStops,
      double within95Stops) {

    static ModifierJson of(Calibration.CalibratedModifier modifier) {
      return new ModifierJson(
          modifier.name(),
          modifier.loss().value(),
          Calibration.REFERENCE.value(),
          modifier.uncertainty().standardError().value(),
          modifier.uncertainty().within95().value());
    }
  }

  /**
   * What a head gives with a modifier on.
   *
   * @param shown the reading as a meter with tenths shows it
   */
  record PairJson(
      String head,
      Optional<String> modifier,
      double fNumber,
      String shown,
      double standardErrorStops,
      double within95Stops,
      boolean wasRead) {

    static PairJson of(Calibration.CalibratedPair pair) {
      return new PairJson(
          pair.head(),
          pair.modifier(),
          pair.fNumber().value(),
          pair.fNumber().tenthsText(),
          pair.uncertainty().standardError().value(),
          pair.uncertainty().within95().value(),
          pair.wasRead());
    }
  }

  /**
   * A reading beside the fit.
   *
   * @param fNumber what the fit says the meter should have shown
   * @param shown the same as a meter with tenths shows it
   */
  record ReadingJson(
      int number,
      double fNumber,
      String shown,
      double residualStops,
      double weight,
      boolean checked) {

    static ReadingJson of(Calibration.FittedReading reading) {
      return new ReadingJson(
          reading.number(),
          reading.expected().value(),
          reading.expected().tenthsText(),
          reading.residual().value(),
          reading.weight(),
          reading.checked());
    }
  }

  /** A reading that the others contradict. */
  record OutlierJson(
      int number,
      double offStops,
      List<String> causes,
      Optional<Double> fittingDistanceM,
      boolean certain,
      String sentence) {

    static OutlierJson of(Outlier outlier) {
      return new OutlierJson(
          outlier.number(),
          outlier.off().value(),
          outlier.causes().stream().map(c -> c.name().toLowerCase(Locale.ROOT)).toList(),
          outlier.fittingDistance().map(Metres::value),
          outlier.certain(),
          outlier.sentence());
    }
  }

  /** Whether a head's dial keeps its steps. */
  record DialJson(
      String head,
      double slopeStopsPerStop,
      double standardErrorStops,
      double within95Stops,
      double worstStops,
      boolean even,
      String sentence) {

    static DialJson of(DialCheck dial) {
      return new DialJson(
          dial.head(),
          dial.slope().value(),
          dial.uncertainty().standardError().value(),
          dial.uncertainty().within95().value(),
          dial.worst().value(),
          dial.even(),
          dial.sentence());
    }
  }

  /** What a plain fit would have made of it. */
  record PlainFitJson(double largestDifferenceStops, boolean differs) {}
}
