package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.figures.SpillFigures;
import lampwright.setup.figures.SpillFigures.Reach;
import lampwright.setup.figures.TargetFigures;

/** Puts into tables what each light gives at every target, meant for it or not. */
final class SpillView {

  static final String ID = "spill";
  static final String HEADING = "Spill";

  /** Below this a light changes nothing that a picture shows. */
  private static final double FAINT_STOPS = -10;

  private final FiguresOf of;

  SpillView(FiguresOf of) {
    this.of = of;
  }

  FiguresPart part() {
    List<TargetFigures> targets = of.figures().targets();
    FiguresPart part =
        FiguresPart.of(
                ID,
                HEADING,
                "Light goes where it can, not only where it is meant. A light’s reading sets how"
                    + " strong it is; how it spreads from there is the model’s word.")
            .with(reaches(targets))
            .with(held(targets));
    for (TargetFigures target : targets) {
      Optional<Working> working = target.spill().working();
      if (working.isPresent()) {
        part = part.with(Wording.working(working.get()));
      }
    }
    return part;
  }

  private FiguresTable reaches(List<TargetFigures> targets) {
    List<FiguresTable.Column> columns = new ArrayList<>();
    columns.add(FiguresTable.Column.words("Light"));
    for (TargetFigures target : targets) {
      columns.add(FiguresTable.Column.figures(Wording.capital(target.target().name())));
    }
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      List<FiguresTable.Cell> cells = new ArrayList<>();
      for (TargetFigures target : targets) {
        cells.add(cell(target.spill(), id));
      }
      rows.add(new FiguresTable.Row(of.number(id), of.role(id), cells, ""));
    }
    return FiguresTable.of(
        "Each light at each target: stops from the shooting exposure, and its share of all the"
            + " light there. Bold: meant for it.",
        columns,
        targets.isEmpty() ? List.of() : rows);
  }

  private static FiguresTable.Cell cell(SpillFigures spill, LightId id) {
    Optional<Reach> found =
        spill.reaches().stream().filter(reach -> reach.light().equals(id)).findFirst();
    if (found.isEmpty()) {
      return FiguresTable.Cell.notKnown();
    }
    Reach reach = found.get();
    Optional<Stops> level = spill.fromShooting(reach);
    if (level.isEmpty()) {
      return FiguresTable.Cell.of("–").after("from behind");
    }
    if (level.get().value() < FAINT_STOPS && !reach.forIt()) {
      return FiguresTable.Cell.of("–").after("next to none");
    }
    FiguresTable.Cell cell =
        FiguresTable.Cell.of(Wording.signed(level.get()))
            .after(Wording.percent(spill.share(reach)) + " %");
    return reach.forIt() ? cell.asMain() : cell;
  }

  private static FiguresTable held(List<TargetFigures> targets) {
    return FiguresTable.of(
        "Everything that reaches each target, by how the meter is held: stops from the shooting"
            + " exposure",
        List.of(
            FiguresTable.Column.words("Target"),
            FiguresTable.Column.figures("Flat, to the camera"),
            FiguresTable.Column.figures("Flat, to the key"),
            FiguresTable.Column.figures("Dome, to the camera")),
        targets.stream()
            .map(
                target ->
                    FiguresTable.Row.of(
                        0,
                        Wording.capital(target.target().name()),
                        stops(target.spill().sums().towardCameraOffset()),
                        stops(target.spill().sums().towardKeyOffset()),
                        stops(target.spill().sums().domeOffset())))
            .toList());
  }

  private static FiguresTable.Cell stops(Optional<Stops> stops) {
    return stops
        .map(s -> FiguresTable.Cell.of(Wording.signed(s)))
        .orElseGet(() -> FiguresTable.Cell.of("–"));
  }
}
