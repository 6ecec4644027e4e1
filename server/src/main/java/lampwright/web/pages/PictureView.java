package lampwright.web.pages;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.drawing.ColourStrip;
import lampwright.drawing.PicturePoints;
import lampwright.drawing.Svg;
import lampwright.drawing.ToneScale;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.unit.Millimetres;
import lampwright.picture.ExifFacts;
import lampwright.picture.ToneStatistics;
import lampwright.setup.Camera;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.notes.Note;
import lampwright.setup.used.FileAgainstSetup.Difference;
import lampwright.tasks.KeptNote;
import lampwright.tasks.KeptPicture;
import lampwright.tasks.PictureComparing;
import lampwright.wording.Figure;
import lampwright.wording.Wording;

/** Puts a picture, what its file says and what was written on it on its page. */
final class PictureView {

  private final PictureComparing.Compared compared;
  private final KeptPicture picture;
  private final Wording words;

  PictureView(PictureComparing.Compared compared, Wording words) {
    this.compared = compared;
    this.picture = compared.picture();
    this.words = words;
  }

  /** What the file says beside the setup; nothing where the file says nothing. */
  List<PicturePage.Setting> settings() {
    ExifFacts file = picture.exif();
    SetupDocument setup = compared.setup().document();
    List<PicturePage.Setting> settings = new ArrayList<>();
    file.fNumber()
        .map(of -> words.aperture(of.nearestMark(MarkedScale.APERTURE_THIRD)))
        .ifPresent(
            of ->
                settings.add(
                    row("aperture", of, words.aperture(setup.exposure().fNumber()), "f_number")));
    file.time()
        .map(of -> of.nearestMark(MarkedScale.SHUTTER_THIRD).toString())
        .ifPresent(of -> settings.add(row("time", of, setup.exposure().time().toString(), "time")));
    file.iso()
        .map(of -> of.nearestMark(MarkedScale.ISO_THIRD).toString())
        .ifPresent(of -> settings.add(row("iso", of, setup.exposure().iso().toString(), "iso")));
    file.focalLength()
        .ifPresent(
            of ->
                settings.add(
                    row(
                        "focal",
                        millimetres(of),
                        setup
                            .camera()
                            .flatMap(Camera::lens)
                            .map(lens -> millimetres(lens.focalLength()))
                            .orElseGet(() -> words.say("picture.notTold")),
                        "")));
    file.takenAt().ifPresent(at -> settings.add(row("when", moment(at), when(setup), "date")));
    return settings;
  }

  private PicturePage.Setting row(String name, String file, String setup, String field) {
    boolean differs =
        !field.isEmpty()
            && compared.result().differs().stream().anyMatch(of -> of.pointer().endsWith(field));
    return new PicturePage.Setting(words.say("picture.setting." + name), file, setup, differs);
  }

  private String millimetres(Millimetres length) {
    return words.fixed(length.value(), 0) + " mm";
  }

  private String moment(LocalDateTime at) {
    return new DayWords(words).dayAndTime(at.toLocalDate(), at.toLocalTime());
  }

  private String when(SetupDocument setup) {
    Optional<String> day = setup.occasion().flatMap(Occasion::date).map(new DayWords(words)::day);
    Optional<String> time = setup.occasion().flatMap(Occasion::time).map(Object::toString);
    return Stream.of(day, time)
        .flatMap(Optional::stream)
        .reduce((one, other) -> one + ", " + other)
        .orElseGet(() -> words.say("picture.notTold"));
  }

  List<String> sentences() {
    return compared.result().differs().stream().map(Difference::sentence).map(words::say).toList();
  }

  PicturePage.Tones tones() {
    ToneStatistics of = picture.statistics();
    List<Double> lightness = of.lightness();
    return new PicturePage.Tones(
        new ToneScale(
                percentile(of, 2),
                percentile(of, 25),
                of.median(),
                percentile(of, 75),
                lightness.getLast())
            .svg(words.notation()),
        new ColourStrip(
                of.colours().stream()
                    .map(colour -> new ColourStrip.Share(colour.rgb(), colour.share()))
                    .toList())
            .svg(words.notation()),
        List.of(
            Figure.of(
                whole(of.median()), "L*", words.say("picture.median." + Wording.key(of.key()))),
            Figure.of(
                whole(percentile(of, 25)) + "–" + whole(percentile(of, 75)),
                "L*",
                words.say("picture.half")),
            Figure.of(
                words.notation().size(of.spread().value()),
                words.stopsUnit(),
                words.say("picture.spread")),
            Figure.of(whole(Math.abs(of.warmth())), "b*", warmth(of.warmth()))),
        of.colours().stream()
            .map(
                colour ->
                    new PicturePage.Colour(colour.hex(), Math.round(100 * colour.share()) + " %"))
            .toList());
  }

  private static double percentile(ToneStatistics of, int percent) {
    return of.lightness().get(ToneStatistics.PERCENTS.indexOf(percent));
  }

  private static String whole(double value) {
    return String.valueOf(Math.round(value));
  }

  private String warmth(double b) {
    if (Math.abs(b) < 2) {
      return words.say("picture.warmth.neither");
    }
    return words.say(b > 0 ? "picture.warmth.warm" : "picture.warmth.cold");
  }

  /** "JPEG, 4000 × 3000 pixels, 5.2 MB". */
  String file() {
    return words.say(
        "picture.file", picture.format(), picture.width(), picture.height(), size(picture.bytes()));
  }

  private String size(long bytes) {
    if (bytes < 1_000_000) {
      return Math.max(1, Math.round(bytes / 1_000.0)) + " kB";
    }
    return words.fixed(bytes / 1_000_000.0, 1) + " MB";
  }

  String place() {
    if (picture.note().mayShowPlace()) {
      return words.say("picture.place.given");
    }
    return picture.exif().place().isPresent() ? words.say("picture.place.kept") : "";
  }

  String revision() {
    return words.say(
        "picture.revision",
        picture.revision(),
        new WhoWords(words).by(picture.changedBy()),
        new DayWords(words).day(picture.changedAt()));
  }

  /** Notes about points in it, numbered, the first written first. */
  static List<KeptNote> pointed(List<KeptNote> all, KeptPicture picture) {
    return all.reversed().stream().filter(note -> point(note, picture).isPresent()).toList();
  }

  private static Optional<Note.About.OfPicture> point(KeptNote note, KeptPicture picture) {
    return note.document()
        .about()
        .filter(Note.About.OfPicture.class::isInstance)
        .map(Note.About.OfPicture.class::cast)
        .filter(of -> of.picture().equals(picture.id().text()));
  }

  Optional<Svg> points(List<KeptNote> pointed) {
    List<PicturePoints.Point> points = new ArrayList<>();
    for (KeptNote note : pointed) {
      point(note, picture)
          .ifPresent(of -> points.add(new PicturePoints.Point(points.size() + 1, of.x(), of.y())));
    }
    return points.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PicturePoints(picture.width(), picture.height(), points).svg(words.notation()));
  }

  List<PicturePage.PointNote> notes(List<KeptNote> pointed) {
    List<PicturePage.PointNote> notes = new ArrayList<>();
    for (KeptNote note : pointed) {
      notes.add(
          new PicturePage.PointNote(
              notes.size() + 1,
              note.document().text(),
              new WhoWords(words).who(note.by()) + ", " + new DayWords(words).day(note.at())));
    }
    return notes;
  }
}
