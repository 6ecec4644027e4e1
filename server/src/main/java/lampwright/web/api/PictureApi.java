package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lampwright.document.Form;
import lampwright.document.Reading;
import lampwright.people.StudioId;
import lampwright.picture.PictureSize;
import lampwright.setup.PictureId;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;
import lampwright.setup.used.FileAgainstSetup.Difference;
import lampwright.setup.used.FileAgainstSetup.Offer;
import lampwright.tasks.Caller;
import lampwright.tasks.KeptPicture;
import lampwright.tasks.Listed;
import lampwright.tasks.PictureAdding;
import lampwright.tasks.PictureComparing;
import lampwright.tasks.PictureGiving;
import lampwright.tasks.PictureKeeping;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Digests;
import lampwright.web.http.Door;
import lampwright.web.http.FormWithFile;
import lampwright.web.http.Preconditions;
import lampwright.web.http.ServedBytes;

/** The pictures of a setup: list, add, read, change, delete, and their bytes. */
public final class PictureApi {

  private static final String ACCEPTED = "image/*, multipart/form-data";
  private static final Set<String> FIELDS = Set.of("kind", "caption");

  private final Door door;
  private final Tasks tasks;

  /** What is asked here. */
  public record Tasks(
      PictureKeeping keeping,
      PictureAdding adding,
      PictureGiving giving,
      PictureComparing comparing) {}

  public PictureApi(Door door, Tasks tasks) {
    this.door = door;
    this.tasks = tasks;
  }

  /** What is read here. */
  static Form<PictureNote> form() {
    return PictureNote.FORM;
  }

  private record All(List<PictureJson> items, Optional<String> next) {}

  /** A page of them, the last changed first. */
  public void list(Context context) {
    Listed.Wish wish = new Query(context, Set.of("cursor", "limit")).page();
    Listed<KeptPicture> page =
        tasks
            .keeping()
            .list(door.caller(context), SetupApi.studio(context), SetupApi.setup(context), wish);
    Query.linkNext(context, page);
    context.json(new All(page.items().stream().map(PictureJson::of).toList(), page.next()));
  }

