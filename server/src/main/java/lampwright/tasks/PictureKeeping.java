package lampwright.tasks;

import java.util.Map;
import java.util.Optional;
import lampwright.people.FormerName;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.setup.PictureId;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.Page;
import lampwright.store.Pictures;
import lampwright.store.StoredPicture;
import lampwright.store.StudioTransaction;

/**
 * Keeps what is known and said of the pictures of setups. They come in by {@link PictureAdding},
 * their bytes go out by {@link PictureGiving}.
 */
public final class PictureKeeping {

  private final SetupPictures pictures;
  private final PictureUpkeep upkeep;

  public PictureKeeping(Database database, PictureUpkeep upkeep) {
    this.pictures = new SetupPictures(database);
    this.upkeep = upkeep;
  }

  /**
   * The picture that an address names.
   *
   * @throws Refused NotFound where no picture can have that id
   */
  public static PictureId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new PictureId(text);
  }

  /** A picture as it is now. */
  public KeptPicture get(Caller caller, StudioId studio, SetupId setup, PictureId id) {
    return pictures.get(caller, studio, setup, id);
  }

  /**
   * Some pictures of a setup, the last changed first.
   *
   * @throws Refused Invalid at {@code /cursor} for one that was not made here
   */
  public Listed<KeptPicture> list(Caller caller, StudioId studio, SetupId setup, Listed.Wish wish) {
    Optional<Page.Place> after = PageCursor.read(wish.cursor());
    return pictures.in(
        caller, studio, setup, in -> list(in, setup, after, wish.limit(), Cataloguing.names(in)));
  }

  static Listed<KeptPicture> list(
      StudioTransaction in,
      SetupId setup,
      Optional<Page.Place> after,
      int limit,
      Map<PersonId, String> names) {
    Page<StoredPicture> page = new Pictures(in).list(setup, after, limit);
    return PageCursor.listed(
        new Page<>(
            page.items().stream()
                .map(
                    stored ->
                        SetupPictures.kept(
                            stored, names.getOrDefault(stored.changedBy(), FormerName.UNNAMED)))
                .toList(),
            page.next()));
  }

  /** Whether a member may change what is said of a setup's pictures, and take them away. */
  public boolean mayChange(Caller caller, StudioId studio, SetupId setup) {
    return pictures.in(
        caller,
        studio,
        setup,
        in -> Leave.ask(in, Permission.READ_SETUPS).may(Permission.WRITE_SETUPS));
  }

  /** Puts another note in the place of the one that it was made from. */
  public KeptPicture replace(
      Caller caller,
      StudioId studio,
      SetupId setup,
      PictureId id,
      Optional<Integer> basedOn,
      PictureNote note) {
    return pictures.in(
        caller,
        studio,
        setup,
        in -> {
          KeptPicture current = SetupPictures.get(in, setup, id);
          Leave.ask(in, Permission.WRITE_SETUPS);
          Cataloguing.mustBeSaved(
              new Pictures(in)
                  .replace(
                      id,
                      basedOn.orElse(current.revision()),
                      note.kind().word(),
                      StoredDocuments.print(PictureNote.FORM, note)));
          return SetupPictures.get(in, setup, id);
        });
  }

  /** Takes a picture away, and its file where no other picture is the same. */
  public void delete(
      Caller caller, StudioId studio, SetupId setup, PictureId id, Optional<Integer> basedOn) {
    String sha256 =
        pictures.in(
            caller,
            studio,
            setup,
            in -> {
              KeptPicture current = SetupPictures.get(in, setup, id);
              Leave.ask(in, Permission.WRITE_SETUPS);
              Cataloguing.mustBeSaved(
                  new Pictures(in).delete(id, basedOn.orElse(current.revision())));
              return current.sha256();
            });
    upkeep.takeAwayUnneeded(sha256);
  }
}
