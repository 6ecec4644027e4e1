package lampwright.web.pages;

import java.util.List;
import lampwright.web.pages.SignaturePart.Trait;

/** How the light is: with all parts, with none, with long words. */
final class SignaturePreviews {

  private SignaturePreviews() {}

  static SignaturePart full() {
    return new SignaturePart(
        List.of(
            new Trait("Lights", "4 lights", "4 lights: 1 key, 1 fill, 1 rim, 1 accent."),
            new Trait(
                "Key",
                "between loop and Rembrandt",
                "Key from 41° left of the nose, 18° above: between loop and Rembrandt."),
            new Trait(
                "Softness",
                "fairly soft",
                "The key’s face looks 22° wide from the subject: fairly soft (10° to 30°)."),
            new Trait("Ratio", "", "No light is a fill."),
            new Trait(
                "Balance",
                "flash leads",
                "The ambient is 1.9 stops under the flash at the chest: flash leads."),
            new Trait(
                "Finished picture",
                "low key, cool",
                "Low key, high contrast (5.3 stops from dark to light), cool; blue 54 %, black 45"
                    + " %.")),
        "/demo/setups?like=a1b2c3d4e5f6g7h8");
  }

  static SignaturePart none() {
    return new SignaturePart(List.of());
  }

  static SignaturePart longWords() {
    return new SignaturePart(
        List.of(
            new Trait(
                "Largest modifier",
                "1.8 m",
                "The largest face is that of “Harbourmasterofficestaircaseparabolic with two"
                    + " diffusers and a grid that nobody brought” on"
                    + " “light-behind-the-third-window”, 1.8 m at its longest.")));
  }
}
