package lampwright.drawing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.Label.Kind;
import lampwright.drawing.Label.Side;
import lampwright.drawing.Label.Wish;
import lampwright.engine.sun.Crossing;
import lampwright.engine.sun.Encounter;
import lampwright.engine.sun.HalfDay;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.SunPhase;
import lampwright.engine.sun.SunPosition;
import lampwright.language.Notation;
import lampwright.place.SunOfDay;

/**
 * The sun's way through a day: its elevation, without air, over the hours of the place's clocks,
 * with the bearings at the frame's head. Golden and blue hour are bands, as {@link SunPhase} bounds
 * them.
 */
public final class SunTrack {

  private static final double TOP = 40;
  private static final double BOTTOM = 360;
  private static final double HEIGHT = 404;
  private static final int HOURS = 24;
  private static final double LOWEST_DEG = -18;
  private static final double DOT = 7;

  private final SunOfDay day;
  private final Optional<Instant> moment;
  private final Notation notation;
  private final HourOfDay hours;
  private final Chart chart;

  private SunTrack(SunOfDay day, Optional<Instant> moment, Notation notation) {
    this.day = day;
    this.moment = moment;
    this.notation = notation;
    this.hours = new HourOfDay(day.date(), day.offset());
    double highest = Math.max(12, day.noon().sun().geometricElevation().value() + 6);
    this.chart = Chart.between(TOP, BOTTOM, 0, HOURS, LOWEST_DEG, highest);
  }

  /** The chart of a day. */
  public static Svg of(SunOfDay day, Notation notation) {
    return new SunTrack(day, Optional.empty(), notation).svg();
  }

  /** The chart of a day with a moment of it marked. */
  public static Svg of(SunOfDay day, Instant moment, Notation notation) {
    return new SunTrack(day, Optional.of(moment), notation).svg();
  }

