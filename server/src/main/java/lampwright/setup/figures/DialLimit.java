package lampwright.setup.figures;

import java.util.List;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;

/** Why the gear cannot turn a dial by a stop, or only in part. */
public sealed interface DialLimit {

  /** The reason as the photographer reads it. */
  List<Said> inWords();

  /** The lens's scale ends. */
  record OfLens(Lens lens) implements DialLimit {

    @Override
    public List<Said> inWords() {
      return List.of(
          Said.of(
              "figuring.limit.lens", Filling.shown(lens.widest()), Filling.shown(lens.smallest())));
    }
  }

  /** The body's speeds end. */
  record OfSpeeds(Body body) implements DialLimit {

    @Override
    public List<Said> inWords() {
      return List.of(
          Said.of(
              "figuring.limit.iso",
              Filling.shown(body.lowestIso()),
              Filling.shown(body.highestIso())));
    }
  }

  /** There is no filter to take off. */
  record OfDensity() implements DialLimit {

    @Override
    public List<Said> inWords() {
      return List.of(Said.of("figuring.limit.density"));
    }
  }

  /** The shutter and the flash do not go together at that time. */
  record OfShutter(ShutterEffect effect) implements DialLimit {

    @Override
    public List<Said> inWords() {
      return effect.warnings();
    }
  }

  /**
   * The head's dial ends.
   *
   * @param turned which way
   */
  record OfPower(Light light, Stops turned) implements DialLimit {

    @Override
    public List<Said> inWords() {
      Stops down = light.stopsDown().orElse(Stops.ZERO);
      double left = turned.value() > 0 ? down.value() : light.head().range().value() - down.value();
      return List.of(
          Said.of(
              turned.value() > 0 ? "figuring.limit.powerUp" : "figuring.limit.powerDown",
              new Filling.Size(Math.max(0, left))));
    }
  }
}
