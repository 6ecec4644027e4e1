package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.googlejavaformat.java.Formatter;
import com.google.googlejavaformat.java.FormatterException;
import com.google.googlejavaformat.java.RemoveUnusedImports;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FormatTest {

  /** The tests run in {@code server/}. */
  private static final Path TOP = Path.of("..");

  @Test
  void everyJavaFileIsFormattedAsTheFormatterWouldAndImportsNothingUnused() throws Exception {
    List<Path> sources = new ArrayList<>();
    for (String home : List.of("server/src", "server/benchmarks/src", "migrations/src")) {
      try (Stream<Path> files = Files.walk(TOP.resolve(home))) {
        files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
      }
    }
    List<String> unformatted =
        sources.parallelStream()
            .filter(file -> !isFormatted(file))
            .map(file -> TOP.relativize(file).toString())
            .toList();
    assertEquals(List.of(), unformatted, "Run .ci/tidy and commit what it changes");
    assertTrue(
        sources.size() > 20,
        () -> "Only " + sources.size() + " files were found: is this the right folder?");
  }

  private static boolean isFormatted(Path file) {
    try {
      String text = Files.readString(file);
      String formatted = new Formatter().formatSource(text);
      return RemoveUnusedImports.removeUnusedImports(formatted).equals(text);
    } catch (IOException | FormatterException e) {
      throw new IllegalStateException(file + " cannot be formatted", e);
    }
  }
}
