package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;
import lampwright.engine.light.Point;
import lampwright.language.Notation;
import lampwright.setup.Camera;

/**
 * The camera of an elevation: from the side with the field of view across the frame's short side;
 * from the front as the picture's edge in the hit mark's upright plane. Its height is the
 * horizon's: all that is level with the lens lies on it.
 */
record ElevationCamera(Sheet sheet, Camera camera, Point place) {

  private static final double DOT = 6;

  /** A ray more aslant than this to the hit mark's plane draws no edge that helps anybody. */
  private static final double LEAST_FORWARD = 0.3;

  void draw(Markup markup) {
    markup.openPiece(sheet.format(), "camera");
    horizon().ifPresent(line -> markup.path("plan-horizon", new Strokes().line(line)));
    if (sheet.view() == View.FRONT) {
      Strokes edge = new Strokes();
      pictureEdge().forEach(edge::line);
      markup.path("plan-view", edge);
    } else {
      Strokes view = new Strokes();
      view().forEach(view::line);
      markup.path("plan-view", view);
      if (sheet.shows(place)) {
        markup.path("plan-stand", new Strokes().line(stand()));
        markup.circle("plan-camera", sheet.spot(place), DOT);
      } else {
        FarOff.of(sheet, place).ifPresent(far -> far.draw(markup));
      }
    }
    markup.closePiece(sheet.format());
  }

  private Segment stand() {
    return new Segment(sheet.spot(new Point(place.x(), place.y(), 0)), sheet.spot(place));
  }

  private Optional<Segment> horizon() {
    double y = sheet.spot(place).y();
    Box frame = sheet.frame();
    return frame.clip(new Segment(new Spot(frame.left(), y), new Spot(frame.right(), y)));
  }

  /** Both edges of the field of view, as far as the sheet shows them; empty without a lens. */
  List<Segment> view() {
    List<Segment> edges = new ArrayList<>();
    Spot from = sheet.spot(place);
    double beyond = sheet.width() + sheet.height() + from.distanceTo(sheet.frame().centre());
    for (int side = -1; side <= 1; side += 2) {
      Optional<Point> ray = ray(0, side);
      if (ray.isPresent()) {
        Spot way = new Spot(sheet.view().along(ray.get()), -sheet.view().up(ray.get()));
        if (way.length() > LEAST_FORWARD) {
          Spot far = from.along(way.times(1 / way.length()), beyond);
          sheet.frame().clip(new Segment(from, far)).ifPresent(edges::add);
        }
      }
    }
    return edges;
  }

  /** The picture's edge in the upright plane through the hit mark, as far as the sheet shows it. */
  List<Segment> pictureEdge() {
    List<Spot> corners = new ArrayList<>();
    int[][] signs = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    for (int[] sign : signs) {
      Optional<Point> ray = ray(sign[0], sign[1]);
      if (ray.isEmpty() || ray.get().y() < LEAST_FORWARD || place.y() >= 0) {
        return List.of();
      }
      double way = -place.y() / ray.get().y();
      corners.add(
          sheet.spot(
              new Point(place.x() + way * ray.get().x(), 0, place.z() + way * ray.get().z())));
    }
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Segment edge = new Segment(corners.get(i), corners.get((i + 1) % corners.size()));
      sheet.frame().clip(edge).ifPresent(edges::add);
    }
    return List.copyOf(edges);
  }

  /**
   * A ray through the lens to the picture's edge, of length one.
   *
   * @param across -1 for its left edge, 1 for its right, 0 for the middle
   * @param up -1 for its lower edge, 1 for its upper
   */
  private Optional<Point> ray(int across, int up) {
    if (camera.body().isEmpty() || camera.lens().isEmpty()) {
      return Optional.empty();
    }
    Point to = camera.aim().orElse(new Point(0, 0, place.z()));
    double dx = to.x() - place.x();
    double dy = to.y() - place.y();
    double dz = to.z() - place.z();
    double ground = Math.sqrt(dx * dx + dy * dy);
    if (ground < 1e-6) {
      return Optional.empty();
    }
    double focal = camera.lens().get().focalLength().value();
    double right = across * camera.body().get().width().value() / 2 / focal;
    double upward = up * camera.body().get().height().value() / 2 / focal;
    double length = Math.sqrt(ground * ground + dz * dz);
    double x = dx / length + right * dy / ground - upward * dz / length * dx / ground;
    double y = dy / length - right * dx / ground - upward * dz / length * dy / ground;
    double z = dz / length + upward * ground / length;
    double size = Math.sqrt(x * x + y * y + z * z);
    return Optional.of(new Point(x / size, y / size, z / size));
  }

  void keepFree(LabelPlacer placer) {
    horizon().ifPresent(line -> placer.avoid(line, 8));
    if (sheet.view() == View.FRONT) {
      pictureEdge().forEach(edge -> placer.avoid(edge, 5));
      return;
    }
    view().forEach(edge -> placer.avoid(edge, 5));
    if (sheet.shows(place)) {
      placer.keepFree(Box.around(sheet.spot(place), DOT + 2, DOT + 2));
      placer.avoid(stand(), 9);
    }
  }

  List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    Notation notation = sheet.notation();
    double half = TextSize.line(sheet.format().words) / 2;
    horizon()
        .ifPresent(
            line -> {
              List<Wish> wishes = new ArrayList<>();
              for (int step = 0; step <= 10; step++) {
                for (int side = -1; side <= 1; side += 2) {
                  double off = side * (half + 3);
                  double cost = 2.0 * step + (side > 0 ? 1 : 0);
                  wishes.add(
                      new Wish(line.to().plus(new Spot(-10 - 30 * step, off)), Side.END, cost));
                }
              }
              String words = notation.say("drawing.horizon", notation.length(place.z()));
              labels.add(new Label(words, Kind.QUIET_WORDS, line.to(), wishes, 50, 1_000));
            });
    if (sheet.view() == View.SIDE) {
      Optional<FarOff> far = FarOff.of(sheet, place);
      labels.add(
          far.map(one -> one.label(notation.say("drawing.camera")))
              .orElseGet(
                  () ->
                      new Label(
                          notation.say("drawing.camera"),
                          Kind.QUIET_WORDS,
                          sheet.spot(place),
                          Wishes.around(sheet.spot(place), 14, half),
                          80,
                          44)));
    } else {
      List<Segment> edges = pictureEdge();
      if (!edges.isEmpty()) {
        Segment upper = edges.getLast();
        for (Segment edge : edges) {
          upper = edge.at(0.5).y() < upper.at(0.5).y() ? edge : upper;
        }
        labels.add(
            new Label(
                notation.say("drawing.picture_edge"),
                Kind.QUIET_WORDS,
                upper.at(0.5),
                Wishes.beside(upper, half),
                LabelPlacer.ONLY_NEARBY,
                upper.length()));
      }
    }
    return labels;
  }
}
