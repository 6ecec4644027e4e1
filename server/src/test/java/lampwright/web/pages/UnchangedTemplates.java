package lampwright.web.pages;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;

/**
 * Gives each template's Java source that has come out as before the time that it had before. They
 * are all written anew in every build, and the compiler would take the whole server for changed.
 * The build runs it by its source.
 */
public final class UnchangedTemplates {

  private UnchangedTemplates() {}

  /**
   * Looks at all of them.
   *
   * @param arguments the folder of the sources
   */
  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments[0]);
    Path known = folder.resolveSibling(folder.getFileName() + ".known");
    Properties before = new Properties();
    if (Files.exists(known)) {
      try (var in = Files.newBufferedReader(known, StandardCharsets.UTF_8)) {
        before.load(in);
      }
    }
    Properties now = new Properties();
    for (Path source : sources(folder)) {
      String content = hash(source);
      String time = before.getProperty(content);
      if (time != null) {
        Files.setLastModifiedTime(source, FileTime.fromMillis(Long.parseLong(time)));
      }
      now.setProperty(content, Long.toString(Files.getLastModifiedTime(source).toMillis()));
    }
    try (var out = Files.newBufferedWriter(known, StandardCharsets.UTF_8)) {
      now.store(out, null);
    }
  }

  private static List<Path> sources(Path folder) throws IOException {
    try (Stream<Path> tree = Files.walk(folder)) {
      return tree.filter(Files::isRegularFile).toList();
    }
  }

  private static String hash(Path source) throws IOException, NoSuchAlgorithmException {
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(source));
    return HexFormat.of().formatHex(digest);
  }
}
