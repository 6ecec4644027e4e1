package lampwright.gear.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.GuideNumber;
import lampwright.engine.unit.CandelaSeconds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;

/**
 * The linear model behind a calibration, in stops: {@code log2 H = q - loss + log2(G(d) / (G(r)
 * r^2)) - down}, with q the logarithm of the head's integrated intensity in candela seconds, r the
 * reference distance and G the geometry of an evenly bright face. For such faces it is the model of
 * {@link lampwright.engine.light.HeadOutput}, so that what is found here predicts the same there; a
 * large face with a grid or a beam falls off otherwise close by, which this does not know.
 */
final class CalibrationModel {

  /** A reading this little off is not worth a walk to the head. */
  private static final double WORTH_A_WORD_STOPS = 0.3;

  /** The usual bound beyond which chance is no longer the likeliest cause. */
  private static final double OUTLYING_DEVIATIONS = 3;

  /** From here on as much of a reading's fitted value is itself as all the others together. */
  private static final double HALF_ITSELF = 0.49;

  private final CalibrationSheet sheet;
  private final List<HeadOnSheet> heads;
  private final List<ModifierOnSheet> modifiers;
  private final RobustFit fit;

  CalibrationModel(CalibrationSheet sheet) {
    this.sheet = sheet;
    heads = sheet.heads();
    modifiers = sheet.modifiers();
    fit = RobustFit.of(rows(List.of()));
  }

  /** The readings first, in the sheet's order, then the makers' words. */
  private List<FitRow> rows(List<String> dials) {
    List<FitRow> rows = new ArrayList<>();
    for (CalibrationReading reading : sheet.readings()) {
      double[] combination = combination(dials.size(), reading.head(), reading.modifier());
      int dial = dials.indexOf(reading.head());
      if (dial >= 0) {
        combination[heads.size() + modifiers.size() + dial] = -reading.stopsDown().value();
      }
      rows.add(FitRow.ofReading(combination, intensity(reading)));
    }
    for (HeadOnSheet head : heads) {
      head.makers()
          .ifPresent(
              makers ->
                  rows.add(
                      FitRow.ofWord(
                          combination(dials.size(), head.name(), Optional.empty()),
                          intensity(makers),
                          head.makersUncertainty())));
    }
    return rows;
  }

  private double[] combination(int dials, String head, Optional<String> modifier) {
    double[] combination = new double[heads.size() + modifiers.size() + dials];
    combination[heads.stream().map(HeadOnSheet::name).toList().indexOf(head)] = 1;
    modifier.ifPresent(
        name ->
            combination[
                    heads.size()
                        + modifiers.stream().map(ModifierOnSheet::name).toList().indexOf(name)] =
                -1);
    return combination;
  }

  private double[] lossCombination(int modifier) {
    double[] combination = new double[heads.size() + modifiers.size()];
    combination[heads.size() + modifier] = 1;
    return combination;
  }

  private EmittingFace face(CalibrationReading reading) {
    return modifiers.stream()
        .filter(m -> reading.modifier().equals(Optional.of(m.name())))
        .map(ModifierOnSheet::face)
        .findFirst()
        .orElseGet(EmittingFace.PointSource::new);
  }

  /** log2 of the intensity at full power, less the modifier's loss. */
  private Stops intensity(CalibrationReading reading) {
    double exposure = reading.toMeteredReading().toFullPower().value();
    return Stops.ofRatio(exposure / geometry(face(reading), reading.distance()));
  }

  private static double geometry(EmittingFace face, Metres distance) {
    double reference = Calibration.REFERENCE.value();
    return face.geometry(distance) / (face.geometry(Calibration.REFERENCE) * reference * reference);
  }

  private static Stops intensity(GuideNumber guideNumber) {
    return Stops.ofRatio(guideNumber.toCandelaSeconds(MeterConstant.FLAT).value());
  }

  Calibration calibration() {
    return new Calibration(
        calibratedHeads(),
        calibratedModifiers(),
        pairs(),
        fittedReadings(),
        outliers(),
        dials(),
        undetermined(),
        fit.scatter(),
        plainFit());
  }

  private Optional<RobustFit.Estimate> output(HeadOnSheet head) {
    return fit.estimate(combination(0, head.name(), Optional.empty()));
  }

  private Optional<RobustFit.Estimate> loss(ModifierOnSheet modifier) {
    return fit.estimate(lossCombination(modifiers.indexOf(modifier)));
  }

  private List<Calibration.CalibratedHead> calibratedHeads() {
    List<Calibration.CalibratedHead> calibrated = new ArrayList<>();
    for (HeadOnSheet head : heads) {
      output(head)
          .ifPresent(
              q ->
                  calibrated.add(
                      new Calibration.CalibratedHead(
                          head.name(),
                          GuideNumber.ofCandelaSeconds(
                              new CandelaSeconds(q.value().toFactor()), MeterConstant.FLAT),
                          q.uncertainty(),
                          head.makers().map(m -> q.value().minus(intensity(m))))));
    }
    return calibrated;
  }

