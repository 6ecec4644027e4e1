package lampwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Drawings made by hand, for previews of pages only. */
public final class PreviewDrawings {

  private PreviewDrawings() {}

  /** A plan of an invented setup with five lights. */
  public static Svg plan() {
    try (InputStream in = PreviewDrawings.class.getResourceAsStream("preview-plan.svg")) {
      if (in == null) {
        throw new IllegalStateException("preview-plan.svg is missing from the test resources");
      }
      return Svg.trusted(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
