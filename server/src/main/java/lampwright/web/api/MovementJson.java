package lampwright.web.api;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import lampwright.setup.figures.MovementFigures;

/** How a subject's movement shows in the picture. */
record MovementJson(
    String subject,
    @JsonProperty("speed_m_per_s") double speedMPerS,
    boolean alongPath,
    double depthM,
    double imageSpeedMmPerS,
    double lateralMmPerS,
    double approachingMmPerS,
    double limbsAtLeast,
    double limbsAtMost,
    List<FlashBlurJson> flashes,
    BlurJson ambient,
    Optional<GhostJson> ghost,
    Optional<InFocusJson> inFocus,
    List<String> assumptions,
    Optional<List<WorkingJson>> workings) {

  static MovementJson of(MovementFigures movement, FiguresJson.Detail detail) {
    return new MovementJson(
        movement.subject(),
        movement.speed().value(),
        movement.alongPath(),
        movement.motion().depth().value(),
        movement.motion().speed().value(),
        movement.motion().lateral().value(),
        movement.motion().approaching().value(),
        MovementFigures.LIMBS_AT_LEAST,
        MovementFigures.LIMBS_AT_MOST,
        movement.flashes().stream().map(FlashBlurJson::of).toList(),
        BlurJson.of(movement.ambient()),
        movement.ghost().map(GhostJson::of),
        movement.inFocus().map(InFocusJson::of),
        InEnglish.say(movement.assumptions()),
        detail.tellAll(movement::workings));
  }

  /** How long a streak is. */
  record BlurJson(
      double timeS, double onSensorMm, Optional<Double> pixels, double shareOfFrameHeight) {

    static BlurJson of(MovementFigures.Blur blur) {
      return new BlurJson(
          blur.time().value(), blur.onSensor().value(), blur.pixels(), blur.shareOfFrameHeight());
    }
  }

  /** The blur by one light. */
  record FlashBlurJson(
      String light,
      BlurJson tenthTime,
      BlurJson equivalent,
      boolean longBurst,
      int prints,
      boolean lowerBound) {

    static FlashBlurJson of(MovementFigures.FlashBlur flash) {
      return new FlashBlurJson(
          flash.light().text(),
          BlurJson.of(flash.tenthTime()),
          BlurJson.of(flash.equivalent()),
          flash.longBurst(),
          flash.prints(),
          flash.lowerBound());
    }
  }

  /** What the ambient draws beside the flash's picture. */
  record GhostJson(double ambientShare, double flashOverAmbientStops, String inWords) {

    static GhostJson of(MovementFigures.Ghost ghost) {
      return new GhostJson(
          ghost.ambientShare(), ghost.flashOverAmbient().value(), InEnglish.say(ghost.inWords()));
    }
  }

  /** How long it stays within the depth of field. */
  record InFocusJson(double timeS, boolean entersSharp, boolean endsSharp) {

    static InFocusJson of(MovementFigures.TimeInFocus inFocus) {
      return new InFocusJson(inFocus.time().value(), inFocus.entersSharp(), inFocus.endsSharp());
    }
  }
}
