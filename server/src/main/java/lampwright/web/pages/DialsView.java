package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lampwright.engine.Known;
import lampwright.engine.exposure.Iso;
import lampwright.engine.unit.Stops;
import lampwright.setup.ShootingExposure;
import lampwright.setup.figures.DialStep;
import lampwright.wording.Figure;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into tables what each dial does to flash and to ambient. */
final class DialsView {

  static final String ID = "exposure";

  private static final double LEAST_SHOWN = 0.05;

  private final FiguresOf of;
  private final Wording words;

  DialsView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  /** The camera's dials and the first light's power, a stop more. */
  DialsInShort inShort() {
    Optional<DialStep> firstPower =
        of.figures().dials().stream().filter(step -> isPower(step) && isMore(step)).findFirst();
    return new DialsInShort(
        words.say("pages.dials.theme"),
        balance().stream().toList(),
        table(
            words.say("pages.dials.more"),
            step ->
                isMore(step)
                    && !isNothingToTakeOff(step)
                    && (!isPower(step) || firstPower.filter(step::equals).isPresent())),
        missing());
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID, words.say("pages.figures.heading.exposure"), words.say("pages.dials.theme"));
    if (balance().isPresent()) {
      part = part.with(balance().get());
    }
    part =
        part.with(table(words.say("pages.dials.more"), DialsView::isMore))
            .with(table(words.say("pages.dials.less"), step -> !isMore(step)))
            .withMissing(missing());
    for (DialStep step : of.figures().dials()) {
      Optional<WorkingStep> working = step.working().map(w -> WorkingStep.of(w, words));
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
                        words.signed(against.balance()),
                        words.stopsUnit(),
                        words.say("pages.dials.flashOver", words.where(against.target())))
                    .with(Known.COMPUTED)
                    .with(WorkingStep.of(against.working(), words)));
  }

  private FiguresTable table(String caption, Predicate<DialStep> shown) {
    return FiguresTable.of(
        caption,
        List.of(
            FiguresTable.Column.words(words.say("pages.dials.dial")),
            FiguresTable.Column.figures(words.say("pages.dials.flash")),
            FiguresTable.Column.figures(words.say("pages.setup.ambient")),
            FiguresTable.Column.figures(words.say("pages.dials.balance"))),
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
                : step.balance()
                    .map(this::balance)
                    .orElseGet(() -> FiguresTable.Cell.notKnown(words)));
    return step.limit().map(said -> row.withNote(String.join(" ", words.say(said)))).orElse(row);
  }

  private static FiguresTable.Cell none() {
    return FiguresTable.Cell.of("–");
  }

  private FiguresTable.Cell change(Optional<Stops> change) {
    return change
        .map(stops -> FiguresTable.Cell.of(words.signed(stops)))
        .orElseGet(() -> FiguresTable.Cell.notKnown(words));
  }

  private FiguresTable.Cell balance(Stops change) {
    FiguresTable.Cell cell = FiguresTable.Cell.of(words.signed(change));
    if (Math.abs(change.value()) < LEAST_SHOWN) {
      return cell.after(words.say("pages.dials.alike"));
    }
    return cell.after(
            change.value() > 0
                ? words.say("pages.dials.toFlash")
                : words.say("pages.dials.toAmbient"))
        .asMain();
  }

  private String turn(DialStep step) {
    ShootingExposure now = of.setup().exposure();
    return switch (step.dial()) {
      case APERTURE ->
          words.say(
              "pages.dials.aperture",
              words.aperture(now.fNumber()),
              words.aperture(now.fNumber().closedBy(step.turned().negated())));
      case TIME ->
          words.say(
              "pages.dials.time",
              words.notation().written(now.time().toString()),
              words.notation().written(now.time().plus(step.turned()).toString()));
      case ISO ->
          now.iso()
              + " → "
              + new Iso(now.iso().value() * step.turned().toFactor())
                  .toString()
                  .replace("ISO ", "");
      case NEUTRAL_DENSITY ->
          isNothingToTakeOff(step)
              ? words.say("pages.dials.greyFilter")
              : words.say(
                  "pages.dials.greyFrom",
                  density(now.neutralDensity().value()),
                  density(now.neutralDensity().value() - step.turned().value()));
      case POWER ->
          words.say(
              isMore(step) ? "pages.dials.powerUp" : "pages.dials.powerDown",
              step.light().map(of::name).orElseGet(() -> words.say("pages.dials.allLights")));
    };
  }

  private String density(double stops) {
    return stops <= 0 ? words.say("pages.common.none") : "−" + words.notation().size(stops);
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
