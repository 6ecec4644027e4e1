package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;
import lampwright.engine.light.Point;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Surface;

/** What an elevation shows besides lights and camera: the ground, surfaces, subjects, marks. */
record ElevationGround(Sheet sheet, SetupDocument setup) {

  /**
   * Half the height of a head as a share of stature, by those of {@link Subject#EYES_SHARE}: 0.130
   * over 2.
   */
  private static final double HALF_HEAD_SHARE = 0.065;

  /** The eye line reaches so far to either side of the head. */
  private static final double EYE_LINE_M = 0.5;

  private static final double MARK = 7;
  private static final double EARTH = 9;

  void drawGround(Markup markup) {
    ground()
        .ifPresent(
            line -> {
              Strokes earth = new Strokes();
              for (double x = line.from().x() + EARTH; x < line.to().x(); x += 2 * EARTH) {
                earth
                    .from(new Spot(x, line.from().y()))
                    .to(new Spot(x - EARTH * 0.7, line.from().y() + EARTH * 0.7));
              }
              markup.path("plan-earth", earth);
              markup.path("plan-ground", new Strokes().line(line));
            });
  }

  private Optional<Segment> ground() {
    Box frame = sheet.frame();
    double y = sheet.spot(0, 0).y();
    return frame.clip(new Segment(new Spot(frame.left(), y), new Spot(frame.right(), y)));
  }

  /** Outlines to their true height; a surface whose height nobody told is its foot alone. */
  void drawSurfaces(Markup markup) {
    for (Surface surface : setup.surfaces()) {
      Strokes outline = new Strokes().from(sheet.spot(surface.from()));
      if (surface.height().isPresent()) {
        double high = surface.height().get().value();
        outline
            .to(sheet.spot(raised(surface.from(), high)))
            .to(sheet.spot(raised(surface.to(), high)))
            .to(sheet.spot(surface.to()));
        markup.path("plan-wall", outline);
      } else {
        markup.path("plan-surface", outline.to(sheet.spot(surface.to())));
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
      for (Subject.Mark mark : PlanGround.marksOnTheirOwn(subject)) {
        if (sheet.shows(mark.at())) {
          Spot at = sheet.spot(mark.at());
          String key = setup.subjects().indexOf(subject) + "/" + subject.path().indexOf(mark);
          markup
              .openPiece(sheet.format(), "mark/" + key)
              .path(
                  "plan-mark",
                  new Strokes().from(at.plus(new Spot(0, -MARK))).to(at.plus(new Spot(0, MARK))))
              .closePiece(sheet.format());
        }
      }
    }
  }

  /** A head of true size on a line to the ground; without a height, a circle on the ground. */
  void drawSubjects(Markup markup) {
    for (int i = 0; i < setup.subjects().size(); i++) {
      Subject subject = setup.subjects().get(i);
      markup.openPiece(sheet.format(), "subject/" + i);
      if (sheet.shows(subject.place())) {
        if (subject.height().isPresent()) {
          double high = subject.height().get().value();
          Spot feet = sheet.spot(subject.place());
          markup.path("plan-body", new Strokes().from(feet).to(head(subject, high)));
          markup.path("plan-eyeline", new Strokes().line(eyeLine(subject, high)));
        }
        drawHead(markup, subject);
      } else {
        FarOff.of(sheet, subject.place()).ifPresent(far -> far.draw(markup));
      }
      markup.closePiece(sheet.format());
    }
  }

  private void drawHead(Markup markup, Subject subject) {
    Spot head = headOrFoot(subject);
    double radius = radius(subject);
    markup.circle("plan-subject", head, radius);
    double turned = subject.facing().value() * Math.PI / 180;
    Point facing = new Point(StrictMath.sin(turned), -StrictMath.cos(turned), 0);
    double along = sheet.view().along(facing);
    if (Math.abs(along) > 0.3) {
      Spot way = new Spot(Math.signum(along), 0);
      markup.path(
          "plan-facing",
          new Strokes()
              .from(head.along(way, radius + 8))
              .to(head.plus(new Spot(way.x() * radius, -5)))
              .to(head.plus(new Spot(way.x() * radius, 5)))
              .close());
    }
  }

  private Spot headOrFoot(Subject subject) {
    return subject
        .height()
        .map(high -> head(subject, high.value()))
        .orElseGet(() -> sheet.spot(subject.place()).plus(new Spot(0, -sheet.format().subject)));
  }

  private double radius(Subject subject) {
    return subject
        .height()
        .map(high -> Math.max(5, sheet.units(high.value() * HALF_HEAD_SHARE)))
        .orElse(sheet.format().subject);
  }

  private Spot head(Subject subject, double high) {
    return sheet.spot(raised(subject.place(), high * (1 - HALF_HEAD_SHARE)));
  }

  private Segment eyeLine(Subject subject, double high) {
    Spot eyes = sheet.spot(raised(subject.place(), high * Subject.EYES_SHARE));
    double half = sheet.units(EYE_LINE_M);
    return new Segment(eyes.plus(new Spot(-half, 0)), eyes.plus(new Spot(half, 0)));
  }

  private static Point raised(Point foot, double high) {
    return new Point(foot.x(), foot.y(), foot.z() + high);
  }

  void keepFree(LabelPlacer placer) {
    ground().ifPresent(placer::keepFree);
    for (Subject subject : setup.subjects()) {
      if (sheet.shows(subject.place())) {
        double room = radius(subject) + 4;
        placer.keepFree(Box.around(headOrFoot(subject), room, room));
        placer.avoid(new Segment(sheet.spot(subject.place()), headOrFoot(subject)), 12);
        subject.height().ifPresent(high -> placer.avoid(eyeLine(subject, high.value()), 10));
      }
    }
    for (Surface surface : setup.surfaces()) {
      surface
          .height()
          .ifPresent(
              high ->
                  placer.avoid(
                      new Segment(
                          sheet.spot(raised(surface.from(), high.value())),
                          sheet.spot(raised(surface.to(), high.value()))),
                      30));
      for (Point foot : List.of(surface.from(), surface.to())) {
        double high = surface.height().map(one -> one.value()).orElse(0.0);
        placer.avoid(new Segment(sheet.spot(foot), sheet.spot(raised(foot, high))), 14);
      }
    }
  }

  List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    double half = TextSize.line(sheet.format().words) / 2;
    for (Subject subject : setup.subjects()) {
      labels.add(name(subject, half));
      if (sheet.shows(subject.place())) {
        subject
            .height()
            .ifPresent(
                high -> labels.add(eyes(eyeLine(subject, high.value()), high.value(), half)));
      }
      for (Subject.Mark mark : PlanGround.marksOnTheirOwn(subject)) {
        if (sheet.shows(mark.at())) {
          Spot at = sheet.spot(mark.at());
          List<Wish> below = new ArrayList<>();
          for (Side side : List.of(Side.MIDDLE, Side.START, Side.END)) {
            below.add(new Wish(at.plus(new Spot(0, MARK + half + 2)), side, below.size()));
          }
          labels.add(
              new Label(
                  BriefName.of(mark.name()),
                  Kind.QUIET_WORDS,
                  at,
                  below,
                  LabelPlacer.ONLY_NEARBY,
                  60));
        }
      }
    }
    for (Surface surface : setup.surfaces()) {
      Point nearest = PlanGround.nearest(surface);
      Spot foot = sheet.spot(nearest);
      if (sheet.frame().contains(foot)) {
        Segment line = new Segment(sheet.spot(surface.from()), sheet.spot(surface.to()));
        double high = surface.height().map(one -> sheet.units(one.value())).orElse(0.0);
        Spot top = new Spot(line.at(0.5).x(), Math.max(sheet.frame().top(), foot.y() - high));
        labels.add(
            new Label(
                BriefName.of(surface.name()),
                Kind.QUIET_WORDS,
                top,
                Wishes.around(top, 10, half),
                45,
                line.length() / 2 + 60));
      }
    }
    return labels;
  }

