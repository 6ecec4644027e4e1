package lampwright.gear;

import lampwright.engine.beam.CutSpread;
import lampwright.engine.beam.Even;
import lampwright.engine.beam.Lobe;
import lampwright.engine.beam.Omnidirectional;
import lampwright.engine.beam.Opening;
import lampwright.engine.beam.Spread;
import lampwright.engine.light.ConservedFlux;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;

/**
 * What a modifier usually does with light, where its document does not say. All numbers here are
 * common practice without a source, chosen so that the usual losses against a standard reflector
 * come out; a reading, or the modifier's own fields, go before them.
 */
final class UsualLight {

  /** What the walls of a grid take on the axis. */
  private static final Stops GRID_WALLS = new Stops(0.75);

  /** A cloth grid before a wide face, and a metal one before a reflector. */
  private static final double WIDE_GRID = 1.5;

  private static final double NARROW_GRID = 3;

  private static final Degrees SNOOT_CUT_OFF = new Degrees(10);

  /** The soft edge of a snoot over its cut-off. */
  private static final double SNOOT_PENUMBRA = 0.6;

  private static final double DISH_DEG = 60;

  /** A beam of 180 degrees at half peak has no finite exponent; this is as good. */
  private static final double WIDEST_BEAM_DEG = 179;

  private UsualLight() {}

  /** The flux that the modifier passes, and how it is spread. */
  static ConservedFlux flux(Modifier modifier) {
    double share = modifier.transmission().orElseGet(() -> transmission(modifier.kind()));
    Spread spread = spread(modifier);
    if (modifier.grid()) {
      share *= GRID_WALLS.negated().toFactor();
      if (isSpreadStated(modifier)) {
        // The stated beam is what the grid leaves over: what is missing was absorbed.
        share *= Math.min(1, spread.solidAngleSr() / usualBeam(modifier).solidAngleSr());
      }
    }
    return new ConservedFlux(share, modifier.face(), spread);
  }

  /**
   * How the modifier spreads its light, with what is fitted to it. A stated angle is that of the
   * whole, grid included.
   */
  static Spread spread(Modifier modifier) {
    Spread beam = beam(modifier);
    if (!modifier.grid() || isSpreadStated(modifier)) {
      return beam;
    }
    boolean wide = beam.solidAngleSr() > 2;
    double depth = modifier.gridDepthToWidth().orElse(wide ? WIDE_GRID : NARROW_GRID);
    return CutSpread.of(beam, new Opening.Grid(depth));
  }

  private static boolean isSpreadStated(Modifier modifier) {
    return modifier.spread().isPresent() && modifier.candela().isEmpty();
  }

  private static Spread beam(Modifier modifier) {
    if (modifier.candela().isPresent()) {
      return modifier.candela().get();
    }
    return switch (modifier.kind()) {
      case REFLECTOR, SOFTBOX, OCTAGON, STRIP, UMBRELLA, SCRIM, DISH ->
          modifier.spread().<Spread>map(UsualLight::lobe).orElseGet(() -> usualBeam(modifier));
      // Doors only cut: they never gather, so a narrow beam is cut out of the standard one.
      case BARN_DOORS ->
          modifier
              .spread()
              .filter(angle -> angle.compareTo(Lobe.STANDARD_REFLECTOR) < 0)
              .<Spread>map(angle -> CutSpread.of(usualBeam(modifier), softEdge(half(angle))))
              .orElseGet(() -> usualBeam(modifier));
      case SNOOT, BARE -> usualBeam(modifier);
    };
  }

  /** The beam of its kind where nothing is said about its angle, without a grid. */
  private static Spread usualBeam(Modifier modifier) {
    Lobe standard = Lobe.ofBeam(Lobe.STANDARD_REFLECTOR);
    return switch (modifier.kind()) {
      case REFLECTOR, BARN_DOORS -> standard;
      case SOFTBOX, OCTAGON, STRIP, UMBRELLA, SCRIM -> new Even();
      // With its loss known and no word about its beam it is an even disc, as the reference has it.
      case DISH -> modifier.loss().isPresent() ? new Even() : lobe(new Degrees(DISH_DEG));
      case SNOOT -> CutSpread.of(standard, snoot(modifier));
      case BARE -> new Omnidirectional();
    };
  }

  private static Opening snoot(Modifier modifier) {
    return softEdge(
        modifier.cutOff().or(() -> modifier.spread().map(UsualLight::half)).orElse(SNOOT_CUT_OFF));
  }

  private static Opening softEdge(Degrees cutOff) {
    return new Opening.Snoot(cutOff, new Degrees(cutOff.value() * SNOOT_PENUMBRA));
  }

  private static Degrees half(Degrees angle) {
    return new Degrees(angle.value() / 2);
  }

  private static Lobe lobe(Degrees fullAngle) {
    return Lobe.ofBeam(new Degrees(Math.min(WIDEST_BEAM_DEG, fullAngle.value())));
  }

  /** The share of the standard reflector's flux that leaves, before grids and snoots. */
  private static double transmission(Modifier.Kind kind) {
    return switch (kind) {
      case REFLECTOR, BARN_DOORS, BARE -> 1;
      case SOFTBOX -> 0.68;
      case OCTAGON -> 0.45;
      case STRIP -> 0.5;
      // A shoot-through one; a silver one keeps about 0.85 and spreads it over 100 degrees.
      case UMBRELLA -> 0.65;
      case DISH -> 0.52;
      case SNOOT -> 0.6;
      case SCRIM -> 0.4;
    };
  }
}
