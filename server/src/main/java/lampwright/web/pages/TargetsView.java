package lampwright.web.pages;

import java.util.List;
import lampwright.drawing.StopRuler;
import lampwright.engine.unit.Stops;
import lampwright.setup.figures.TargetFigures;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into a table what all the light together gives at each target. */
final class TargetsView {

  static final String ID = "together";

  private final FiguresOf of;
  private final Wording words;

  TargetsView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
                ID, words.say("pages.figures.heading.together"), words.say("pages.targets.lead"))
            .with(
                FiguresTable.of(
                    words.say("pages.targets.table"),
                    List.of(
                        FiguresTable.Column.words(words.say("pages.targets.target")),
                        FiguresTable.Column.figures(words.say("pages.common.reading")),
                        FiguresTable.Column.rulers(words.say("pages.common.ruler")),
                        FiguresTable.Column.figures(words.say("pages.common.stops")),
                        FiguresTable.Column.figures(words.say("pages.targets.flashOver")),
                        FiguresTable.Column.figures(words.say("pages.targets.keyFill"))),
                    of.figures().targets().stream().map(this::row).toList()));
    for (TargetFigures target : of.figures().targets()) {
      part = part.with(WorkingStep.of(target.working(), words));
    }
    return part;
  }

  private FiguresTable.Row row(TargetFigures target) {
    return FiguresTable.Row.of(
        0,
        Wording.capital(target.target().name()),
        FiguresTable.Cell.of(words.reading(target.reading())).asMain(),
        FiguresTable.Cell.ruler(
            StopRuler.of(target.target().name(), words.notation())
                .withNames(words.say("pages.targets.all"), "")
                .withDot(target.offset().value())
                .withBand(target.uncertainty().value())
                .svg()),
        FiguresTable.Cell.of(words.signed(target.offset()))
            .after(words.giveOrTake(target.uncertainty())),
        target
            .flashOverAmbient()
            .map(stops -> FiguresTable.Cell.of(words.signed(stops)))
            .orElseGet(() -> FiguresTable.Cell.of("–").after(words.say("pages.targets.oneKind"))),
        target
            .ratio()
            .map(
                ratio ->
                    FiguresTable.Cell.of(words.fixed(ratio.litToShadow(), 1) + " : 1")
                        .after(contrast(ratio.contrast())))
            .orElseGet(() -> FiguresTable.Cell.of("–").after(words.say("pages.targets.oneKind"))));
  }

  private String contrast(Stops contrast) {
    return words.stops(contrast.value());
  }
}
