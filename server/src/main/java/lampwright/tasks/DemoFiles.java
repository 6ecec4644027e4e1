package lampwright.tasks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Json;

/** The files of the demo studio as they were packed; {@code seed-data/README.md} tells of them. */
final class DemoFiles {

  private static final String FOLDER = "/lampwright/seed-data/";

  private final Map<?, ?> studio;

  /**
   * Reads what there is.
   *
   * @throws IllegalStateException where the program was packed without it
   */
  DemoFiles() {
    studio = object("studio.json");
  }

  String studioName() {
    return text(studio, "name");
  }

  /** The names of the files of a kind, without their ending, in the order of the studio. */
  List<String> names(String kind) {
    return texts(studio, kind);
  }

  /** The same of those with which one can have a first look. */
  List<String> few(String kind) {
    return studio.get("few") instanceof Map<?, ?> few ? texts(few, kind) : List.of();
  }

  Map<?, ?> document(String kind, String name) {
    return object(kind + "/" + name + ".json");
  }

  /** The picture of a setup, if it has one. */
  Optional<byte[]> picture(String setup) {
    return bytes("pictures/" + setup + ".jpg");
  }

  static String text(Map<?, ?> object, String field) {
    if (object.get(field) instanceof String text) {
      return text;
    }
    throw new IllegalStateException("The demo's files lack " + field + " in " + object);
  }

  static Map<?, ?> object(Map<?, ?> object, String field) {
    if (object.get(field) instanceof Map<?, ?> inner) {
      return inner;
    }
    throw new IllegalStateException("The demo's files lack " + field + " in " + object);
  }

  static int number(Map<?, ?> object, String field) {
    if (object.get(field) instanceof Number number) {
      return number.intValue();
    }
    throw new IllegalStateException("The demo's files lack " + field + " in " + object);
  }

  private static List<String> texts(Map<?, ?> object, String field) {
    if (object.get(field) instanceof List<?> values) {
      return values.stream().map(String::valueOf).toList();
    }
    throw new IllegalStateException("studio.json lists no " + field);
  }

  /** The objects that stand in a list; none where it is left out. */
  static List<Map<?, ?>> objects(Map<?, ?> object, String field) {
    return object.get(field) instanceof List<?> values
        ? values.stream().<Map<?, ?>>map(value -> (Map<?, ?>) value).toList()
        : List.of();
  }

  private static Map<?, ?> object(String file) {
    byte[] bytes =
        bytes(file)
            .orElseThrow(
                () -> new IllegalStateException("Missing from the class path: " + FOLDER + file));
    return (Map<?, ?>) Json.parse(new String(bytes, StandardCharsets.UTF_8));
  }

  private static Optional<byte[]> bytes(String file) {
    try (InputStream in = DemoFiles.class.getResourceAsStream(FOLDER + file)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("Cannot be read: " + FOLDER + file, e);
    }
  }
}
