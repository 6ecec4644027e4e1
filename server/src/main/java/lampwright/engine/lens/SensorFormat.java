package lampwright.engine.lens;

import lampwright.engine.exposure.FNumber;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Micrometres;
import lampwright.engine.unit.Millimetres;

/**
 * The size of a sensor or a film frame. Models of one class differ by a few tenths of a millimetre.
 *
 * @param width as the camera is held level, above 0
 * @param height above 0
 */
public record SensorFormat(Millimetres width, Millimetres height) {

  /** 35 mm full frame, 36 by 24 mm, which others are compared with. */
  public static final SensorFormat FULL_FRAME = of(36, 24);

  /** A common divisor of the diagonal for the circle of confusion: 0.0288 mm on full frame. */
  public static final double USUAL_CIRCLE_DIVISOR = 1500;

  /** Checks the bounds. */
  public SensorFormat {
    Bounds.requirePositive("Sensor width", width.value(), "mm");
    Bounds.requirePositive("Sensor height", height.value(), "mm");
  }

  /** Returns a format from millimetres. */
  public static SensorFormat of(double widthMm, double heightMm) {
    return new SensorFormat(new Millimetres(widthMm), new Millimetres(heightMm));
  }

  /** Returns the length of the diagonal. */
  public Millimetres diagonal() {
    return new Millimetres(
        Math.sqrt(width.value() * width.value() + height.value() * height.value()));
  }

  /** Returns the measure that a basis compares. */
  public Millimetres measure(CropBasis basis) {
    return switch (basis) {
      case DIAGONAL -> diagonal();
      case LONG_SIDE -> width.compareTo(height) >= 0 ? width : height;
      case SHORT_SIDE -> width.compareTo(height) >= 0 ? height : width;
    };
  }

  /** Returns the crop factor against 36 by 24 mm; above 1 for smaller formats. */
  public double crop(CropBasis basis) {
    return FULL_FRAME.measure(basis).value() / measure(basis).value();
  }

  /** Returns the focal length that frames alike on 36 by 24 mm, {@code f crop}. */
  public Millimetres equivalentFocal(Millimetres focal, CropBasis basis) {
    return new Millimetres(focal.value() * crop(basis));
  }

  /** Returns the focal length that frames on another format as one does on this. */
  public Millimetres focalOn(SensorFormat other, Millimetres focal, CropBasis basis) {
    return new Millimetres(focal.value() * other.measure(basis).value() / measure(basis).value());
  }

  /**
   * Returns the f-number with the same depth of field on 36 by 24 mm, for the same framing and
   * print, {@code N crop} by the diagonal. Its exposure differs by {@code 2 log2(crop)} stops.
   */
  public FNumber equivalentFNumber(FNumber fNumber) {
    return new FNumber(fNumber.value() * crop(CropBasis.DIAGONAL));
  }

  /** Returns the f-number with the same depth of field on another format, by the diagonal. */
  public FNumber fNumberOn(SensorFormat other, FNumber fNumber) {
    return new FNumber(fNumber.value() * other.diagonal().value() / diagonal().value());
  }

  /**
   * Returns a circle of confusion as a part of the diagonal. A convention of print size, distance
   * and eyesight: always show which.
   *
   * @param divisor 1500 or 1730 in the trade, above 0
   */
  public Millimetres circleOfConfusion(double divisor) {
    Bounds.requirePositive("Divisor of the diagonal", divisor, "");
    return new Millimetres(diagonal().value() / divisor);
  }

  /** Returns the pitch of square pixels, width over pixels. */
  public Micrometres pixelPitch(int pixelsAcross) {
    Bounds.requirePositive("Pixels across", pixelsAcross, "");
    return new Micrometres(width.value() * 1000 / pixelsAcross);
  }

  /**
   * Returns the angle that a side takes in at infinity, {@code 2 atan(side / 2f)}.
   *
   * @param side of the sensor
   * @param focal above 0
   */
  public static Degrees angleOfView(Millimetres side, Millimetres focal) {
    Bounds.requirePositive("Focal length", focal.value(), "mm");
    return Degrees.ofRadians(2 * StrictMath.atan(side.value() / (2 * focal.value())));
  }

  @Override
  public String toString() {
    return Bounds.rounded(width.value(), 1) + " × " + Bounds.rounded(height.value(), 1) + " mm";
  }
}