  private Label name(Subject subject, double half) {
    Optional<FarOff> far = FarOff.of(sheet, subject.place());
    String name = BriefName.of(subject.name());
    if (far.isPresent()) {
      return far.get().label(name);
    }
    Spot head = headOrFoot(subject);
    Spot over = head.plus(new Spot(0, -radius(subject) - half - 4));
    List<Wish> wishes = new ArrayList<>();
    for (Side side : List.of(Side.MIDDLE, Side.START, Side.END)) {
      wishes.add(new Wish(over, side, wishes.size()));
    }
    wishes.addAll(Wishes.around(head, radius(subject) + 10, half));
    return new Label(name, Kind.WORDS, head, wishes, 90, radius(subject) + 44);
  }

  private Label eyes(Segment line, double high, double half) {
    String words =
        sheet
            .notation()
            .say("drawing.eye_line", sheet.notation().length(high * Subject.EYES_SHARE));
    List<Wish> wishes = new ArrayList<>();
    wishes.add(new Wish(line.to().plus(new Spot(5, 0)), Side.START, 0));
    wishes.add(new Wish(line.from().plus(new Spot(-5, 0)), Side.END, 1));
    wishes.add(new Wish(line.to().plus(new Spot(0, half + 3)), Side.END, 3));
    wishes.add(new Wish(line.from().plus(new Spot(0, half + 3)), Side.START, 4));
    return new Label(
        words, Kind.QUIET_WORDS, line.to(), wishes, LabelPlacer.ONLY_NEARBY, line.length());
  }
}
