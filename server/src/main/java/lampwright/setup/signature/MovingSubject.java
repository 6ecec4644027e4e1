package lampwright.setup.signature;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.lens.SensorFormat;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.LightId;
import lampwright.setup.Role;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FlashAgainstAmbient;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.MovementFigures;

/**
 * How far a subject's image moves while it is drawn, in the circles of confusion that depth of
 * field goes by: a 1500th of the frame's diagonal.
 *
 * @param flashCircles by the longest flash on the subject (t0.1); absent where none is on it
 * @param ambientCircles while the shutter is open; absent where there is no ambient that is known
 * @param flashLead the flash over the ambient at the subject; absent where one of them is missing
 */
public record MovingSubject(
    String name,
    Optional<Double> flashCircles,
    Optional<Double> ambientCircles,
    Optional<Stops> flashLead) {

  /** Up to here it is as sharp as what is within the depth of field (convention d/1500). */
  public static final double FROZEN_CIRCLES = 1;

  /** Up to here it is slightly soft: a 500th of the diagonal (common practice, no source). */
  public static final double SLIGHTLY_SOFT_CIRCLES = 3;

  /** From here what the ambient draws is hidden, as {@link MovementFigures.Ghost} has it. */
  private static final Stops HIDDEN = new Stops(3);

  /** From here it shows as soft trails on light edges. */
  private static final Stops SOFT_TRAILS = new Stops(2);

  private static final Field<MovingSubject, String> NAME =
      required("name", Forms.text(400), MovingSubject::name, "The subject.");
  private static final Field<MovingSubject, Optional<Double>> FLASH =
      optional(
          "flash_circles",
          Forms.number("").atLeast(0),
          MovingSubject::flashCircles,
          "By the longest flash.");
  private static final Field<MovingSubject, Optional<Double>> AMBIENT =
      optional(
          "ambient_circles",
          Forms.number("").atLeast(0),
          MovingSubject::ambientCircles,
          "While the shutter is open.");
  private static final Field<MovingSubject, Optional<Stops>> LEAD =
      optional(
          "flash_lead_stops", Numbers.stops(), MovingSubject::flashLead, "Flash over ambient.");

  static final ObjectForm<MovingSubject> FORM =
      ObjectForm.of(
          "moving_subject",
          "How far a subject's image moves while it is drawn.",
          values ->
              new MovingSubject(
                  values.get(NAME), values.get(FLASH), values.get(AMBIENT), values.get(LEAD)),
          List.of(NAME, FLASH, AMBIENT, LEAD));

  /** Empty where the duration of a flash on the subject is not known. */
  static Optional<MovingSubject> find(MovementFigures movement, Figures figures) {
    if (!unknown(movement, figures).isEmpty() || figures.optics().isEmpty()) {
      return Optional.empty();
    }
    double circle =
        figures
            .optics()
            .get()
            .format()
            .circleOfConfusion(SensorFormat.USUAL_CIRCLE_DIVISOR)
            .value();
    List<LightId> onSubject = onSubject(figures).stream().map(l -> l.light().id()).toList();
    OptionalDouble flash =
        movement.flashes().stream()
            .filter(blur -> onSubject.contains(blur.light()))
            .mapToDouble(blur -> blur.tenthTime().onSensor().value() / circle)
            .max();
    double ambient = movement.ambient().onSensor().value() / circle;
    return Optional.of(
        new MovingSubject(
            movement.subject(),
            flash.isPresent() ? Optional.of(Numbers.tidy(flash.getAsDouble())) : Optional.empty(),
            // Where no flash is on it, something must draw it.
            figures.ambient().isPresent() || flash.isEmpty()
                ? Optional.of(Numbers.tidy(ambient))
                : Optional.empty(),
            movement
                .ghost()
                .map(MovementFigures.Ghost::flashOverAmbient)
                .or(() -> figures.againstAmbient().map(FlashAgainstAmbient::balance))
                .filter(_ -> flash.isPresent())
                .map(Numbers::tidy)));
  }

  /** What the document would have to say for the durations that are not known. */
  static List<String> needs(MovementFigures movement, Figures figures) {
    List<String> needs = new ArrayList<>();
    for (LightFigures light : unknown(movement, figures)) {
      String pointer = "/lights/" + figures.lights().indexOf(light);
      needs.add(
          light.light().stopsDown().isEmpty()
              ? pointer + "/stops_down"
              : pointer + "/head/duration_t05_ms");
    }
    return needs;
  }

  private static List<LightFigures> unknown(MovementFigures movement, Figures figures) {
    List<LightId> known =
        movement.flashes().stream().map(MovementFigures.FlashBlur::light).toList();
    return onSubject(figures).stream()
        .filter(light -> !known.contains(light.light().id()))
        .toList();
  }

  private static List<LightFigures> onSubject(Figures figures) {
    return figures.lights().stream()
        .filter(light -> light.light().role() != Role.BACKGROUND)
        .filter(light -> !ChosenKey.isSurface(light.light().target()))
        .toList();
  }

  /** How it comes out: as the less sharp of what flash and ambient draw, where that shows. */
  public Freezing.Kind kind() {
    Freezing.Kind byFlash = flashCircles.map(MovingSubject::kind).orElse(Freezing.Kind.FROZEN);
    Freezing.Kind byAmbient = ambientCircles.map(this::shownAmbient).orElse(Freezing.Kind.FROZEN);
    return byFlash.compareTo(byAmbient) >= 0 ? byFlash : byAmbient;
  }

  private Freezing.Kind shownAmbient(double circles) {
    Freezing.Kind kind = kind(circles);
    if (isHidden()) {
      return Freezing.Kind.FROZEN;
    }
    boolean onlyTrails = flashLead.filter(lead -> lead.compareTo(SOFT_TRAILS) >= 0).isPresent();
    return onlyTrails && kind == Freezing.Kind.BLURRED ? Freezing.Kind.SLIGHTLY_SOFT : kind;
  }

  private boolean isHidden() {
    return flashLead.filter(lead -> lead.compareTo(HIDDEN) >= 0).isPresent();
  }

  private static Freezing.Kind kind(double circles) {
    if (circles <= FROZEN_CIRCLES) {
      return Freezing.Kind.FROZEN;
    }
    return circles <= SLIGHTLY_SOFT_CIRCLES ? Freezing.Kind.SLIGHTLY_SOFT : Freezing.Kind.BLURRED;
  }

  /** The longer of both streaks. */
  double longestCircles() {
    return Math.max(flashCircles.orElse(0.0), ambientCircles.orElse(0.0));
  }

  Said sentence() {
    List<Filling> drawn = new ArrayList<>();
    flashCircles.ifPresent(circles -> drawn.add(part("signature.drawn.flash", circles(circles))));
    ambientCircles.ifPresent(
        circles ->
            drawn.add(
                part(
                    flashCircles.isEmpty() ? "signature.drawn.alone" : "signature.drawn.ambient",
                    circles(circles),
                    lead())));
    return Said.of(
        "signature.moving." + (drawn.size() == 1 ? "one" : "both"),
        Stream.concat(
                Stream.of(Filling.text(name), part("signature.freezing." + Numbers.key(kind()))),
                drawn.stream())
            .toArray(Filling[]::new));
  }

  private Filling lead() {
    return flashLead
        .map(
            lead ->
                part(
                    isHidden() ? "signature.drawn.hidden" : "signature.drawn.lead",
                    Numbers.against(lead.negated())))
        .orElseGet(() -> Filling.text(""));
  }

  private static Filling part(String key, Filling... parts) {
    return Said.of(key, parts).asFilling();
  }

  private static Filling circles(double circles) {
    return Said.counted(
            "signature.circles",
            circles == 1 ? 1 : 2,
            new Filling.Rounded(circles, circles < 10 ? 1 : 0))
        .asFilling();
  }
}
