package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lampwright.drawing.Label.Kind;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;
import lampwright.engine.light.EmittingFace;
import lampwright.engine.light.Point;
import lampwright.setup.LightId;

/** The lights of a plan: faces, wedges, aims, and the labels that they ask for. */
record PlanLights(Sheet sheet, List<LightOnPlan> lights) {

  /** Half the mark of a source that counts as a point; it is not to scale. */
  private static final double POINT_MARK = 9;

  private static final double LIST_POINT_MARK = 3;

  /** Half the thickness of a hollow face; it is not to scale. */
  private static final double HOLLOW = 4;

  /** Some of them, on the same sheet. */
  PlanLights those(Predicate<LightId> wanted) {
    return new PlanLights(
        sheet, lights.stream().filter(light -> wanted.test(light.light().id())).toList());
  }

  /** Wedges lie lowest, under levels, ground and faces. */
  void drawWedges(Markup markup) {
    for (LightOnPlan light : lights) {
      if (sheet.shows(light.light().place()) && !light.isSteep()) {
        drawWedge(markup, light);
      }
    }
  }

  private void drawWedge(Markup markup, LightOnPlan light) {
    Wedge.of(
            sheet,
            light.light().modifierOrStandard(),
            sheet.spot(light.light().place()),
            light.heading(),
            aim(light).length())
        .draw(markup);
  }

  /** Dotted, from the face to the target; it stops short of a subject that stands there. */
  void drawAims(Markup markup, List<Spot> subjects) {
    for (LightOnPlan light : lights) {
      sheet
          .frame()
          .clip(aim(light, subjects))
          .filter(seen -> seen.length() > 1)
          .ifPresent(
              seen ->
                  markup
                      .openPiece(sheet.format(), "target/" + light.light().id().text())
                      .path("plan-aim", new Strokes().line(seen))
                      .closePiece(sheet.format()));
    }
  }

  /** Each light with its disc: its true face, or an arrow at the border where it is far off. */
  void draw(Markup markup, PlacedLabels labels) {
    for (LightOnPlan light : lights) {
      markup.openPiece(sheet.format(), "light/" + light.light().id().text());
      if (sheet.shows(light.light().place())) {
        drawFace(markup, light);
      } else {
        FarOff.of(sheet, light.light().place()).ifPresent(far -> far.draw(markup));
      }
      labels.drawDisc(markup, light.number());
      markup.closePiece(sheet.format());
    }
  }

  /** Each as one that is off: its face hollow, its number in an open ring. */
  void drawOut(Markup markup, PlacedLabels labels) {
    for (LightOnPlan light : lights) {
      if (sheet.shows(light.light().place())) {
        markup.path("plan-before", hollow(light));
      }
      labels.drawRing(markup, light.number());
    }
  }

  /** The true face, or its outline where it is tilted so far that it shows. */
  private void drawFace(Markup markup, LightOnPlan light) {
    if (light.isSteep() && light.faceWidthM() > 0) {
      markup.path("plan-outline plan-overhead", outline(light));
    } else {
      markup.path("plan-light", new Strokes().line(face(light)));
    }
  }

  /** The face as a line of true length; of a point, a short mark. */
  Segment face(LightOnPlan light) {
    if (light.faceWidthM() > 0) {
      List<Point> ends = light.faceEnds();
      return new Segment(sheet.spot(ends.getFirst()), sheet.spot(ends.getLast()));
    }
    double half = sheet.isWhole() ? POINT_MARK : LIST_POINT_MARK;
    Spot middle = sheet.spot(light.light().place());
    Spot across = light.heading().turned(90);
    return new Segment(middle.along(across, -half), middle.along(across, half));
  }

  /** The outline of a face as a thin box of its true length: how a light is drawn that is gone. */
  Strokes hollow(LightOnPlan light) {
    if (light.isSteep() && light.faceWidthM() > 0) {
      return outline(light);
    }
    Segment face = face(light);
    Spot heading = light.heading();
    return new Strokes()
        .from(face.from().along(heading, HOLLOW))
        .to(face.to().along(heading, HOLLOW))
        .to(face.to().along(heading, -HOLLOW))
        .to(face.from().along(heading, -HOLLOW))
        .close();
  }

