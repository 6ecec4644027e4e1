package lampwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import lampwright.drawing.Label.Kind;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.MarkedScale;
import lampwright.gear.calibration.Calibration;
import lampwright.gear.calibration.Calibration.FittedReading;
import lampwright.gear.calibration.Outlier;
import lampwright.language.Notation;

/**
 * The readings of a calibration against what its fit says they should be: on the line where they
 * agree. The panel beneath shows the residuals, with a band of twice the scatter. What the other
 * readings contradict is an open dot with its number; one that nothing else checks is an open
 * square.
 */
public final class CalibrationPlot {

  private static final double TOP = 16;
  private static final double MIDDLE = 356;
  private static final double LOWER = 384;
  private static final double BOTTOM = 544;
  private static final double HEIGHT = 588;
  private static final double DOT = 6;
  private static final double LEAST_RESIDUAL = 0.5;

  private final Calibration calibration;
  private final Notation notation;
  private final Set<Integer> outliers;
  private final Chart levels;
  private final Chart residuals;

  private CalibrationPlot(Calibration calibration, Notation notation) {
    this.calibration = calibration;
    this.notation = notation;
    this.outliers =
        calibration.outliers().stream().map(Outlier::number).collect(Collectors.toSet());
    double[] seen =
        calibration.readings().stream()
            .flatMapToDouble(one -> DoubleStream.of(expected(one), metered(one)))
            .toArray();
    double low = Math.floor(DoubleStream.of(seen).min().orElse(3)) - 0.5;
    double high = Math.ceil(DoubleStream.of(seen).max().orElse(7)) + 0.5;
    double most =
        calibration.readings().stream()
            .mapToDouble(one -> Math.abs(one.residual().value()))
            .max()
            .orElse(0);
    double reach = Math.max(LEAST_RESIDUAL, Math.max(most, 2 * scatter()) * 1.2);
    this.levels = Chart.between(TOP, MIDDLE, low, high, low, high);
    this.residuals = Chart.between(LOWER, BOTTOM, low, high, -reach, reach);
  }

  /** The plot. */
  public static Svg of(Calibration calibration, Notation notation) {
    return new CalibrationPlot(calibration, notation).svg();
  }

  /** Reading by reading: what was metered, expected, and left over in stops. */
  public static DrawingTable table(Calibration calibration, Notation notation) {
    return new DrawingTable(
        List.of(
            notation.say("drawing.number"),
            notation.say("drawing.expected"),
            notation.say("drawing.residual")),
        calibration.readings().stream()
            .map(
                one ->
                    List.of(
                        Integer.toString(one.number()),
                        one.expected().toString(),
                        notation.signed(one.residual())))
            .toList());
  }

  private double scatter() {
    return calibration.scatter().value();
  }

  /** In stops from f/1. */
  private static double expected(FittedReading reading) {
    return reading.expected().toApertureValue();
  }

  private static double metered(FittedReading reading) {
    return expected(reading) + reading.residual().value();
  }

  private Svg svg() {
    Markup body = new Markup();
    residuals.band(body, "chart-band", -2 * scatter(), 2 * scatter());
    List<Chart.Tick> apertures = new ArrayList<>();
    int step = levels.toX() - levels.fromX() > 8 ? 2 : 1;
    for (int stop : Chart.whole(levels.fromX(), levels.toX(), step)) {
      double number = StrictMath.exp(stop / 2.0 * StrictMath.log(2));
      apertures.add(
          new Chart.Tick(
              stop, notation.written(FNumber.of(number).markText(MarkedScale.APERTURE_FULL))));
    }
    List<Chart.Tick> none = apertures.stream().map(tick -> new Chart.Tick(tick.at(), "")).toList();
    levels.draw(body, none, apertures);
    List<Chart.Tick> stops = new ArrayList<>();
    double half = residuals.toY() > 1.2 ? 1 : 0.5;
    for (int at = -4; at <= 4; at++) {
      double value = at * half;
      if (Math.abs(value) <= residuals.toY() * 0.9) {
        String sign = value > 0 ? "+" : "";
        stops.add(new Chart.Tick(value, sign + notation.fixed(value, 1)));
      }
    }
    residuals.draw(body, apertures, stops);
    levels.line(
        body,
        "chart-line",
        List.of(
            levels.spot(levels.fromX(), levels.fromY()), levels.spot(levels.toX(), levels.toY())));
    body.path("plan-contour-zero", new Strokes().line(residuals.across(0)));
    for (FittedReading reading : calibration.readings()) {
      dot(body, reading, levels.spot(expected(reading), metered(reading)));
      dot(body, reading, residuals.spot(expected(reading), reading.residual().value()));
    }
    for (List<Label.Placed> placed : List.of(labels(levels, true), labels(residuals, false))) {
      PlacedLabels labels = new PlacedLabels(Chart.FORMAT, placed);
      labels.drawLeaders(body);
      labels.draw(body);
    }
    return Chart.svg(
        "calibration",
        HEIGHT,
        notation.say("drawing.calibration"),
        notation.count(
            "drawing.calibration_shows",
            calibration.readings().size(),
            notation.fixed(scatter(), 2),
            outliers.size()),
        body);
  }

  private void dot(Markup body, FittedReading reading, Spot at) {
    if (outliers.contains(reading.number())) {
      body.circle("chart-open chart-off", at, DOT);
    } else if (reading.checked()) {
      body.circle("chart-dot", at, DOT - 1);
    } else {
      body.path(
          "chart-open",
          new Strokes()
              .from(at.plus(new Spot(-DOT, -DOT)))
              .to(at.plus(new Spot(DOT, -DOT)))
              .to(at.plus(new Spot(DOT, DOT)))
              .to(at.plus(new Spot(-DOT, DOT)))
              .close());
    }
  }

  private List<Label.Placed> labels(Chart chart, boolean upper) {
    LabelPlacer placer = new LabelPlacer(Chart.FORMAT, chart.frame());
    List<Label> labels = new ArrayList<>();
    double half = TextSize.line(Chart.FORMAT.words) / 2;
    for (FittedReading reading : calibration.readings()) {
      double value = upper ? metered(reading) : reading.residual().value();
      Spot at = chart.spot(expected(reading), value);
      placer.avoid(new Segment(at, at), 25);
      if (outliers.contains(reading.number())) {
        placer.keepFree(Box.around(at, DOT + 1, DOT + 1));
        labels.add(
            new Label(
                Integer.toString(reading.number()),
                Kind.FIGURE,
                at,
                Wishes.around(at, DOT + 5, half),
                60,
                40));
      }
    }
    Spot corner = new Spot(chart.frame().left() + 14, chart.frame().top() + half + 8);
    Label name =
        new Label(
            notation.say(upper ? "drawing.metered_against" : "drawing.residual_axis"),
            Kind.QUIET_WORDS,
            corner,
            List.of(
                new Label.Wish(corner, Label.Side.START, 0),
                new Label.Wish(
                    new Spot(chart.frame().right() - 14, corner.y()), Label.Side.END, 10)),
            90,
            1_000);
    labels.add(name);
    return placer.place(labels);
  }
}
