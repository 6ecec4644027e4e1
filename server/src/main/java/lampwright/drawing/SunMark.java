package lampwright.drawing;

import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.engine.light.UnitVector;
import lampwright.engine.sun.SunPosition;
import lampwright.engine.unit.Degrees;
import lampwright.language.Notation;
import lampwright.setup.Camera;
import lampwright.setup.figures.SunFigures;

/**
 * The sun at the border of a drawing: an open circle in its direction from the hit mark, and a ray
 * that comes in from there. On an elevation it stands where its light comes from in the drawing's
 * plane, which is steeper than its height where it shines from aside.
 *
 * @param way to the sun on the sheet, of length one
 * @param ray whether it shines; a sun below the horizon is a circle without one
 */
record SunMark(Sheet sheet, Spot way, boolean ray, String words) {

  private static final double CIRCLE = 8;
  private static final double RAY = 46;

  /** On a plan, where the camera's bearing is known: in its true direction. */
  static Optional<SunMark> onPlan(Sheet sheet, SunFigures sun, Optional<Spot> north) {
    SunPosition position = sun.position();
    return north.map(
        up ->
            new SunMark(
                sheet,
                up.turned(position.azimuth().value()),
                position.elevation().value() > 0,
                words(sheet.notation(), position)));
  }

  /** On an elevation, while the sun is up and the camera's bearing is known. */
  static Optional<SunMark> onElevation(Sheet sheet, SunFigures sun, Optional<Camera> camera) {
    Optional<Degrees> bearing = camera.flatMap(Camera::bearing);
    SunPosition position = sun.position();
    if (bearing.isEmpty() || position.elevation().value() <= 0) {
      return Optional.empty();
    }
    UnitVector to = position.toSun(bearing.get());
    Spot way =
        new Spot(
            sheet.view().along(to.x(), to.y(), to.z()), -sheet.view().up(to.x(), to.y(), to.z()));
    String height = sheet.notation().fixed(position.elevation().value(), 0);
    return way.length() < 1e-6
        ? Optional.empty()
        : Optional.of(
            new SunMark(
                sheet,
                way.times(1 / way.length()),
                true,
                sheet.notation().say("drawing.sun_height", height)));
  }

  private static String words(Notation notation, SunPosition position) {
    double height = position.elevation().value();
    return notation.say(
        height > 0 ? "drawing.sun_up" : "drawing.sun_down",
        notation.fixed(Math.abs(height), 0),
        Places.bearing(position.azimuth()));
  }

  /** The middle of the circle. */
  Spot at() {
    Box inner = sheet.frame().grown(-CIRCLE - 5);
    Spot origin = inner.nearestTo(sheet.spot(0, 0));
    Segment sight = new Segment(origin, origin.along(way, sheet.width() + sheet.height()));
    return inner.clip(sight).orElse(sight).to();
  }

  private Segment rayIn() {
    return new Segment(at().along(way, -CIRCLE), at().along(way, -CIRCLE - RAY));
  }

  void draw(Markup markup) {
    markup.circle("plan-sun", at(), CIRCLE);
    if (ray) {
      Segment line = rayIn();
      Spot back = line.to().unitTo(line.from());
      markup.path(
          "plan-sun",
          new Strokes()
              .line(line)
              .from(line.to().along(back.turned(24), 11))
              .to(line.to())
              .to(line.to().along(back.turned(-24), 11)));
    }
  }

  void keepFree(LabelPlacer placer) {
    placer.keepFree(Box.around(at(), CIRCLE + 2, CIRCLE + 2));
    if (ray) {
      placer.keepFree(rayIn());
    }
  }

  Label label() {
    double half = TextSize.line(sheet.format().words) / 2;
    return new Label(words, Kind.WORDS, at(), Wishes.around(at(), CIRCLE + 8, half), 85, RAY + 20);
  }
}
