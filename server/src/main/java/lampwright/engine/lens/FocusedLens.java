package lampwright.engine.lens;

import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.engine.unit.Micrometres;
import lampwright.engine.unit.Millimetres;
import lampwright.engine.unit.MillimetresPerSecond;

/**
 * A lens focused on a distance: a thin lens, centred, with a pupil magnification of one and without
 * aberrations (source thin-lens). Distances count from the front principal plane; a focus scale
 * counts from the sensor, which matters below a metre. Internal focusing shortens real lenses by 5
 * to 20 % close up.
 *
 * @param focal focal length, above 0
 * @param aperture the f-number
 * @param focus focused distance, more than the focal length
 */
public record FocusedLens(Millimetres focal, FNumber aperture, Metres focus) {

  /** Green light, in the middle of what we see. */
  public static final Micrometres GREEN = new Micrometres(0.55);

  /** Checks the bounds. */
  public FocusedLens {
    Bounds.requirePositive("Focal length", focal.value(), "mm");
    if (focus.value() * 1000 <= focal.value()) {
      throw new IllegalArgumentException(
          Bounds.subject("Focus distance", focus.value(), "m")
              + " must be more than the focal length ("
              + Bounds.plain(focal.value())
              + " mm).");
    }
  }

  /** Returns a lens from numbers. */
  public static FocusedLens of(double focalMm, double fNumber, double focusM) {
    return new FocusedLens(new Millimetres(focalMm), new FNumber(fNumber), new Metres(focusM));
  }

  /** Returns image size over subject size, {@code m = f / (s - f)}. */
  public double magnification() {
    return focal.value() / (focusMm() - focal.value());
  }

  /** Returns how far the sensor is behind the lens, {@code f (1 + m)}. */
  public Millimetres imageDistance() {
    return new Millimetres(focal.value() * (1 + magnification()));
  }

  /** Returns the f-number that exposure close up goes by, {@code N (1 + m)}. */
  public FNumber effectiveFNumber() {
    return effectiveFNumber(aperture, magnification(), 1);
  }

  /**
   * Returns {@code N (1 + m/p)}.
   *
   * @param magnification m, 0 or more
   * @param pupilMagnification p, exit over entrance pupil, above 0; below 1 for telephoto lenses
   */
  public static FNumber effectiveFNumber(
      FNumber aperture, double magnification, double pupilMagnification) {
    Bounds.requireZeroOrMore("Magnification", magnification, "");
    Bounds.requirePositive("Pupil magnification", pupilMagnification, "");
    return new FNumber(aperture.value() * (1 + magnification / pupilMagnification));
  }

  /**
   * Returns the hyperfocal distance, {@code H = f^2 / (N c) + f}.
   *
   * @param circle circle of confusion, above 0
   */
  public Metres hyperfocal(Millimetres circle) {
    return hyperfocal(focal, aperture, circle);
  }

  /**
   * Returns the hyperfocal distance of a lens wherever it is focused, {@code H = f^2 / (N c) + f}.
   *
   * @param focal above 0
   * @param circle circle of confusion, above 0
   */
  public static Metres hyperfocal(Millimetres focal, FNumber aperture, Millimetres circle) {
    Bounds.requirePositive("Focal length", focal.value(), "mm");
    Bounds.requirePositive("Circle of confusion", circle.value(), "mm");
    double f = focal.value();
    return new Metres((f * f / (aperture.value() * circle.value()) + f) / 1000);
  }

  /**
   * Returns near and far limit, {@code s(H-f)/(H+s-2f)} and {@code s(H-f)/(H-s)}, the latter
   * infinite from the hyperfocal distance on.
   *
   * @param circle circle of confusion, above 0
   */
  public DepthOfField depthOfField(Millimetres circle) {
    Metres hyperfocal = hyperfocal(circle);
    double h = hyperfocal.value();
    double f = focal.toMetres().value();
    double s = focus.value();
    double near = s * (h - f) / (h + s - 2 * f);
    Optional<Metres> far =
        s >= h ? Optional.empty() : Optional.of(new Metres(s * (h - f) / (h - s)));
    return new DepthOfField(new Metres(near), far, hyperfocal, circle);
  }

  /**
   * Returns the whole depth of field close up, {@code 2 N c (1 + m/p) / m^2}; good where the depth
   * is small against the distance.
   *
   * @param circle circle of confusion
   * @param magnification m, above 0
   * @param pupilMagnification p, above 0
   */
  public static Millimetres closeUpDepth(
      FNumber aperture, Millimetres circle, double magnification, double pupilMagnification) {
    Bounds.requirePositive("Magnification", magnification, "");
    double effective = effectiveFNumber(aperture, magnification, pupilMagnification).value();
    return new Millimetres(2 * effective * circle.value() / (magnification * magnification));
  }

  /**
   * Returns the diameter on the sensor of the blur of a point at another distance, {@code f^2 |x-s|
   * / (N x (s-f))}.
   *
   * @param point its distance, above 0
   */
  public Millimetres blurDisc(Metres point) {
    Bounds.requirePositive("Distance", point.value(), "m");
    double f = focal.value();
    double x = point.value() * 1000;
    double s = focusMm();
    return new Millimetres(f * f * Math.abs(x - s) / (aperture.value() * x * (s - f)));
  }

  /** Returns what a side of the sensor takes in at the focused distance, {@code side (s-f)/f}. */
  public Metres field(Millimetres side) {
    return new Metres(side.value() * (focusMm() - focal.value()) / focal.value() / 1000);
  }

  /**
   * Returns the distance from which a subject fills so much of the sensor, {@code f (1 +
   * subject/image)}.
   *
   * @param focal above 0
   * @param image size on the sensor, above 0
   */
  public static Metres framingDistance(Millimetres focal, Metres subject, Millimetres image) {
    Bounds.requirePositive("Focal length", focal.value(), "mm");
    Bounds.requirePositive("Image size", image.value(), "mm");
    return new Metres(focal.value() * (1 + subject.value() * 1000 / image.value()) / 1000);
  }

  /** Returns the diameter of the Airy disc, {@code 2.44 lambda N}: 1.34 µm times N in green. */
  public static Micrometres airyDisc(FNumber aperture, Micrometres wavelength) {
    return new Micrometres(2.44 * wavelength.value() * aperture.value());
  }

  /**
   * Returns how fast the sharp image moves along the axis behind the lens, {@code f^2 v / (s-f)^2},
   * while the subject comes or goes.
   */
  public MillimetresPerSecond focusTravel(MetresPerSecond speed) {
    double m = magnification();
    return new MillimetresPerSecond(m * m * speed.value() * 1000);
  }

  private double focusMm() {
    return focus.value() * 1000;
  }
}
