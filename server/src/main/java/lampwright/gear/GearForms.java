package lampwright.gear;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import lampwright.document.Field;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.document.Forms.Kind;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Seconds;
import lampwright.engine.unit.Stops;
import lampwright.engine.unit.WattSeconds;

/** Forms that several pieces of gear, and the setup document, have in common. */
public final class GearForms {

  /** As long as a name may be. */
  public static final int NAME = 120;

  /** As long as a paragraph of remarks may be. */
  public static final int REMARK = 4_000;

  /** A millimetre: less is a slip, and the squares of next to nothing are nothing. */
  private static final double SHORTEST_M = 0.001;

  private static final Pattern SHUTTER_TIME =
      Pattern.compile("1/[1-9]\\d{0,4}|0\\.[3-9]\\d?|[1-9]\\d{0,2}(\\.\\d{1,2})?");

  private GearForms() {}

  /** An aperture or a meter's f-number, as printed: 5.6 stands for the exact full stop. */
  public static Form<FNumber> fNumber() {
    return Forms.number("")
        .atLeast(0.5)
        .atMost(128)
        .maybe(5.6)
        .as(FNumber::ofMark, GearForms::printed);
  }

  /** What is printed for it; an odd value, and a half stop that a third stop shadows, as it is. */
  private static double printed(FNumber fNumber) {
    return MarkedScale.APERTURE_THIRD
        .findExact(fNumber.value())
        .or(() -> MarkedScale.APERTURE_HALF.findExact(fNumber.value()))
        .map(MarkedScale.Mark::printed)
        .filter(mark -> FNumber.ofMark(mark).equals(fNumber))
        .orElse(fNumber.value());
  }

  /** An ISO speed as the camera prints it. */
  public static Form<Iso> iso() {
    return Forms.number("")
        .atLeast(3)
        .atMost(819_200)
        .maybe(100)
        .as(Iso::ofMark, GearForms::printed);
  }

  private static double printed(Iso iso) {
    return MarkedScale.ISO_THIRD
        .findExact(iso.value())
        .map(MarkedScale.Mark::printed)
        .filter(mark -> Iso.ofMark(mark).equals(iso))
        .orElse(iso.value());
  }

  /** A shutter time as the camera prints it: {@code "1/125"}, {@code "0.5"}, {@code "2"}. */
  public static Form<ShutterTime> shutterTime() {
    return Forms.text(12)
        .like(
            "^(1/[1-9]\\d{0,4}|0\\.[3-9]\\d?|[1-9]\\d{0,2}(\\.\\d{1,2})?)$",
            GearForms::isShutterTime,
            "a shutter time such as \"1/125\" or \"0.5\", from 1/32000 to 600 seconds")
        .as(ShutterTime::parse, GearForms::printed);
  }

  /** The camera's own text without the unit; the fraction where decimals would lose something. */
  private static String printed(ShutterTime time) {
    String text = time.toString().replace(" s", "");
    String fraction = "1/" + Math.round(1 / time.seconds());
    boolean lossy = !ShutterTime.parse(text).equals(time);
    return lossy && ShutterTime.parse(fraction).equals(time) ? fraction : text;
  }

  private static boolean isShutterTime(String text) {
    if (!SHUTTER_TIME.matcher(text).matches()) {
      return false;
    }
    double seconds =
        text.startsWith("1/")
            ? 1 / Double.parseDouble(text.substring(2))
            : Double.parseDouble(text);
    return seconds >= 1.0 / 32_000 && seconds <= 600;
  }

  /**
   * A short span that stands in milliseconds.
   *
   * @param atMost in milliseconds
   * @param maybe in milliseconds
   */
  static Form<Seconds> milliseconds(double atMost, double maybe) {
    return Forms.number("ms")
        .moreThan(0)
        .atMost(atMost)
        .maybe(maybe)
        .as(milliseconds -> new Seconds(milliseconds / 1_000), GearForms::inMilliseconds);
  }

  /** As it was written: 1.25, not the 1.2499999999999998 that multiplying back can give. */
  private static double inMilliseconds(Seconds span) {
    double product = span.value() * 1_000;
    double tidy = Math.rint(product * 1e9) / 1e9;
    return tidy / 1_000 == span.value() ? tidy : product;
  }

