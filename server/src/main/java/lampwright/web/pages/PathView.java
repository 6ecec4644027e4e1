package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.drawing.StopRuler;
import lampwright.engine.Known;
import lampwright.engine.Working;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.figures.PathFigures;
import lampwright.setup.figures.PathFigures.Station;
import lampwright.wording.Figure;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into tables how the light and the focus change along the way of a subject. */
final class PathView {

  static final String ID = "path";

  private final FiguresOf of;
  private final Wording words;

  PathView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  boolean isAbsent() {
    return of.figures().paths().isEmpty();
  }

  ShortLine line(String path) {
    PathFigures first = of.figures().paths().getFirst();
    List<Figure> figures = new ArrayList<>();
    Optional<Stops> least = fromHit(first).min(Stops::compareTo);
    Optional<Stops> most = fromHit(first).max(Stops::compareTo);
    if (least.isPresent() && most.isPresent()) {
      figures.add(
          Figure.of(
                  words.say(
                      "pages.path.fromTo", words.signed(least.get()), words.signed(most.get())),
                  words.stopsUnit(),
                  words.say("pages.path.againstHit"))
              .with(Known.COMPUTED));
    }
    long blurred =
        first.stations().stream()
            .filter(s -> s.mark().isPresent())
            .filter(s -> s.focus().filter(focus -> !focus.isSharp()).isPresent())
            .count();
    return new ShortLine(
        words.say("pages.figures.heading.path"),
        path,
        figures,
        blurred == 0 ? "" : words.count("pages.path.marksBlurred", blurred));
  }

  private static Stream<Stops> fromHit(PathFigures path) {
    return path.stations().stream().flatMap(station -> path.fromHit(station).stream());
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(ID, words.say("pages.figures.heading.path"), words.say("pages.path.lead"));
    for (PathFigures path : of.figures().paths()) {
      part =
          part.with(
                  levels(
                      words.say("pages.path.levels", path.subject()),
                      path,
                      path.stations().stream().filter(s -> s.mark().isPresent()).toList()))
              .with(lights(path))
              .with(
                  levels(words.say("pages.path.steps", path.subject()), path, path.stations())
                      .asFolded());
      for (String assumption : words.say(path.assumptions())) {
        part = part.withNote(path.subject() + ": " + assumption);
      }
      for (Station station : path.stations()) {
        Optional<Working> working =
            station.mark().isPresent() ? path.working(station) : Optional.empty();
        if (working.isPresent()) {
          part = part.with(WorkingStep.of(working.get(), words));
        }
      }
    }
    return part;
  }

  private FiguresTable levels(String caption, PathFigures path, List<Station> stations) {
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (Station station : stations) {
      Optional<Stops> level = path.fromShooting(station);
      StopRuler ruler =
          StopRuler.of(name(station), words.notation())
              .withNames(words.say("pages.targets.all"), "");
      rows.add(
          FiguresTable.Row.of(
              0,
              name(station),
              FiguresTable.Cell.ruler(level.map(l -> ruler.withDot(l.value())).orElse(ruler).svg()),
              stops(level),
              stops(path.fromHit(station)),
              metres(station.gone()),
              station
                  .focus()
                  .map(
                      focus ->
                          metres(focus.toCamera())
                              .after(
                                  focus.isSharp()
                                      ? words.say("pages.path.sharp")
                                      : words.say("pages.path.blurred")))
                  .orElseGet(() -> FiguresTable.Cell.notKnown(words))));
    }
    return FiguresTable.of(
        caption,
        List.of(
            FiguresTable.Column.words(words.say("pages.path.where")),
            FiguresTable.Column.rulers(words.say("pages.common.ruler")),
            FiguresTable.Column.figures(words.say("pages.common.stops")),
            FiguresTable.Column.figures(words.say("pages.path.fromHit")),
            FiguresTable.Column.figures(words.say("pages.path.gone")),
            FiguresTable.Column.figures(words.say("pages.path.toCamera"))),
        rows);
  }

  /** The lights that reach the hit mark, as they are built. */
  private FiguresTable lights(PathFigures path) {
    List<FiguresTable.Column> columns = new ArrayList<>();
    columns.add(FiguresTable.Column.words(words.say("pages.path.where")));
    List<Integer> shown = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      int light = path.lights().indexOf(id);
      if (light >= 0 && path.fromHit(path.stations().get(path.hit()), light).isPresent()) {
        columns.add(FiguresTable.Column.figures(of.name(id)));
        shown.add(light);
      }
    }
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (Station station : path.stations()) {
      List<FiguresTable.Cell> cells = new ArrayList<>();
      for (int light : shown) {
        cells.add(stops(path.fromHit(station, light)));
      }
      if (station.mark().isPresent() && !shown.isEmpty()) {
        rows.add(new FiguresTable.Row(0, name(station), cells, ""));
      }
    }
    return FiguresTable.of(words.say("pages.path.each"), columns, rows);
  }

  private String name(Station station) {
    return station
        .mark()
        .map(Wording::capital)
        .orElseGet(() -> words.say("pages.path.on", words.length(station.gone())));
  }

  private FiguresTable.Cell stops(Optional<Stops> stops) {
    return stops
        .map(s -> FiguresTable.Cell.of(words.signed(s)))
        .orElseGet(() -> FiguresTable.Cell.of("–").after(words.say("pages.path.noLight")));
  }

  private FiguresTable.Cell metres(Metres metres) {
    Figure length = words.length(metres, 1, "");
    return FiguresTable.Cell.of(length.value(), length.unit());
  }
}
