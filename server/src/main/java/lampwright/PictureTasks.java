package lampwright;

import java.util.Optional;
import lampwright.people.Ids;
import lampwright.store.Database;
import lampwright.store.PictureFiles;
import lampwright.store.PicturePlace;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.PictureAdding;
import lampwright.tasks.PictureComparing;
import lampwright.tasks.PictureGiving;
import lampwright.tasks.PictureKeeping;
import lampwright.tasks.PictureShowing;
import lampwright.tasks.PictureSweeping;
import lampwright.tasks.PictureUpkeep;

/** All that is done with pictures, on one place of files. */
record PictureTasks(
    PictureFiles files,
    PictureUpkeep upkeep,
    Optional<PictureSweeping> sweeping,
    PictureKeeping keeping,
    PictureAdding adding,
    PictureShowing showing,
    PictureGiving giving,
    PictureComparing comparing)
    implements AutoCloseable {

  /** Opens the place, which may be that of other servers on the same database too. */
  static PictureTasks open(
      Database database, PicturePlace place, Cataloguing cataloguing, Ids ids) {
    PictureFiles files = place.open();
    PictureUpkeep upkeep = new PictureUpkeep(database, files);
    Optional<PictureSweeping> sweeping = Optional.empty();
    if (files.isDistant()) {
      sweeping = Optional.of(PictureSweeping.start(upkeep));
    } else {
      upkeep.sweep();
    }
    PictureKeeping keeping = new PictureKeeping(database, upkeep);
    PictureAdding adding = new PictureAdding(database, files, upkeep, ids);
    return new PictureTasks(
        files,
        upkeep,
        sweeping,
        keeping,
        adding,
        new PictureShowing(database, adding),
        new PictureGiving(database, files),
        new PictureComparing(keeping, cataloguing));
  }

  @Override
  public void close() {
    sweeping.ifPresent(PictureSweeping::close);
    files.close();
  }
}
