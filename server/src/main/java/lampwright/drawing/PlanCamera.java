package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.engine.light.Point;
import lampwright.language.Notation;
import lampwright.setup.Camera;

/** The camera of a plan, and its field of view across the frame's long side. */
record PlanCamera(Sheet sheet, Camera camera) {

  private static final double DOT = 6;
  private static final double LIST_DOT = 2.5;

  void draw(Markup markup) {
    if (camera.place().isEmpty()) {
      return;
    }
    Point place = camera.place().get();
    Strokes view = new Strokes();
    view().forEach(view::line);
    markup.openPiece(sheet.format(), "camera").path("plan-view", view);
    if (sheet.shows(place)) {
      double dot = sheet.isWhole() ? DOT : LIST_DOT;
      markup.circle("plan-camera", sheet.spot(place), dot);
    } else {
      FarOff.of(sheet, place).ifPresent(far -> far.draw(markup));
    }
    markup.closePiece(sheet.format());
  }

  /** Both edges of the field of view, as far as the sheet shows them; empty without a lens. */
  List<Segment> view() {
    List<Segment> edges = new ArrayList<>();
    if (camera.place().isPresent() && camera.body().isPresent() && camera.lens().isPresent()) {
      double half =
          StrictMath.atan2(
                  camera.body().get().width().value() / 2,
                  camera.lens().get().focalLength().value())
              * 180
              / Math.PI;
      Spot from = sheet.spot(camera.place().get());
      double beyond = sheet.width() + sheet.height() + from.distanceTo(sheet.frame().centre());
      for (int side = -1; side <= 1; side += 2) {
        Spot edge = from.along(axis().turned(side * half), beyond);
        sheet.frame().clip(new Segment(from, edge)).ifPresent(edges::add);
      }
    }
    return edges;
  }

  /** Where the camera looks, on the sheet; away from it where nothing says otherwise. */
  Spot axis() {
    if (camera.place().isEmpty()) {
      return new Spot(0, -1);
    }
    Spot from = sheet.spot(camera.place().get());
    Spot to = sheet.spot(camera.aim().orElse(new Point(0, 0, 0)));
    return from.distanceTo(to) < 1e-6 ? new Spot(0, -1) : from.unitTo(to);
  }

  /** True north on the sheet, where the camera's bearing is known. */
  Optional<Spot> north() {
    return camera.bearing().map(bearing -> axis().turned(-bearing.value()));
  }

  void keepFree(LabelPlacer placer) {
    view().forEach(edge -> placer.avoid(edge, 5));
    camera
        .place()
        .filter(sheet::shows)
        .ifPresent(place -> placer.keepFree(Box.around(sheet.spot(place), DOT + 2, DOT + 2)));
  }

  List<Label> labels() {
    if (camera.place().isEmpty()) {
      return List.of();
    }
    Point place = camera.place().get();
    Notation notation = sheet.notation();
    String lens =
        camera
            .lens()
            .map(glass -> " · " + notation.rounded(glass.focalLength().value(), 1) + " mm")
            .orElse("");
    Optional<FarOff> far = FarOff.of(sheet, place);
    if (far.isPresent()) {
      return List.of(far.get().label(notation.say("drawing.camera") + lens));
    }
    Spot at = sheet.spot(place);
    double half = TextSize.line(sheet.format().words) / 2;
    return List.of(
        new Label(
            notation.say("drawing.camera_up", notation.length(place.z())) + lens,
            Kind.QUIET_WORDS,
            at,
            Wishes.around(at, 14, half),
            80,
            44));
  }
}
