package lampwright.picture;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Millimetres;

/**
 * What a camera wrote into a file (Exif 3.0). What is missing, or cannot be true, is absent.
 *
 * @param fNumber the exact value behind a printed mark
 * @param time the exact value behind a printed mark
 * @param takenAt on the camera's own clock
 * @param utcOffset how far that clock was ahead of universal time
 * @param place where the camera was; empty where the file does not say
 */
public record ExifFacts(
    Optional<FNumber> fNumber,
    Optional<ShutterTime> time,
    Optional<Iso> iso,
    Optional<Millimetres> focalLength,
    Optional<LocalDateTime> takenAt,
    Optional<ZoneOffset> utcOffset,
    Optional<Size> size,
    Orientation orientation,
    Optional<Place> place) {

  /** What a file without a word of its camera says. */
  public static final ExifFacts NONE =
      new ExifFacts(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Orientation.UPRIGHT,
          Optional.empty());

  /** Pixels as the camera counted them, before anything was cut away. */
  public record Size(int width, int height) {}

  /** Where the camera was; north and east are positive. */
  public record Place(Degrees latitude, Degrees longitude) {}
}
