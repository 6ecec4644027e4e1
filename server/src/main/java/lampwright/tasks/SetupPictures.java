package lampwright.tasks;

import java.util.function.Function;
import lampwright.people.StudioId;
import lampwright.picture.PictureFormat;
import lampwright.setup.PictureId;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Pictures;
import lampwright.store.StoredPicture;
import lampwright.store.StudioTransaction;

/** How every task about pictures comes to them: by a setup that the caller may see. */
record SetupPictures(Database database) {

  /**
   * Works in a transaction of the caller's.
   *
   * @throws Refused NotFound where there is no such setup to be seen
   */
  <T> T in(Caller caller, StudioId studio, SetupId setup, Function<StudioTransaction, T> work) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight.ask(in).get(in, setup);
          return work.apply(in);
        });
  }

  KeptPicture get(Caller caller, StudioId studio, SetupId setup, PictureId id) {
    return in(caller, studio, setup, in -> get(in, setup, id));
  }

  static KeptPicture get(StudioTransaction in, SetupId setup, PictureId id) {
    return kept(in, new Pictures(in).find(setup, id).orElseThrow(Refused::notFound));
  }

  static KeptPicture kept(StudioTransaction in, StoredPicture stored) {
    return kept(stored, Cataloguing.name(in, stored.changedBy()));
  }

  static KeptPicture kept(StoredPicture stored, String changedBy) {
    StoredPicture.File file = stored.file();
    return new KeptPicture(
        stored.id(),
        stored.setup(),
        stored.revision(),
        stored.changedAt(),
        changedBy,
        StoredDocuments.read(PictureNote.FORM, stored.document()),
        PictureFormat.find(file.mediaType()).orElseThrow(),
        file.sha256(),
        file.bytes(),
        file.width(),
        file.height(),
        PictureFacts.read(file.facts()),
        PictureFacts.readStatistics(file.statistics()));
  }
}
