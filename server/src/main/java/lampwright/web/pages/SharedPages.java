package lampwright.web.pages;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import lampwright.picture.PictureSize;
import lampwright.setup.OutsideView;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.tasks.KeptPicture;
import lampwright.tasks.PictureGiving;
import lampwright.tasks.PictureKeeping;
import lampwright.tasks.Sharing;
import lampwright.web.http.ServedBytes;
import lampwright.wording.CautionLine;
import lampwright.wording.KeyFigures;
import lampwright.wording.Wording;

/**
 * What somebody outside sees by a link: {@code /shared/{secret}}. The secret stands in the address,
 * so no other server is told of it and no search engine keeps it; to look at it uses nothing up.
 */
public final class SharedPages {

  private final Sharing sharing;
  private final PictureGiving giving;
  private final DrawnSetups drawings;
  private final Templates templates;
  private final Layouts layouts;

  public SharedPages(
      Sharing sharing,
      PictureGiving giving,
      DrawnSetups drawings,
      Templates templates,
      Layouts layouts) {
    this.sharing = sharing;
    this.giving = giving;
    this.drawings = drawings;
    this.templates = templates;
    this.layouts = layouts;
  }

  static String path(String secret) {
    return "/shared/" + secret;
  }

  /** Shows it. */
  public void show(Context context) {
    keepQuiet(context);
    Wording words = layouts.words(context);
    Sharing.Shown shown =
        sharing.open(
            context.pathParam("secret"),
            new OutsideView.Names(words.say("sharing.subject"), words.say("sharing.mark")));
    Layout layout = layouts.outside(Optional.of(context), shown.document().title());
    templates.show(context, "shared", page(layout, shown, path(context.pathParam("secret"))));
  }

  private SharedPage page(Layout layout, Sharing.Shown shown, String path) {
    SetupDocument setup = shown.document();
    Wording words = layout.words();
    Figures figures = FiguresComputation.of(setup);
    SetupView view = new SetupView(setup, figures, words);
    DayWords days = new DayWords(words);
    return new SharedPage(
        layout,
        setup.title(),
        shown.showsPlace() ? SetupView.placeAndDate(setup, words) : "",
        words.say("sharing.page.pinned", shown.revision(), days.day(shown.revisedAt())),
        words.say("sharing.page.ends", days.day(shown.endsAt())),
        setup.moods(),
        pictures(shown.pictures(), path, setup.title(), words),
        KeyFigures.of(setup, figures, words.notation()),
        drawings.sheet(setup, figures, words.notation()),
        CautionLine.all(setup, words),
        SetupView.cameraNote(setup, words),
        view.camera(),
        view.lights(),
        new FiguresView(setup, figures, words).lines(""),
        words.say(figures.leftOut()));
  }

  private List<PictureTile> pictures(
      List<KeptPicture> pictures, String path, String title, Wording words) {
    return pictures.stream()
        .filter(picture -> giving.whereabouts(picture) == PictureGiving.Whereabouts.THERE)
        .map(
            picture ->
                PictureTile.shared(
                    picture,
                    path + "/pictures/" + picture.id(),
                    words.say("sharing.page.picture", title)))
        .toList();
  }

  /** Gives a finished picture, shrunk and drawn anew: nothing that its file told is in it. */
  public void picture(Context context) {
    keepQuiet(context);
    PictureGiving.Given given =
        giving.size(
            sharing.picture(
                context.pathParam("secret"), PictureKeeping.id(context.pathParam("picture"))),
            PictureSize.SCREEN);
    ServedBytes.give(
        context, given.mediaType(), "\"" + given.version() + "\"", given.length(), given::open);
  }

  private static void keepQuiet(Context context) {
    context.header("Referrer-Policy", "no-referrer");
    context.header("X-Robots-Tag", "noindex, nofollow, noarchive");
    context.header("Cache-Control", "no-store");
  }
}
