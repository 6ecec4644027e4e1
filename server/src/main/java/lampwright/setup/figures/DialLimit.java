package lampwright.setup.figures;

import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Stops;
import lampwright.gear.Body;
import lampwright.gear.Lens;
import lampwright.setup.Light;

/** Why the gear cannot turn a dial by a stop, or only in part. */
public sealed interface DialLimit {

  /** The reason as the photographer reads it. */
  String inWords();

  /** The lens's scale ends. */
  record OfLens(Lens lens) implements DialLimit {

    @Override
    public String inWords() {
      return "The lens goes from " + lens.widest() + " to " + lens.smallest() + ".";
    }
  }

  /** The body's speeds end. */
  record OfSpeeds(Body body) implements DialLimit {

    @Override
    public String inWords() {
      return "The body goes from " + body.lowestIso() + " to " + body.highestIso() + ".";
    }
  }

  /** There is no filter to take off. */
  record OfDensity() implements DialLimit {

    @Override
    public String inWords() {
      return "There is no neutral density of a stop to take off.";
    }
  }

  /** The shutter and the flash do not go together at that time. */
  record OfShutter(ShutterEffect effect) implements DialLimit {

    @Override
    public String inWords() {
      return String.join(" ", effect.warnings());
    }
  }

  /**
   * The head's dial ends.
   *
   * @param turned which way
   */
  record OfPower(Light light, Stops turned) implements DialLimit {

    @Override
    public String inWords() {
      Stops down = light.stopsDown().orElse(Stops.ZERO);
      double left = turned.value() > 0 ? down.value() : light.head().range().value() - down.value();
      return "The head has "
          + Bounds.fixed(Math.max(0, left), 1)
          + " stops left "
          + (turned.value() > 0 ? "up to full power." : "down to its lowest power.");
    }
  }
}