  /** Keeps a new picture: the body is the file, or a form with the file in it. */
  public void create(Context context) {
    String type = Optional.ofNullable(context.contentType()).orElse("").strip();
    boolean isForm = FormWithFile.is(context);
    Caller caller = door.caller(context);
    StudioId studio = SetupApi.studio(context);
    SetupId setup = SetupApi.setup(context);
    tasks.adding().askToAdd(caller, studio, setup);
    if (!isForm && !type.toLowerCase(Locale.ROOT).startsWith("image/")) {
      throw new Refused(new Refusal.WrongContentType(ACCEPTED));
    }
    if (context.req().getContentLengthLong() > PictureAdding.MOST_BYTES + FORM_AROUND_FILE) {
      throw new Refused(new Refusal.TooLarge(PictureAdding.MOST_BYTES));
    }
    KeptPicture kept =
        isForm
            ? fromForm(context, caller, studio, setup)
            : fromBody(context, caller, studio, setup);
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + kept.id().text());
    Preconditions.show(context, kept.revision());
    context.json(PictureJson.of(kept));
  }

  /** Room for the fields and boundaries of a form whose file is of the largest size. */
  private static final long FORM_AROUND_FILE = 1 << 20;

  private KeptPicture fromBody(Context context, Caller caller, StudioId studio, SetupId setup) {
    Map<String, String> fields = new LinkedHashMap<>();
    context.queryParamMap().forEach((name, values) -> fields.put(name, values.getFirst()));
    PictureNote note = note(fields);
    try (PictureAdding.Received received = tasks.adding().receive(Body.stream(context))) {
      Digests.mustMatch(context, received.sha256());
      return tasks
          .adding()
          .keep(caller, studio, setup, received, note, Repeats.of(context, received.sha256()));
    }
  }

  private KeptPicture fromForm(Context context, Caller caller, StudioId studio, SetupId setup) {
    FormWithFile form = FormWithFile.of(context);
    try (PictureAdding.Received received = tasks.adding().receive(form.file())) {
      form.finish();
      Map<String, String> fields = new TreeMap<>(form.filled());
      return tasks
          .adding()
          .keep(
              caller,
              studio,
              setup,
              received,
              note(fields),
              Repeats.of(context, received.sha256() + fields));
    }
  }

  private static PictureNote note(Map<String, String> fields) {
    for (String name : fields.keySet()) {
      if (!FIELDS.contains(name)) {
        throw Refused.invalid(
            "/" + name, "There is no field of this name. Known are: kind, caption.");
      }
    }
    return switch (PictureNote.FORM.read(Map.copyOf(fields))) {
      case Reading.Sound<PictureNote>(PictureNote note) -> note;
      case Reading.Faulty<PictureNote> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  /** One picture as it is now. */
  public void get(Context context) {
    KeptPicture picture = find(context);
    if (!Preconditions.isKnown(context, picture.revision())) {
      context.json(PictureJson.of(picture));
    }
  }

  private record Compared(int setupRevision, List<Differs> differs, List<Offer> offers) {}

  private record Differs(String pointer, String file, String setup, String sentence) {

    static Differs of(Difference one) {
      return new Differs(one.pointer(), one.file(), one.setup(), InEnglish.say(one.sentence()));
    }
  }

  /** What its file says against the setup as it is now. */
  public void compare(Context context) {
    PictureComparing.Compared compared =
        tasks
            .comparing()
            .compare(
                door.caller(context),
                SetupApi.studio(context),
                SetupApi.setup(context),
                PictureKeeping.id(context.pathParam("picture")));
    context.json(
        new Compared(
            compared.setup().revision(),
            compared.result().differs().stream().map(Differs::of).toList(),
            compared.result().offers()));
  }

  private KeptPicture find(Context context) {
    return tasks
        .keeping()
        .get(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            picture(context));
  }

  /** Puts another note in its place. */
  public void replace(Context context) {
    int based = basedOn(context);
    replace(context, based, Documents.read(context, PictureNote.FORM));
  }

  /** Changes what the body names of its note. */
  public void change(Context context) {
    int based = basedOn(context);
    KeptPicture now = find(context);
    replace(
        context,
        based,
        Documents.changed(context, PictureNote.FORM, based, now.revision(), now.note()));
  }

  private void replace(Context context, int based, PictureNote note) {
    KeptPicture replaced =
        tasks
            .keeping()
            .replace(
                door.caller(context),
                SetupApi.studio(context),
                SetupApi.setup(context),
                picture(context),
                Optional.of(based),
                note);
    Preconditions.show(context, replaced.revision());
    context.json(PictureJson.of(replaced));
  }

  /** Takes it away. */
  public void delete(Context context) {
    tasks
        .keeping()
        .delete(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            picture(context),
            Optional.of(basedOn(context)));
    context.status(HttpStatus.NO_CONTENT);
  }

  private int basedOn(Context context) {
    return Preconditions.based(context, () -> find(context).revision());
  }

  /** A small one, at most 320 pixels a side. */
  public void thumbnail(Context context) {
    give(context, PictureSize.THUMBNAIL);
  }

  /** One for the screen: {@code ?width=1280} or 2560. */
  public void screen(Context context) {
    String width = Optional.ofNullable(context.queryParam("width")).orElse("1280");
    give(
        context,
        switch (width) {
          case "1280" -> PictureSize.SCREEN;
          case "2560" -> PictureSize.LARGE_SCREEN;
          default -> throw Refused.invalid("/width", "Width must be 1280 or 2560.");
        });
  }

  private void give(Context context, PictureSize size) {
    give(
        context,
        tasks
            .giving()
            .size(
                door.caller(context),
                SetupApi.studio(context),
                SetupApi.setup(context),
                picture(context),
                size),
        "inline");
  }

  /** The file itself, without what it tells of places and people. */
  public void original(Context context) {
    give(
        context,
        tasks
            .giving()
            .original(
                door.caller(context),
                SetupApi.studio(context),
                SetupApi.setup(context),
                picture(context)),
        "attachment");
  }

  private static void give(Context context, PictureGiving.Given given, String how) {
    // A browser may keep it for its person, and asks each time whether it may still be shown.
    context.header("Cache-Control", "private, no-cache");
    context.header(
        "Content-Disposition",
        "%s; filename=\"picture-%s.%s\""
            .formatted(how, context.pathParam("picture"), given.ending()));
    given.sha256().ifPresent(sha256 -> Digests.tell(context, sha256));
    ServedBytes.give(
        context, given.mediaType(), "\"" + given.version() + "\"", given.length(), given::open);
  }

  private static PictureId picture(Context context) {
    return PictureKeeping.id(context.pathParam("picture"));
  }
}
