package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import lampwright.tasks.PictureComparing;
import lampwright.tasks.PictureKeeping;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Door;
import lampwright.web.http.Multipart;
import lampwright.web.http.Preconditions;

/** The pictures of a setup: list, add, read, change, delete, and their bytes. */
public final class PictureApi {

  private static final String ACCEPTED = "image/*, multipart/form-data";
  private static final Set<String> FIELDS = Set.of("kind", "caption");
  private static final int MOST_ITEMS = 100;
  private static final int USUAL_ITEMS = 20;

  private final Door door;
  private final PictureKeeping pictures;
  private final PictureComparing comparing;

  public PictureApi(Door door, PictureKeeping pictures, PictureComparing comparing) {
    this.door = door;
    this.pictures = pictures;
    this.comparing = comparing;
  }

  /** What is read here. */
  static Form<PictureNote> form() {
    return PictureNote.FORM;
  }

  private record All(List<PictureJson> items, int total, Optional<String> next) {}

  /** A page of them, the last changed first. */
  public void list(Context context) {
    PictureKeeping.Listed listed =
        pictures.list(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            Optional.ofNullable(context.queryParam("cursor")),
            limit(context));
    listed
        .next()
        .ifPresent(
            cursor -> context.header("Link", "<" + next(context, cursor) + ">; rel=\"next\""));
    context.json(
        new All(
            listed.items().stream().map(PictureJson::of).toList(), listed.total(), listed.next()));
  }

  private static String next(Context context, String cursor) {
    return "%s?limit=%d&cursor=%s"
        .formatted(
            context.path(), limit(context), URLEncoder.encode(cursor, StandardCharsets.UTF_8));
  }

  private static int limit(Context context) {
    String written = context.queryParam("limit");
    if (written == null) {
      return USUAL_ITEMS;
    }
    if (!written.matches("[1-9]\\d?|100")) {
      throw Refused.invalid(
          "/limit", "Limit must be a whole number from 1 to " + MOST_ITEMS + ". Maybe 20?");
    }
    return Integer.parseInt(written);
  }

  /** Keeps a new picture: the body is the file, or a form with the file in it. */
  public void create(Context context) {
    String type = Optional.ofNullable(context.contentType()).orElse("").strip();
    boolean isForm = Multipart.is(type);
    Caller caller = door.caller(context);
    StudioId studio = SetupApi.studio(context);
    SetupId setup = SetupApi.setup(context);
    pictures.askToAdd(caller, studio, setup);
    if (!isForm && !type.toLowerCase(Locale.ROOT).startsWith("image/")) {
      throw new Refused(new Refusal.WrongContentType(ACCEPTED));
    }
    if (context.req().getContentLengthLong() > PictureKeeping.MOST_BYTES + FORM_AROUND_FILE) {
      throw new Refused(new Refusal.TooLarge(PictureKeeping.MOST_BYTES));
    }
    KeptPicture kept =
        isForm
            ? fromForm(context, type, caller, studio, setup)
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
    try (PictureKeeping.Received received = pictures.receive(body(context))) {
      return pictures.keep(caller, studio, setup, received, note);
    }
  }

  private KeptPicture fromForm(
      Context context, String type, Caller caller, StudioId studio, SetupId setup) {
    Multipart form = Multipart.of(type, body(context));
    Map<String, String> fields = new LinkedHashMap<>();
    Optional<PictureKeeping.Received> received = Optional.empty();
    try {
      for (Optional<Multipart.Part> part = form.next(); part.isPresent(); part = form.next()) {
        if (!part.get().isFile()) {
          fields.putIfAbsent(part.get().name(), part.get().text());
        } else if (received.isEmpty()) {
          received = Optional.of(pictures.receive(part.get().content()));
        } else {
          throw Refused.invalid("", "The form must hold one file. Send the others one by one.");
        }
      }
      fields.values().removeIf(String::isBlank);
      PictureNote note = note(fields);
      return pictures.keep(
          caller,
          studio,
          setup,
          received.orElseThrow(() -> Refused.invalid("", "The form must hold a file.")),
          note);
    } finally {
      received.ifPresent(PictureKeeping.Received::close);
    }
  }

  private static InputStream body(Context context) {
    try {
      return context.req().getInputStream();
    } catch (IOException e) {
      throw Refused.notReadable("The body cannot be read. Send it again.");
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

  private record Compared(int setupRevision, List<Difference> differs, List<Offer> offers) {}

  /** What its file says against the setup as it is now. */
  public void compare(Context context) {
    PictureComparing.Compared compared =
        comparing.compare(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            PictureKeeping.id(context.pathParam("picture")));
    context.json(
        new Compared(compared.revision(), compared.result().differs(), compared.result().offers()));
  }

  private KeptPicture find(Context context) {
    return pictures.get(
        door.caller(context), SetupApi.studio(context), SetupApi.setup(context), picture(context));
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
        pictures.replace(
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
    pictures.delete(
        door.caller(context),
        SetupApi.studio(context),
        SetupApi.setup(context),
        picture(context),
        Optional.of(basedOn(context)));
    context.status(HttpStatus.NO_CONTENT);
  }

  private int basedOn(Context context) {
    Optional<Integer> based = Preconditions.based(context);
    if (based.isPresent()) {
      return based.get();
    }
    KeptPicture current = find(context);
    Preconditions.mustMatch(context, current.revision());
    return current.revision();
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
        pictures.size(
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
        pictures.original(
            door.caller(context),
            SetupApi.studio(context),
            SetupApi.setup(context),
            picture(context)),
        "attachment");
  }

  private static void give(Context context, PictureKeeping.Given given, String how) {
    // A browser may keep it for its person, and asks each time whether it may still be shown.
    context.header("Cache-Control", "private, no-cache");
    context.header(
        "Content-Disposition",
        "%s; filename=\"picture-%s.%s\""
            .formatted(how, context.pathParam("picture"), given.ending()));
    if (Preconditions.isKnown(context, "\"" + given.version() + "\"")) {
      close(given.bytes());
      return;
    }
    context.contentType(given.mediaType());
    context.result(given.bytes());
  }

  private static void close(InputStream bytes) {
    try (bytes) {
      // Nothing of it is sent.
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PictureId picture(Context context) {
    return PictureKeeping.id(context.pathParam("picture"));
  }
}
