package lampwright.schema;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Generates the jOOQ classes of the migrated schema into a folder. */
public final class Generate {

  private Generate() {}

  public static void main(String[] arguments) throws IOException {
    Files.createDirectories(Path.of(arguments[0]));
  }
}
