package lampwright.tasks;

import java.time.Instant;
import lampwright.picture.ExifFacts;
import lampwright.picture.PictureFormat;
import lampwright.picture.ToneStatistics;
import lampwright.setup.PictureId;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;

/**
 * A picture of a setup as it is now.
 *
 * @param sha256 of the file as it came
 * @param bytes how large that is
 * @param width in pixels, upright
 * @param height in pixels, upright
 */
public record KeptPicture(
    PictureId id,
    SetupId setup,
    int revision,
    Instant changedAt,
    String changedBy,
    PictureNote note,
    PictureFormat format,
    String sha256,
    long bytes,
    int width,
    int height,
    ExifFacts exif,
    ToneStatistics statistics) {}
