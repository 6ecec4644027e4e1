package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Form;
import lampwright.setup.notes.Note;
import lampwright.setup.notes.NoteId;
import lampwright.tasks.KeptNote;
import lampwright.tasks.Listed;
import lampwright.tasks.NoteKeeping;
import lampwright.web.http.Door;
import lampwright.web.http.Preconditions;

/** The notes beside a setup: list, write, read, change, delete. */
public final class NoteApi {

  private final Door door;
  private final NoteKeeping notes;

  public NoteApi(Door door, NoteKeeping notes) {
    this.door = door;
    this.notes = notes;
  }

  /** One note. */
  private record One(
      String id,
      int revision,
      String by,
      Instant at,
      Instant changedAt,
      Map<String, Object> document) {

    static One of(KeptNote note) {
      return new One(
          note.id().text(),
          note.revision(),
          note.by(),
          note.at(),
          note.changedAt(),
          Note.FORM.writeObject(note.document()));
    }
  }

  private record All(List<One> items, Optional<String> next) {}

  /** What is read here. */
  static Form<Note> form() {
    return Note.FORM;
  }

  /** Part of them, the last written first. */
  public void list(Context context) {
    Listed.Wish wish = new Query(context, Set.of("cursor", "limit")).page();
    Listed<KeptNote> page =
        notes.list(door.caller(context), SetupApi.studio(context), SetupApi.setup(context), wish);
    Query.linkNext(context, page);
    context.json(new All(page.items().stream().map(One::of).toList(), page.next()));
  }

  /** Keeps a new one. */
  public void create(Context context) {
    Note document = Documents.read(context, Note.FORM);
    KeptNote created =
        notes.create(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            document,
            Repeats.of(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + created.id().text());
    Preconditions.show(context, created.revision());
    context.json(One.of(created));
  }

  /** One as it is now. */
  public void get(Context context) {
    KeptNote note = current(context);
    if (!Preconditions.isKnown(context, note.revision())) {
      context.json(One.of(note));
    }
  }

  /** Puts another document in its place. */
  public void replace(Context context) {
    int based = basedOn(context);
    replace(context, based, Documents.read(context, Note.FORM));
  }

  /** Changes what the body names of it. */
  public void change(Context context) {
    int based = basedOn(context);
    KeptNote now = current(context);
    replace(
        context,
        based,
        Documents.changed(context, Note.FORM, based, now.revision(), now.document()));
  }

  private void replace(Context context, int based, Note document) {
    KeptNote replaced =
        notes.replace(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            note(context),
            based,
            document);
    Preconditions.show(context, replaced.revision());
    context.json(One.of(replaced));
  }

  /** Takes it away. */
  public void delete(Context context) {
    notes.delete(
        door.caller(context),
        SetupApi.studio(context),
        SetupApi.setup(context),
        note(context),
        basedOn(context));
    context.status(HttpStatus.NO_CONTENT);
  }

  private KeptNote current(Context context) {
    return notes.get(
        door.caller(context), SetupApi.studio(context), SetupApi.setup(context), note(context));
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> current(context).revision());
  }

  private static NoteId note(Context context) {
    return NoteKeeping.id(context.pathParam("note"));
  }
}
