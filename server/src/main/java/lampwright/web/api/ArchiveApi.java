package lampwright.web.api;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Forms;
import lampwright.people.StudioId;
import lampwright.tasks.Caller;
import lampwright.tasks.Exporting;
import lampwright.tasks.Importing;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Admission;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Archives of a studio or one setup: out, and in by imports that say first what they would do. */
public final class ArchiveApi {

  private static final Logger LOG = LoggerFactory.getLogger(ArchiveApi.class);
  private static final String MEDIA_TYPE = "application/zip";
  private static final String CLASHES = "clashes";

  private final Door door;
  private final Exporting exporting;
  private final Importing importing;

  public ArchiveApi(Door door, Exporting exporting, Importing importing) {
    this.door = door;
    this.exporting = exporting;
    this.importing = importing;
  }

  /** The whole studio. */
  public void studio(Context context) throws IOException {
    give(context, exporting.studio(door.caller(context), SetupApi.studio(context)));
  }

  /** One setup. */
  public void setup(Context context) throws IOException {
    give(
        context,
        exporting.setup(door.caller(context), SetupApi.studio(context), SetupApi.setup(context)));
  }

  private static void give(Context context, Exporting.Ready archive) throws IOException {
    try (archive) {
      context.header(
          "Content-Disposition", "attachment; filename=\"%s.zip\"".formatted(archive.name()));
      context.contentType(MEDIA_TYPE);
      if (!context.method().equals(HandlerType.HEAD)) {
        Admission.leave(context);
        // Not the framework's: it would press together what is pressed already.
        OutputStream out = context.res().getOutputStream();
        try {
          archive.write(out);
          out.flush();
        } catch (IOException e) {
          // The headers are out already. What lacks its directory is no ZIP to anybody.
          LOG.warn("An archive was not given out whole: {}", e.toString());
        }
      }
    }
  }

  /** Receives an archive and says what bringing it in would do. */
  public void receive(Context context) {
    Caller caller = door.caller(context);
    StudioId studio = SetupApi.studio(context);
    importing.askToImport(caller, studio);
    String type = Optional.ofNullable(context.contentType()).orElse("");
    if (!type.toLowerCase(Locale.ROOT).strip().equals(MEDIA_TYPE)) {
      throw new Refused(new Refusal.WrongContentType(MEDIA_TYPE));
    }
    Query query = new Query(context, Set.of(CLASHES));
    Optional<Importing.Clashes> clashes =
        query.text(CLASHES, Forms.choice(Importing.Clashes.values()));
    query.mustBeSound();
    if (context.req().getContentLengthLong() > Importing.MOST_BYTES) {
      throw new Refused(new Refusal.TooLarge(Importing.MOST_BYTES));
    }
    Importing.Told told =
        importing.receive(
            caller, studio, clashes.orElse(Importing.Clashes.REFUSE), Body.stream(context));
    context.status(HttpStatus.CREATED);
    context.header("Location", context.path() + "/" + told.id());
    context.json(ImportJson.of(told));
  }

  /** How far an import is. */
  public void showImport(Context context) {
    context.json(
        ImportJson.of(
            importing.get(
                door.caller(context), SetupApi.studio(context), context.pathParam("import"))));
  }

  /** Carries it out. */
  public void start(Context context) {
    Importing.Told told =
        importing.start(
            door.caller(context), SetupApi.studio(context), context.pathParam("import"));
    context.status(HttpStatus.ACCEPTED);
    context.json(ImportJson.of(told));
  }

  /** Forgets it, or ends it before anything is done. */
  public void discard(Context context) {
    importing.discard(door.caller(context), SetupApi.studio(context), context.pathParam("import"));
    context.status(HttpStatus.NO_CONTENT);
  }
}
