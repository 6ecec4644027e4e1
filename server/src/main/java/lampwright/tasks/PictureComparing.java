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

  /**
   * A comparison.
   *
   * @param revision of the setup that the file was held against
   */
  public record Compared(int revision, FileAgainstSetup result) {}

  /** Compares them; nothing is changed. */
  public Compared compare(Caller caller, StudioId studio, SetupId setup, PictureId picture) {
    ExifFacts exif = pictures.get(caller, studio, setup, picture).exif();
    Catalogued now = cataloguing.get(caller, studio, setup);
    FileSettings file =
        new FileSettings(exif.fNumber(), exif.time(), exif.iso(), exif.takenAt(), exif.utcOffset());
    return new Compared(now.revision(), FileAgainstSetup.of(now.document(), file));
  }
}
