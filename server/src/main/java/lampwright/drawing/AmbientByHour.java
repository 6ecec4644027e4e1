package lampwright.drawing;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import lampwright.drawing.Label.Kind;
import lampwright.engine.exposure.MeterConstant;
import lampwright.language.Notation;
import lampwright.place.AmbientReading;
import lampwright.place.SunOfDay;

/**
 * The ambient readings of a location over the hours of its clocks, whatever their day, as levels at
 * ISO 100, with what a clear sky would give on a level plane on the day that is looked at. Incident
 * readings are filled dots, spot readings open squares, which say nothing of what falls on a plane.
 */
public final class AmbientByHour {

  private static final double TOP = 16;
  private static final double BOTTOM = 336;
  private static final double HEIGHT = 380;
  private static final int HOURS = 24;
  private static final double DOT = 6;

  private final List<AmbientReading> readings;
  private final SunOfDay day;
  private final Notation notation;
  private final Chart chart;

  private AmbientByHour(List<AmbientReading> readings, SunOfDay day, Notation notation) {
    this.readings = List.copyOf(readings);
    this.day = day;
    this.notation = notation;
    double[] levels =
        DoubleStream.concat(
                readings.stream().mapToDouble(reading -> reading.level().value()),
                day.track().stream()
                    .flatMap(at -> at.clearSky().stream())
                    .mapToDouble(sky -> sky.ev100(MeterConstant.FLAT).value()))
            .toArray();
    double low = DoubleStream.of(levels).min().orElse(0);
    double high = DoubleStream.of(levels).max().orElse(16);
    this.chart = Chart.between(TOP, BOTTOM, 0, HOURS, Math.floor(low) - 1, Math.ceil(high) + 1.5);
  }

  /** The chart; numbers are those of the table. */
  public static Svg of(List<AmbientReading> readings, SunOfDay day, Notation notation) {
    return new AmbientByHour(readings, day, notation).svg();
  }

  /** The readings in their order, numbered. */
  public static DrawingTable table(List<AmbientReading> readings, Notation notation) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      AmbientReading reading = readings.get(i);
      rows.add(
          List.of(
              Integer.toString(i + 1),
              reading.at().toLocalDate().toString(),
              clock(reading),
              notation.fixed(reading.level().value(), 1),
              notation.say(
                  reading.how() == AmbientReading.Meter.SPOT
                      ? "drawing.spot_reading"
                      : "drawing.incident_reading")));
    }
    return new DrawingTable(
        List.of(
            notation.say("drawing.number"),
            notation.say("drawing.day"),
            notation.say("drawing.clock"),
            notation.say("drawing.ev100"),
            notation.say("drawing.metered_how")),
        rows);
  }

  private static String clock(AmbientReading reading) {
    return reading.at().toLocalTime().withSecond(0).withNano(0).toString();
  }

  private Svg svg() {
    Markup body = new Markup();
    List<Chart.Tick> clock = new ArrayList<>();
    for (int hour : Chart.whole(0, HOURS, 3)) {
      clock.add(new Chart.Tick(hour, Integer.toString(hour)));
    }
    List<Chart.Tick> levels = new ArrayList<>();
    int step = chart.toY() - chart.fromY() > 10 ? 4 : 2;
    for (int level : Chart.whole(chart.fromY(), chart.toY() - 1, step)) {
      levels.add(new Chart.Tick(level, notation.fixed(level, 0)));
    }
    chart.draw(body, clock, levels);
    chart.line(body, "chart-line chart-model", sky());
    for (AmbientReading reading : readings) {
      Spot at = spot(reading);
      if (reading.how() == AmbientReading.Meter.SPOT) {
        body.path(
            "chart-open",
            new Strokes()
                .from(at.plus(new Spot(-DOT, -DOT)))
                .to(at.plus(new Spot(DOT, -DOT)))
                .to(at.plus(new Spot(DOT, DOT)))
                .to(at.plus(new Spot(-DOT, DOT)))
                .close());
      } else {
        body.circle("chart-dot", at, DOT);
      }
    }
    PlacedLabels labels = new PlacedLabels(Chart.FORMAT, labels());
    labels.drawLeaders(body);
    labels.draw(body);
    return Chart.svg(
        "ambient",
        HEIGHT,
        notation.say("drawing.ambient_by_hour"),
        notation.count("drawing.ambient_shows", readings.size()),
        body);
  }

  private List<Spot> sky() {
    HourOfDay hours = new HourOfDay(day.date(), day.offset());
    List<Spot> sky = new ArrayList<>();
    for (SunOfDay.Moment at : day.track()) {
      at.clearSky()
          .ifPresent(
              of ->
                  sky.add(chart.spot(hours.hours(at.at()), of.ev100(MeterConstant.FLAT).value())));
    }
    return sky;
  }

  private Spot spot(AmbientReading reading) {
    LocalTime at = reading.at().toLocalTime();
    return chart.spot(at.toSecondOfDay() / 3600.0, reading.level().value());
  }

  private List<Label.Placed> labels() {
    LabelPlacer placer = new LabelPlacer(Chart.FORMAT, chart.frame());
    double half = TextSize.line(Chart.FORMAT.figures) / 2;
    List<Spot> sky = sky();
    for (int i = 1; i < sky.size(); i++) {
      placer.avoid(new Segment(sky.get(i - 1), sky.get(i)), 20);
    }
    List<Label> labels = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      Spot at = spot(readings.get(i));
      placer.keepFree(Box.around(at, DOT + 1, DOT + 1));
      labels.add(
          new Label(
              Integer.toString(i + 1), Kind.FIGURE, at, Wishes.around(at, DOT + 5, half), 60, 40));
    }
    if (!sky.isEmpty()) {
      Spot top = sky.get(sky.size() / 2);
      labels.add(
          new Label(
              notation.say("drawing.clear_sky"),
              Kind.QUIET_WORDS,
              top,
              Wishes.around(top, 12, TextSize.line(Chart.FORMAT.words) / 2),
              70,
              80));
    }
    return placer.place(labels);
  }
}
