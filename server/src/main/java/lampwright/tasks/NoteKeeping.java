package lampwright.tasks;

import java.util.Optional;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.notes.Note;
import lampwright.setup.notes.NoteId;
import lampwright.store.Database;
import lampwright.store.Notes;
import lampwright.store.Page;
import lampwright.store.StoredNote;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;

/**
 * Keeps what people write beside setups. Who may log takes writes notes, changes and deletes their
 * own; who may change setups, any.
 */
public final class NoteKeeping {

  private static final int MOST_NOTES = 2_000;

  private final Database database;
  private final Ids ids;

  public NoteKeeping(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  /**
   * The note that an address names.
   *
   * @throws Refused NotFound where no note can have that id
   */
  public static NoteId id(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new NoteId(text);
  }

  /**
   * Keeps a new note.
   *
   * @throws Refused Invalid where it is about a light that the setup does not have
   */
  public KeptNote create(Caller caller, StudioId studio, SetupId setup, Note note, Once once) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.LOG_TAKES);
          mustFit(note, Sight.of(role).get(in, setup));
          Notes notes = new Notes(in, setup);
          return kept(
              in,
              caller,
              role,
              once.make(
                  in,
                  ids,
                  id -> create(notes, new NoteId(id), note),
                  id -> notes.find(new NoteId(id))));
        });
  }

  private static StoredNote create(Notes notes, NoteId id, Note note) {
    if (notes.count() >= MOST_NOTES) {
      throw new Refused(
          new Refusal.Clash("The setup has " + MOST_NOTES + " notes already. Delete one first."));
    }
    return notes.create(id, StoredDocuments.print(Note.FORM, note));
  }

  private static void mustFit(Note note, StoredSetup setup) {
    if (note.about().orElse(null) instanceof Note.About.OfLight(var light)) {
      SetupDocument document = StoredDocuments.read(SetupDocument.FORM, setup.document());
      if (document.lights().stream().noneMatch(of -> of.id().equals(light))) {
        throw Refused.invalid(
            "/about/light", "Light (\"%s\") is not one of this setup's lights.".formatted(light));
      }
    }
  }

  /** A note as it is now. */
  public KeptNote get(Caller caller, StudioId studio, SetupId setup, NoteId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.READ_SETUPS);
          return kept(in, caller, role, stored(in, role, setup, id));
        });
  }

  /** At most so many, the last written first. */
  public Listed<KeptNote> list(Caller caller, StudioId studio, SetupId setup, Listed.Wish wish) {
    Optional<Page.Place> after = PageCursor.read(wish.cursor());
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.READ_SETUPS);
          Sight.of(role).get(in, setup);
          Page<StoredNote> page = new Notes(in, setup).list(after, wish.limit());
          return PageCursor.listed(
              new Page<>(
                  page.items().stream().map(stored -> kept(in, caller, role, stored)).toList(),
                  page.next()));
        });
  }

  /**
   * Puts another document in the place of a note's.
   *
   * @param basedOn the revision that was looked at
   */
  public KeptNote replace(
      Caller caller, StudioId studio, SetupId setup, NoteId id, int basedOn, Note note) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.LOG_TAKES);
          mustBeChangeable(kept(in, caller, role, stored(in, role, setup, id)));
          mustFit(note, Sight.of(role).get(in, setup));
          Notes notes = new Notes(in, setup);
          Cataloguing.mustBeSaved(
              notes.replace(id, basedOn, StoredDocuments.print(Note.FORM, note)));
          return kept(in, caller, role, stored(in, role, setup, id));
        });
  }

  /** Takes a note away. */
  public void delete(Caller caller, StudioId studio, SetupId setup, NoteId id, int basedOn) {
    database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Role role = Leave.ask(in, Permission.LOG_TAKES);
          mustBeChangeable(kept(in, caller, role, stored(in, role, setup, id)));
          return Cataloguing.mustBeSaved(new Notes(in, setup).delete(id, basedOn));
        });
  }

  private static void mustBeChangeable(KeptNote note) {
    if (!note.isChangeable()) {
      throw Refused.notAllowed(
          "Somebody else wrote this note; only they, authors and owners change it.");
    }
  }

  private static StoredNote stored(StudioTransaction in, Role role, SetupId setup, NoteId id) {
    Sight.of(role).get(in, setup);
    return new Notes(in, setup).find(id).orElseThrow(Refused::notFound);
  }

  private static KeptNote kept(StudioTransaction in, Caller caller, Role role, StoredNote stored) {
    boolean isOwn = stored.createdBy().equals(caller.person().id());
    return new KeptNote(
        stored.id(),
        stored.revision(),
        Cataloguing.name(in, stored.createdBy()),
        stored.createdAt(),
        stored.changedAt(),
        role.may(Permission.WRITE_SETUPS) || (isOwn && role.may(Permission.LOG_TAKES)),
        StoredDocuments.read(Note.FORM, stored.document()));
  }
}
