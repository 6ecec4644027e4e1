package lampwright.web.http;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * The files for TLS cannot be worked with. The message is one line for the person who starts the
 * server: the setting, the file, what is wrong with it, and what to do. Nothing of a key is in it.
 */
public final class CertificateUnusable extends RuntimeException {

  private CertificateUnusable(String message, @Nullable Throwable cause) {
    super(message, cause);
  }

  static CertificateUnusable of(String setting, Path file, String wrong) {
    return new CertificateUnusable("%s (%s) %s".formatted(setting, file, wrong), null);
  }

  static CertificateUnusable of(String setting, Path file, String wrong, Throwable cause) {
    return new CertificateUnusable("%s (%s) %s".formatted(setting, file, wrong), cause);
  }
}
