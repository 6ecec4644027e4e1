package lampwright.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AssetsTest {

  private static final Path FOLDER = Path.of("src/main/resources/lampwright/assets");

  private static final String MADE_BY_THE_BUILD = "engine.js";

  private final Assets assets = Assets.fromClassPath();

  @Test
  void everyFileInTheFolderIsNamedAndNoOther() throws IOException {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      Set<String> named = new TreeSet<>(Assets.NAMES);
      named.addAll(Assets.STYLE_PARTS);
      List<String> found =
          Stream.concat(
                  Stream.of(MADE_BY_THE_BUILD),
                  files
                      .filter(Files::isRegularFile)
                      .map(file -> FOLDER.relativize(file).toString().replace('\\', '/')))
              .sorted()
              .toList();
      assertEquals(found, List.copyOf(named));
    }
  }

  @Test
  void anAddressLeadsToTheFileItself() throws IOException {
    String path = assets.path("editor.css");
    assertTrue(path.matches("/assets/[0-9a-f]{16}/editor\\.css"), path);
    Assets.Asset asset = assets.find(path.split("/", -1)[2], "editor.css").orElseThrow();
    assertEquals("text/css; charset=utf-8", asset.mediaType());
    assertEquals(Files.size(FOLDER.resolve("editor.css")), asset.length());
    assertEquals(asset.length(), asset.open().readAllBytes().length);
  }

  @Test
  void theStyleSheetIsItsPartsOneAfterTheOther() throws IOException {
    StringBuilder parts = new StringBuilder();
    for (String part : Assets.STYLE_PARTS) {
      parts.append(Files.readString(FOLDER.resolve(part)));
      assertThrows(IllegalArgumentException.class, () -> assets.path(part));
    }
    assertEquals(parts.toString(), text(Assets.STYLE));
  }

  @Test
  void theHashDependsOnContentOnly() {
    assertEquals(assets.hash(), Assets.fromClassPath().hash());
  }

  @Test
  void anotherHashOrNameFindsNothing() {
    assertEquals(Optional.empty(), assets.find("0123456789abcdef", Assets.STYLE));
    assertEquals(Optional.empty(), assets.find(assets.hash(), "../pages/Assets.class"));
    assertThrows(IllegalArgumentException.class, () -> assets.path("nowhere.css"));
  }

  @Test
  void whatTheStyleSheetNamesIsThere() {
    String css = text(Assets.STYLE);
    List<String> named =
        Pattern.compile("url\\(\"([^\"]+)\"\\)")
            .matcher(css)
            .results()
            .map(m -> m.group(1))
            .toList();
    assertEquals(8, named.size());
    assertTrue(Assets.NAMES.containsAll(named), named::toString);
  }

  private String text(String name) {
    try (var in = assets.find(assets.hash(), name).orElseThrow().open()) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
