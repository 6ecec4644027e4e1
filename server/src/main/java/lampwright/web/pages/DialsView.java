package lampwright.web.pages;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import lampwright.engine.exposure.Iso;
import lampwright.engine.unit.Stops;
import lampwright.setup.ShootingExposure;
import lampwright.setup.figures.DialStep;

/** Puts into tables what each dial does to flash and to ambient. */
final class DialsView {

  static final String ID = "exposure";
  static final String HEADING = "On this exposure";

  static final String THEME =
      "Only time, output and distance change flash against ambient; aperture, ISO and grey filters"
          + " change both alike.";

  private static final double LEAST_SHOWN = 0.05;

  private final FiguresOf of;

  DialsView(FiguresOf of) {
    this.of = of;
  }

  /** The camera's dials and the first light's power, a stop more. */
  DialsInShort inShort() {
    Optional<DialStep> firstPower =
        of.figures().dials().stream().filter(step -> isPower(step) && isMore(step)).findFirst();
    return new DialsInShort(
        THEME,
        balance().stream().toList(),
        table(
            "A stop more light by each dial",
            step ->
                isMore(step)
                    && !isNothingToTakeOff(step)
                    && (!isPower(step) || firstPower.filter(step::equals).isPresent())),
        missing());
  }

  FiguresPart part() {
    FiguresPart part = FiguresPart.of(ID, HEADING, THEME);
    if (balance().isPresent()) {
      part = part.with(balance().get());
    }
    part =
        part.with(table("A stop more light by each dial", DialsView::isMore))
            .with(table("A stop less light by each dial", step -> !isMore(step)))
            .withMissing(missing());
    for (DialStep step : of.figures().dials()) {
      Optional<WorkingStep> working = step.working().map(Wording::working);
      if (working.isPresent()) {
        part = part.with(working.get().named(turn(step)));
      }
    }
    return part;
  }

  private String missing() {
    return of.missing("/ambient");
  }

  private Optional<Figure> balance() {
    return of.figures()
        .againstAmbient()
        .map(
            against ->
                Figure.of(
                        Wording.signed(against.balance()),
                        "stops",
                        "flash over ambient " + against.target().where())
                    .with(Known.COMPUTED)
                    .with(Wording.working(against.working())));
  }

  private FiguresTable table(String caption, Predicate<DialStep> shown) {
    return FiguresTable.of(
        caption,
        List.of(
            FiguresTable.Column.words("Dial"),
            FiguresTable.Column.figures("All the flash"),
            FiguresTable.Column.figures("Ambient"),
            FiguresTable.Column.figures("Flash against ambient")),
        of.figures().dials().stream().filter(shown).map(this::row).toList());
  }

  private FiguresTable.Row row(DialStep step) {
    FiguresTable.Row row =
        FiguresTable.Row.of(
            0,
            turn(step),
            isNothingToTakeOff(step) ? none() : change(step.flash()),
            isNothingToTakeOff(step) ? none() : change(step.ambient()),
            isNothingToTakeOff(step)
                ? none()
                : step.balance().map(DialsView::balance).orElseGet(FiguresTable.Cell::notKnown));
    return step.limit().map(row::withNote).orElse(row);
  }

  private static FiguresTable.Cell none() {
    return FiguresTable.Cell.of("–");
  }

  private static FiguresTable.Cell change(Optional<Stops> change) {
    return change
        .map(stops -> FiguresTable.Cell.of(Wording.signed(stops)))
        .orElseGet(FiguresTable.Cell::notKnown);
  }

  private static FiguresTable.Cell balance(Stops change) {
    FiguresTable.Cell cell = FiguresTable.Cell.of(Wording.signed(change));
    if (Math.abs(change.value()) < LEAST_SHOWN) {
      return cell.after("both alike");
    }
    return cell.after(change.value() > 0 ? "to the flash" : "to the ambient").asMain();
  }

  private String turn(DialStep step) {
    ShootingExposure now = of.setup().exposure();
    return switch (step.dial()) {
      case APERTURE ->
          "Aperture " + now.fNumber() + " → " + now.fNumber().closedBy(step.turned().negated());
      case TIME -> "Time " + now.time() + " → " + now.time().plus(step.turned());
      case ISO ->
          now.iso()
              + " → "
              + new Iso(now.iso().value() * step.turned().toFactor())
                  .toString()
                  .replace("ISO ", "");
      case NEUTRAL_DENSITY ->
          isNothingToTakeOff(step)
              ? "Grey filter"
              : "Grey filter "
                  + density(now.neutralDensity().value())
                  + " → "
                  + density(now.neutralDensity().value() - step.turned().value());
      case POWER ->
          "Power of "
              + step.light().map(of::name).orElse("all lights")
              + (isMore(step) ? ", up" : ", down");
    };
  }

  private static String density(double stops) {
    return stops <= 0 ? "none" : String.format(Locale.ROOT, "−%.1f", stops);
  }

  private boolean isNothingToTakeOff(DialStep step) {
    return step.dial() == DialStep.Dial.NEUTRAL_DENSITY
        && isMore(step)
        && of.setup().exposure().neutralDensity().value() < LEAST_SHOWN;
  }

  private static boolean isPower(DialStep step) {
    return step.dial() == DialStep.Dial.POWER;
  }

  private static boolean isMore(DialStep step) {
    return step.turned().value() > 0;
  }
}
