package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.engine.light.Point;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Surface;

/**
 * What a plan shows on the ground besides lights and camera: surfaces, subjects and their paths.
 */
record PlanGround(Sheet sheet, SetupDocument setup) {

  /** Nearer than this, a mark is where the subject already stands. */
  private static final double SAME_PLACE_M = 0.15;

  private static final double CROSS = 7;

  void drawSurfaces(Markup markup) {
    for (Surface surface : setup.surfaces()) {
      Optional<Segment> seen = seen(surface);
      if (seen.isPresent()) {
        markup.path("plan-surface", new Strokes().line(seen.get()));
      } else {
        FarOff.of(sheet, nearest(surface)).ifPresent(far -> far.draw(markup));
      }
    }
  }

  void drawPaths(Markup markup) {
    for (Subject subject : setup.subjects()) {
      Strokes path = new Strokes();
      for (int i = 1; i < subject.path().size(); i++) {
        Spot from = sheet.spot(subject.path().get(i - 1).at());
        Spot to = sheet.spot(subject.path().get(i).at());
        sheet.frame().clip(new Segment(from, to)).ifPresent(path::line);
      }
      markup.path("plan-path", path);
      for (Subject.Mark mark : marksOnTheirOwn(subject)) {
        if (sheet.shows(mark.at())) {
          Strokes cross = new Strokes();
          cross(cross, sheet.spot(mark.at()), sheet.isWhole() ? CROSS : 3);
          String key = setup.subjects().indexOf(subject) + "/" + subject.path().indexOf(mark);
          markup
              .openPiece(sheet.format(), "mark/" + key)
              .path("plan-mark", cross)
              .closePiece(sheet.format());
        }
      }
    }
  }

  /** A cross at the origin; open in the middle where a subject stands on it. */
  void drawHitMark(Markup markup) {
    Strokes cross = new Strokes();
    Spot origin = sheet.spot(0, 0);
    boolean taken = subjects().stream().anyMatch(at -> at.distanceTo(origin) < 2 * CROSS);
    if (taken) {
      double inner = sheet.format().subject * 1.25;
      double outer = sheet.format().subject * 1.9;
      for (int quarter = 0; quarter < 4; quarter++) {
        Spot way = new Spot(0, 1).turned(90.0 * quarter);
        cross.from(origin.along(way, inner)).to(origin.along(way, outer));
      }
    } else {
      cross(cross, origin, sheet.format().subject * 0.9);
    }
    markup.path("plan-origin", cross);
  }

  void drawSubjects(Markup markup) {
    for (int i = 0; i < setup.subjects().size(); i++) {
      Subject subject = setup.subjects().get(i);
      markup.openPiece(sheet.format(), "subject/" + i);
      if (sheet.shows(subject.place())) {
        Spot at = sheet.spot(subject.place());
        double radius = sheet.format().subject;
        // Facing is turned from straight at the camera, which is down, toward camera right.
        Spot facing = new Spot(0, 1).turned(-subject.facing().value());
        Spot across = facing.turned(90);
        markup.circle("plan-subject", at, radius);
        markup.path(
            "plan-facing",
            new Strokes()
                .from(at.along(facing, radius * 1.62))
                .to(at.along(facing, radius * 1.02).along(across, radius * 0.46))
                .to(at.along(facing, radius * 1.02).along(across, -radius * 0.46))
                .close());
      } else {
        FarOff.of(sheet, subject.place()).ifPresent(far -> far.draw(markup));
      }
      markup.closePiece(sheet.format());
    }
  }

  /** Where the subjects on the sheet stand. */
  List<Spot> subjects() {
    return setup.subjects().stream()
        .filter(subject -> sheet.shows(subject.place()))
        .map(subject -> sheet.spot(subject.place()))
        .toList();
  }

