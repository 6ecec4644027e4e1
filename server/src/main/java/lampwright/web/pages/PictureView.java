package lampwright.web.pages;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

/** Puts a picture, what its file says and what was written on it on its page. */
final class PictureView {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);
  private static final String NOT_TOLD = "not told";

  private final PictureComparing.Compared compared;
  private final KeptPicture picture;

  PictureView(PictureComparing.Compared compared) {
    this.compared = compared;
    this.picture = compared.picture();
  }

  /** What the file says beside the setup; nothing where the file says nothing. */
  List<PicturePage.Setting> settings() {
    ExifFacts file = picture.exif();
    SetupDocument setup = compared.setup().document();
    List<PicturePage.Setting> settings = new ArrayList<>();
    file.fNumber()
        .map(of -> of.nearestMark(MarkedScale.APERTURE_THIRD).toString())
        .ifPresent(
            of ->
                settings.add(
                    row("Aperture", of, setup.exposure().fNumber().toString(), "f_number")));
    file.time()
        .map(of -> of.nearestMark(MarkedScale.SHUTTER_THIRD).toString())
        .ifPresent(of -> settings.add(row("Time", of, setup.exposure().time().toString(), "time")));
    file.iso()
        .map(of -> of.nearestMark(MarkedScale.ISO_THIRD).toString())
        .ifPresent(of -> settings.add(row("ISO", of, setup.exposure().iso().toString(), "iso")));
    file.focalLength()
        .ifPresent(
            of ->
                settings.add(
                    row(
                        "Focal length",
                        millimetres(of),
                        setup
                            .camera()
                            .flatMap(Camera::lens)
                            .map(lens -> millimetres(lens.focalLength()))
                            .orElse(NOT_TOLD),
                        "")));
    file.takenAt()
        .ifPresent(at -> settings.add(row("When", MOMENT.format(at), when(setup), "date")));
    return settings;
  }

  private PicturePage.Setting row(String name, String file, String setup, String field) {
    boolean differs =
        !field.isEmpty()
            && compared.result().differs().stream().anyMatch(of -> of.pointer().endsWith(field));
    return new PicturePage.Setting(name, file, setup, differs);
  }

  private static String millimetres(Millimetres length) {
    return String.format(Locale.ROOT, "%.0f mm", length.value());
  }

  private static String when(SetupDocument setup) {
    Optional<String> day = setup.occasion().flatMap(Occasion::date).map(DAY::format);
    Optional<String> time = setup.occasion().flatMap(Occasion::time).map(Object::toString);
    return Stream.of(day, time)
        .flatMap(Optional::stream)
        .reduce((one, other) -> one + ", " + other)
        .orElse(NOT_TOLD);
  }

  List<String> sentences() {
    return compared.result().differs().stream().map(Difference::sentence).toList();
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
            .svg(),
        new ColourStrip(
                of.colours().stream()
                    .map(colour -> new ColourStrip.Share(colour.rgb(), colour.share()))
                    .toList())
            .svg(),
        List.of(
            Figure.of(whole(of.median()), "L*", "middle lightness, " + of.key().tradeName()),
            Figure.of(
                whole(percentile(of, 25)) + "–" + whole(percentile(of, 75)),
                "L*",
                "half of it lies there"),
            Figure.of(
                String.format(Locale.ROOT, "%.1f", of.spread().value()),
                "stops",
                "from its darks to its lights"),
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

  private static String warmth(double b) {
    if (Math.abs(b) < 2) {
      return "neither warm nor cold";
    }
    return b > 0 ? "toward yellow: warm" : "toward blue: cold";
  }

  /** "JPEG, 4000 × 3000 pixels, 5.2 MB". */
  String file() {
    return "%s, %d × %d pixels, %s"
        .formatted(picture.format(), picture.width(), picture.height(), size(picture.bytes()));
  }

  private static String size(long bytes) {
    if (bytes < 1_000_000) {
      return Math.max(1, Math.round(bytes / 1_000.0)) + " kB";
    }
    return String.format(Locale.ROOT, "%.1f MB", bytes / 1_000_000.0);
  }

  String place() {
    if (picture.note().mayShowPlace()) {
      return "Whoever may see it gets the file as it came, with its place, names and numbers.";
    }
    return picture.exif().place().isPresent()
        ? "The file tells where it was taken; what is given out does not."
        : "";
  }

  String revision() {
    return "Revision %d, by %s, %s"
        .formatted(
            picture.revision(),
            picture.changedBy(),
            DAY.format(picture.changedAt().atZone(ZoneOffset.UTC)));
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
        : Optional.of(new PicturePoints(picture.width(), picture.height(), points).svg());
  }

  static List<PicturePage.PointNote> notes(List<KeptNote> pointed) {
    List<PicturePage.PointNote> notes = new ArrayList<>();
    for (KeptNote note : pointed) {
      notes.add(
          new PicturePage.PointNote(
              notes.size() + 1,
              note.document().text(),
              note.by() + ", " + DAY.format(note.at().atZone(ZoneOffset.UTC))));
    }
    return notes;
  }
}
