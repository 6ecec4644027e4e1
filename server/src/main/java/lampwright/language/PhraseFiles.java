package lampwright.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;

/**
 * The files of phrases: for each language a folder with its tag, such as {@code
 * lampwright/language/en}, in it a file for each room of the house that speaks. Keys begin with
 * their file's name.
 */
public final class PhraseFiles {

  private static final List<String> ROOMS =
      List.of(
          "account",
          "adapting",
          "auditing",
          "caution",
          "comparing",
          "drawing",
          "drilling",
          "editor",
          "field",
          "figuring",
          "finding",
          "glossary",
          "learning",
          "leaving",
          "members",
          "packing",
          "pages",
          "picture",
          "problem",
          "reacting",
          "sharing",
          "sheet",
          "signature",
          "studio",
          "taking",
          "token",
          "without",
          "wording");

  private PhraseFiles() {}

  /**
   * Reads the phrases of a language.
   *
   * @throws IllegalStateException where one of its files is not in the program, or a key is not of
   *     its file
   */
  public static Phrases read(Language language) {
    Map<String, String> phrases = new HashMap<>();
    for (String room : ROOMS) {
      Properties file = file(language.tag() + "/" + room + ".properties");
      for (String key : file.stringPropertyNames()) {
        if (!key.startsWith(room + ".")) {
          throw new IllegalStateException(
              "Key \"" + key + "\" does not begin with its file's name, \"" + room + ".\".");
        }
        phrases.put(key, Objects.requireNonNull(file.getProperty(key)));
      }
    }
    return new Phrases(language, phrases);
  }

  private static Properties file(String name) {
    try (InputStream bytes = PhraseFiles.class.getResourceAsStream(name)) {
      if (bytes == null) {
        throw new IllegalStateException("No file of phrases: " + name);
      }
      Properties file = new Properties();
      file.load(new InputStreamReader(bytes, StandardCharsets.UTF_8));
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
