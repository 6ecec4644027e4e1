package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Metres;
import lampwright.language.Notation;
import lampwright.setup.Burning;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Surface;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.SunFigures;

/**
 * The plan: a setup seen straight from above, drawn to one scale with the camera's side at the
 * bottom, as a surveyor would. What it shows is to scale but for the signs of what has no size
 * (camera, subject, a source that counts as a point), the reach of the wedges, and what stands so
 * far off that only an arrow at the border tells of it.
 */
public final class Plan {

  private Plan() {}

  /** The plan for a setup's page. Its ids come from what it shows. */
  public static Svg of(SetupDocument setup, Figures figures, Notation notation) {
    return of(setup, figures, setup.numbersInBuildOrder(), notation);
  }

  /**
   * The plan of a setup that was made of another, whose numbers its lights keep.
   *
   * @param numbers of all the lights
   */
  public static Svg of(
      SetupDocument setup, Figures figures, Map<LightId, Integer> numbers, Notation notation) {
    return draw(setup, figures, numbers, notation, true).svg();
  }

  /**
   * The plan with the levels of what burns: what is off stands there hollow, with its number in an
   * open ring. The sheet and all that stands on it keep their places, whatever burns.
   */
  public static Svg burning(
      SetupDocument setup, Figures figures, Burning burning, Notation notation) {
    return draw(
            setup,
            setup.numbersInBuildOrder(),
            light -> figures.get(light.id()).distance(),
            Sheet.Format.PAGE,
            Double.POSITIVE_INFINITY,
            notation,
            figures.sun(),
            Optional.of(burning))
        .svg();
  }

  /** The plan without lines of level, which take the most time: for a hand that moves things. */
  public static Svg withoutLevels(SetupDocument setup, Figures figures, Notation notation) {
    return draw(setup, figures, setup.numbersInBuildOrder(), notation, false).svg();
  }

  /**
   * The plan for the field sheet, in black on white and no taller than so much.
   *
   * @param numbers of all the lights
   */
  public static Svg onPaper(
      SetupDocument setup,
      Figures figures,
      Map<LightId, Integer> numbers,
      Notation notation,
      double mostHeightPt) {
    return draw(
            setup,
            numbers,
            light -> figures.get(light.id()).distance(),
            Sheet.Format.PAPER,
            mostHeightPt / Drawing.PT_A_UNIT,
            notation,
            figures.sun(),
            Optional.of(Burning.ALL))
        .svgOnPaper();
  }

  /** The plan for a list: the same without ticks, figures and words, about 160 pixels wide. */
  public static Svg small(SetupDocument setup, Notation notation) {
    Drawing drawing =
        draw(
            setup,
            setup.numbersInBuildOrder(),
            light -> light.place().distanceTo(light.target().at()),
            Sheet.Format.LIST,
            Double.POSITIVE_INFINITY,
            notation,
            Optional.empty(),
            Optional.empty());
    return drawing.svgWithoutIds();
  }

  static Drawing draw(
      SetupDocument setup,
      Figures figures,
      Map<LightId, Integer> numbers,
      Notation notation,
      boolean levels) {
    return draw(
        setup,
        numbers,
        light -> figures.get(light.id()).distance(),
        Sheet.Format.PAGE,
        Double.POSITIVE_INFINITY,
        notation,
        figures.sun(),
        levels ? Optional.of(Burning.ALL) : Optional.empty());
  }

