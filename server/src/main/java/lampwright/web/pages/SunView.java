package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.sun.SunPhase;
import lampwright.engine.unit.Degrees;
import lampwright.setup.figures.SunFigures;

/** Puts into words where the sun stood, and what a clear sky would have given. */
final class SunView {

  static final String ID = "sun";
  static final String HEADING = "Sun";

  private final FiguresOf of;
  private final Optional<SunFigures> sun;

  SunView(FiguresOf of) {
    this.of = of;
    this.sun = of.figures().sun();
  }

  /** Indoors there is no sun to speak of. */
  boolean isAbsent() {
    return sun.isEmpty() && missing().isEmpty();
  }

  ShortLine line(String path) {
    return new ShortLine(
        HEADING,
        path,
        sun.map(SunView::place).orElse(List.of()),
        sun.map(s -> Wording.capital(phase(s)) + ".").orElseGet(this::missing));
  }

  private static String phase(SunFigures sun) {
    return SunPhase.of(sun.position().geometricElevation()).tradeName();
  }

  private static List<Figure> place(SunFigures sun) {
    List<Figure> figures = new ArrayList<>();
    double up = sun.position().elevation().value();
    figures.add(
        Figure.of(
                String.format(Locale.ROOT, "%.1f°", Math.abs(up)),
                up < 0 ? "below the horizon" : "up",
                "height")
            .with(Known.COMPUTED));
    figures.add(
        Figure.of(Wording.degrees(sun.position().azimuth()), "", "true bearing")
            .with(Known.COMPUTED));
    sun.clearSkyLevel()
        .ifPresent(
            level ->
                figures.add(
                    Figure.of(Wording.level(level), "EV", "clear sky, level plane, at ISO 100")
                        .with(Known.ESTIMATED)));
    return figures;
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID,
            HEADING,
            "Where the sun stood by the almanac. The clear sky’s light is an estimate: clouds, haze"
                + " and walls change it by stops, and a meter overrules it.");
    if (sun.isPresent()) {
      part = with(part, sun.get());
    }
    return part.withMissing(missing());
  }

  private static FiguresPart with(FiguresPart before, SunFigures sun) {
    FiguresPart part = before;
    for (Figure figure : place(sun)) {
      part = part.with(figure);
    }
    if (sun.ofCamera().isPresent()) {
      SunFigures.OfCamera camera = sun.ofCamera().get();
      part =
          part.with(
                  Figure.of(aside(camera.relativeAzimuth()), "", "seen from the camera")
                      .with(Known.COMPUTED))
              .with(
                  Figure.of(Wording.degrees(camera.angleToAxis()), "", "from the lens’s axis")
                      .with(Known.COMPUTED));
    }
    if (sun.shadow().isPresent()) {
      part =
          part.with(
              Figure.of(
                      String.format(Locale.ROOT, "%.1f", sun.shadow().get().value()),
                      "m",
                      "shadow of the first subject, on level ground")
                  .with(Known.COMPUTED));
    }
    part = part.withNote(Wording.capital(phase(sun)) + ".");
    if (sun.ofSubject().flatMap(SunFigures.OfSubject::pattern).isPresent()) {
      part =
          part.withNote(
              "On the first subject’s face the sun is a "
                  + sun.ofSubject().get().pattern().get().tradeName()
                  + " light, "
                  + LightsView.from(sun.ofSubject().get().direction())
                  + ".");
    }
    part = part.with(Wording.working(sun.elevationWorking()));
    Optional<Working> sky = sun.clearSkyWorking();
    return sky.isPresent() ? part.with(Wording.working(sky.get())) : part;
  }

  private static String aside(Degrees azimuth) {
    double value = azimuth.value();
    String size = Wording.degrees(new Degrees(Math.abs(value)));
    if (Math.round(value) == 0) {
      return size;
    }
    return size + (value < 0 ? " left" : " right");
  }

  private String missing() {
    return of.missing(
        "/occasion/(date|time|utc_offset|place/.*)", "/camera/bearing_deg", "/subjects/0/height_m");
  }
}
