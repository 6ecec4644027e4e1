package lampwright.picture;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Millimetres;

/**
 * Reads the few tags that matter here, and no others, so that no directory of a hostile file can
 * ask for memory. A library that reads them all was tried, metadata-extractor 2.21.0: it keeps a
 * copy of every tag's value, and values may lie over each other, so that a TIFF of 8 MiB with 200
 * tags took 1.7 GB. The tests hold this reader against it. Tags and types: Exif 3.0, 4.6; TIFF 6.0,
 * section 2.
 */
final class ExifReader {

  private static final int ORIENTATION = 0x0112;
  private static final int EXIF = 0x8769;
  private static final int GPS = 0x8825;
  private static final int EXPOSURE_TIME = 0x829a;
  private static final int F_NUMBER = 0x829d;
  private static final int SENSITIVITY = 0x8827;
  private static final int RECOMMENDED_INDEX = 0x8832;
  private static final int SPEED = 0x8833;
  private static final int TAKEN_AT = 0x9003;
  private static final int TAKEN_AT_OFFSET = 0x9011;
  private static final int FOCAL_LENGTH = 0x920a;
  private static final int WIDTH = 0xa002;
  private static final int HEIGHT = 0xa003;

  /** The tag of the speed holds two bytes; what does not fit is written so, and told elsewhere. */
  private static final long SPEED_IS_ELSEWHERE = 65_535;

  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT)
          .withResolverStyle(ResolverStyle.STRICT);

  private ExifReader() {}

  /**
   * The facts in a structure of TIFF.
   *
   * @param tiff from its byte order on; may be anything
   */
  static ExifFacts read(Bytes tiff) {
    try {
      return TiffDirectory.first(tiff).map(ExifReader::facts).orElse(ExifFacts.NONE);
    } catch (IndexOutOfBoundsException e) {
      return ExifFacts.NONE;
    }
  }

  private static ExifFacts facts(TiffDirectory first) {
    TiffDirectory exif = first.directory(EXIF);
    return new ExifFacts(
        within(exif.number(F_NUMBER), 0.5, 128).map(ExifReader::aperture),
        within(exif.number(EXPOSURE_TIME), 1e-6, 86_400).map(ShutterTime::ofMark),
        speed(exif).map(Iso::ofMark),
        within(exif.number(FOCAL_LENGTH), 1, 5000).map(Millimetres::new),
        exif.text(TAKEN_AT).flatMap(ExifReader::moment),
        exif.text(TAKEN_AT_OFFSET).flatMap(ExifReader::offset),
        size(exif),
        orientation(first),
        place(first.directory(GPS)));
  }

  private static FNumber aperture(double written) {
    return FNumber.ofMark(written);
  }

  private static Optional<Double> speed(TiffDirectory exif) {
    OptionalLong common = exif.whole(SENSITIVITY);
    OptionalLong told =
        common.isPresent() && common.getAsLong() != SPEED_IS_ELSEWHERE
            ? common
            : exif.whole(SPEED).isPresent() ? exif.whole(SPEED) : exif.whole(RECOMMENDED_INDEX);
    return told.isPresent()
        ? within(OptionalDouble.of((double) told.getAsLong()), 1, 10_000_000)
        : Optional.empty();
  }

  private static Optional<Double> within(OptionalDouble told, double lowest, double highest) {
    return told.isPresent() && told.getAsDouble() >= lowest && told.getAsDouble() <= highest
        ? Optional.of(told.getAsDouble())
        : Optional.empty();
  }

  private static Optional<LocalDateTime> moment(String text) {
    try {
      return Optional.of(LocalDateTime.parse(text, MOMENT));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<ZoneOffset> offset(String text) {
    try {
      return Optional.of(ZoneOffset.of(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<ExifFacts.Size> size(TiffDirectory exif) {
    long width = exif.whole(WIDTH).orElse(0);
    long height = exif.whole(HEIGHT).orElse(0);
    boolean told = width > 0 && height > 0 && width <= 1_000_000 && height <= 1_000_000;
    return told ? Optional.of(new ExifFacts.Size((int) width, (int) height)) : Optional.empty();
  }

  private static Orientation orientation(TiffDirectory first) {
    long tag = first.whole(ORIENTATION).orElse(1);
    return tag >= 1 && tag <= 8 ? new Orientation((int) tag) : Orientation.UPRIGHT;
  }

  private static Optional<ExifFacts.Place> place(TiffDirectory gps) {
    OptionalDouble north = angle(gps, 1, 2, "N", "S", 90);
    OptionalDouble east = angle(gps, 3, 4, "E", "W", 180);
    return north.isPresent() && east.isPresent()
        ? Optional.of(
            new ExifFacts.Place(new Degrees(north.getAsDouble()), new Degrees(east.getAsDouble())))
        : Optional.empty();
  }

  private static OptionalDouble angle(
      TiffDirectory gps, int sideTag, int angleTag, String plus, String minus, double most) {
    String side = gps.text(sideTag).orElse("");
    OptionalDouble degrees = gps.number(angleTag, 0);
    if (degrees.isEmpty() || !(side.equals(plus) || side.equals(minus))) {
      return OptionalDouble.empty();
    }
    double angle =
        degrees.getAsDouble()
            + gps.number(angleTag, 1).orElse(0) / 60
            + gps.number(angleTag, 2).orElse(0) / 3600;
    return angle >= 0 && angle <= most
        ? OptionalDouble.of(side.equals(minus) ? -angle : angle)
        : OptionalDouble.empty();
  }
}
