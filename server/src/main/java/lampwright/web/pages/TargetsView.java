package lampwright.web.pages;

import java.util.List;
import java.util.Locale;
import lampwright.drawing.StopRuler;
import lampwright.engine.unit.Stops;
import lampwright.setup.figures.TargetFigures;

/** Puts into a table what all the light together gives at each target. */
final class TargetsView {

  static final String ID = "together";
  static final String HEADING = "All the light together";

  private final FiguresOf of;

  TargetsView(FiguresOf of) {
    this.of = of;
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
                ID,
                HEADING,
                "Flash and ambient as they reach the sensor. Lights add as light, not as stops: two"
                    + " equal lights are one stop more than one.")
            .with(
                FiguresTable.of(
                    "All the light at each target",
                    List.of(
                        FiguresTable.Column.words("Target"),
                        FiguresTable.Column.figures("Reading"),
                        FiguresTable.Column.rulers("Against the shooting exposure, stops"),
                        FiguresTable.Column.figures("Stops"),
                        FiguresTable.Column.figures("Flash over ambient, stops"),
                        FiguresTable.Column.figures("Key and fill to fill")),
                    of.figures().targets().stream().map(TargetsView::row).toList()));
    for (TargetFigures target : of.figures().targets()) {
      part = part.with(Wording.working(target.working()));
    }
    return part;
  }

  private static FiguresTable.Row row(TargetFigures target) {
    return FiguresTable.Row.of(
        0,
        Wording.capital(target.target().name()),
        FiguresTable.Cell.of(target.reading().tenthsText()).asMain(),
        FiguresTable.Cell.ruler(
            StopRuler.of(target.target().name())
                .withNames("all the light", "")
                .withDot(target.offset().value())
                .withBand(target.uncertainty().value())
                .svg()),
        FiguresTable.Cell.of(Wording.signed(target.offset()))
            .after(Wording.giveOrTake(target.uncertainty())),
        target
            .flashOverAmbient()
            .map(stops -> FiguresTable.Cell.of(Wording.signed(stops)))
            .orElseGet(() -> FiguresTable.Cell.of("–").after("one kind only")),
        target
            .ratio()
            .map(
                ratio ->
                    FiguresTable.Cell.of(
                            String.format(Locale.ROOT, "%.1f : 1", ratio.litToShadow()))
                        .after(contrast(ratio.contrast())))
            .orElseGet(() -> FiguresTable.Cell.of("–").after("one kind only")));
  }

  private static String contrast(Stops contrast) {
    return Wording.stops(contrast.value());
  }
}
