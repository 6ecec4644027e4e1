package lampwright.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.setup.SetupDocument;

/**
 * The invented setup that is measured: twelve lights, five of them boxes, two round, five beams.
 */
final class TwelveLights {

  private TwelveLights() {}

  static SetupDocument document() {
    try (InputStream in =
        Objects.requireNonNull(TwelveLights.class.getResourceAsStream("twelve-lights.json"))) {
      Object json = Json.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      return switch (SetupDocument.FORM.read(json)) {
        case Reading.Sound<SetupDocument> sound -> sound.value();
        case Reading.Faulty<SetupDocument> faulty ->
            throw new IllegalStateException(faulty.problems().toString());
      };
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
