package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.drawing.StopRuler;
import lampwright.engine.Working;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.figures.PathFigures;
import lampwright.setup.figures.PathFigures.Station;

/** Puts into tables how the light and the focus change along the way of a subject. */
final class PathView {

  static final String ID = "path";
  static final String HEADING = "Along the path";

  private final FiguresOf of;

  PathView(FiguresOf of) {
    this.of = of;
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
                  Wording.signed(least.get()) + " to " + Wording.signed(most.get()),
                  "stops",
                  "against the hit mark")
              .with(Known.COMPUTED));
    }
    long blurred =
        first.stations().stream()
            .filter(s -> s.mark().isPresent())
            .filter(s -> s.focus().filter(focus -> !focus.isSharp()).isPresent())
            .count();
    return new ShortLine(
        HEADING,
        path,
        figures,
        blurred == 0
            ? ""
            : blurred == 1 ? "One mark is out of focus." : blurred + " marks are out of focus.");
  }

  private static Stream<Stops> fromHit(PathFigures path) {
    return path.stations().stream().flatMap(station -> path.fromHit(station).stream());
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID,
            HEADING,
            "All the light on a flat meter toward the camera, at the marks and in equal steps"
                + " between them. It tells how early the subject may look up.");
    for (PathFigures path : of.figures().paths()) {
      part =
          part.with(
                  levels(
                      "Levels at the marks of " + path.subject(),
                      path,
                      path.stations().stream().filter(s -> s.mark().isPresent()).toList()))
              .with(lights(path))
              .with(
                  levels("Every step on the way of " + path.subject(), path, path.stations())
                      .asFolded());
      for (String assumption : path.assumptions()) {
        part = part.withNote(path.subject() + ": " + assumption);
      }
      for (Station station : path.stations()) {
        Optional<Working> working =
            station.mark().isPresent() ? path.working(station) : Optional.empty();
        if (working.isPresent()) {
          part = part.with(Wording.working(working.get()));
        }
      }
    }
    return part;
  }

  private static FiguresTable levels(String caption, PathFigures path, List<Station> stations) {
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (Station station : stations) {
      Optional<Stops> level = path.fromShooting(station);
      StopRuler ruler = StopRuler.of(name(station)).withNames("all the light", "");
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
                              .after(focus.isSharp() ? "sharp" : "out of focus"))
                  .orElseGet(FiguresTable.Cell::notKnown)));
    }
    return FiguresTable.of(
        caption,
        List.of(
            FiguresTable.Column.words("Where"),
            FiguresTable.Column.rulers("Against the shooting exposure, stops"),
            FiguresTable.Column.figures("Stops"),
            FiguresTable.Column.figures("From the hit mark, stops"),
            FiguresTable.Column.figures("Gone"),
            FiguresTable.Column.figures("To the camera")),
        rows);
  }

  /** The lights that reach the hit mark, as they are built. */
  private FiguresTable lights(PathFigures path) {
    List<FiguresTable.Column> columns = new ArrayList<>();
    columns.add(FiguresTable.Column.words("Where"));
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
    return FiguresTable.of("Each light against itself at the hit mark, stops", columns, rows);
  }

  private static String name(Station station) {
    return station
        .mark()
        .map(Wording::capital)
        .orElseGet(() -> Wording.metres(station.gone()) + " on");
  }

  private static FiguresTable.Cell stops(Optional<Stops> stops) {
    return stops
        .map(s -> FiguresTable.Cell.of(Wording.signed(s)))
        .orElseGet(() -> FiguresTable.Cell.of("–").after("no light"));
  }

  private static FiguresTable.Cell metres(Metres metres) {
    return FiguresTable.Cell.of(String.format(Locale.ROOT, "%.1f", metres.value()), "m");
  }
}
