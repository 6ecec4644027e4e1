package lampwright.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lampwright.schema.Loading;
import lampwright.schema.OwnedDatabase;
import lampwright.schema.TableShape;
import lampwright.store.PictureFiles;
import lampwright.store.PicturePlace;
import lampwright.store.PicturesUnavailable;

/**
 * Restores a backup into an empty database and a place of pictures. All rows are one transaction,
 * and the pictures lie in a place that only the database with these rows will look into; so it is
 * all there or nothing is, whatever fails.
 */
public final class Restoring {

  private final BackupFile backup;
  private final Loading loading;
  private final Progress progress;

  private Restoring(BackupFile backup, Loading loading, Progress progress) {
    this.backup = backup;
    this.loading = loading;
    this.progress = progress;
  }

  /**
   * Restores all of it, and brings the tables to this program's version then.
   *
   * @param pictures the place of all databases' pictures
   * @throws BackupRefused where the backup is spoilt or the pictures cannot be written
   * @throws lampwright.schema.DatabaseRefused where the database is not empty or does not take it
   */
  public static void restore(
      BackupFile backup, OwnedDatabase database, PicturePlace pictures, Progress progress) {
    backup.verify(progress);
    try (Loading loading = database.load(backup.manifest().schema())) {
      new Restoring(backup, loading, progress).restoreInto(pictures);
    }
    database.migrate();
  }

  private void restoreInto(PicturePlace pictures) {
    mustHaveItsTables();
    backup.forEach(
        new BackupFile.EachFile() {
          @Override
          public void rows(Manifest.Rows table, InputStream in) throws IOException {
            long count = loading.copy(table.table(), in);
            if (count != table.count()) {
              throw BackupRefused.spoilt(
                  backup.path(),
                  "the table %s has %d rows and should have %d"
                      .formatted(table.table().name(), count, table.count()));
            }
            progress.tell(() -> "Rows: the table %s is in.".formatted(table.table().name()));
          }

          @Override
          public void picture(Entries.PictureVersion version, InputStream in) {
            // They come when it is known which folder is theirs.
          }
        });
    loading.finish();
    PicturePlace place = pictures.of(loading.identity());
    try (PictureFiles files = place.open()) {
      boolean done = false;
      try {
        restorePictures(place, files);
        loading.commit();
        done = true;
      } finally {
        if (!done) {
          forget(files);
        }
      }
    } catch (PicturesUnavailable e) {
      throw BackupRefused.withoutPictures(e);
    }
  }

  private void mustHaveItsTables() {
    List<TableShape> written =
        backup.manifest().tables().stream().map(Manifest.Rows::table).toList();
    if (!written.equals(loading.tables())) {
      throw BackupRefused.spoilt(
          backup.path(), "its tables are not those of its version " + backup.manifest().schema());
    }
  }

  private void restorePictures(PicturePlace place, PictureFiles files) {
    try {
      backup.forEach(
          new BackupFile.EachFile() {
            private long done;

            @Override
            public void rows(Manifest.Rows table, InputStream in) {
              // They are in already.
            }

            @Override
            public void picture(Entries.PictureVersion version, InputStream in) throws IOException {
              put(place, files, version, in);
              done++;
              progress.tell(
                  () ->
                      "Pictures: %d of %d files."
                          .formatted(done, backup.manifest().pictureFiles()));
            }
          });
      mustHaveEveryPicture(files);
    } catch (UncheckedIOException e) {
      throw BackupRefused.unwritable(place, e);
    }
  }

  private void put(
      PicturePlace place, PictureFiles files, Entries.PictureVersion version, InputStream in)
      throws BackupFile.Unreadable {
    try (PictureFiles.Arrival arrival = received(place, files, in)) {
      if (version.name().equals(PictureFiles.ORIGINAL)
          && !version.sha256().equals(arrival.sha256())) {
        throw BackupRefused.spoilt(
            backup.path(), "a picture's file is not what its name says: " + version.sha256());
      }
      files.put(arrival, version.sha256(), version.name());
    }
  }

  private static PictureFiles.Arrival received(
      PicturePlace place, PictureFiles files, InputStream in) throws BackupFile.Unreadable {
    try {
      return files.receive(in, Long.MAX_VALUE).orElseThrow();
    } catch (BackupFile.Unreadable e) {
      throw e;
    } catch (IOException e) {
      throw BackupRefused.unwritable(place, e);
    }
  }

  private void mustHaveEveryPicture(PictureFiles files) {
    Set<String> lost = new HashSet<>(backup.lost());
    try {
      Set<String> complete = files.list().complete();
      loading.forEachPicture(
          sha256 -> {
            if (!complete.contains(sha256) && !lost.contains(sha256)) {
              throw BackupRefused.spoilt(backup.path(), "it lacks the picture " + sha256);
            }
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void forget(PictureFiles files) {
    try {
      files.deleteAll();
    } catch (UncheckedIOException | PicturesUnavailable e) {
      // What is left belongs to a database that never came to be; no server looks into it.
    }
  }
}