  /** A level or a loss in stops between two bounds. */
  public static Form<Stops> stops(double atLeast, double atMost) {
    return Forms.number("stops").atLeast(atLeast).atMost(atMost).as(Stops::new, Stops::value);
  }

  /** A length of a millimetre or more. */
  public static Form<Metres> length(double atMost, double maybe) {
    return Forms.number("m")
        .moreThan(0)
        .atLeast(SHORTEST_M)
        .atMost(atMost)
        .maybe(maybe)
        .as(Metres::new, Metres::value);
  }

  /** Energy of a flash at full power. */
  static Form<WattSeconds> energy(double maybe) {
    return Forms.number("W·s")
        .moreThan(0)
        .atLeast(0.1)
        .atMost(10_000)
        .maybe(maybe)
        .as(WattSeconds::new, WattSeconds::value);
  }

  /** The wait from a flash at full power to ready. */
  static Form<Seconds> recycle(double maybe) {
    return Forms.number("s").moreThan(0).atMost(120).maybe(maybe).as(Seconds::new, Seconds::value);
  }

  /** How many flashes at full power one charge gives. */
  static Form<Integer> flashesPerCharge() {
    return Forms.count(1, 100_000);
  }

  /** How many charged batteries a thing has with it, the one in it included. */
  static Form<Integer> batteries() {
    return Forms.count(1, 20);
  }

  /** How many of a thing are there. */
  static <T> Field<T, Integer> count(Function<T, Integer> getter) {
    return Field.usually(1, "count", Forms.count(1, 99), getter, "How many of these there are.");
  }

  private static final Field<EmittingFace.Disc, Metres> DIAMETER =
      required(
          "diameter_m",
          length(10, 1.2),
          disc -> new Metres(2 * disc.radius().value()),
          "Its diameter.");

  private static final Field<EmittingFace.Rectangle, Metres> WIDTH =
      required("width_m", length(20, 0.9), EmittingFace.Rectangle::width, "Its width.");

  private static final Field<EmittingFace.Rectangle, Metres> HEIGHT =
      required("height_m", length(20, 1.2), EmittingFace.Rectangle::height, "Its height.");

  private static final Field<EmittingFace.Octagon, Metres> ACROSS_FLATS =
      required(
          "across_flats_m",
          length(10, 1.5),
          EmittingFace.Octagon::acrossFlats,
          "The distance between opposite sides.");

  private static final Form<EmittingFace> FACE =
      Forms.oneOf(
          "shape",
          List.of(
              new Kind<>(
                  "point",
                  EmittingFace.PointSource.class,
                  ObjectForm.of(
                      "point_face",
                      "A face so small that the inverse square law holds.",
                      values -> new EmittingFace.PointSource(),
                      List.of())),
              new Kind<>(
                  "disc",
                  EmittingFace.Disc.class,
                  ObjectForm.of(
                      "disc_face",
                      "A round face.",
                      values -> new EmittingFace.Disc(new Metres(values.get(DIAMETER).value() / 2)),
                      List.of(DIAMETER))),
              new Kind<>(
                  "octagon",
                  EmittingFace.Octagon.class,
                  ObjectForm.of(
                      "octagon_face",
                      "A face with eight equal sides.",
                      values -> new EmittingFace.Octagon(values.get(ACROSS_FLATS)),
                      List.of(ACROSS_FLATS))),
              new Kind<>(
                  "rectangle",
                  EmittingFace.Rectangle.class,
                  ObjectForm.of(
                      "rectangle_face",
                      "A face with four corners.",
                      values -> new EmittingFace.Rectangle(values.get(WIDTH), values.get(HEIGHT)),
                      List.of(WIDTH, HEIGHT)))));

  /** The face of a light that the light leaves by. */
  public static Form<EmittingFace> face() {
    return FACE;
  }

  /** A name of a thing. */
  public static Form<String> name() {
    return Forms.text(NAME);
  }

  /** An optional remark. */
  static <T> Field<T, Optional<String>> note(Function<T, Optional<String>> getter) {
    return Field.optional("note", Forms.text(REMARK), getter, "Anything worth knowing about it.");
  }
}
