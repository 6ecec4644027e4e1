package lampwright;

import java.util.Optional;
import lampwright.postgres.EmbeddedPostgres;
import lampwright.schema.WorkingDatabase;

/**
 * The database that the house stands on: the server's own PostgreSQL, or the one that the settings
 * name.
 */
record Foundation(WorkingDatabase database, Optional<EmbeddedPostgres> own)
    implements AutoCloseable {

  /**
   * Starts or finds it, and brings it to this program's shape.
   *
   * @throws lampwright.postgres.DataFolderUnusable when the data folder cannot hold one
   * @throws lampwright.schema.DatabaseRefused when the one that is named cannot be worked with
   */
  static Foundation lay(Settings settings) {
    if (settings.database().isPresent()) {
      String url = settings.database().get();
      return new Foundation(
          settings
              .databaseOwner()
              .map(ownerUrl -> WorkingDatabase.at(url, ownerUrl))
              .orElseGet(() -> WorkingDatabase.at(url)),
          Optional.empty());
    }
    EmbeddedPostgres postgres = EmbeddedPostgres.start(settings.data());
    try {
      return new Foundation(WorkingDatabase.in(postgres), Optional.of(postgres));
    } catch (RuntimeException | Error e) {
      postgres.close();
      throw e;
    }
  }

  /**
   * Takes the demo studio away, as the owner of the tables.
   *
   * @return how many setups went
   */
  int removeDemo(Settings settings) {
    return own.map(WorkingDatabase::removeDemo)
        .orElseGet(
            () ->
                WorkingDatabase.removeDemo(
                    settings.databaseOwner().or(settings::database).orElseThrow()));
  }

  @Override
  public void close() {
    own.ifPresent(EmbeddedPostgres::close);
  }
}
