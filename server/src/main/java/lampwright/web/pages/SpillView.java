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
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into tables what each light gives at every target, meant for it or not. */
final class SpillView {

  static final String ID = "spill";

  /** Below this a light changes nothing that a picture shows. */
  private static final double FAINT_STOPS = -10;

  private final FiguresOf of;
  private final Wording words;

  SpillView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  FiguresPart part() {
    List<TargetFigures> targets = of.figures().targets();
    FiguresPart part =
        FiguresPart.of(ID, words.say("pages.figures.heading.spill"), words.say("pages.spill.lead"))
            .with(reaches(targets))
            .with(held(targets));
    for (TargetFigures target : targets) {
      Optional<Working> working = target.spill().working();
      if (working.isPresent()) {
        part = part.with(WorkingStep.of(working.get(), words));
      }
    }
    return part;
  }

  private FiguresTable reaches(List<TargetFigures> targets) {
    List<FiguresTable.Column> columns = new ArrayList<>();
    columns.add(FiguresTable.Column.words(words.say("pages.common.light")));
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
        words.say("pages.spill.table"), columns, targets.isEmpty() ? List.of() : rows);
  }

  private FiguresTable.Cell cell(SpillFigures spill, LightId id) {
    Optional<Reach> found =
        spill.reaches().stream().filter(reach -> reach.light().equals(id)).findFirst();
    if (found.isEmpty()) {
      return FiguresTable.Cell.notKnown(words);
    }
    Reach reach = found.get();
    Optional<Stops> level = spill.fromShooting(reach);
    if (level.isEmpty()) {
      return FiguresTable.Cell.of("–").after(words.say("pages.spill.behind"));
    }
    if (level.get().value() < FAINT_STOPS && !reach.forIt()) {
      return FiguresTable.Cell.of("–").after(words.say("pages.spill.faint"));
    }
    FiguresTable.Cell cell =
        FiguresTable.Cell.of(words.signed(level.get()))
            .after(words.percent(spill.share(reach)) + " %");
    return reach.forIt() ? cell.asMain() : cell;
  }

  private FiguresTable held(List<TargetFigures> targets) {
    return FiguresTable.of(
        words.say("pages.spill.held"),
        List.of(
            FiguresTable.Column.words(words.say("pages.targets.target")),
            FiguresTable.Column.figures(words.say("pages.spill.flatCamera")),
            FiguresTable.Column.figures(words.say("pages.spill.flatKey")),
            FiguresTable.Column.figures(words.say("pages.spill.dome"))),
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

  private FiguresTable.Cell stops(Optional<Stops> stops) {
    return stops
        .map(s -> FiguresTable.Cell.of(words.signed(s)))
        .orElseGet(() -> FiguresTable.Cell.of("–"));
  }
}
