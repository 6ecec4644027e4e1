package lampwright.drawing;

import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.engine.light.Point;

/**
 * A thing that stands so far off that the sheet ends before it: an arrow at the border on the line
 * of sight from the hit mark, and its distance from there.
 *
 * @param tip of the arrow, at the frame
 * @param way outward, of length one
 */
record FarOff(Sheet sheet, Spot tip, Spot way, double metres) {

  static Optional<FarOff> of(Sheet sheet, Point place) {
    if (sheet.shows(place)) {
      return Optional.empty();
    }
    double inset = sheet.isWhole() ? 5 : 2;
    Spot way = sheet.spot(0, 0).unitTo(sheet.spot(place));
    return Optional.of(
        new FarOff(sheet, sheet.border(place, inset), way, Extent.fromHitMark(place)));
  }

  private double size() {
    return sheet.format().disc;
  }

  Spot tail() {
    return tip.along(way, -size());
  }

  Box box() {
    Spot middle = tip.along(way, -size() / 2);
    return Box.around(middle, size() / 2 + 2, size() / 2 + 2);
  }

  void draw(Markup markup) {
    Spot across = way.turned(90);
    markup.path(
        "plan-far",
        new Strokes()
            .from(tip)
            .to(tail().along(across, size() * 0.42))
            .to(tail().along(across, -size() * 0.42))
            .close());
  }

  Label label(String name) {
    String off = sheet.notation().say("drawing.off", sheet.notation().length(metres));
    String words = name.isEmpty() ? off : name + ", " + off;
    double half = TextSize.line(sheet.format().words) / 2;
    return new Label(
        words, Kind.WORDS, tip, Wishes.around(tail(), size() * 0.7, half), 92, size() * 3.5);
  }
}
