package lampwright;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.googlejavaformat.java.Formatter;
import com.google.googlejavaformat.java.RemoveUnusedImports;
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
    List<String> unformatted = new ArrayList<>();
    int seen = 0;
    for (String home : List.of("server/src", "server/benchmarks/src", "migrations/src")) {
      Path sources = TOP.resolve(home);
      try (Stream<Path> files = Files.walk(sources)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          seen++;
          String text = Files.readString(file);
          String formatted = new Formatter().formatSource(text);
          if (!RemoveUnusedImports.removeUnusedImports(formatted).equals(text)) {
            unformatted.add(TOP.relativize(file).toString());
          }
        }
      }
    }
    assertEquals(List.of(), unformatted, "Run .ci/tidy and commit what it changes");
    assertEquals(true, seen > 20, "Only " + seen + " files were found: is this the right folder?");
  }
}
