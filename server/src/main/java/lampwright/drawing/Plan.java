package lampwright.drawing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.zip.CRC32;
import lampwright.engine.light.Point;
import lampwright.engine.unit.Bounds;
import lampwright.engine.unit.Metres;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Surface;
import lampwright.setup.figures.Figures;

/**
 * The plan: a setup seen straight from above, drawn to one scale with the camera's side at the
 * bottom, as a surveyor would. What it shows is to scale but for the signs of what has no size
 * (camera, subject, a source that counts as a point), the reach of the wedges, and what stands so
 * far off that only an arrow at the border tells of it.
 */
public final class Plan {

  private Plan() {}

  /** The plan for a setup's page. Its ids come from what it shows. */
  public static Svg of(SetupDocument setup, Figures figures) {
    Drawing drawing = draw(setup, figures);
    return drawing.svg("plan-" + fingerprint(drawing.body));
  }

  /**
   * The plan of a setup that was made of another, whose numbers its lights keep.
   *
   * @param numbers of all the lights
   */
  public static Svg of(SetupDocument setup, Figures figures, Map<LightId, Integer> numbers) {
    Drawing drawing =
        draw(setup, numbers, light -> figures.get(light.id()).distance(), Sheet.Format.PAGE);
    return drawing.svg("plan-" + fingerprint(drawing.body));
  }

  /**
   * The plan for a setup's page.
   *
   * @param id begins the ids of its title and description; letters, digits and hyphens, and no
   *     other drawing's on the same page
   */
  public static Svg of(SetupDocument setup, Figures figures, String id) {
    if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
      throw new IllegalArgumentException(
          "Id (\""
              + id
              + "\") must be a letter, then letters, digits and hyphens. Maybe \"plan\"?");
    }
    return draw(setup, figures).svg(id);
  }

  /** The plan for a list: the same without ticks, figures and words, about 160 pixels wide. */
  public static Svg small(SetupDocument setup) {
    Drawing drawing =
        draw(
            setup,
            setup.numbersInBuildOrder(),
            light -> light.place().distanceTo(light.target().at()),
            Sheet.Format.LIST);
    return drawing.svgWithoutIds();
  }

  static Drawing draw(SetupDocument setup, Figures figures) {
    return draw(
        setup,
        setup.numbersInBuildOrder(),
        light -> figures.get(light.id()).distance(),
        Sheet.Format.PAGE);
  }

  private static Drawing draw(
      SetupDocument setup,
      Map<LightId, Integer> numbers,
      Function<Light, Metres> distance,
      Sheet.Format format) {
    List<LightOnPlan> onPlan = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      int number = Objects.requireNonNull(numbers.get(light.id()), "every light has a number");
      onPlan.add(LightOnPlan.of(number, light, distance.apply(light)));
    }
    Sheet sheet = new Sheet(format, extent(setup, onPlan, format));
    PlanGround ground = new PlanGround(sheet, setup);
    PlanLights lights = new PlanLights(sheet, onPlan);
    Optional<PlanCamera> camera = setup.camera().map(one -> new PlanCamera(sheet, one));
    PlanFrame frame = new PlanFrame(sheet, camera.flatMap(PlanCamera::north));
    PlacedLabels labels = new PlacedLabels(format, labels(sheet, ground, lights, camera, frame));

    Markup body = new Markup();
    openClipped(body, sheet);
    lights.drawWedges(body);
    // Levels, as contour lines, belong here: over the wedges, under everything that is a thing.
    body.close("svg");
    frame.draw(body);
    ground.drawSurfaces(body);
    camera.ifPresent(one -> one.draw(body));
    ground.drawPaths(body);
    ground.drawHitMark(body);
    labels.drawLeaders(body);
    lights.drawAims(body, ground.subjects());
    lights.drawFaces(body);
    lights.drawFarOff(body);
    ground.drawSubjects(body);
    labels.draw(body);
    return new Drawing(setup, sheet, lights, labels.labels(), body);
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

  private static List<Label.Placed> labels(
      Sheet sheet,
      PlanGround ground,
      PlanLights lights,
      Optional<PlanCamera> camera,
      PlanFrame frame) {
    LabelPlacer placer = new LabelPlacer(sheet);
    lights.keepFree(placer, ground.subjects());
    ground.keepFree(placer);
    camera.ifPresent(one -> one.keepFree(placer));
    List<Label> labels = new ArrayList<>(lights.numbers());
    if (sheet.format() == Sheet.Format.PAGE) {
      frame.keepFree(placer);
      labels.addAll(frame.labels());
      labels.addAll(ground.labels());
      camera.ifPresent(one -> labels.addAll(one.labels()));
      labels.addAll(lights.distances(ground.subjects()));
    }
    return placer.place(labels);
  }

  /** An inner drawing that ends at the frame; it needs no id, as a clipping path would. */
  private static void openClipped(Markup body, Sheet sheet) {
    Box frame = sheet.frame();
    String x = Markup.number(frame.left());
    String y = Markup.number(frame.top());
    String width = Markup.number(frame.width());
    String height = Markup.number(frame.height());
    body.open(
        "svg",
        "x",
        x,
        "y",
        y,
        "width",
        width,
        "height",
        height,
        "viewBox",
        String.join(" ", x, y, width, height));
  }

  private static String fingerprint(Markup body) {
    CRC32 sum = new CRC32();
    sum.update(body.toString().getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(sum.getValue());
  }

  /** A plan with its parts, before it has ids. */
  record Drawing(
      SetupDocument setup, Sheet sheet, PlanLights lights, List<Label.Placed> labels, Markup body) {

    /** With a title and a description that screen readers are led to. */
    Svg svg(String id) {
      return svg(
          "plan",
          List.of("aria-labelledby", id + "-title", "aria-describedby", id + "-desc"),
          new Markup()
              .words("title", title(), "id", id + "-title")
              .words("desc", description(), "id", id + "-desc"));
    }

    /** With a title only and no ids: in a list a copied setup may look the same as another. */
    Svg svgWithoutIds() {
      return svg("plan plan-small", List.of(), new Markup().words("title", title()));
    }

    private Svg svg(String cssClass, List<String> references, Markup words) {
      String width = Markup.number(sheet.width());
      String height = Markup.number(sheet.height());
      List<String> attributes =
          new ArrayList<>(List.of("xmlns", "http://www.w3.org/2000/svg", "class", cssClass));
      attributes.addAll(List.of("viewBox", "0 0 " + width + " " + height));
      attributes.addAll(List.of("width", width, "height", height, "role", "img"));
      attributes.addAll(references);
      attributes.addAll(List.of("data-units-per-metre", Bounds.rounded(sheet.unitsPerMetre(), 2)));
      Markup markup = new Markup().open("svg", attributes.toArray(String[]::new));
      return Svg.trusted(markup.add(words).add(body).close("svg").toString());
    }

    private String title() {
      return "Plan of " + setup.title();
    }

    private String description() {
      int count = setup.lights().size();
      StringBuilder words = new StringBuilder("Seen from above, the camera's side at the bottom: ");
      words.append(count).append(count == 1 ? " light" : " lights").append(" in build order. ");
      for (LightOnPlan light : lights.lights()) {
        Point at = light.light().place();
        words.append(light.number()).append(" ").append(PlanTable.role(light.light()));
        words.append(", ").append(Lengths.across(at.x())).append(", ");
        words.append(Lengths.away(at.y())).append(". ");
      }
      return words.toString().strip();
    }
  }
}
