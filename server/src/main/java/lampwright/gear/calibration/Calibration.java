package lampwright.gear.calibration;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.light.GuideNumber;
import lampwright.engine.light.ModifierEffect;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * What readings say of one's gear. All of it holds for full power, on the axis, and readings in the
 * dark; uncertainties are of the fit and know nothing of an error that all readings share, such as
 * a meter that is off.
 *
 * @param heads those whose output was determined
 * @param modifiers those whose loss was determined
 * @param pairs each head with each modifier and the standard reflector, where determined
 * @param readings what the fit says of each reading, in the sheet's order
 * @param outliers readings that the others contradict
 * @param dials of heads that were read at three powers or more
 * @param undetermined a sentence for each head and modifier that the readings do not tell by itself
 * @param scatter of the readings about the fit, one standard deviation
 * @param plainFit by how much a plain least-squares fit would have differed
 */
public record Calibration(
    List<CalibratedHead> heads,
    List<CalibratedModifier> modifiers,
    List<CalibratedPair> pairs,
    List<FittedReading> readings,
    List<Outlier> outliers,
    List<DialCheck> dials,
    List<String> undetermined,
    Stops scatter,
    PlainFit plainFit) {

  /** Where losses are stated and pairs are predicted. */
  public static final Metres REFERENCE = ModifierEffect.USUAL_REFERENCE;

  /** Copies the lists. */
  public Calibration {
    heads = List.copyOf(heads);
    modifiers = List.copyOf(modifiers);
    pairs = List.copyOf(pairs);
    readings = List.copyOf(readings);
    outliers = List.copyOf(outliers);
    dials = List.copyOf(dials);
    undetermined = List.copyOf(undetermined);
  }

  /**
   * Fits a sheet.
   *
   * @param sheet as its form let it through: one head and one reading at least, names known
   */
  public static Calibration of(CalibrationSheet sheet) {
    return new CalibrationModel(sheet).calibration();
  }

  /**
   * A head's output.
   *
   * @param guideNumber with the standard reflector, for a flat receptor
   * @param aboveMakers how far above the maker's word it lies, where there is one
   */
  public record CalibratedHead(
      String name, GuideNumber guideNumber, Uncertainty uncertainty, Optional<Stops> aboveMakers) {}

  /** A modifier's loss at {@link #REFERENCE} against the standard reflector. */
  public record CalibratedModifier(String name, Stops loss, Uncertainty uncertainty) {}

  /**
   * What a flat incident meter should read at {@link #REFERENCE}, ISO 100 and full power.
   *
   * @param modifier absent for the standard reflector
   * @param wasRead whether these two were read together, which is surer than the model's word
   */
  public record CalibratedPair(
      String head,
      Optional<String> modifier,
      FNumber fNumber,
      Uncertainty uncertainty,
      boolean wasRead) {}

  /**
   * A reading beside the fit.
   *
   * @param number its place on the sheet, from 1
   * @param expected what the fit says the meter should have shown
   * @param residual what it showed less that
   * @param weight from 0 to 1: how far the fit trusted it
   * @param checked whether other readings bear on it; an unchecked one may be wrong unnoticed
   */
  public record FittedReading(
      int number, FNumber expected, Stops residual, double weight, boolean checked) {}

  /**
   * What a plain fit would have made of it.
   *
   * @param largestDifference over all determined heads and modifiers, sign ignored
   * @param differs whether a meter would show it: a tenth of a stop or more
   */
  public record PlainFit(Stops largestDifference, boolean differs) {

    static PlainFit of(Stops largestDifference) {
      return new PlainFit(largestDifference, largestDifference.compareTo(Stops.TENTH) >= 0);
    }
  }
}
