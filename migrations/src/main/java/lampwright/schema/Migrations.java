package lampwright.schema;

import java.util.Arrays;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** Brings a database to the shape that this program knows. */
public final class Migrations {

  /** The schema that every table of ours is in. */
  public static final String SCHEMA = "lampwright";

  /** Where the SQL files are on the class path. */
  static final String LOCATION = "lampwright/migrations";

  private Migrations() {}

  /**
   * Applies what is missing, in order, each in one transaction. Several processes may call this at
   * once; one works and the others wait.
   *
   * @param user the owner of the tables
   * @throws FlywayException when a file fails, was changed after it had been applied, or the
   *     database knows a later one than this program
   */
  public static void apply(String jdbcUrl, String user, String password) {
    configured(jdbcUrl, user, password).load().migrate();
  }

  /**
   * Applies what is missing up to a version, for what was written in that version.
   *
   * @param version the number of the last file to apply
   * @throws FlywayException as {@link #apply(String, String, String)}
   */
  static void apply(String jdbcUrl, String user, String password, int version) {
    configured(jdbcUrl, user, password)
        .target(MigrationVersion.fromVersion(Integer.toString(version)))
        .load()
        .migrate();
  }

  /** The number of the last file that this program has; asks the database and changes nothing. */
  static int newest(String jdbcUrl, String user, String password) {
    return Arrays.stream(configured(jdbcUrl, user, password).load().info().all())
        .filter(file -> file.getState().isResolved())
        .mapToInt(file -> Integer.parseInt(file.getVersion().getVersion()))
        .max()
        .orElseThrow();
  }

  private static FluentConfiguration configured(String jdbcUrl, String user, String password) {
    return Flyway.configure(Migrations.class.getClassLoader())
        .dataSource(jdbcUrl, user, password)
        .locations("classpath:" + LOCATION)
        .defaultSchema(SCHEMA)
        .createSchemas(true)
        // A program older than its database would write rows that the newer one misreads.
        .ignoreMigrationPatterns(new String[0])
        .cleanDisabled(true)
        .loggers("slf4j");
  }
}
