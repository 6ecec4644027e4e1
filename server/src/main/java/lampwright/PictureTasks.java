package lampwright;

import java.nio.file.Path;
import lampwright.people.Ids;
import lampwright.store.Database;
import lampwright.store.PictureFiles;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.PictureAdding;
import lampwright.tasks.PictureComparing;
import lampwright.tasks.PictureGiving;
import lampwright.tasks.PictureKeeping;
import lampwright.tasks.PictureShowing;
import lampwright.tasks.PictureUpkeep;

/** All that is done with pictures, on one folder of files. */
record PictureTasks(
    PictureFiles files,
    PictureUpkeep upkeep,
    PictureKeeping keeping,
    PictureAdding adding,
    PictureShowing showing,
    PictureGiving giving,
    PictureComparing comparing)
    implements AutoCloseable {

  /** Opens the folder, which may be that of other servers on the same database too. */
  static PictureTasks open(Database database, Path folder, Cataloguing cataloguing, Ids ids) {
    PictureFiles files = PictureFiles.open(folder);
    PictureUpkeep upkeep = new PictureUpkeep(database, files);
    upkeep.sweep();
    PictureKeeping keeping = new PictureKeeping(database, upkeep);
    PictureAdding adding = new PictureAdding(database, files, upkeep, ids);
    return new PictureTasks(
        files,
        upkeep,
        keeping,
        adding,
        new PictureShowing(database, adding),
        new PictureGiving(database, files),
        new PictureComparing(keeping, cataloguing));
  }

  @Override
  public void close() {
    files.close();
  }
}
