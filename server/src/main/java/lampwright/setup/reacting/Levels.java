package lampwright.setup.reacting;

import java.util.Optional;
import java.util.Set;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.AmbientFigures;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.LightFigures;

/**
 * A setup with its figures, asked for what must hold.
 *
 * @param out lights that the document has and that do not shine: a setup is not without any light,
 *     so where the only one is dead it stays
 */
record Levels(SetupDocument setup, Figures figures, Set<LightId> out) {

  Levels {
    out = Set.copyOf(out);
  }

  static Levels of(SetupDocument setup) {
    return new Levels(setup, FiguresComputation.of(setup), Set.of());
  }

  /** The same with lights that do not shine. */
  Levels without(Set<LightId> dark) {
    return new Levels(setup, figures, dark);
  }

  /** A light's level in the picture, from the shooting exposure; absent where it is not known. */
  Optional<Stops> ofLight(LightId id) {
    return find(id)
        .filter(_ -> !out.contains(id))
        .flatMap(LightFigures::inPicture)
        .map(light -> setup.exposure().settings().offsetOf(light, MeterConstant.FLAT));
  }

  /** The ambient's, absent where it is not known. */
  Optional<Stops> ofAmbient() {
    return figures.ambient().map(AmbientFigures::offset);
  }

  /** The figures of a light that may be gone. */
  Optional<LightFigures> find(LightId id) {
    return figures.lights().stream().filter(light -> light.light().id().equals(id)).findFirst();
  }

  /** How much more energy a frame takes than in another; 0 where one of them is not known. */
  Stops strongerThan(Levels other) {
    return figures
        .energyPerFrame()
        .filter(energy -> energy.value() > 0)
        .flatMap(
            energy ->
                other
                    .figures
                    .energyPerFrame()
                    .filter(before -> before.value() > 0)
                    .map(before -> Stops.ofRatio(energy.value() / before.value())))
        .orElse(Stops.ZERO);
  }
}