  /** With the levels of what burns, or without any. */
  private static Drawing draw(
      SetupDocument setup,
      Map<LightId, Integer> numbers,
      Function<Light, Metres> distance,
      Sheet.Format format,
      double mostHeight,
      Notation notation,
      Optional<SunFigures> sunFigures,
      Optional<Burning> levelled) {
    List<LightOnPlan> onPlan = LightOnPlan.all(setup, numbers, distance);
    Extent extent = extent(setup, onPlan, format);
    Sheet sheet = Sheet.within(mostHeight, format, View.PLAN, extent, notation);
    PlanGround ground = new PlanGround(sheet, setup);
    PlanLights lights = new PlanLights(sheet, onPlan);
    Burning burning = levelled.orElse(Burning.ALL);
    PlanLights lit = lights.those(burning::burns);
    PlanLights out = lights.those(light -> !burning.burns(light));
    Optional<PlanCamera> camera = setup.camera().map(one -> new PlanCamera(sheet, one));
    PlanFrame frame = new PlanFrame(sheet, camera.flatMap(PlanCamera::north));
    Optional<SunMark> sun =
        sunFigures.flatMap(of -> SunMark.onPlan(sheet, of, camera.flatMap(PlanCamera::north)));
    Optional<PlanLevels> levels = levelled.flatMap(of -> PlanLevels.of(sheet, setup, of));
    LabelPlacer placer = new LabelPlacer(sheet);
    lights.keepFree(placer, ground.subjects());
    ground.keepFree(placer);
    camera.ifPresent(one -> one.keepFree(placer));
    sun.ifPresent(one -> one.keepFree(placer));
    List<Label> wanted = labels(sheet, ground, lights, lit, camera, frame);
    if (sheet.isWhole()) {
      frame.keepFree(placer);
    }
    sun.ifPresent(one -> wanted.add(one.label()));
    levels.ifPresent(one -> wanted.addAll(one.labels()));
    PlacedLabels labels = new PlacedLabels(format, placer.place(wanted));

    Markup body = new Markup();
    body.openClipped(sheet.frame());
    lit.drawWedges(body);
    levels.ifPresent(one -> one.draw(body));
    body.close("svg");
    frame.draw(body);
    ground.drawSurfaces(body);
    sun.ifPresent(one -> one.draw(body));
    camera.ifPresent(one -> one.draw(body));
    ground.drawPaths(body);
    ground.drawHitMark(body);
    labels.drawLeaders(body);
    lit.drawAims(body, ground.subjects());
    lit.draw(body, labels);
    out.drawOut(body, labels);
    ground.drawSubjects(body);
    labels.draw(body);
    return new Drawing(
        sheet,
        notation.say("drawing.plan_of", setup.title()),
        description(setup, onPlan, notation)
            + levels.map(PlanLevels::words).orElse("")
            + numbersOut(out, notation),
        labels.labels(),
        body);
  }

  private static Extent extent(SetupDocument setup, List<LightOnPlan> lights, Sheet.Format format) {
    List<Point> places = new ArrayList<>();
    lights.forEach(light -> places.add(light.light().place()));
    for (Subject subject : setup.subjects()) {
      places.add(subject.place());
      subject.path().forEach(mark -> places.add(mark.at()));
    }
    setup.camera().flatMap(camera -> camera.place()).ifPresent(places::add);
    List<Point> ends = new ArrayList<>();
    lights.forEach(light -> ends.addAll(light.faceEnds()));
    for (Surface surface : setup.surfaces()) {
      places.add(PlanGround.nearest(surface));
      ends.add(surface.from());
      ends.add(surface.to());
    }
    return Extent.around(places, ends, format.groundShare);
  }

  private static List<Label> labels(
      Sheet sheet,
      PlanGround ground,
      PlanLights lights,
      PlanLights lit,
      Optional<PlanCamera> camera,
      PlanFrame frame) {
    List<Label> labels = new ArrayList<>(lights.numbers());
    if (sheet.isWhole()) {
      labels.addAll(frame.labels());
      labels.addAll(ground.labels());
      camera.ifPresent(one -> labels.addAll(one.labels()));
      labels.addAll(lit.distances(ground.subjects()));
    }
    return labels;
  }

  private static String numbersOut(PlanLights out, Notation notation) {
    List<String> numbers =
        out.lights().stream().map(light -> Integer.toString(light.number())).toList();
    return numbers.isEmpty()
        ? ""
        : " " + notation.say("without.plan.out", String.join(", ", numbers));
  }

  private static String description(
      SetupDocument setup, List<LightOnPlan> lights, Notation notation) {
    Places places = new Places(notation);
    StringBuilder words = new StringBuilder(200);
    words.append(notation.count("drawing.plan_shows", setup.lights().size()));
    for (LightOnPlan light : lights) {
      Point at = light.light().place();
      words.append(' ').append(light.number()).append(' ').append(places.role(light.light()));
      words.append(", ").append(places.across(at.x())).append(", ");
      words.append(places.away(at.y())).append('.');
    }
    return words.toString();
  }
}
