package lampwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.MeterConstant;
import lampwright.engine.sun.Observer;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.gear.calibration.Calibration;
import lampwright.gear.calibration.CalibrationReading;
import lampwright.gear.calibration.CalibrationSheet;
import lampwright.gear.calibration.HeadOnSheet;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.StopFraction;
import lampwright.place.AmbientReading;
import lampwright.place.SunOfDay;
import lampwright.setup.DemoSeeds;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** The charts: sun, ambient, calibration. */
class ChartsTest {

  private static final PlaceOnEarth QUAY =
      new PlaceOnEarth(new Degrees(54.5), new Degrees(-1), new Metres(0));
  private static final ZoneOffset CLOCK = ZoneOffset.ofHours(1);
  private static final LocalDate DATE = LocalDate.of(2025, 9, 12);

  private static Document read(Svg svg) {
    return Jsoup.parse(svg.markup(), "", Parser.xmlParser());
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.attr(name));
  }

  @Test
  void theMarkedMomentStandsAtTheEnginesElevationAndTheClocksHour() {
    SunOfDay day = SunOfDay.of(QUAY, DATE, CLOCK);
    Instant moment = OffsetDateTime.of(DATE.atTime(15, 0), CLOCK).toInstant();
    Document chart = read(SunTrack.of(day, moment, UsualNotation.READ));
    Element frame = chart.expectFirst("rect.plan-frame");
    Element sun = chart.expectFirst("circle.plan-sun");
    double hour = (number(sun, "cx") - number(frame, "x")) / number(frame, "width") * 24;
    assertEquals(15, hour, 0.01);
    // The golden band runs from -4 to 6 degrees: a scale that the drawing itself carries.
    Element golden = chart.expectFirst("rect.chart-golden");
    double degree = number(golden, "height") / 10;
    double six = number(golden, "y");
    double elevation = 6 + (six - number(sun, "cy")) / degree;
    double engine = Observer.of(QUAY).position(moment).geometricElevation().value();
    assertEquals(engine, elevation, 0.1);
    assertTrue(chart.text().contains("15:00"), chart.text());
  }

  @Test
  void sunsetIsWrittenAsTheEngineHasIt() {
    SunOfDay day = SunOfDay.of(QUAY, DATE, CLOCK);
    Document chart = read(SunTrack.of(day, UsualNotation.READ));
    // Sun at -0.833 degrees; within a minute of the crossing told in words.
    String words = chart.expectFirst("desc").text();
    String sunset = words.replaceAll(".*Down at ([0-9:]+),.*", "$1");
    Instant at = DATE.atTime(LocalTime.parse(sunset)).toInstant(CLOCK);
    assertEquals(-0.833, Observer.of(QUAY).position(at).geometricElevation().value(), 0.15);
    assertTrue(chart.select("text.plan-figure").eachText().contains(sunset));
  }

  @Test
  void readingsStandAtTheirHourAndLevelAndSpotReadingsLookOtherwise() {
    List<AmbientReading> readings =
        List.of(
            reading("2025-09-12T19:00:00+01:00", 8, AmbientReading.Meter.INCIDENT),
            reading("2024-06-01T12:00:00+01:00", 14, AmbientReading.Meter.SPOT));
    Document chart =
        read(AmbientByHour.of(readings, SunOfDay.of(QUAY, DATE, CLOCK), UsualNotation.READ));
    Element frame = chart.expectFirst("rect.plan-frame");
    Element dot = chart.expectFirst("circle.chart-dot");
    double share = (number(dot, "cx") - number(frame, "x")) / number(frame, "width");
    assertEquals(19.0, share * 24, 0.01);
    assertEquals(1, chart.select("path.chart-open").size());
    assertEquals(1, chart.select("path.chart-model").size());
    var rows = AmbientByHour.table(readings, UsualNotation.READ).rows();
    assertEquals(List.of("1", "2025-09-12", "19:00", "8.0", "incident"), rows.getFirst());
  }

  private static AmbientReading reading(String at, double level, AmbientReading.Meter how) {
    return new AmbientReading(
        OffsetDateTime.parse(at),
        new Ev100(level),
        how,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void aReadingThatIsAStopOffIsOpenAndNumberedInBothPanels() {
    Calibration calibration = Calibration.of(sheet());
    Document plot = read(CalibrationPlot.of(calibration, UsualNotation.READ));
    assertEquals(List.of(5), calibration.outliers().stream().map(one -> one.number()).toList());
    assertEquals(2, plot.select("circle.chart-off").size());
    Element off = plot.select("circle.chart-off").get(1);
    Element zero = plot.expectFirst("path.plan-contour-zero");
    double zeroY = Double.parseDouble(zero.attr("d").replaceAll("M[0-9.]+ ([0-9.]+)L.*", "$1"));
    assertTrue(number(off, "cy") < zeroY - 30, "well over the zero line");
    assertEquals(7, CalibrationPlot.table(calibration, UsualNotation.READ).rows().size());
  }

  /**
   * Guide number 40 in the dark: f/20 at 2 m, a little scatter, and the fifth reading a stop more.
   */
  private static CalibrationSheet sheet() {
    List<CalibrationReading> readings = new ArrayList<>();
    double[] distances = {1, 1.4, 2, 2.8, 4, 5.6, 8};
    for (int i = 0; i < distances.length; i++) {
      FNumber exact =
          FNumber.of(40 / distances[i]).closedBy(new Stops((i == 4 ? 1 : 0) + (i % 3 - 1) * 0.04));
      readings.add(
          new CalibrationReading(
              "big",
              Optional.empty(),
              exact,
              0,
              Iso.ofMark(100),
              new Metres(distances[i]),
              new Stops(0),
              MeterConstant.FLAT));
    }
    return new CalibrationSheet(
        List.of(new HeadOnSheet("big", Optional.empty(), HeadOnSheet.USUAL_UNCERTAINTY)),
        List.of(),
        readings);
  }

  @Test
  void everyChartIsWellFormedInBothLanguages() {
    Notation german =
        new Notation(PhraseFiles.read(Language.GERMAN), LengthUnit.FEET, StopFraction.THIRDS);
    for (Notation notation : List.of(UsualNotation.READ, german)) {
      DrawingChecks.checkMarkup(CalibrationPlot.of(Calibration.of(sheet()), notation), "plot");
      new DemoSeeds()
          .locations()
          .forEach(
              (name, place) -> {
                SunOfDay day = SunOfDay.of(place.onEarth(), DATE, CLOCK);
                DrawingChecks.checkMarkup(SunTrack.of(day, notation), name);
                DrawingChecks.checkMarkup(
                    AmbientByHour.of(place.ambientReadings(), day, notation), name);
              });
    }
  }

  /** At 78 degrees north in June the sun never sets, in December it never rises. */
  @Test
  void polarDaysHaveACurveAndNoClockOfSunset() {
    PlaceOnEarth north = new PlaceOnEarth(new Degrees(78), new Degrees(16), new Metres(0));
    for (int month : new int[] {6, 12}) {
      SunOfDay day = SunOfDay.of(north, LocalDate.of(2025, month, 21), CLOCK);
      Svg chart = SunTrack.of(day, UsualNotation.READ);
      DrawingChecks.checkMarkup(chart, "month " + month);
      assertFalse(read(chart).expectFirst("desc").text().contains("Down at"));
    }
  }
}
