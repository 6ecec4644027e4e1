package lampwright.web.pages;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.people.StudioId;
import lampwright.setup.PictureId;
import lampwright.setup.PictureKind;
import lampwright.setup.PictureNote;
import lampwright.setup.SetupId;
import lampwright.tasks.Caller;
import lampwright.tasks.Catalogued;
import lampwright.tasks.Cataloguing;
import lampwright.tasks.KeptNote;
import lampwright.tasks.KeptPicture;
import lampwright.tasks.Leave;
import lampwright.tasks.Listed;
import lampwright.tasks.NoteKeeping;
import lampwright.tasks.Once;
import lampwright.tasks.PictureAdding;
import lampwright.tasks.PictureComparing;
import lampwright.tasks.PictureGiving;
import lampwright.tasks.PictureKeeping;
import lampwright.tasks.Refusal;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;
import lampwright.web.http.Door;
import lampwright.web.http.FormFields;
import lampwright.web.http.FormWithFile;
import lampwright.wording.Wording;

/** A setup's pictures, one of them, and the forms that add, change and take away. */
public final class PicturePages {

  private static final int MOST_ON_A_PAGE = 48;
  private static final int MOST_BESIDE = 12;

  /** What a browser sends beyond the limit is let in up to here, so that it hears the answer. */
  private static final long HEARD_OUT_BYTES = 4 * PictureAdding.MOST_BYTES;

  private final Door door;
  private final Tasks tasks;
  private final Templates templates;
  private final StudioLayouts layouts;

  /** What these pages ask. */
  public record Tasks(
      Cataloguing cataloguing,
      PictureKeeping keeping,
      PictureAdding adding,
      PictureGiving giving,
      PictureComparing comparing,
      NoteKeeping notes) {}