  /** Hour by hour while it is not night: clock, height, bearing and what the light is called. */
  public static DrawingTable table(SunOfDay day, Notation notation) {
    HourOfDay hours = new HourOfDay(day.date(), day.offset());
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < day.track().size() - 1; i += 2) {
      SunPosition sun = day.track().get(i).sun();
      if (sun.geometricElevation().value() >= LOWEST_DEG) {
        rows.add(
            List.of(
                hours.clock(day.track().get(i).at()),
                notation.fixed(sun.elevation().value(), 0) + "°",
                Places.bearing(sun.azimuth()),
                phase(sun.phase(), notation)));
      }
    }
    return new DrawingTable(
        List.of(
            notation.say("drawing.clock"),
            notation.say("drawing.elevation"),
            notation.say("drawing.bearing_head"),
            notation.say("drawing.light_called")),
        rows);
  }

  private static String phase(SunPhase phase, Notation notation) {
    return notation.say(
        switch (phase) {
          case DAY -> "drawing.phase.day";
          case GOLDEN_SUN_UP, GOLDEN_SUN_DOWN -> "drawing.phase.golden";
          case BLUE_HOUR -> "drawing.phase.blue";
          case NAUTICAL_TWILIGHT -> "drawing.phase.nautical";
          case ASTRONOMICAL_TWILIGHT -> "drawing.phase.astronomical";
          case NIGHT -> "drawing.phase.night";
        });
  }

  private Svg svg() {
    Markup body = new Markup();
    double golden = SunPhase.DAY.lowest().value();
    double blue = SunPhase.GOLDEN_SUN_DOWN.lowest().value();
    chart.band(body, "chart-golden", blue, golden);
    chart.band(body, "chart-blue", SunPhase.BLUE_HOUR.lowest().value(), blue);
    List<Chart.Tick> clock = new ArrayList<>();
    for (int hour : Chart.whole(0, HOURS, 3)) {
      clock.add(new Chart.Tick(hour, Integer.toString(hour)));
    }
    List<Chart.Tick> heights = new ArrayList<>();
    int step = chart.toY() > 45 ? 20 : 10;
    for (int degrees : Chart.whole(LOWEST_DEG, chart.toY() - 3, step)) {
      heights.add(new Chart.Tick(degrees, notation.fixed(degrees, 0) + "°"));
    }
    chart.draw(body, clock, heights);
    drawBearings(body);
    body.path("plan-ground", new Strokes().line(chart.across(0)));
    chart.line(body, "chart-line", curve());
    markMoment(body);
    PlacedLabels labels = new PlacedLabels(Chart.FORMAT, labels());
    labels.drawLeaders(body);
    labels.draw(body);
    return Chart.svg(
        "sun", HEIGHT, notation.say("drawing.sun_track", day.date()), description(), body);
  }

  private List<Spot> curve() {
    return day.track().stream()
        .map(at -> chart.spot(hours.hours(at.at()), at.sun().geometricElevation().value()))
        .toList();
  }

  /** Where it stands on the compass, at every third hour that is not night. */
  private void drawBearings(Markup body) {
    Strokes ticks = new Strokes();
    for (int i = 0; i < day.track().size(); i += 6) {
      SunOfDay.Moment at = day.track().get(i);
      if (at.sun().geometricElevation().value() >= SunPhase.BLUE_HOUR.lowest().value()) {
        Spot head = new Spot(chart.spot(hours.hours(at.at()), 0).x(), TOP);
        ticks.from(head).to(head.plus(new Spot(0, 7)));
        Chart.figure(
            body, Places.bearing(at.sun().azimuth()), "middle", head.plus(new Spot(0, -16)));
      }
    }
    body.path("plan-tick", ticks);
  }

  private Optional<SunPosition> atMoment() {
    return moment.map(Observer.of(day.place())::position);
  }

  private Optional<Spot> momentSpot() {
    return atMoment()
        .map(sun -> chart.spot(hours.hours(moment.orElseThrow()), sun.geometricElevation().value()))
        .filter(chart.frame()::contains);
  }

  private void markMoment(Markup body) {
    momentSpot()
        .ifPresent(
            at -> {
              body.path(
                  "chart-moment",
                  new Strokes()
                      .from(new Spot(at.x(), chart.frame().bottom()))
                      .to(new Spot(at.x(), at.y() + DOT)));
              body.circle("plan-sun", at, DOT);
            });
  }

  private List<Label.Placed> labels() {
    LabelPlacer placer = new LabelPlacer(Chart.FORMAT, chart.frame());
    List<Spot> curve = curve();
    for (int i = 1; i < curve.size(); i++) {
      placer.avoid(new Segment(curve.get(i - 1), curve.get(i)), 30);
    }
    placer.avoid(chart.across(0), 10);
    List<Label> labels = new ArrayList<>();
    double half = TextSize.line(Chart.FORMAT.words) / 2;
    momentSpot()
        .ifPresent(
            at -> {
              placer.keepFree(Box.around(at, DOT + 2, DOT + 2));
              SunPosition sun = atMoment().orElseThrow();
              double height = sun.elevation().value();
              String words =
                  notation.say(
                      height > 0 ? "drawing.sun_up" : "drawing.sun_down",
                      notation.fixed(Math.abs(height), 0),
                      Places.bearing(sun.azimuth()));
              labels.add(
                  new Label(
                      hours.clock(moment.orElseThrow()) + " " + words,
                      Kind.WORDS,
                      at,
                      Wishes.around(at, DOT + 8, half),
                      95,
                      60));
            });
    for (SunOfDay.Turn turn : day.turns()) {
      if (turn.phase() == SunPhase.GOLDEN_SUN_UP
          && turn.crossing() instanceof Crossing.At(Encounter when)) {
        Spot at = chart.spot(hours.hours(when.at()), 0);
        Side side = turn.half() == HalfDay.RISING ? Side.END : Side.START;
        double off = side == Side.END ? -12 : 12;
        List<Wish> wishes = new ArrayList<>();
        wishes.add(new Wish(at.plus(new Spot(off, -half - 6)), side, 0));
        wishes.addAll(Wishes.around(at, 12, half));
        labels.add(new Label(hours.clock(when.at()), Kind.FIGURE, at, wishes, 80, 60));
      }
    }
    double golden = (SunPhase.DAY.lowest().value() + SunPhase.GOLDEN_SUN_DOWN.lowest().value()) / 2;
    double blue = -5;
    labels.add(band("drawing.phase.golden", golden));
    labels.add(band("drawing.phase.blue", blue));
    return placer.place(labels);
  }

  private Label band(String key, double degrees) {
    List<Wish> wishes = new ArrayList<>();
    for (int step = 0; step <= 12; step++) {
      double x = chart.frame().left() + 12 + step * 50;
      wishes.add(new Wish(new Spot(x, chart.spot(0, degrees).y()), Side.START, step * 2));
    }
    return new Label(
        notation.say(key), Kind.QUIET_WORDS, wishes.getFirst().at(), wishes, 98, 1_000);
  }

  private String description() {
    StringBuilder words = new StringBuilder(160);
    words.append(
        notation.say(
            "drawing.sun_noon",
            hours.clock(day.noon().at()),
            notation.fixed(day.noon().sun().elevation().value(), 0)));
    for (SunOfDay.Turn turn : day.turns()) {
      if (turn.phase() == SunPhase.GOLDEN_SUN_UP
          && turn.crossing() instanceof Crossing.At(Encounter when)) {
        String key = turn.half() == HalfDay.RISING ? "drawing.sun_rises" : "drawing.sun_sets";
        words
            .append(' ')
            .append(
                notation.say(key, hours.clock(when.at()), Places.bearing(when.sun().azimuth())));
      }
    }
    return words.toString();
  }
}
