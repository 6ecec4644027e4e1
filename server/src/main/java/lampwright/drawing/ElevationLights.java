package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;

/** The lights of an elevation: stands, true faces, aims, wedges, and the labels they ask for. */
record ElevationLights(Sheet sheet, List<UprightLight> lights) {

  /** Half the mark of a source that counts as a point; it is not to scale. */
  private static final double POINT_MARK = 9;

  /** From the side all lights stand in a row: shorter wedges than a plan's keep them apart. */
  private static final double LONGEST_AIM_OF_WEDGE = 110;

  void drawWedges(Markup markup) {
    for (UprightLight light : lights) {
      if (light.isShown() && !light.isSteep()) {
        Wedge.of(
                sheet,
                light.on().light().modifierOrStandard(),
                light.spot(),
                light.heading(),
                Math.min(LONGEST_AIM_OF_WEDGE, light.aim().length()))
            .draw(markup);
      }
    }
  }

  /** Solid where a stand is told, dashed like a plumb line where nothing says what holds it. */
  void drawStands(Markup markup) {
    for (UprightLight light : lights) {
      if (light.isShown()) {
        boolean isTold = light.on().light().stand().isPresent();
        markup.path(
            isTold ? "plan-stand" : "plan-stand plan-plumb", new Strokes().line(stand(light)));
      }
    }
  }

  private static Segment stand(UprightLight light) {
    return new Segment(light.foot(), light.spot());
  }

  void drawAims(Markup markup) {
    for (UprightLight light : lights) {
      seen(light)
          .ifPresent(
              line ->
                  markup
                      .openPiece(sheet.format(), "target/" + light.on().light().id().text())
                      .path("plan-aim", new Strokes().line(line))
                      .closePiece(sheet.format()));
    }
  }

  private Optional<Segment> seen(UprightLight light) {
    return sheet.frame().clip(light.aim()).filter(line -> line.length() > 1);
  }

  /** Each light with its disc. */
  void draw(Markup markup, PlacedLabels labels) {
    for (UprightLight light : lights) {
      markup.openPiece(sheet.format(), "light/" + light.on().light().id().text());
      if (!light.isShown()) {
        FarOff.of(sheet, light.place()).ifPresent(far -> far.draw(markup));
      } else if (light.on().faceWidthM() > 0) {
        markup.path(
            light.isSteep() ? "plan-outline plan-overhead" : "plan-outline", outline(light));
      } else {
        Spot across = light.heading().turned(90);
        Spot middle = light.spot();
        markup.path(
            "plan-light",
            new Strokes()
                .from(middle.along(across, -POINT_MARK))
                .to(middle.along(across, POINT_MARK)));
      }
      labels.drawDisc(markup, light.on().number());
      markup.closePiece(sheet.format());
    }
  }

  private static Strokes outline(UprightLight light) {
    List<Spot> corners = light.outline();
    Strokes strokes = new Strokes().from(corners.getFirst());
    corners.stream().skip(1).forEach(strokes::to);
    return strokes.close();
  }

  void keepFree(LabelPlacer placer) {
    for (UprightLight light : lights) {
      placer.avoid(light.aim(), 7);
      if (light.isShown()) {
        placer.avoid(stand(light), 9);
        placer.keepFree(light.box());
      } else {
        FarOff.of(sheet, light.place()).ifPresent(far -> placer.keepFree(far.box()));
      }
    }
  }

  List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    for (UprightLight light : lights) {
      labels.add(disc(light));
      Optional<FarOff> far = FarOff.of(sheet, light.place());
      if (far.isPresent()) {
        labels.add(far.get().label(""));
      } else {
        labels.add(distance(light));
        labels.add(height(light));
      }
    }
    return labels;
  }

  private Label disc(UprightLight light) {
    double disc = sheet.format().disc;
    Optional<FarOff> far = FarOff.of(sheet, light.place());
    double depth = far.isPresent() ? 0 : light.depth();
    Spot anchor = far.map(FarOff::tip).orElse(light.spot());
    List<Wish> wishes =
        Wishes.behind(
            far.map(FarOff::tail).orElse(anchor),
            far.map(FarOff::way).orElse(light.heading()),
            depth + disc * 1.36);
    String words = Integer.toString(light.on().number());
    return new Label(words, Kind.DISC, anchor, wishes, 100, disc * 2.2 + depth);
  }

  private Label distance(UprightLight light) {
    String words = sheet.notation().length(light.on().distance());
    double half = TextSize.line(sheet.format().figures) / 2;
    Segment line = seen(light).orElse(light.aim());
    List<Wish> wishes = new ArrayList<>(Wishes.on(line, half));
    if (line.length() < TextSize.ofFigures(words, sheet.format().figures)) {
      wishes.replaceAll(wish -> new Wish(wish.at(), wish.side(), wish.cost() + 20));
      wishes.addAll(Wishes.around(line.from(), 12, half));
    }
    wishes.removeIf(wish -> wish.side() == Side.MIDDLE && line.length() < 2 * half);
    return new Label(words, Kind.FIGURE, line.at(0.5), wishes, 70, 44);
  }

  /** The height of the face's middle, at the foot of its stand. */
  private Label height(UprightLight light) {
    double half = TextSize.line(sheet.format().figures) / 2;
    Segment stand = stand(light);
    List<Wish> wishes = new ArrayList<>();
    for (int step = 0; step <= 8; step++) {
      Spot at = stand.at(0.5).plus(stand.to().minus(stand.from()).times(step * 0.05));
      Spot lower = stand.at(0.5).plus(stand.from().minus(stand.to()).times(step * 0.05));
      for (Spot on : List.of(lower, at)) {
        wishes.add(new Wish(on.plus(new Spot(6, 0)), Side.START, 3.0 * step));
        wishes.add(new Wish(on.plus(new Spot(-6, 0)), Side.END, 3.0 * step + 1));
      }
    }
    wishes.removeIf(wish -> wish.at().y() > stand.from().y() - half - 2);
    String words = sheet.notation().length(light.place().z());
    return new Label(
        words, Kind.HEIGHT, stand.at(0.5), wishes, LabelPlacer.ONLY_NEARBY, stand.length());
  }
}
