package lampwright.setup.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.setup.Documents;
import org.junit.jupiter.api.Test;

/** Energy, pace, colour and how sure a level is. */
class PowerAndColourTest {

  private static final Object ONE = Documents.resource("one-light.json");

  private static Figures figures(Object json) {
    return FiguresComputation.of(Documents.setup(json));
  }

  private static Object head(Object json, String field, Object value) {
    return Documents.with(json, "/lights/0/head/" + field, value);
  }

  /** energy.flashes_scaled.01: 420 at full power are 1680 two stops down. */
  @Test
  void aPlanIsHeldAgainstPaceAndBatteries() {
    Object json = head(head(ONE, "recycle_s", 4.0), "flashes_per_charge", 420.0);
    Object planned =
        Documents.with(json, "/plan", Map.of("seconds_between_frames", 0.5, "frames", 2_000.0));
    PowerFigures power = figures(planned).power();
    assertEquals(1, power.pace().orElseThrow().betweenFrames().value(), 1e-12);
    assertEquals(1680, power.charge().orElseThrow().frames(), 1e-9);
    PowerFigures.Wish wish = power.wish().orElseThrow();
    assertEquals(Optional.of(false), wish.keepsPace());
    assertEquals(Optional.of(2), wish.charges());
    Object slower =
        Documents.with(json, "/plan", Map.of("seconds_between_frames", 1.0, "frames", 1_680.0));
    PowerFigures.Wish easier = figures(slower).power().wish().orElseThrow();
    assertEquals(Optional.of(true), easier.keepsPace());
    assertEquals(Optional.of(1), easier.charges());
  }

  /** colour_temp.after_gel.01: 5500 K through +65 mired is 4051.5654 K. */
  @Test
  void aGelWarmsAFlashAgainstTheWhiteBalance() {
    Object json =
        Documents.with(
            Documents.with(ONE, "/exposure/white_balance_k", 5500.0),
            "/lights/0/gels",
            List.of(Map.of("name", "half", "shift_mired", 65.0, "loss_stops", 0.4)));
    ColourFigures.OfLight light = figures(json).colour().lights().getFirst();
    assertEquals(Known.ESTIMATED, light.known());
    assertEquals(4051.5654, light.colour().temperature().orElseThrow().value(), 0.0081);
    assertEquals(65, light.colour().fromWhiteBalance().orElseThrow().value(), 1e-9);
    assertEquals("warm by 65 mired", light.colour().inWords());
    Object weaker = Documents.with(json, "/lights/0/gels/0/shift_mired", -9.0);
    assertEquals("neutral", figures(weaker).colour().lights().getFirst().colour().inWords());
    assertEquals(
        Known.SET,
        figures(head(json, "temperature_k", 5600.0)).colour().lights().getFirst().known());
  }

  @Test
  void moreBlueThanAnyTemperatureHasNone() {
    Object json =
        Documents.with(
            ONE,
            "/lights/0/gels",
            List.of(Map.of("name", "deep blue", "shift_mired", -190.0, "loss_stops", 3.0)));
    ColourFigures.Colour colour = figures(json).colour().lights().getFirst().colour();
    assertEquals(Optional.empty(), colour.temperature());
    assertTrue(colour.reciprocal().value() < 0);
  }

  /**
   * 0.1 stop is 3.41 % of distance (reference, section 15), so a tape's 2 % are 0.059 stop of a
   * small light, and a guess of 15 % 0.44.
   */
  @Test
  void aTapeIsSurerThanTheEye() {
    double tape = part(ONE, "distance, by tape");
    double eye =
        part(Documents.with(ONE, "/lights/0/place_known", "estimated"), "distance, by eye");
    assertEquals(2.885 * 0.02, tape, 1e-3);
    assertEquals(2.885 * 0.15, eye, 1e-2);
  }

  /** A box close by falls off less than inverse square, and so does what a tape's error does. */
  @Test
  void closeToABoxTheDistanceMattersLess() {
    Object box =
        Documents.with(
            ONE,
            "/lights/0/modifier",
            Map.of(
                "name",
                "box",
                "kind",
                "softbox",
                "face",
                Map.of("shape", "rectangle", "width_m", 2.0, "height_m", 2.0)));
    assertTrue(part(box, "distance, by tape") < 0.8 * part(ONE, "distance, by tape"));
  }

  private static double part(Object json, String name) {
    return figures(json).lights().getFirst().level().orElseThrow().budget().parts().stream()
        .filter(part -> part.name().equals(name))
        .findFirst()
        .orElseThrow()
        .deviation()
        .value();
  }

  @Test
  void aReadingMostlyOfAmbientSaysLittleOfTheFlash() {
    Object ambient = Documents.with(ONE, "/ambient", Map.of("ev100", 9.0));
    Object with =
        Documents.with(
            ambient, "/lights/0/reading", Map.of("f_number", 8.0, "includes_ambient", true));
    Object alone = Documents.with(ambient, "/lights/0/reading", Map.of("f_number", 8.0));
    double sure = uncertainty(alone);
    assertEquals(0.1, sure, 1e-12);
    assertTrue(uncertainty(with) > sure);
  }

  private static double uncertainty(Object json) {
    return figures(json).lights().getFirst().level().orElseThrow().uncertainty().value();
  }
}
