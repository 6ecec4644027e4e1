package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Mired;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * The colour of the lights against the white balance. For light like that of a glowing body only:
 * it says nothing about green and magenta.
 *
 * @param whiteBalance what the camera is set to; absent where it is not known
 * @param lights in the document's order
 * @param ambient absent where its temperature is not known
 */
public record ColourFigures(
    Optional<Kelvin> whiteBalance, List<OfLight> lights, Optional<Colour> ambient) {

  /** What is taken for a flash whose temperature is not written down (trade-practice). */
  public static final Kelvin USUAL_FLASH = new Kelvin(5500);

  /** A shift that is just visible side by side (trade-practice). */
  public static final Mired JUST_SEEN = new Mired(10);

  /**
   * A colour.
   *
   * @param reciprocal in mired, where gels add
   * @param temperature absent where blue gels make it bluer than any temperature
   * @param fromWhiteBalance plus is warmer than neutral; absent without a white balance
   */
  public record Colour(
      Mired reciprocal, Optional<Kelvin> temperature, Optional<Mired> fromWhiteBalance) {

    static Colour of(Mired reciprocal, Optional<Kelvin> whiteBalance) {
      return new Colour(
          reciprocal,
          reciprocal.value() > 0 ? Optional.of(reciprocal.toKelvin()) : Optional.empty(),
          whiteBalance.map(wb -> reciprocal.minus(wb.toMired())));
    }

    /** Warm, cool or neutral, in words; empty without a white balance. */
    public String inWords() {
      if (fromWhiteBalance.isEmpty()) {
        return "";
      }
      double shift = fromWhiteBalance.get().value();
      if (Math.abs(shift) < JUST_SEEN.value()) {
        return "neutral";
      }
      return (shift > 0 ? "warm by " : "cool by ") + Bounds.rounded(Math.abs(shift), 0) + " mired";
    }
  }

  /**
   * One light's colour.
   *
   * @param ofFlash its flash without gels
   * @param known estimated where the usual temperature was taken
   * @param gels their shifts together
   */
  public record OfLight(LightId light, Kelvin ofFlash, Known known, Mired gels, Colour colour) {}

  public ColourFigures {
    lights = List.copyOf(lights);
  }

  static ColourFigures of(SetupDocument setup) {
    Optional<Kelvin> whiteBalance = setup.exposure().whiteBalance();
    List<OfLight> lights = new ArrayList<>(setup.lights().size());
    for (lampwright.setup.Light light : setup.lights()) {
      Kelvin without = light.head().temperature().orElse(USUAL_FLASH);
      Mired gels = Mired.ZERO;
      for (lampwright.gear.Gel gel : light.gels()) {
        gels = gels.plus(gel.shift());
      }
      lights.add(
          new OfLight(
              light.id(),
              without,
              light.head().temperature().isPresent() ? Known.SET : Known.ESTIMATED,
              gels,
              Colour.of(without.toMired().plus(gels), whiteBalance)));
    }
    return new ColourFigures(
        whiteBalance,
        lights,
        setup
            .ambient()
            .flatMap(lampwright.setup.Ambient::temperature)
            .map(kelvin -> Colour.of(kelvin.toMired(), whiteBalance)));
  }

  /** What the document would have to say for the rest. */
  static void addNeeds(SetupDocument setup, Set<String> needs) {
    if (setup.exposure().whiteBalance().isEmpty()) {
      needs.add("/exposure/white_balance_k");
    }
    if (setup.ambient().filter(a -> a.temperature().isEmpty()).isPresent()) {
      needs.add("/ambient/temperature_k");
    }
  }

  /** The steps to the figures. */
  public List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    for (OfLight light : lights) {
      workings.add(
          Working.of(
              "colour of the " + light.light().text(),
              light.colour().reciprocal().value(),
              "mired",
              "10⁶ / T + shift",
              Source.WHEELER,
              Working.given("flash", light.ofFlash().value(), "K", light.known()),
              Working.given("gels", light.gels().value(), "mired")));
    }
    return workings;
  }
}
