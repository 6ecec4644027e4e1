package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.postgres.UnpackedPrograms;
import lampwright.schema.WorkingDatabase;
import lampwright.setup.SetupId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A lost database is one kind of failure, and it passes. */
class DatabaseUnavailableTest {

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  @TempDir Path home;

  @Test
  void aKilledConnectionIsUnavailableAndTheNextOneWorks() throws Exception {
    PersonId author = database.newPerson();
    StudioId studio = database.newStudio(author);
    assertThrows(
        DatabaseUnavailable.class,
        () ->
            database
                .open()
                .inStudio(
                    studio,
                    Asker.whole(author),
                    in -> {
                      endOtherConnections();
                      return new Setups(in).create(new SetupId("setup001"), "x", "{}", "");
                    }));
    database.open().check();
    assertEquals(
        0,
        database
            .open()
            .<Integer>inStudio(studio, Asker.whole(author), in -> new Setups(in).count()));
  }

  private static void endOtherConnections() {
    try {
      database.sqlAsSuperuser(
          "select pg_terminate_backend(pid, 5000) from pg_stat_activity where datname ="
              + " current_database() and pid <> pg_backend_pid()");
    } catch (java.sql.SQLException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void aStoppedServerIsUnavailable() throws IOException {
    Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwx--x--x"));
    UnpackedPrograms.linkInto(home.resolve("data"));
    Database store;
    try (EmbeddedPostgres postgres = EmbeddedPostgres.start(home.resolve("data"))) {
      WorkingDatabase where = WorkingDatabase.in(postgres);
      store = new Database(where, 2, Clock.systemUTC());
      store.check();
    }
    try (store) {
      assertThrows(DatabaseUnavailable.class, store::check);
      assertThrows(DatabaseUnavailable.class, store::beginAsIndexer);
      assertThrows(DatabaseUnavailable.class, store::listen);
    }
  }
}
