package lampwright.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.light.LightingRatio;
import lampwright.language.Notation;
import lampwright.setup.SetupDocument;
import lampwright.setup.ShootingExposure;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.MovementFigures;
import lampwright.setup.figures.MovementFigures.Blur;
import lampwright.setup.figures.MovementFigures.FlashBlur;
import lampwright.setup.figures.TargetFigures;

/** The strip of key figures of a setup, and of an adaptation. */
public final class KeyFigures {

  private final Wording words;

  private KeyFigures(Wording words) {
    this.words = words;
  }

  /** The strip of a setup. */
  public static List<Figure> of(SetupDocument setup, Figures figures, Notation notation) {
    return of(setup.exposure(), figures, notation);
  }

  /** Aperture, time, ISO, filter, ambient, ratio, the sum at the first target, blur, energy. */
  public static List<Figure> of(ShootingExposure exposure, Figures figures, Notation notation) {
    return new KeyFigures(new Wording(notation)).strip(exposure, figures);
  }

  /** What the camera is set to: aperture, time, ISO, filter. */
  public static List<Figure> exposure(ShootingExposure exposure, Notation notation) {
    return new KeyFigures(new Wording(notation)).exposure(exposure);
  }

  /** What the camera is set to and the ambient, for a list of setups. */
  public static List<Figure> inShort(
      ShootingExposure exposure, Figures figures, Notation notation) {
    KeyFigures key = new KeyFigures(new Wording(notation));
    List<Figure> few = new ArrayList<>(key.exposure(exposure));
    figures.ambient().map(key::ambientOffset).ifPresent(few::add);
    return few;
  }

  /** The flash that blurs a moving subject most. */
  public static Optional<FlashBlur> longest(MovementFigures movement) {
    return movement.flashes().stream()
        .max(Comparator.comparingDouble(flash -> flash.tenthTime().onSensor().value()));
  }

  /** A blur in pixels; where their size is not known, as a share of the frame's height. */
  public static Figure blur(Blur blur, String name, Wording words) {
    return blur.pixels()
        .map(pixels -> Figure.of(words.pixels(pixels), "px", name))
        .orElseGet(
            () ->
                Figure.of(
                    words.percent(blur.shareOfFrameHeight()),
                    "%",
                    words.say("wording.ofFrameHeight", name)))
        .with(Known.COMPUTED);
  }

  private List<Figure> strip(ShootingExposure exposure, Figures figures) {
    List<Figure> strip = new ArrayList<>(exposure(exposure));
    figures.ambient().map(this::ambient).ifPresent(strip::add);
    ratio(figures).ifPresent(strip::add);
    figures.targets().stream().findFirst().map(this::sum).ifPresent(strip::add);
    figures.movements().stream()
        .findFirst()
        .flatMap(KeyFigures::longest)
        .map(flash -> blur(flash.tenthTime(), words.say("wording.key.blur"), words))
        .ifPresent(strip::add);
    figures
        .energyPerFrame()
        .map(energy -> words.energy(energy, words.count("wording.key.energy", heads(figures))))
        .ifPresent(strip::add);
    return strip;
  }

  private List<Figure> exposure(ShootingExposure exposure) {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        Figure.of(words.aperture(exposure.fNumber()), "", words.say("wording.key.aperture")));
    figures.add(Figure.of(words.time(exposure.time()), "s", words.say("wording.key.time")));
    figures.add(Figure.of(words.iso(exposure.iso()), "", words.say("wording.key.iso")));
    if (exposure.neutralDensity().value() > 0) {
      figures.add(
          Figure.of(
              "−" + words.notation().size(exposure.neutralDensity().value()),
              "",
              words.say("wording.key.greyFilter")));
    }
    return figures;
  }

  private Figure ambientOffset(AmbientFigures ambient) {
    return Figure.of(words.signed(ambient.offset()), "", words.say("wording.key.ambient"));
  }

  private Figure ambient(AmbientFigures ambient) {
    return ambientOffset(ambient)
        .giveOrTake(words.giveOrTake(ambient.uncertainty()))
        .with(ambient.ambient().known())
        .with(WorkingStep.of(ambient.working(), words));
  }

  private Optional<Figure> ratio(Figures figures) {
    return figures.targets().stream()
        .flatMap(target -> target.ratio().stream())
        .findFirst()
        .map(LightingRatio::litToShadow)
        .map(
            ratio -> Figure.of(words.fixed(ratio, 1) + " : 1", "", words.say("wording.key.ratio")));
  }

  private Figure sum(TargetFigures target) {
    return Figure.of(
            words.signed(target.offset()),
            "",
            words.say("wording.key.together", words.where(target.target())))
        .giveOrTake(words.giveOrTake(target.uncertainty()))
        .with(WorkingStep.of(target.working(), words));
  }

  private static int heads(Figures figures) {
    return figures.lights().stream().mapToInt(light -> light.light().heads()).sum();
  }
}