  private Strokes outline(LightOnPlan light) {
    Segment face = face(light);
    double half = sheet.units(light.faceDepthM()) / 2;
    Spot heading = light.heading();
    if (light.light().modifierOrStandard().face() instanceof EmittingFace.Disc) {
      double turned = StrictMath.atan2(heading.x(), -heading.y()) * 180 / Math.PI;
      double across = face.length() / 2;
      return new Strokes()
          .from(face.from())
          .arc(across, half, turned, face.to())
          .arc(across, half, turned, face.from())
          .close();
    }
    if (light.light().modifierOrStandard().face() instanceof EmittingFace.Octagon octagon) {
      double side = octagon.side().value() / octagon.acrossFlats().value();
      Spot across = face.from().unitTo(face.to());
      double cut = face.length() * (1 - side) / 2;
      return new Strokes()
          .from(face.from().along(heading, half * side))
          .to(face.from().along(across, cut).along(heading, half))
          .to(face.to().along(across, -cut).along(heading, half))
          .to(face.to().along(heading, half * side))
          .to(face.to().along(heading, -half * side))
          .to(face.to().along(across, -cut).along(heading, -half))
          .to(face.from().along(across, cut).along(heading, -half))
          .to(face.from().along(heading, -half * side))
          .close();
    }
    return new Strokes()
        .from(face.from().along(heading, half))
        .to(face.to().along(heading, half))
        .to(face.to().along(heading, -half))
        .to(face.from().along(heading, -half))
        .close();
  }

  void keepFree(LabelPlacer placer, List<Spot> subjects) {
    for (LightOnPlan light : lights) {
      Segment aim = aim(light, subjects);
      placer.avoid(aim, 7);
      if (sheet.shows(light.light().place())) {
        placer.keepFree(face(light));
        if (light.isSteep()) {
          double half = sheet.units(light.faceDepthM()) / 2;
          placer.keepFree(Box.around(sheet.spot(light.light().place()), half, half));
        }
      } else {
        FarOff.of(sheet, light.light().place()).ifPresent(far -> placer.keepFree(far.box()));
      }
    }
  }

  List<Label> numbers() {
    List<Label> labels = new ArrayList<>();
    double disc = sheet.format().disc;
    for (LightOnPlan light : lights) {
      Optional<FarOff> far = FarOff.of(sheet, light.light().place());
      Spot anchor = far.map(FarOff::tip).orElse(sheet.spot(light.light().place()));
      double depth = light.isSteep() ? sheet.units(light.faceDepthM()) / 2 : 0;
      List<Wish> wishes =
          Wishes.behind(
              far.map(FarOff::tail).orElse(anchor),
              far.map(FarOff::way).orElse(light.heading()),
              disc + depth + sheet.format().disc * 0.36);
      labels.add(
          new Label(
              Integer.toString(light.number()),
              Kind.DISC,
              anchor,
              wishes,
              100,
              disc * 2.2 + depth));
    }
    return labels;
  }

  List<Label> distances(List<Spot> subjects) {
    List<Label> labels = new ArrayList<>();
    double half = TextSize.line(sheet.format().figures) / 2;
    for (LightOnPlan light : lights) {
      Optional<FarOff> far = FarOff.of(sheet, light.light().place());
      if (far.isPresent()) {
        labels.add(far.get().label(""));
        continue;
      }
      Optional<Segment> seen = sheet.frame().clip(aim(light, subjects));
      Segment line = seen.orElse(aim(light));
      String words = sheet.notation().length(light.distance());
      List<Wish> wishes = new ArrayList<>(Wishes.on(line, half));
      if (line.length() < TextSize.ofFigures(words, sheet.format().figures)) {
        // Too short to carry its figure: beside the face instead.
        wishes.replaceAll(wish -> new Wish(wish.at(), wish.side(), wish.cost() + 20));
        wishes.addAll(Wishes.around(line.from(), 12, half));
      }
      wishes.removeIf(wish -> wish.side() == Side.MIDDLE && line.length() < 2 * half);
      labels.add(new Label(words, Kind.FIGURE, line.at(0.5), wishes, 70, 44));
    }
    return labels;
  }

  private Segment aim(LightOnPlan light) {
    return new Segment(sheet.spot(light.light().place()), sheet.spot(light.light().target().at()));
  }

  private Segment aim(LightOnPlan light, List<Spot> subjects) {
    Segment whole = aim(light);
    double clearance = sheet.format().subject * 1.5;
    for (Spot subject : subjects) {
      if (subject.distanceTo(whole.to()) < clearance && whole.length() > 2 * clearance) {
        Spot back = whole.to().unitTo(whole.from());
        return new Segment(whole.from(), whole.to().along(back, clearance));
      }
    }
    return whole;
  }
}
