package lampwright.web.api;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Mired;
import lampwright.setup.figures.ColourFigures;

/** The colour of the lights against the white balance. */
record ColourJson(
    Optional<Double> whiteBalanceK,
    List<OfLightJson> lights,
    Optional<ShadeJson> ambient,
    Optional<List<WorkingJson>> workings) {

  static ColourJson of(ColourFigures colour, FiguresJson.Detail detail) {
    return new ColourJson(
        colour.whiteBalance().map(Kelvin::value),
        colour.lights().stream().map(OfLightJson::of).toList(),
        colour.ambient().map(ShadeJson::of),
        detail.tellAll(colour::workings));
  }

  /** One light. */
  record OfLightJson(
      String light, double flashK, String known, double gelsMired, ShadeJson colour) {

    static OfLightJson of(ColourFigures.OfLight light) {
      return new OfLightJson(
          light.light().text(),
          light.ofFlash().value(),
          FiguresJson.word(light.known()),
          light.gels().value(),
          ShadeJson.of(light.colour()));
    }
  }

  /** A colour. */
  record ShadeJson(
      double mired,
      Optional<Double> temperatureK,
      Optional<Double> fromWhiteBalanceMired,
      Optional<String> inWords) {

    static ShadeJson of(ColourFigures.Colour colour) {
      return new ShadeJson(
          colour.reciprocal().value(),
          colour.temperature().map(Kelvin::value),
          colour.fromWhiteBalance().map(Mired::value),
          Optional.of(colour.inWords()).filter(words -> !words.isEmpty()));
    }
  }
}