  private List<Calibration.CalibratedModifier> calibratedModifiers() {
    List<Calibration.CalibratedModifier> calibrated = new ArrayList<>();
    for (ModifierOnSheet modifier : modifiers) {
      loss(modifier)
          .ifPresent(
              loss ->
                  calibrated.add(
                      new Calibration.CalibratedModifier(
                          modifier.name(), loss.value(), loss.uncertainty())));
    }
    return calibrated;
  }

  private List<Calibration.CalibratedPair> pairs() {
    List<Calibration.CalibratedPair> pairs = new ArrayList<>();
    for (HeadOnSheet head : heads) {
      pair(head, Optional.empty()).ifPresent(pairs::add);
      for (ModifierOnSheet modifier : modifiers) {
        pair(head, Optional.of(modifier.name())).ifPresent(pairs::add);
      }
    }
    return pairs;
  }

  private Optional<Calibration.CalibratedPair> pair(HeadOnSheet head, Optional<String> modifier) {
    return fit.estimate(combination(0, head.name(), modifier))
        .map(
            q ->
                new Calibration.CalibratedPair(
                    head.name(),
                    modifier,
                    FNumber.ofExposure(
                        new CandelaSeconds(q.value().toFactor()).at(Calibration.REFERENCE),
                        Iso.ofMark(100),
                        MeterConstant.FLAT),
                    q.uncertainty(),
                    sheet.hasReading(head.name(), modifier)));
  }

  private List<Calibration.FittedReading> fittedReadings() {
    List<Calibration.FittedReading> fitted = new ArrayList<>();
    for (int i = 0; i < sheet.readings().size(); i++) {
      Stops residual = fit.residual(i);
      fitted.add(
          new Calibration.FittedReading(
              i + 1,
              sheet.readings().get(i).toMeteredReading().fNumber().closedBy(residual.negated()),
              residual,
              fit.weight(i),
              fit.leverage(i) < RobustFit.OWN_WITNESS));
    }
    return fitted;
  }

  private List<Outlier> outliers() {
    List<Outlier> outliers = new ArrayList<>();
    for (int i = 0; i < sheet.readings().size(); i++) {
      Stops off = fit.offFromTheOthers(i);
      if (off.abs().value() > WORTH_A_WORD_STOPS && fit.deviations(i) > OUTLYING_DEVIATIONS) {
        CalibrationReading reading = sheet.readings().get(i);
        outliers.add(Outlier.of(i + 1, reading, face(reading), off, fit.leverage(i) < HALF_ITSELF));
      }
    }
    return outliers;
  }

  /** A second fit: what a dial does wrong must not take readings' strength from the first. */
  private List<DialCheck> dials() {
    List<String> checked =
        heads.stream()
            .map(HeadOnSheet::name)
            .filter(head -> sheet.powers(head).size() >= DialCheck.FEWEST_POWERS)
            .toList();
    if (checked.isEmpty()) {
      return List.of();
    }
    RobustFit withDials = RobustFit.of(rows(checked));
    List<DialCheck> dials = new ArrayList<>();
    for (int i = 0; i < checked.size(); i++) {
      String head = checked.get(i);
      double[] slope = new double[heads.size() + modifiers.size() + checked.size()];
      slope[heads.size() + modifiers.size() + i] = 1;
      withDials
          .estimate(slope)
          .filter(excess -> excess.value().abs().value() <= DialCheck.WILDEST_EXCESS)
          .ifPresent(excess -> dials.add(DialCheck.of(head, excess, sheet.powers(head).getLast())));
    }
    return dials;
  }

  private List<String> undetermined() {
    List<String> sentences = new ArrayList<>();
    for (HeadOnSheet head : heads) {
      if (output(head).isEmpty()) {
        boolean read = sheet.readings().stream().anyMatch(r -> r.head().equals(head.name()));
        sentences.add(
            read
                ? "Output of "
                    + head.name()
                    + ": only known together with its modifiers. Read it once with its standard"
                    + " reflector, or give its maker's guide number."
                : "Output of " + head.name() + ": there is no reading of it.");
      }
    }
    for (ModifierOnSheet modifier : modifiers) {
      if (loss(modifier).isEmpty()) {
        boolean read =
            sheet.readings().stream()
                .anyMatch(r -> r.modifier().equals(Optional.of(modifier.name())));
        sentences.add(
            read
                ? "Loss of "
                    + modifier.name()
                    + ": only known together with the heads that it was on. Read one of them once"
                    + " with its standard reflector."
                : "Loss of " + modifier.name() + ": there is no reading with it.");
      }
    }
    return sentences;
  }

  private Calibration.PlainFit plainFit() {
    double largest = 0;
    for (HeadOnSheet head : heads) {
      if (output(head).isPresent()) {
        largest = larger(largest, combination(0, head.name(), Optional.empty()));
      }
    }
    for (int i = 0; i < modifiers.size(); i++) {
      if (loss(modifiers.get(i)).isPresent()) {
        largest = larger(largest, lossCombination(i));
      }
    }
    return Calibration.PlainFit.of(new Stops(largest));
  }

  private double larger(double than, double[] combination) {
    return Math.max(than, fit.plainMinusRobust(combination).abs().value());
  }
}
