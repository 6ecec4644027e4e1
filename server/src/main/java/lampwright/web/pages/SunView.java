package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Working;
import lampwright.engine.sun.SunPhase;
import lampwright.engine.unit.Degrees;
import lampwright.setup.figures.SunFigures;
import lampwright.wording.Figure;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into words where the sun stood, and what a clear sky would have given. */
final class SunView {

  static final String ID = "sun";

  private final FiguresOf of;
  private final Wording words;
  private final Optional<SunFigures> sun;

  SunView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
    this.sun = of.figures().sun();
  }

  /** Indoors there is no sun to speak of. */
  boolean isAbsent() {
    return sun.isEmpty() && missing().isEmpty();
  }

  ShortLine line(String path) {
    return new ShortLine(
        words.say("pages.figures.heading.sun"),
        path,
        sun.map(this::place).orElse(List.of()),
        sun.map(s -> Wording.capital(phase(s)) + ".").orElseGet(this::missing));
  }

  private String phase(SunFigures sun) {
    return words.say(
        "figuring.phase." + Wording.key(SunPhase.of(sun.position().geometricElevation())));
  }

  private List<Figure> place(SunFigures sun) {
    List<Figure> figures = new ArrayList<>();
    double up = sun.position().elevation().value();
    figures.add(
        Figure.of(
                words.fixed(Math.abs(up), 1) + "°",
                up < 0 ? words.say("pages.sun.below") : words.say("pages.sun.up"),
                words.say("pages.sun.height"))
            .with(Known.COMPUTED));
    figures.add(
        Figure.of(words.degrees(sun.position().azimuth()), "", words.say("pages.sun.bearing"))
            .with(Known.COMPUTED));
    sun.clearSkyLevel()
        .ifPresent(
            level ->
                figures.add(
                    Figure.of(
                            words.level(level),
                            words.say("pages.unit.ev"),
                            words.say("pages.sun.clearSky"))
                        .with(Known.ESTIMATED)));
    return figures;
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(ID, words.say("pages.figures.heading.sun"), words.say("pages.sun.lead"));
    if (sun.isPresent()) {
      part = with(part, sun.get());
    }
    return part.withMissing(missing());
  }

  private FiguresPart with(FiguresPart before, SunFigures sun) {
    FiguresPart part = before;
    for (Figure figure : place(sun)) {
      part = part.with(figure);
    }
    if (sun.ofCamera().isPresent()) {
      SunFigures.OfCamera camera = sun.ofCamera().get();
      part =
          part.with(
                  Figure.of(aside(camera.relativeAzimuth()), "", words.say("pages.sun.fromCamera"))
                      .with(Known.COMPUTED))
              .with(
                  Figure.of(
                          words.degrees(camera.angleToAxis()), "", words.say("pages.sun.fromAxis"))
                      .with(Known.COMPUTED));
    }
    if (sun.shadow().isPresent()) {
      part =
          part.with(
              words
                  .length(sun.shadow().get(), 1, words.say("pages.sun.shadow"))
                  .with(Known.COMPUTED));
    }
    part = part.withNote(Wording.capital(phase(sun)) + ".");
    if (sun.ofSubject().flatMap(SunFigures.OfSubject::pattern).isPresent()) {
      part =
          part.withNote(
              words.say(
                  "pages.sun.pattern",
                  words.say(
                      "signature.pattern." + Wording.key(sun.ofSubject().get().pattern().get())),
                  new LightsView(of).from(sun.ofSubject().get().direction())));
    }
    part = part.with(WorkingStep.of(sun.elevationWorking(), words));
    Optional<Working> sky = sun.clearSkyWorking();
    return sky.isPresent() ? part.with(WorkingStep.of(sky.get(), words)) : part;
  }

  private String aside(Degrees azimuth) {
    double value = azimuth.value();
    String size = words.degrees(new Degrees(Math.abs(value)));
    if (Math.round(value) == 0) {
      return size;
    }
    return words.say(value < 0 ? "pages.direction.left" : "pages.direction.right", size);
  }

  private String missing() {
    return of.missing(
        "/occasion/(date|time|utc_offset|place/.*)", "/camera/bearing_deg", "/subjects/0/height_m");
  }
}
