package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.light.LightingRatio;
import lampwright.setup.ShootingExposure;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.TargetFigures;

/** The strip of key figures of a setup, and of an adaptation. */
final class SetupFigures {

  private SetupFigures() {}

  /** Aperture, time, ISO, filter, ambient, ratio, the sum at the first target, blur, energy. */
  static List<Figure> strip(ShootingExposure exposure, Figures figures) {
    List<Figure> strip = new ArrayList<>(exposure(exposure));
    figures.ambient().map(SetupFigures::ambient).ifPresent(strip::add);
    ratio(figures).ifPresent(strip::add);
    figures.targets().stream().findFirst().map(SetupFigures::sum).ifPresent(strip::add);
    MovementView.inStrip(figures.movements()).ifPresent(strip::add);
    figures
        .energyPerFrame()
        .map(energy -> Wording.energy(energy, "a frame, " + heads(figures)))
        .ifPresent(strip::add);
    return strip;
  }

  /** What the camera is set to, for a list of setups. */
  static List<Figure> forHit(ShootingExposure exposure, Figures figures) {
    List<Figure> few = new ArrayList<>(exposure(exposure));
    figures
        .ambient()
        .map(a -> Figure.of(Wording.signed(a.offset()), "", "ambient, stops"))
        .ifPresent(few::add);
    return few;
  }

  private static List<Figure> exposure(ShootingExposure exposure) {
    List<Figure> figures = new ArrayList<>();
    figures.add(Figure.of(exposure.fNumber().toString(), "", "aperture"));
    figures.add(Figure.of(exposure.time().toString().replace(" s", ""), "s", "time"));
    figures.add(Figure.of(iso(exposure), "", "ISO"));
    if (exposure.neutralDensity().value() > 0) {
      figures.add(
          Figure.of(
              "−" + String.format(Locale.ROOT, "%.1f", exposure.neutralDensity().value()),
              "",
              "grey filter, stops"));
    }
    return figures;
  }

  static String iso(ShootingExposure exposure) {
    return exposure.iso().toString().replace("ISO", "").trim();
  }

  private static Figure ambient(AmbientFigures ambient) {
    return Figure.of(Wording.signed(ambient.offset()), "", "ambient, stops")
        .giveOrTake(ambient.uncertainty())
        .with(Wording.known(ambient.ambient().known()))
        .with(Wording.working(ambient.working()));
  }

  private static Optional<Figure> ratio(Figures figures) {
    return figures.targets().stream()
        .flatMap(target -> target.ratio().stream())
        .findFirst()
        .map(LightingRatio::litToShadow)
        .map(
            ratio ->
                Figure.of(String.format(Locale.ROOT, "%.1f : 1", ratio), "", "key + fill to fill"));
  }

  private static Figure sum(TargetFigures target) {
    return Figure.of(
            Wording.signed(target.offset()), "", "stops, all together " + target.target().where())
        .giveOrTake(target.uncertainty())
        .with(Wording.working(target.working()));
  }

  private static String heads(Figures figures) {
    int heads = figures.lights().stream().mapToInt(light -> light.light().heads()).sum();
    return heads == 1 ? "1 head" : heads + " heads";
  }
}
