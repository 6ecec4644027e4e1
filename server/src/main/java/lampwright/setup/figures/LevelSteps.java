package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.List;
import lampwright.engine.Known;
import lampwright.engine.Source;
import lampwright.engine.Working;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.light.LightAtTarget;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.MeterReading;

/** How a level was found: enough to tell the steps when somebody asks, and no sooner. */
public sealed interface LevelSteps {

  /** The steps to the exposure. */
  Working working(LuxSeconds exposure);

  /**
   * A meter said it.
   *
   * @param name of the light
   * @param receptor what the meter took the light with
   * @param flatOverDome what a flat receptor gets over what a dome gets; 1 for a flat one
   * @param ambientTaken the ambient that the meter saw too; none where it saw the flash alone
   */
  record ByReading(
      String name,
      FNumber reading,
      Known known,
      Iso iso,
      LuxSeconds ambientTaken,
      Known ambientKnown,
      int pops,
      MeterReading.Receptor receptor,
      double flatOverDome)
      implements LevelSteps {

    @Override
    public Working working(LuxSeconds exposure) {
      List<Working> parts = new ArrayList<>();
      parts.add(Working.given("reading", reading.value(), "f-number", known));
      parts.add(Working.given("ISO", iso.value(), ""));
      parts.add(Working.given("meter constant", receptor.constant().luxSeconds(), "lx·s"));
      String formula = "C · N² / S";
      if (ambientTaken.value() > 0) {
        formula += " − E · t";
        parts.add(Working.given("ambient", ambientTaken.value(), "lx·s", ambientKnown));
      }
      if (pops > 1) {
        formula = "n · (" + formula + ")";
        parts.add(Working.given("pops", pops, ""));
      }
      if (receptor == MeterReading.Receptor.DOME) {
        formula = "(" + formula + ") · G_flat / G_dome";
        parts.add(Working.given("flat over dome at this angle", flatOverDome, "", Known.COMPUTED));
      }
      return new Working(
          "exposure by the " + name, exposure.value(), "lx·s", formula, Source.ISO_2720, parts);
    }
  }

  /**
   * The engine computed it.
   *
   * @param name of the light
   */
  record ByModel(String name, LightAtTarget atTarget, Stops down, int heads, int pops)
      implements LevelSteps {

    @Override
    public Working working(LuxSeconds exposure) {
      Working one = atTarget.exposureWorking(name, down);
      if (heads * pops == 1) {
        return one;
      }
      return Working.of(
          "exposure by "
              + heads
              + (heads == 1 ? " head, " : " heads, ")
              + pops
              + (pops == 1 ? " pop" : " pops"),
          exposure.value(),
          "lx·s",
          "heads · pops · H",
          Source.DERIVED,
          one,
          Working.given("heads", heads, ""),
          Working.given("pops", pops, ""));
    }
  }
}
