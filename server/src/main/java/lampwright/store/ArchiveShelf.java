package lampwright.store;

import static lampwright.schema.generated.Tables.NOTE;
import static lampwright.schema.generated.Tables.PICTURE;
import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_REVISION;
import static lampwright.schema.generated.Tables.TAKE;

import java.util.List;
import java.util.Optional;
import lampwright.archive.ArchiveKind;
import org.jooq.Field;

/**
 * Where each kind of archived thing is kept, and which columns only it has.
 *
 * @param setup the column of what it hangs on
 * @param now more columns of the thing that an archive tells
 * @param then more columns of its revisions that an archive tells
 */
record ArchiveShelf(
    Shelf shelf, Optional<Field<String>> setup, List<Field<?>> now, List<Field<?>> then) {

  static ArchiveShelf of(ArchiveKind kind) {
    return switch (kind) {
      case GEAR -> new ArchiveShelf(Shelf.ALL_GEAR, Optional.empty(), List.of(), List.of());
      case KITS -> new ArchiveShelf(Shelf.KITS, Optional.empty(), List.of(), List.of());
      case LOCATIONS -> new ArchiveShelf(Shelf.LOCATIONS, Optional.empty(), List.of(), List.of());
      case TRAILS -> new ArchiveShelf(Shelf.TRAILS, Optional.empty(), List.of(), List.of());
      case SETUPS ->
          new ArchiveShelf(
              Shelf.SETUPS,
              Optional.empty(),
              List.of(SETUP.PARENT_ID, SETUP.PARENT_REVISION),
              List.of(
                  SETUP_REVISION.STATE,
                  SETUP_REVISION.ARCHIVED,
                  SETUP_REVISION.PLANNED_REVISION,
                  SETUP_REVISION.RESTORED_FROM));
      case PICTURES ->
          new ArchiveShelf(
              Shelf.PICTURES,
              Optional.of(PICTURE.SETUP_ID),
              List.of(
                  PICTURE.SETUP_ID,
                  PICTURE.SHA256,
                  PICTURE.BYTES,
                  PICTURE.MEDIA_TYPE,
                  PICTURE.WIDTH,
                  PICTURE.HEIGHT),
              List.of());
      case TAKES ->
          new ArchiveShelf(
              Shelf.TAKES,
              Optional.of(TAKE.SETUP_ID),
              List.of(TAKE.SETUP_ID, TAKE.NUMBER),
              List.of());
      case NOTES ->
          new ArchiveShelf(
              Shelf.NOTES, Optional.of(NOTE.SETUP_ID), List.of(NOTE.SETUP_ID), List.of());
    };
  }
}
