package lampwright.tasks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import lampwright.document.Json;

/**
 * Puts the demo's documents into its studio, by the same task that a member would use. What is
 * there already, or has been, is left as it is.
 */
public final class DemoLoader {

  private static final String FOLDER = "/lampwright/seed-data/";

  private final Map<?, ?> contents;

  /**
   * Reads what there is.
   *
   * @throws IllegalStateException where the program was packed without it
   */
  public DemoLoader() {
    contents = object("studio.json");
  }

  /**
   * Where one kind of document goes.
   *
   * @param known the titles that are there already, or have been
   * @param add takes one document, as plain JSON values
   */
  public record Shelf(Supplier<Set<String>> known, Consumer<Object> add) {}

  /** What the studio is called. */
  public String studioName() {
    return text(contents, "name");
  }

  /** Puts the kits and the setups where they belong. */
  public void load(Shelf kits, Shelf setups) {
    load("kits", "name", kits);
    load("setups", "title", setups);
  }

  private void load(String kind, String title, Shelf shelf) {
    Set<String> known = shelf.known().get();
    if (!(contents.get(kind) instanceof List<?> files)) {
      throw new IllegalStateException("studio.json lists no " + kind);
    }
    for (Object file : files) {
      Map<?, ?> document = object(kind + "/" + file);
      if (!known.contains(text(document, title))) {
        shelf.add().accept(document);
      }
    }
  }

  private static String text(Map<?, ?> object, String field) {
    return String.valueOf(object.get(field));
  }

  private static Map<?, ?> object(String file) {
    try (InputStream in = DemoLoader.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException("Missing from the class path: " + FOLDER + file);
      }
      return (Map<?, ?>) Json.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("Cannot be read: " + FOLDER + file, e);
    }
  }
}
