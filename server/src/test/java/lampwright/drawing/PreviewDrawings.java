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
    return Svg.trusted(read("preview-plan.svg"));
  }

  /** A small plan for a list, the one of this number on the page. */
  public static Svg smallPlan(int number) {
    return Svg.trusted(
        read("preview-small-plan.svg").replace("small-plan-", "small-plan-" + number + "-"));
  }

  private static String read(String name) {
    try (InputStream in = PreviewDrawings.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the test resources");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
