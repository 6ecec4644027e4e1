package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.language.Notation;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Surface;
import lampwright.setup.figures.Figures;

/**
 * The elevation: a setup seen level, drawn to one scale with the same marks as the {@link Plan}. It
 * is a projection, without perspective: a height is as tall wherever it stands. {@link PlanTable}
 * says the same as rows, heights among them.
 */
public final class Elevation {

  private Elevation() {}

  /** From the camera's right: the camera's side is at the left. */
  public static Svg side(SetupDocument setup, Figures figures, Notation notation) {
    return side(setup, figures, setup.numbersInBuildOrder(), notation);
  }

  /** The same of a setup that was made of another, whose numbers its lights keep. */
  public static Svg side(
      SetupDocument setup, Figures figures, Map<LightId, Integer> numbers, Notation notation) {
    return draw(View.SIDE, setup, figures, numbers, notation).svg();
  }

  /** The same for the field sheet, in black on white and no taller than so much. */
  public static Svg onPaper(
      SetupDocument setup,
      Figures figures,
      Map<LightId, Integer> numbers,
      Notation notation,
      double mostHeightPt) {
    double mostHeight = mostHeightPt / Drawing.PT_A_UNIT;
    return draw(View.SIDE, setup, figures, numbers, notation, Sheet.Format.PAPER_SIDE, mostHeight)
        .svgOnPaper();
  }

  /** From the camera's side, with the edge of the picture where it cuts the hit mark's plane. */
  public static Svg front(SetupDocument setup, Figures figures, Notation notation) {
    return front(setup, figures, setup.numbersInBuildOrder(), notation);
  }

  /** The same of a setup that was made of another, whose numbers its lights keep. */
  public static Svg front(
      SetupDocument setup, Figures figures, Map<LightId, Integer> numbers, Notation notation) {
    return draw(View.FRONT, setup, figures, numbers, notation).svg();
  }

  static Drawing draw(
      View view,
      SetupDocument setup,
      Figures figures,
      Map<LightId, Integer> numbers,
      Notation notation) {
    double any = Double.POSITIVE_INFINITY;
    return draw(view, setup, figures, numbers, notation, Sheet.Format.PAGE, any);
  }

  private static Drawing draw(
      View view,
      SetupDocument setup,
      Figures figures,
      Map<LightId, Integer> numbers,
      Notation notation,
      Sheet.Format format,
      double mostHeight) {
    List<LightOnPlan> all =
        LightOnPlan.all(setup, numbers, light -> figures.get(light.id()).distance());
    Extent extent = extent(view, setup, all, format);
    Sheet sheet = Sheet.within(mostHeight, format, view, extent, notation);
    ElevationGround ground = new ElevationGround(sheet, setup);
    ElevationLights lights =
        new ElevationLights(sheet, all.stream().map(one -> new UprightLight(sheet, one)).toList());
    Optional<ElevationCamera> camera =
        setup
            .camera()
            .flatMap(one -> one.place().map(place -> new ElevationCamera(sheet, one, place)));
    Optional<SunMark> sun =
        figures.sun().flatMap(of -> SunMark.onElevation(sheet, of, setup.camera()));
    PlanFrame frame = new PlanFrame(sheet, Optional.empty());

    LabelPlacer placer = new LabelPlacer(sheet);
    ground.keepFree(placer);
    lights.keepFree(placer);
    camera.ifPresent(one -> one.keepFree(placer));
    sun.ifPresent(one -> one.keepFree(placer));
    List<Label> wanted = new ArrayList<>(lights.labels());
    wanted.addAll(ground.labels());
    camera.ifPresent(one -> wanted.addAll(one.labels()));
    sun.ifPresent(one -> wanted.add(one.label()));
    PlacedLabels labels = new PlacedLabels(sheet.format(), placer.place(wanted));

    Markup body = new Markup();
    body.openClipped(sheet.frame());
    lights.drawWedges(body);
    ground.drawSurfaces(body);
    body.close("svg");
    frame.draw(body);
    ground.drawGround(body);
    camera.ifPresent(one -> one.draw(body));
    sun.ifPresent(one -> one.draw(body));
    ground.drawPaths(body);
    labels.drawLeaders(body);
    lights.drawStands(body);
    lights.drawAims(body);
    ground.drawSubjects(body);
    lights.draw(body, labels);
    labels.draw(body);
    String of = "drawing." + view.key();
    return new Drawing(
        sheet,
        notation.say(of + "_of", setup.title()),
        description(of + "_shows", view, all, notation),
        labels.labels(),
        body);
  }

  private static Extent extent(
      View view, SetupDocument setup, List<LightOnPlan> lights, Sheet.Format format) {
    List<Point> places = new ArrayList<>();
    List<Point> ends = new ArrayList<>();
    for (LightOnPlan light : lights) {
      places.add(light.light().place());
      ends.addAll(light.faceOutline());
    }
    for (Subject subject : setup.subjects()) {
      Point feet = subject.place();
      places.add(feet);
      subject
          .height()
          .ifPresent(high -> places.add(new Point(feet.x(), feet.y(), feet.z() + high.value())));
      subject.path().forEach(mark -> places.add(mark.at()));
    }
    setup.camera().flatMap(camera -> camera.place()).ifPresent(places::add);
    for (Surface surface : setup.surfaces()) {
      places.add(PlanGround.nearest(surface));
      ends.add(surface.from());
      ends.add(surface.to());
    }
    return Extent.upright(view, places, ends, format.groundShare);
  }

  private static String description(
      String key, View view, List<LightOnPlan> lights, Notation notation) {
    Places places = new Places(notation);
    StringBuilder words = new StringBuilder(200);
    words.append(notation.count(key, lights.size()));
    for (LightOnPlan light : lights) {
      Point at = light.light().place();
      words.append(' ').append(light.number()).append(' ').append(places.role(light.light()));
      words.append(", ").append(notation.say("drawing.up", notation.tape(at.z()))).append(", ");
      words.append(view == View.SIDE ? places.away(at.y()) : places.across(at.x())).append('.');
    }
    return words.toString();
  }
}
