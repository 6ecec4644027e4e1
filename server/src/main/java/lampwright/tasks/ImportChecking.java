package lampwright.tasks;

import java.nio.file.Path;
import java.util.Optional;
import lampwright.archive.Archive;
import lampwright.archive.ArchiveReader;
import lampwright.archive.Fault;
import lampwright.archive.Limits;
import lampwright.archive.PictureFile;
import lampwright.archive.Summary;
import lampwright.archive.Unsound;
import lampwright.document.Pointer;
import lampwright.document.Problem;
import lampwright.people.Permission;
import lampwright.picture.PictureFrame;
import lampwright.picture.Unusable;
import lampwright.store.Database;
import lampwright.store.NotEntered;
import lampwright.store.StudioTransaction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Checks an archive that has come, and plans what bringing it in would do. */
record ImportChecking(Database database, PictureAdding adding) {

  private static final Logger LOG = LoggerFactory.getLogger(ImportChecking.class);

  void check(ImportJob job) {
    boolean sound = false;
    try {
      Archive archive =
          ArchiveReader.read(job.file(), Limits.USUAL, new PicturesOf(job), job::step);
      try {
        ImportPlan plan =
            database.inStudio(
                job.studio(),
                job.by().asker(),
                in -> {
                  mayBring(in, archive);
                  return Fates.find(in, archive).plan(in);
                });
        job.mustGoOn();
        job.planned(archive, plan);
        sound = true;
      } finally {
        if (!sound) {
          archive.close();
        }
      }
    } catch (Unsound unsound) {
      job.faulty(unsound.faults());
    } catch (Refused refused) {
      job.failed(refused);
    } catch (NotEntered e) {
      job.failed(ImportTrouble.of(ImportTrouble.Why.NO_MEMBER));
    } catch (ImportJob.Stopped stopped) {
      job.failed(job.whyStopped());
    } catch (RuntimeException | Error e) {
      LOG.error("Checking the import {} failed", job.id(), e);
      job.failed(ImportTrouble.of(ImportTrouble.Why.NOT_CHECKED));
    } finally {
      if (!sound) {
        job.letFilesGo();
      }
    }
  }

  /**
   * Lets a member pass who may bring an archive in.
   *
   * @throws Refused NotAllowed, NotFound
   */
  static void mayBring(StudioTransaction in, Archive archive) {
    mayBring(in, archive.summary().what());
  }

  /** The same by what the archive is of. */
  static void mayBring(StudioTransaction in, Summary.What what) {
    Leave.ask(in, what == Summary.What.STUDIO ? Permission.MOVE_STUDIO : Permission.WRITE_SETUPS);
  }

  /** The file, the line and the place in it, as one pointer. */
  static Problem problem(Fault fault) {
    Pointer at = fault.file().isEmpty() ? Pointer.root() : Pointer.root().field(fault.file());
    String where = fault.file();
    if (fault.line() > 0) {
      at = at.item(fault.line());
      where = where + ", line " + fault.line();
    }
    String message = where.isEmpty() ? fault.message() : where + ": " + fault.message();
    return new Problem(at.text() + fault.pointer(), message);
  }

  private final class PicturesOf implements ArchiveReader.Pictures {

    private final ImportJob job;

    PicturesOf(ImportJob job) {
      this.job = job;
    }

    @Override
    public Optional<String> fault(Path file, PictureFile said) {
      return switch (adding.examineInTurn(file)) {
        case Unusable unusable -> Optional.of(unusable.sentence());
        case PictureFrame frame ->
            frame.format().mediaType().equals(said.mediaType())
                    && frame.width() == said.width()
                    && frame.height() == said.height()
                ? Optional.empty()
                : Optional.of("The picture is of another format or size than is said of it.");
      };
    }

    @Override
    public Path folder() {
      return job.folder();
    }
  }
}
