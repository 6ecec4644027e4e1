package lampwright.setup.signature;

import static lampwright.wording.WordsForTests.english;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lampwright.engine.colour.ColourWord;
import lampwright.engine.colour.Key;
import lampwright.engine.unit.Stops;
import lampwright.setup.signature.PictureSignature.Contrast;
import lampwright.setup.signature.PictureSignature.NamedColour;
import lampwright.setup.signature.PictureSignature.Shade;
import lampwright.setup.signature.PictureSignature.Warmth;
import org.junit.jupiter.api.Test;

class PictureSignatureTest {

  private static PictureSignature of(double spread, double warmth, Shade... shades) {
    return PictureSignature.of(Key.LOW, new Stops(spread), warmth, List.of(shades));
  }

  /** Common practice, no source: fog is flat, a lamp in the night is contrasty. */
  @Test
  void fogHasLowContrastAndALampInTheNightHigh() {
    assertEquals(Contrast.LOW, of(0.5, 0).contrast());
    assertEquals(Contrast.NORMAL, of(3.5, 0).contrast());
    assertEquals(Contrast.HIGH, of(7, 0).contrast());
  }

  /** CIELAB (CIE 15): b* is plus towards yellow, minus towards blue. */
  @Test
  void yellowIsWarmAndBlueIsCool() {
    assertEquals(Warmth.WARM, of(3, 14).lean());
    assertEquals(Warmth.COOL, of(3, -14).lean());
    assertEquals(Warmth.NEUTRAL, of(3, 1).lean());
  }

  @Test
  void coloursOfOneNameAreToldTogetherTheMostFirstAndTheLeastNotAtAll() {
    PictureSignature picture =
        of(
            5.25,
            -8,
            new Shade(0x1f5fc8, 0.3),
            new Shade(0x0a0a0a, 0.45),
            new Shade(0x14295f, 0.235),
            new Shade(0xf0821e, 0.015));
    assertEquals(
        List.of(new NamedColour(ColourWord.BLUE, 0.535), new NamedColour(ColourWord.BLACK, 0.45)),
        picture.colours());
    assertEquals(
        "Low key, high contrast (5.3 stops from dark to light), cool; blue 54 %, black 45 %.",
        english(picture.sentence()));
  }
}
