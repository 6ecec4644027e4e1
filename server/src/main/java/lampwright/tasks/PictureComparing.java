package lampwright.tasks;

import lampwright.people.StudioId;
import lampwright.picture.ExifFacts;
import lampwright.setup.PictureId;
import lampwright.setup.SetupId;
import lampwright.setup.used.FileAgainstSetup;
import lampwright.setup.used.FileSettings;

/** Holds what a picture's file says against its setup as it is now. */
public final class PictureComparing {

  private final PictureKeeping pictures;
  private final Cataloguing cataloguing;

  public PictureComparing(PictureKeeping pictures, Cataloguing cataloguing) {
    this.pictures = pictures;
    this.cataloguing = cataloguing;
  }

  /** A picture, the setup as it is now, and where they disagree. */
  public record Compared(KeptPicture picture, Catalogued setup, FileAgainstSetup result) {}

  /** Compares them; nothing is changed. */
  public Compared compare(Caller caller, StudioId studio, SetupId setup, PictureId id) {
    KeptPicture picture = pictures.get(caller, studio, setup, id);
    ExifFacts exif = picture.exif();
    Catalogued now = cataloguing.get(caller, studio, setup);
    FileSettings file =
        new FileSettings(exif.fNumber(), exif.time(), exif.iso(), exif.takenAt(), exif.utcOffset());
    return new Compared(picture, now, FileAgainstSetup.of(now.document(), file));
  }
}
