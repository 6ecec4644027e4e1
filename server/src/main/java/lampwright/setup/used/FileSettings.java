package lampwright.setup.used;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;

/**
 * What a picture's file says of how it was made.
 *
 * @param takenAt on the camera's own clock
 */
public record FileSettings(
    Optional<FNumber> fNumber,
    Optional<ShutterTime> time,
    Optional<Iso> iso,
    Optional<LocalDateTime> takenAt,
    Optional<ZoneOffset> utcOffset) {}