  void keepFree(LabelPlacer placer) {
    setup.surfaces().forEach(surface -> seen(surface).ifPresent(placer::keepFree));
    for (Spot at : subjects()) {
      placer.keepFree(Box.around(at, sheet.format().subject * 1.4, sheet.format().subject * 1.4));
    }
    Spot origin = sheet.spot(0, 0);
    placer.keepFree(Box.around(origin, sheet.format().subject, sheet.format().subject));
    for (Subject subject : setup.subjects()) {
      for (Subject.Mark mark : marksOnTheirOwn(subject)) {
        placer.keepFree(Box.around(sheet.spot(mark.at()), CROSS, CROSS));
      }
      for (int i = 1; i < subject.path().size(); i++) {
        placer.avoid(
            new Segment(
                sheet.spot(subject.path().get(i - 1).at()), sheet.spot(subject.path().get(i).at())),
            12);
      }
    }
  }

  List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    double half = TextSize.line(sheet.format().words) / 2;
    double subject = sheet.format().subject;
    for (Subject person : setup.subjects()) {
      labels.add(around(BriefName.of(person.name()), person.place(), subject * 1.5, 90));
      for (Subject.Mark mark : marksOnTheirOwn(person)) {
        labels.add(around(BriefName.of(mark.name()), mark.at(), CROSS + 4, 40));
      }
    }
    for (Surface surface : setup.surfaces()) {
      String name = BriefName.of(surface.name());
      Optional<Segment> seen = seen(surface);
      if (seen.isPresent()) {
        Spot middle = seen.get().at(0.5);
        labels.add(
            new Label(
                name,
                Kind.QUIET_WORDS,
                middle,
                Wishes.beside(seen.get(), half),
                60,
                seen.get().length() / 2 + 40));
      } else {
        FarOff.of(sheet, nearest(surface)).ifPresent(far -> labels.add(far.label(name)));
      }
    }
    Spot origin = sheet.spot(0, 0);
    labels.add(
        new Label(
            sheet.notation().say("drawing.hit_mark"),
            Kind.QUIET_WORDS,
            origin,
            Wishes.around(origin, subject * 2.4, half),
            LabelPlacer.ONLY_NEARBY,
            subject * 6));
    return labels;
  }

  private Label around(String name, Point place, double clearance, int importance) {
    Optional<FarOff> far = FarOff.of(sheet, place);
    if (far.isPresent()) {
      return far.get().label(name);
    }
    Spot at = sheet.spot(place);
    double half = TextSize.line(sheet.format().words) / 2;
    return new Label(
        name,
        importance > 50 ? Kind.WORDS : Kind.QUIET_WORDS,
        at,
        Wishes.around(at, clearance, half),
        importance,
        clearance + 26);
  }

  /** The marks that are not simply where the subject stands. */
  static List<Subject.Mark> marksOnTheirOwn(Subject subject) {
    return subject.path().stream()
        .filter(mark -> apart(mark.at(), subject.place()) > SAME_PLACE_M)
        .filter(mark -> Extent.fromHitMark(mark.at()) > SAME_PLACE_M)
        .toList();
  }

  private static double apart(Point one, Point other) {
    return Extent.fromHitMark(new Point(one.x() - other.x(), one.y() - other.y(), 0));
  }

  private Optional<Segment> seen(Surface surface) {
    return sheet
        .frame()
        .clip(new Segment(sheet.spot(surface.from()), sheet.spot(surface.to())))
        .filter(line -> line.length() > 4);
  }

  /** The point of a surface's foot that is nearest to the hit mark. */
  static Point nearest(Surface surface) {
    Segment foot =
        new Segment(
            new Spot(surface.from().x(), surface.from().y()),
            new Spot(surface.to().x(), surface.to().y()));
    Spot nearest = foot.nearestTo(new Spot(0, 0));
    return new Point(nearest.x(), nearest.y(), 0);
  }

  private static void cross(Strokes strokes, Spot at, double arm) {
    strokes.from(at.plus(new Spot(-arm, 0))).to(at.plus(new Spot(arm, 0)));
    strokes.from(at.plus(new Spot(0, -arm))).to(at.plus(new Spot(0, arm)));
  }
}