  public PicturePages(Door door, Tasks tasks, Templates templates, StudioLayouts layouts) {
    this.door = door;
    this.tasks = tasks;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(StudioId studio, SetupId setup) {
    return SetupPages.setupPath(studio, setup) + "/pictures";
  }

  /** What another page shows of them. */
  PicturesPart part(Caller caller, StudioId studio, SetupId setup, Wording words) {
    return part(
        studio, setup, tasks.keeping().list(caller, studio, setup, Listed.Wish.first()), words);
  }

  /** What the setup's own page shows of them. */
  PicturesPart part(StudioId studio, SetupId setup, Listed<KeptPicture> all, Wording words) {
    Optional<KeptPicture> finished =
        all.items().stream().filter(of -> of.note().kind() == PictureKind.FINAL).findFirst();

    return new PicturesPart(
        finished.map(of -> PictureTile.large(studio, of, tasks.giving().whereabouts(of), words)),
        all.items().stream()
            .filter(of -> finished.filter(of::equals).isEmpty())
            .limit(MOST_BESIDE)
            .map(of -> PictureTile.small(studio, of, tasks.giving().whereabouts(of), words))
            .toList(),
        path(studio, setup),
        all.items().size() == 1 && all.next().isEmpty()
            ? words.say("pages.picture.page")
            : words.say(
                all.next().isPresent() ? "pages.picture.allCountMore" : "pages.picture.allCount",
                all.items().size()));
  }

  /** Shows them all: {@code /studios/{studio}/setups/{setup}/pictures}. */
  public void list(Context context) {
    list(context, _ -> "", FormErrors.none());
  }

  private void list(Context context, UnaryOperator<String> typed, FormErrors errors) {
    Caller caller = door.caller(context);
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    Catalogued setup = tasks.cataloguing().get(caller, studio, id);
    Optional<String> cursor = Optional.ofNullable(context.queryParam("cursor"));
    Listed<KeptPicture> page =
        tasks.keeping().list(caller, studio, id, new Listed.Wish(cursor, MOST_ON_A_PAGE));
    List<PictureKind> may = tasks.adding().kinds(caller, studio, id);
    String path = path(studio, id);
    String chosen = typed.apply(PictureForm.KIND);
    templates.show(
        context,
        "pictures",
        new PicturesPage(
            layouts.of(
                context,
                studio,
                layouts.words(context).say("pages.picture.of", setup.document().title())),
            setup.document().title(),
            SetupPages.setupPath(studio, id),
            page.items().stream()
                .map(
                    of ->
                        PictureTile.small(
                            studio, of, tasks.giving().whereabouts(of), layouts.words(context)))
                .toList(),
            page.next().map(next -> Address.of(path).with("cursor", next).text()).orElse(""),
            may.isEmpty()
                ? Optional.empty()
                : Optional.of(
                    new PictureForm(
                        path,
                        door.csrfToken(context),
                        0,
                        PictureFields.kinds(
                            may,
                            chosen.isEmpty() ? may.getFirst().word() : chosen,
                            layouts.words(context)),
                        typed.apply(PictureForm.CAPTION),
                        false,
                        errors))));
  }

  /** Keeps a new one: a form with a file to {@code …/pictures}. */
  public void add(Context context) {
    Caller caller = door.caller(context);
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId id = Cataloguing.id(context.pathParam("setup"));
    tasks.adding().askToAdd(caller, studio, id);
    if (!FormWithFile.is(context)) {
      throw new Refused(new Refusal.WrongContentType("multipart/form-data"));
    }
    FormWithFile form = FormWithFile.of(context);
    try (PictureAdding.Received received = tasks.adding().receive(form.file())) {
      form.finish();
      KeptPicture kept =
          tasks
              .adding()
              .keep(caller, studio, id, received, PictureFields.read(form::get), Once.unkeyed());
      context.redirect(path(studio, id) + "/" + kept.id(), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      switch (refused.refusal()) {
        case Refusal.Invalid(var problems) -> {
          context.status(HttpStatus.UNPROCESSABLE_CONTENT);
          list(context, form::get, PictureFields.errors(problems, PictureForm.FILE));
        }
        case Refusal.TooLarge _ -> {
          hearOut(context);
          context.status(HttpStatus.CONTENT_TOO_LARGE);
          list(
              context,
              form::get,
              error(PictureForm.FILE, layouts.words(context).say("picture.tooLarge")));
        }
        case Refusal.Clash(String what) -> {
          context.status(HttpStatus.CONFLICT);
          list(context, form::get, error("", what));
        }
        default -> throw refused;
      }
    }
  }

  private static FormErrors error(String field, String message) {
    return new FormErrors(List.of(new FormErrors.FormError(field, message)));
  }

  private static void hearOut(Context context) {
    try {
      InputStream rest = context.req().getInputStream();
      byte[] piece = new byte[64 * 1024];
      long heard = 0;
      int read = rest.read(piece);
      while (read >= 0 && heard < HEARD_OUT_BYTES) {
        heard += read;
        read = rest.read(piece);
      }
    } catch (IOException e) {
      throw Refused.notReadable("The form ended before it was complete. Send it again.");
    }
  }

  /** Shows one: {@code …/pictures/{picture}}. */
  public void show(Context context) {
    show(context, Optional.empty(), FormErrors.none());
  }

  private void show(Context context, Optional<FormFields> typed, FormErrors errors) {
    Caller caller = door.caller(context);
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId setup = Cataloguing.id(context.pathParam("setup"));
    PictureComparing.Compared compared =
        tasks.comparing().compare(caller, studio, setup, picture(context));
    KeptPicture picture = compared.picture();
    PictureView view = new PictureView(compared, layouts.words(context));
    List<KeptNote> pointed =
        PictureView.pointed(
            tasks.notes().list(caller, studio, setup, Listed.Wish.first()).items(), picture);
    String title = compared.setup().document().title();
    PictureTile tile =
        PictureTile.large(
            studio, picture, tasks.giving().whereabouts(picture), layouts.words(context));
    templates.show(
        context,
        "picture",
        new PicturePage(
            layouts.of(
                context,
                studio,
                layouts.words(context).say("pages.picture.oneOf", tile.kind(), title)),
            title,
            SetupPages.setupPath(studio, setup),
            path(studio, setup),
            tile,
            tile.isThere() ? view.points(pointed) : Optional.empty(),
            view.notes(pointed),
            view.settings(),
            view.sentences(),
            view.tones(),
            view.file(),
            view.place(),
            PictureTile.apiPath(studio, setup, picture.id()) + "/original",
            view.revision(),
            tasks.keeping().mayChange(caller, studio, setup)
                ? Optional.of(form(context, tile.path(), picture, typed, errors))
                : Optional.empty(),
            tile.path() + "/removal"));
  }

  private PictureForm form(
      Context context,
      String action,
      KeptPicture picture,
      Optional<FormFields> typed,
      FormErrors errors) {
    PictureNote note = picture.note();
    return new PictureForm(
        action,
        door.csrfToken(context),
        picture.revision(),
        PictureFields.kinds(
            PictureFields.all(),
            typed.map(sent -> sent.get(PictureForm.KIND)).orElse(note.kind().word()),
            layouts.words(context)),
        typed.map(sent -> sent.get(PictureForm.CAPTION)).orElse(note.caption().orElse("")),
        typed
            .map(sent -> sent.get(PictureForm.MAY_SHOW_PLACE).equals("true"))
            .orElse(note.mayShowPlace()),
        errors);
  }

  /** Says something else of one: a form to {@code …/pictures/{picture}}. */
  public void change(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId setup = Cataloguing.id(context.pathParam("setup"));
    FormFields sent = Body.form(context);
    try {
      tasks
          .keeping()
          .replace(
              door.caller(context),
              studio,
              setup,
              picture(context),
              Optional.of(revision(sent)),
              PictureFields.read(sent::get));
      context.redirect(path(studio, setup) + "/" + picture(context), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      answer(context, refused, Optional.of(sent));
    }
  }

  private void answer(Context context, Refused refused, Optional<FormFields> typed) {
    switch (refused.refusal()) {
      case Refusal.Invalid(var problems) -> {
        context.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(context, typed, PictureFields.errors(problems, ""));
      }
      case Refusal.Stale _ -> {
        context.status(HttpStatus.PRECONDITION_FAILED);
        show(context, typed, error("", layouts.words(context).say("picture.changedSince")));
      }
      default -> throw refused;
    }
  }

  /** Takes one away: a form to {@code …/pictures/{picture}/removal}. */
  public void remove(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId setup = Cataloguing.id(context.pathParam("setup"));
    FormFields sent = Body.form(context);
    try {
      tasks
          .keeping()
          .delete(
              door.caller(context), studio, setup, picture(context), Optional.of(revision(sent)));
      context.redirect(path(studio, setup), HttpStatus.SEE_OTHER);
    } catch (Refused refused) {
      answer(context, refused, Optional.empty());
    }
  }

  /** Whoever comes to that form's own address is led to the picture. */
  public void showRemoval(Context context) {
    StudioId studio = Leave.studio(context.pathParam("studio"));
    SetupId setup = Cataloguing.id(context.pathParam("setup"));
    context.redirect(path(studio, setup) + "/" + picture(context), HttpStatus.SEE_OTHER);
  }

  /** The one that was looked at; where the form does not say, none that there is. */
  private static int revision(FormFields sent) {
    String written = sent.get(PictureForm.REVISION);
    return written.matches("[1-9]\\d{0,8}") ? Integer.parseInt(written) : 0;
  }

  private static PictureId picture(Context context) {
    return PictureKeeping.id(context.pathParam("picture"));
  }
}
