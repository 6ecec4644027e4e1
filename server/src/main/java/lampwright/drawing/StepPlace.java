package lampwright.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import lampwright.engine.light.Point;
import lampwright.language.Notation;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.building.FromHitMark;
import lampwright.wording.Wording;

/**
 * Where one light of a build goes, from above: the hit mark in the middle, the camera at the rim
 * toward where it stands, what is set already as open discs, the light itself filled. To scale
 * among the lights, turned as the plan is: away from the camera is up.
 *
 * @param numbers of all the lights
 */
public record StepPlace(SetupDocument setup, Map<LightId, Integer> numbers, Notation notation) {

  // In units of the view box.
  private static final double HALF = 80;
  private static final double REACH = 62;
  private static final double RIM = 74;
  private static final double DISC = 11;
  private static final double SET_DISC = 7;

  public StepPlace {
    numbers = Map.copyOf(numbers);
  }

  /** The drawing for a light, after others were set. */
  public Svg of(Light light, List<Light> before) {
    double scale = REACH / farthestM();
    StringBuilder svg = new StringBuilder(1_200);
    svg.append("<svg class=\"mini\" viewBox=\"0 0 160 160\" role=\"img\"><title>")
        .append(Svg.escaped(title(light)))
        .append("</title>");
    circle(svg, "mini-ring", HALF, HALF, REACH);
    circle(svg, "mini-ring", HALF, HALF, REACH / 2);
    svg.append("<path class=\"mini-mark\" d=\"M74 80H86M80 74V86\"/>");
    setup.camera().flatMap(Camera::place).ifPresent(place -> camera(svg, place));
    for (Light set : before) {
      circle(svg, "mini-set", x(set.place(), scale), y(set.place(), scale), SET_DISC);
    }
    double x = x(light.place(), scale);
    double y = y(light.place(), scale);
    svg.append("<path class=\"mini-way\" d=\"M80 80L")
        .append(number(x))
        .append(' ')
        .append(number(y))
        .append("\"/>");
    circle(svg, "mini-light", x, y, DISC);
    svg.append("<text class=\"mini-figure\" text-anchor=\"middle\" x=\"")
        .append(number(x))
        .append("\" y=\"")
        .append(number(y + 4.5))
        .append("\">")
        .append(numbers.getOrDefault(light.id(), 0))
        .append("</text></svg>");
    return Svg.trusted(svg.toString());
  }

  private String title(Light light) {
    String name = new Wording(notation).light(numbers.getOrDefault(light.id(), 0), light);
    FromHitMark from = FromHitMark.of(light.place(), setup);
    return from.isOnTheMark()
        ? notation.say("drawing.step_on_mark", name)
        : notation.say(
            "drawing.step_place",
            name,
            notation.fixed(from.direction().value(), 0),
            notation.length(from.overGround()));
  }

  private double farthestM() {
    return setup.lights().stream()
        .mapToDouble(light -> overGround(light.place()))
        .reduce(0.5, Math::max);
  }

  private static void camera(StringBuilder svg, Point place) {
    double far = overGround(place);
    if (far > 0) {
      circle(svg, "mini-camera", HALF + place.x() / far * RIM, HALF - place.y() / far * RIM, 4);
    }
  }

  private static double overGround(Point place) {
    return Math.sqrt(place.x() * place.x() + place.y() * place.y());
  }

  private static double x(Point place, double scale) {
    return HALF + place.x() * scale;
  }

  private static double y(Point place, double scale) {
    return HALF - place.y() * scale;
  }

  private static void circle(StringBuilder svg, String style, double x, double y, double r) {
    svg.append("<circle class=\"")
        .append(style)
        .append("\" cx=\"")
        .append(number(x))
        .append("\" cy=\"")
        .append(number(y))
        .append("\" r=\"")
        .append(number(r))
        .append("\"/>");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
