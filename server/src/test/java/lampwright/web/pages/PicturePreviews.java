package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.drawing.ColourStrip;
import lampwright.drawing.PicturePoints;
import lampwright.drawing.ToneScale;
import lampwright.tasks.PictureGiving;
import lampwright.wording.Figure;
import lampwright.wording.WordsForTests;

/** The pages of pictures, and pictures on other pages, from invented data. */
final class PicturePreviews {

  private static final String SETUP = "/demo/setups/k3v9";
  private static final String LONG =
      "Alone at the end of the quay with one window behind her and the sea already night. ";

  private PicturePreviews() {}

  static PictureTile tile(String caption, int width, int height) {
    return new PictureTile(
        SETUP + "/pictures/p1",
        "/api/pictures/p1/thumbnail",
        "",
        caption.isEmpty() ? "Contact frame, without a caption" : caption,
        "Contact frame",
        caption,
        width,
        height,
        PictureGiving.Whereabouts.THERE);
  }

  private static PictureTile large(String caption, PictureGiving.Whereabouts whereabouts) {
    return new PictureTile(
        SETUP + "/pictures/p1",
        "/api/pictures/p1/screen",
        "/api/pictures/p1/screen?width=2560",
        caption.isEmpty() ? "Finished picture, without a caption" : caption,
        "Finished picture",
        caption,
        1280,
        853,
        whereabouts);
  }

  static PicturesPart part() {
    return new PicturesPart(
        Optional.of(
            large("The deckhand looks back once, at the window.", PictureGiving.Whereabouts.THERE)),
        List.of(tile("", 320, 213), tile("The rim alone.", 213, 320)),
        SETUP + "/pictures",
        "All pictures: 3");
  }

  static PicturesPart noPart() {
    return new PicturesPart(Optional.empty(), List.of(), SETUP + "/pictures", "All pictures: 0");
  }

  static PicturesPart longPart() {
    return new PicturesPart(
        Optional.of(large(LONG.repeat(6), PictureGiving.Whereabouts.LOST)),
        IntStream.range(0, 12).mapToObj(i -> tile(LONG.repeat(3), 320, 100 + 40 * i)).toList(),
        SETUP + "/pictures",
        "All pictures: 100 and more");
  }

  static PicturesPage pictures() {
    return page(
        List.of(
            tile("", 320, 213),
            tile(LONG.repeat(6), 213, 320),
            large("Lost.", PictureGiving.Whereabouts.LOST)),
        SETUP + "/pictures?cursor=x",
        FormErrors.none());
  }

  static PicturesPage noPictures() {
    return page(List.of(), "", FormErrors.none());
  }

  static PicturesPage wrong() {
    return page(
        List.of(tile("", 320, 213)),
        "",
        new FormErrors(
            List.of(
                new FormErrors.FormError(
                    PictureForm.FILE, "The file is a GIF. Send a JPEG, PNG, WebP or TIFF."),
                new FormErrors.FormError(
                    PictureForm.CAPTION, "Caption (512 characters) must have at most 500."))));
  }

  private static PicturesPage page(List<PictureTile> tiles, String next, FormErrors errors) {
    return new PicturesPage(
        PagePreviews.layout("Pictures"),
        "Last ferry, slate quay",
        SETUP,
        tiles,
        next,
        Optional.of(form(0, errors)));
  }

  private static PictureForm form(int revision, FormErrors errors) {
    return new PictureForm(
        SETUP + "/pictures",
        "c5rf",
        revision,
        List.of(
            new PictureForm.Kind("final", "Finished picture", true),
            new PictureForm.Kind("reference", "Reference", false)),
        "The deckhand looks back.",
        revision > 1,
        errors);
  }

  static PicturePage picture() {
    return one(
        large(LONG, PictureGiving.Whereabouts.THERE),
        List.of(
            new PicturePage.PointNote(1, "The rim is a third too hot here.", "Imke Tal"),
            new PicturePage.PointNote(2, "Keep this reflection.", "Oren Vale")),
        List.of(
            new PicturePage.Setting("Aperture", "f/5.6", "f/5.6", false),
            new PicturePage.Setting("Time", "1/60 s", "1/125 s", true)),
        List.of("The file says 1/60 s, the setup 1/125 s: one stop more ambient."),
        Optional.of(form(2, FormErrors.none())));
  }

  static PicturePage bare() {
    return one(
        large("", PictureGiving.Whereabouts.LOST),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  static PicturePage wrongNote() {
    return one(
        large("", PictureGiving.Whereabouts.THERE),
        List.of(),
        List.of(new PicturePage.Setting("ISO", "ISO 200", "ISO 200", false)),
        List.of(),
        Optional.of(
            form(
                1,
                new FormErrors(
                    List.of(
                        new FormErrors.FormError(
                            PictureForm.CAPTION,
                            "Caption (512 characters) must have at most 500."))))));
  }

  private static PicturePage one(
      PictureTile tile,
      List<PicturePage.PointNote> notes,
      List<PicturePage.Setting> settings,
      List<String> sentences,
      Optional<PictureForm> form) {
    return new PicturePage(
        PagePreviews.layout("Finished picture of Last ferry, slate quay"),
        "Last ferry, slate quay",
        SETUP,
        SETUP + "/pictures",
        tile,
        notes.isEmpty()
            ? Optional.empty()
            : Optional.of(points().svg(WordsForTests.usual().notation())),
        notes,
        settings,
        sentences,
        tones(),
        "JPEG, 4000 × 2667 pixels, 5.2 MB",
        "The file tells where it was taken; what is given out does not.",
        "/api/pictures/p1/original",
        "Revision 2, by Imke Tal, 15 October 2030",
        form,
        SETUP + "/pictures/p1/removal");
  }

  private static PicturePoints points() {
    return new PicturePoints(
        1280,
        853,
        List.of(new PicturePoints.Point(1, 0.3, 0.4), new PicturePoints.Point(2, 0.7, 0.75)));
  }

  private static PicturePage.Tones tones() {
    return new PicturePage.Tones(
        new ToneScale(4, 18, 31, 47, 82).svg(WordsForTests.usual().notation()),
        new ColourStrip(
                List.of(new ColourStrip.Share(0x22303c, 0.6), new ColourStrip.Share(0xc08040, 0.4)))
            .svg(WordsForTests.usual().notation()),
        List.of(
            Figure.of("31", "L*", "middle lightness, middle key"),
            Figure.of("4.1", "stops", "from its darks to its lights")),
        List.of(
            new PicturePage.Colour("#22303c", "60 %"), new PicturePage.Colour("#c08040", "40 %")));
  }
}
