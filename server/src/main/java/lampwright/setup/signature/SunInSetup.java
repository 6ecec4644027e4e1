package lampwright.setup.signature;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.sun.SunPhase;
import lampwright.engine.unit.Degrees;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Ambient;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.SunComputation;
import lampwright.setup.figures.SunFigures;

/**
 * The sun, where the setup has one.
 *
 * @param elevation as it is seen; absent indoors
 * @param bearing true bearing, clockwise from north; absent indoors
 * @param fromCamera where it stands as a light on the subject, from the direction subject to
 *     camera, positive to camera right: 0 is front light, 180 back light; absent where it is down
 *     and where the camera's bearing is not known
 * @param lights whether it lights the picture, as the ambient's source tells; absent where that is
 *     not told, or mixed
 * @param needs what the document would have to say for what is absent, as JSON Pointers
 */
public record SunInSetup(
    Height height,
    Optional<Degrees> elevation,
    Optional<Degrees> bearing,
    Optional<Degrees> fromCamera,
    Optional<Boolean> lights,
    List<String> needs)
    implements Part {

  /** How high it stands. */
  public enum Height {
    INDOORS("indoors, no sun"),
    /** Its upper edge too; the border is that of sunset (source reda-andreas). */
    BELOW_HORIZON("below the horizon"),
    /** Up to {@link SunInSetup#HIGH}. */
    LOW("low"),
    HIGH("high");

    private final String words;

    Height(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** From where it comes as a light (trade terms, common practice, no source). */
  public enum From {
    FRONT,
    SIDE,
    BACK
  }

  /**
   * From here it is high: where it stands about two hours from rising or setting in the middle
   * latitudes, from when exposure tables take daylight as even (source exposure-value); the angle
   * itself is a judgement.
   */
  public static final Degrees HIGH = new Degrees(20);

  private static final double FRONT_TO_DEG = 45;
  private static final double BACK_FROM_DEG = 135;

  private static final Field<SunInSetup, Height> HEIGHT =
      required("height", Forms.choice(Height.values()), SunInSetup::height, "How high it stands.");
  private static final Field<SunInSetup, Optional<Degrees>> ELEVATION =
      optional("elevation_deg", Numbers.degrees(), SunInSetup::elevation, "As it is seen.");
  private static final Field<SunInSetup, Optional<Degrees>> BEARING =
      optional("bearing_deg", Numbers.degrees(), SunInSetup::bearing, "Clockwise from north.");
  private static final Field<SunInSetup, Optional<Degrees>> FROM_CAMERA =
      optional(
          "from_camera_deg", Numbers.degrees(), SunInSetup::fromCamera, "As a light: 180 is back.");
  private static final Field<SunInSetup, Optional<Boolean>> LIGHTS =
      optional("lights", Forms.flag(), SunInSetup::lights, "Whether it lights the picture.");
  private static final Field<SunInSetup, List<String>> NEEDS =
      list("needs", Forms.text(100), 20, SunInSetup::needs, "For what is absent.");

  static final ObjectForm<SunInSetup> FORM =
      ObjectForm.of(
          "sun_in_setup",
          "The sun, where the setup has one.",
          values ->
              new SunInSetup(
                  values.get(HEIGHT),
                  values.get(ELEVATION),
                  values.get(BEARING),
                  values.get(FROM_CAMERA),
                  values.get(LIGHTS),
                  values.get(NEEDS)),
          List.of(HEIGHT, ELEVATION, BEARING, FROM_CAMERA, LIGHTS, NEEDS));

  public SunInSetup {
    needs = List.copyOf(needs);
  }

  static Optional<SunInSetup> find(SetupDocument setup, Figures figures, Gaps gaps) {
    if (figures.sun().isPresent()) {
      return figures.sun().map(sun -> of(sun, setup.ambient()));
    }
    List<String> needs =
        SunComputation.needs(setup).stream()
            .filter(pointer -> pointer.startsWith("/occasion"))
            .toList();
    return needs.isEmpty()
        ? Optional.of(
            new SunInSetup(
                Height.INDOORS,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(false),
                List.of()))
        : gaps.none(PartName.SUN, Why.OCCASION_UNKNOWN, needs);
  }

  private static SunInSetup of(SunFigures sun, Optional<Ambient> ambient) {
    Height height = height(sun);
    boolean isUp = height != Height.BELOW_HORIZON;
    Optional<Degrees> fromCamera = isUp ? fromCamera(sun) : Optional.empty();
    Optional<Ambient.Source> source = ambient.flatMap(Ambient::source);
    List<String> needs = new ArrayList<>();
    if (isUp && fromCamera.isEmpty()) {
      needs.add("/camera/bearing_deg");
    }
    if (isUp && source.isEmpty()) {
      needs.add(ambient.isPresent() ? "/ambient/source" : "/ambient");
    }
    return new SunInSetup(
        height,
        Optional.of(Numbers.tidy(sun.position().elevation())),
        Optional.of(Numbers.tidy(sun.position().azimuth())),
        fromCamera.map(Numbers::tidy),
        isUp
            ? source
                .filter(told -> told != Ambient.Source.MIXED)
                .map(told -> told == Ambient.Source.SUN)
            : Optional.of(false),
        needs);
  }

  private static Height height(SunFigures sun) {
    if (sun.position().geometricElevation().compareTo(SunPhase.GOLDEN_SUN_UP.lowest()) < 0) {
      return Height.BELOW_HORIZON;
    }
    return sun.position().elevation().compareTo(HIGH) < 0 ? Height.LOW : Height.HIGH;
  }

  private static Optional<Degrees> fromCamera(SunFigures sun) {
    return sun.ofSubject()
        .map(subject -> subject.direction().azimuth())
        .or(
            () ->
                sun.ofCamera()
                    .map(camera -> new Degrees(180 - camera.relativeAzimuth().value()))
                    .map(Degrees::toHalfTurns));
  }

  /** From where it comes as a light. */
  public Optional<From> from() {
    return fromCamera.map(
        azimuth -> {
          double aside = Math.abs(azimuth.value());
          if (aside <= FRONT_TO_DEG) {
            return From.FRONT;
          }
          return aside < BACK_FROM_DEG ? From.SIDE : From.BACK;
        });
  }

  @Override
  public PartName part() {
    return PartName.SUN;
  }

  @Override
  public Said words() {
    return from()
        .map(from -> Said.of("signature.sun.both", high().asFilling(), light(from).asFilling()))
        .orElseGet(this::high);
  }

  private Said high() {
    return Said.of("signature.sun." + Numbers.key(height));
  }

  private static Said light(From from) {
    return Said.of("signature.sun.light." + Numbers.key(from));
  }

  @Override
  public Said sentence() {
    if (height == Height.INDOORS) {
      return Said.of("signature.sun.none");
    }
    Filling size = size(elevation);
    if (height == Height.BELOW_HORIZON) {
      return Said.of("signature.sun.wasDown", size);
    }
    return Said.of(
        "signature.sun.stood",
        size,
        high().asFilling(),
        size(bearing),
        from()
            .map(from -> Said.of("signature.sun.as" + side(), light(from).asFilling()).asFilling())
            .orElseGet(() -> Filling.text("")),
        Said.of(
                lights
                    .map(does -> does ? "signature.sun.lights" : "signature.sun.lightsNot")
                    .orElse("signature.sun.untold"))
            .asFilling());
  }

  private static Filling size(Optional<Degrees> angle) {
    return angle.map(Numbers::size).orElseGet(() -> Filling.text(""));
  }

  /** The end of a phrase's key. */
  private String side() {
    return fromCamera
        .map(KeySide::of)
        .filter(side -> side != KeySide.NEITHER)
        .map(side -> "." + side.word())
        .orElse("");
  }
}
