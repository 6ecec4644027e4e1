package lampwright.schema;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import lampwright.postgres.EmbeddedPostgres;
import org.jooq.Constants;
import org.jooq.codegen.GenerationTool;
import org.jooq.meta.jaxb.Configuration;
import org.jooq.meta.jaxb.Database;
import org.jooq.meta.jaxb.ForcedType;
import org.jooq.meta.jaxb.Generator;
import org.jooq.meta.jaxb.Jdbc;
import org.jooq.meta.jaxb.Logging;
import org.jooq.meta.jaxb.Target;

/**
 * Generates the jOOQ classes of the migrated schema into a folder, where the SQL files have changed
 * since the last time.
 */
public final class Generate {

  private static final String PACKAGE = "lampwright.schema.generated";

  /** Counts what this class generates differently from its predecessor, for the stamp. */
  private static final String GENERATOR = "1";

  private Generate() {}

  /** Takes the folder to write into. */
  public static void main(String[] arguments) throws Exception {
    Path output = Path.of(arguments[0]).toAbsolutePath();
    Path stamp = output.resolveSibling(output.getFileName() + ".stamp");
    String wanted = stampOfToday();
    if (Files.isDirectory(output)
        && Files.exists(stamp)
        && Files.readString(stamp, StandardCharsets.US_ASCII).equals(wanted)) {
      return;
    }
    Files.deleteIfExists(stamp);
    generateFromFreshDatabase(output);
    Files.writeString(stamp, wanted, StandardCharsets.US_ASCII);
  }

  private static void generateFromFreshDatabase(Path output) throws Exception {
    Path temporary = Files.createTempDirectory("lampwright-generate");
    // PostgreSQL runs as another user where we are root, and has to pass through.
    Files.setPosixFilePermissions(temporary, PosixFilePermissions.fromString("rwx--x--x"));
    try {
      try (EmbeddedPostgres postgres = EmbeddedPostgres.start(temporary.resolve("data"))) {
        String url = postgres.jdbcUrl(EmbeddedPostgres.DATABASE);
        Migrations.apply(url, postgres.user(), postgres.password());
        GenerationTool.generate(configuration(url, postgres, output));
      }
    } finally {
      deleteTree(temporary);
    }
  }

  private static Configuration configuration(String url, EmbeddedPostgres postgres, Path output) {
    return new Configuration()
        .withLogging(Logging.WARN)
        .withJdbc(
            new Jdbc()
                .withDriver("org.postgresql.Driver")
                .withUrl(url)
                .withUser(postgres.user())
                .withPassword(postgres.password()))
        .withGenerator(
            new Generator()
                .withDatabase(
                    new Database()
                        .withName("org.jooq.meta.postgres.PostgresDatabase")
                        .withInputSchema(Migrations.SCHEMA)
                        .withExcludes("flyway_schema_history")
                        .withForcedTypes(
                            new ForcedType().withName("INSTANT").withIncludeTypes("timestamptz")))
                .withGenerate(
                    new org.jooq.meta.jaxb.Generate()
                        .withRecords(false)
                        .withRoutines(false)
                        .withComments(false))
                .withTarget(
                    new Target().withPackageName(PACKAGE).withDirectory(output.toString())));
  }

  private static String stampOfToday() throws IOException, NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    digest.update((GENERATOR + " " + Constants.FULL_VERSION).getBytes(StandardCharsets.UTF_8));
    for (Path file : sqlFiles()) {
      digest.update(file.getFileName().toString().getBytes(StandardCharsets.UTF_8));
      digest.update(Files.readAllBytes(file));
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static List<Path> sqlFiles() throws IOException {
    URL folder = Generate.class.getResource("/" + Migrations.LOCATION);
    if (folder == null) {
      throw new IllegalStateException(Migrations.LOCATION + " is missing from the class path.");
    }
    try (Stream<Path> files = Files.list(Path.of(uri(folder)))) {
      return files.sorted().toList();
    }
  }

  private static URI uri(URL folder) {
    try {
      return folder.toURI();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void deleteTree(Path root) throws IOException {
    try (Stream<Path> tree = Files.walk(root)) {
      for (Path path : tree.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
