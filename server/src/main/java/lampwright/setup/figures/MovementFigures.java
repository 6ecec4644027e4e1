package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.lens.ImageMotion;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.language.Said;
import lampwright.setup.LightId;

/**
 * How a subject's movement shows in the picture, at its hit mark. Limbs, cloth and hair move up to
 * {@link #LIMBS_AT_LEAST} to {@link #LIMBS_AT_MOST} times as fast as the body, and blur so much
 * more.
 *
 * @param subject its name
 * @param speed of the body
 * @param alongPath whether the direction comes from its path; else it is taken as across the
 *     picture, at the focused distance
 * @param motion of its image
 * @param flashes by each light, in the document's order; a light whose duration or power is not
 *     known is left out
 * @param ambient by the ambient, while the shutter is open
 * @param ghost absent where its target has no ambient or no light
 * @param inFocus while it moves along its path; absent without a path or depth of field
 * @param assumptions in words
 */
public record MovementFigures(
    String subject,
    MetresPerSecond speed,
    boolean alongPath,
    ImageMotion motion,
    List<FlashBlur> flashes,
    Blur ambient,
    Optional<Ghost> ghost,
    Optional<TimeInFocus> inFocus,
    List<Said> assumptions) {

  /** Limbs, cloth and hair move at least so many times as fast as the body (trade-practice). */
  public static final double LIMBS_AT_LEAST = 1.5;

  /** And at most so many times. */
  public static final double LIMBS_AT_MOST = 2;

  /**
   * How long a streak is.
   *
   * @param time over which it is drawn
   * @param pixels absent where the body's pixels are not known
   * @param shareOfFrameHeight 0.01 is a hundredth of the frame's height
   */
  public record Blur(
      Seconds time, Millimetres onSensor, Optional<Double> pixels, double shareOfFrameHeight) {}

  /**
   * The blur by one light.
   *
   * @param tenthTime by t0.1, which is what one sees; by the shutter time for a long burst or where
   *     that is shorter
   * @param equivalent by the energy-weighted duration
   * @param longBurst whether it blurs with the shutter
   * @param prints how often the light prints a moving subject: once a pop
   * @param lowerBound whether the true blur can be longer: a head that is controlled by voltage
   *     flashes longer at lower power, by how much is not known
   */
  public record FlashBlur(
      LightId light,
      Blur tenthTime,
      Blur equivalent,
      boolean longBurst,
      int prints,
      boolean lowerBound) {}

  /**
   * What the ambient draws beside the flash's picture.
   *
   * @param ambientShare of all the light on the subject, 0 to 1
   * @param flashOverAmbient in stops
   */
  public record Ghost(double ambientShare, Stops flashOverAmbient) {

    /** What to expect, by a working rule of the trade. */
    public Said inWords() {
      double stops = flashOverAmbient.value();
      if (stops >= 3) {
        return Said.of("figuring.ghost.hidden");
      }
      if (stops >= 2) {
        return Said.of("figuring.ghost.soft");
      }
      return Said.of(stops >= 1 ? "figuring.ghost.trails" : "figuring.ghost.pose");
    }
  }

  /**
   * How long the subject stays within the depth of field, circle d/1500, around its hit mark.
   *
   * @param entersSharp whether its path begins within, so that it is longer still
   * @param endsSharp whether its path ends within
   */
  public record TimeInFocus(Seconds time, boolean entersSharp, boolean endsSharp) {}

  public MovementFigures {
    flashes = List.copyOf(flashes);
    assumptions = List.copyOf(assumptions);
  }

  /** The steps to the figures. */
  public List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    double imageSpeed = motion.speed().value();
    Working moving =
        Working.of(
            "speed of the image",
            imageSpeed,
            "mm/s",
            "v · |Vxy / Z − Rxy · Vz / Z²|",
            Source.THIN_LENS,
            Working.given(
                "distance from lens to sensor",
                motion.imageDistance().value(),
                "mm",
                Known.COMPUTED),
            Working.given("depth before the lens", motion.depth().value(), "m", Known.COMPUTED),
            Working.given("to the right", motion.rightM(), "m", Known.COMPUTED),
            Working.given("above the axis", motion.upM(), "m", Known.COMPUTED),
            Working.given("velocity to the right", motion.rightMPerS(), "m/s", Known.COMPUTED),
            Working.given("velocity upwards", motion.upMPerS(), "m/s", Known.COMPUTED),
            Working.given("velocity away", motion.awayMPerS(), "m/s", Known.COMPUTED));
    workings.add(moving);
    workings.add(blur("blur by the ambient", ambient, moving));
    for (FlashBlur flash : flashes) {
      workings.add(blur("blur by the " + flash.light().text(), flash.tenthTime(), moving));
    }
    ghost.ifPresent(
        g ->
            workings.add(
                Working.of(
                    "the ambient's share",
                    g.ambientShare(),
                    "",
                    "H_ambient / (H_ambient + H_flash)",
                    Source.DERIVED,
                    Working.given(
                        "flash over ambient",
                        g.flashOverAmbient().value(),
                        "stops",
                        Known.COMPUTED))));
    return workings;
  }

  private static Working blur(String name, Blur blur, Working moving) {
    return Working.of(
        name,
        blur.onSensor().value(),
        "mm",
        "speed · time",
        Source.THIN_LENS,
        moving,
        Working.given("time", blur.time().value(), "s"));
  }
}
