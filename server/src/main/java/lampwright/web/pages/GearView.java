package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.drawing.CalibrationPlot;
import lampwright.gear.calibration.Calibration;
import lampwright.gear.calibration.CalibrationReading;
import lampwright.gear.calibration.Outlier;
import lampwright.gear.stock.GearItem;
import lampwright.language.Notation;
import lampwright.tasks.CalibratedGear;
import lampwright.tasks.KeptGear;
import lampwright.wording.Figure;
import lampwright.wording.Wording;

/** A piece of gear in words and figures. */
record GearView(Notation notation, KeptGear gear) {

  /** Where the fit trusts a reading less than this, it is marked. */
  private static final double TRUSTED = 0.5;

  GearListPage.Row row(String path) {
    GearItem item = gear.document();
    return new GearListPage.Row(
        item.count(),
        item.name(),
        path,
        item.outOfOrder() == 0 ? "" : notation.count("studio.gear.out_of_order", item.outOfOrder()),
        new PieceWords(notation).facts(item.piece()),
        item.readings().isEmpty()
            ? ""
            : notation.count("studio.gear.readings", item.readings().size()));
  }

  String count() {
    GearItem item = gear.document();
    String count = "× " + item.count();
    return item.outOfOrder() == 0
        ? count
        : count + ", " + notation.count("studio.gear.out_of_order", item.outOfOrder());
  }

  List<GearPage.Noticed> condition() {
    return gear.document().condition().stream()
        .map(
            note ->
                new GearPage.Noticed(
                    new DayWords(new Wording(notation)).day(note.date()), note.note()))
        .toList();
  }

  /** What the readings say, and the form that adopts it. */
  GearPage.Calibrated calibrated(CalibratedGear found, GearPage.Adopt adopt) {
    Calibration calibration = found.calibration();
    List<Figure> figures = new ArrayList<>();
    calibration.heads().stream()
        .filter(head -> head.name().equals(gear.document().name()))
        .forEach(
            head ->
                figures.add(
                    Figure.of(
                        notation.fixed(head.guideNumber().metresAtIso100(), 1),
                        "m",
                        say("guide_number")
                            + ", "
                            + say(
                                "within95",
                                notation.size(head.uncertainty().within95().value())))));
    calibration.modifiers().stream()
        .filter(modifier -> modifier.name().equals(gear.document().name()))
        .forEach(
            modifier ->
                figures.add(
                    Figure.of(
                        notation.size(modifier.loss().value()),
                        say("stops"),
                        say("loss", notation.length(Calibration.REFERENCE))
                            + ", "
                            + say(
                                "within95",
                                notation.size(modifier.uncertainty().within95().value())))));
    figures.add(
        Figure.of(notation.size(calibration.scatter().value()), say("stops"), say("scatter")));
    return new GearPage.Calibrated(
        figures,
        Optional.of(
            new DrawingView(
                CalibrationPlot.of(calibration, notation),
                "",
                CalibrationPlot.table(calibration, notation))),
        Optional.of(readings(calibration)),
        sentences(found),
        adopt);
  }

  /** Where there are no readings. */
  static GearPage.Calibrated withoutReadings() {
    return new GearPage.Calibrated(
        List.of(), Optional.empty(), Optional.empty(), List.of(), new GearPage.Adopt("", "", 0));
  }

  private FiguresTable readings(Calibration calibration) {
    List<CalibrationReading> readings = gear.document().readings();
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < Math.min(readings.size(), calibration.readings().size()); i++) {
      rows.add(row(readings.get(i), calibration.readings().get(i)));
    }
    return FiguresTable.of(
        say("readings_beside_fit"),
        List.of(
            FiguresTable.Column.words(say("column.reading")),
            FiguresTable.Column.figures(say("column.where")),
            FiguresTable.Column.figures(say("column.power")),
            FiguresTable.Column.figures(say("column.metered")),
            FiguresTable.Column.figures(say("column.fit")),
            FiguresTable.Column.figures(say("column.off"))),
        rows);
  }

  private FiguresTable.Row row(CalibrationReading reading, Calibration.FittedReading fitted) {
    FiguresTable.Cell off = FiguresTable.Cell.of(notation.signed(fitted.residual()), "");
    return FiguresTable.Row.of(
        0,
        fitted.number()
            + ". "
            + reading
                .modifier()
                .map(modifier -> reading.head() + ", " + modifier)
                .orElse(reading.head()),
        FiguresTable.Cell.of(notation.length(reading.distance()), ""),
        FiguresTable.Cell.of(
            reading.stopsDown().value() == 0
                ? say("full")
                : notation.signed(reading.stopsDown().negated()),
            ""),
        FiguresTable.Cell.of(
            notation.written(reading.fNumber().withTenths(reading.tenths()).tenthsText()), ""),
        FiguresTable.Cell.of(notation.written(fitted.expected().tenthsText()), ""),
        fitted.weight() >= TRUSTED ? off.asMain() : off.after(say("let_go")));
  }

  private static List<String> sentences(CalibratedGear found) {
    return Stream.of(
            found.calibration().outliers().stream().map(GearView::sentence),
            found.calibration().undetermined().stream(),
            found.assumed().stream())
        .flatMap(lines -> lines)
        .toList();
  }

  private static String sentence(Outlier outlier) {
    return outlier.sentence();
  }

  private String say(String key, Object... parts) {
    return notation.say("studio.gear." + key, parts);
  }
}
