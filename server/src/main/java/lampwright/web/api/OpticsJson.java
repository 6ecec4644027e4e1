package lampwright.web.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Micrometres;
import lampwright.setup.figures.OpticsFigures;

/** What camera and lens make of the picture. */
record OpticsJson(
    double widthMm,
    double heightMm,
    double diagonalMm,
    double focalLengthMm,
    List<EquivalentJson> equivalents,
    @JsonProperty("equivalent_f_number") double equivalentFNumber,
    double angleAcrossDeg,
    double angleUprightDeg,
    double angleDiagonalDeg,
    List<DepthJson> depths,
    Optional<Double> pixelPitchUm,
    double airyDiscUm,
    Optional<Boolean> diffractionExceedsTwoPixels,
    Optional<FocusJson> focus,
    Optional<List<WorkingJson>> workings) {

  static OpticsJson of(OpticsFigures optics, FiguresJson.Detail detail) {
    return new OpticsJson(
        optics.format().width().value(),
        optics.format().height().value(),
        optics.format().diagonal().value(),
        optics.focal().value(),
        optics.equivalents().stream().map(EquivalentJson::of).toList(),
        optics.equivalentFNumber().value(),
        optics.angleAcross().value(),
        optics.angleUpright().value(),
        optics.angleDiagonal().value(),
        depths(optics),
        optics.pixelPitch().map(Micrometres::value),
        optics.airyDisc().value(),
        optics.diffractionExceedsTwoPixels(),
        optics.focused().map(FocusJson::of),
        detail.tellAll(optics::workings));
  }

  private static List<DepthJson> depths(OpticsFigures optics) {
    List<DepthJson> depths = new ArrayList<>();
    for (int i = 0; i < optics.hyperfocals().size(); i++) {
      int index = i;
      depths.add(
          DepthJson.of(
              optics.hyperfocals().get(i),
              optics.focused().map(focused -> focused.depths().get(index))));
    }
    return depths;
  }

  /** What the focal length is worth on 36 by 24 mm. */
  record EquivalentJson(String basis, double crop, double focalLengthMm) {

    static EquivalentJson of(OpticsFigures.Equivalent equivalent) {
      return new EquivalentJson(
          FiguresJson.word(equivalent.basis()), equivalent.crop(), equivalent.focal().value());
    }
  }

  /**
   * What looks sharp under one convention.
   *
   * @param farM absent for infinity, and where the focus is not known
   */
  record DepthJson(
      String convention,
      double circleMm,
      double hyperfocalM,
      Optional<Double> nearM,
      Optional<Double> farM) {

    static DepthJson of(OpticsFigures.Hyperfocal circle, Optional<DepthOfField> depth) {
      return new DepthJson(
          circle.convention(),
          circle.circle().value(),
          circle.distance().value(),
          depth.map(d -> d.near().value()),
          depth.flatMap(DepthOfField::far).map(Metres::value));
    }
  }

  /** What depends on the focused distance. */
  record FocusJson(
      double distanceM,
      String known,
      double fieldWidthM,
      double fieldHeightM,
      double magnification,
      @JsonProperty("effective_f_number") double effectiveFNumber,
      double airyDiscUm) {

    static FocusJson of(OpticsFigures.Focused focused) {
      return new FocusJson(
          focused.lens().focus().value(),
          FiguresJson.word(focused.known()),
          focused.fieldWidth().value(),
          focused.fieldHeight().value(),
          focused.magnification(),
          focused.effectiveFNumber().value(),
          focused.airyDiscCloseUp().value());
    }
  }
}
