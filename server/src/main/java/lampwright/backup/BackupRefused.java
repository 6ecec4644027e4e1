package lampwright.backup;

import java.util.Locale;
import lampwright.store.PicturesUnavailable;

/**
 * A backup cannot be made, or a file is none that can be restored. The message is one line for the
 * keeper of the server: what is wrong, and what to do.
 */
public final class BackupRefused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public BackupRefused(String message) {
    super(message);
  }

  BackupRefused(String message, Throwable cause) {
    super(message, cause);
  }

  /** That a file or folder could not be written. */
  static BackupRefused unwritable(Object where, Exception e) {
    String reason = String.valueOf(e.getMessage());
    return new BackupRefused(
        reason.toLowerCase(Locale.ROOT).contains("no space left")
            ? "The disk of %s is full, and nothing was left there. Make room, and try again."
                .formatted(where)
            : "%s could not be written (%s), and nothing was left there. Put that right, and try again."
                .formatted(where, e.getClass().getSimpleName() + ": " + firstLine(reason)),
        e);
  }

  /** That the store of pictures cannot be used. */
  static BackupRefused withoutPictures(PicturesUnavailable e) {
    return new BackupRefused(e.getMessage() + " Nothing was left there. Try again.", e);
  }

  /** That what was read is not what was once written. */
  static BackupRefused spoilt(Object file, String what) {
    return new BackupRefused(
        "The backup %s is spoilt: %s. Nothing comes of it; take another backup."
            .formatted(file, what));
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("no reason given");
  }
}
