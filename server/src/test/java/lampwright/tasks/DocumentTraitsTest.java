package lampwright.tasks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.colour.Key;
import lampwright.engine.sun.PlaceOnEarth;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.search.filter.EarthPoint;
import lampwright.search.filter.Trait;
import lampwright.search.filter.Traits;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.signature.PictureSignature;
import lampwright.setup.signature.PictureSignature.Shade;
import lampwright.web.Documents;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DocumentTraitsTest {

  private static Occasion occasion(
      double latitude, double longitude, LocalDate date, LocalTime time, ZoneOffset offset) {
    return new Occasion(
        Optional.of(
            new Occasion.Place(
                "Pier",
                Optional.empty(),
                Optional.of(false),
                Optional.of(new Degrees(latitude)),
                Optional.of(new Degrees(longitude)),
                Optional.empty())),
        Optional.of(date),
        Optional.of(time),
        Optional.of(offset),
        Optional.empty(),
        Optional.empty());
  }

  // Greenwich, 21 June 2024: the sun rises at 3:43 and sets at 20:21 universal time (US Naval
  // Observatory, Complete Sun and Moon Data for One Day); what is called what is common practice.
  @ParameterizedTest
  @CsvSource({
    "00:00, night",
    "03:30, dawn",
    "03:50, dawn",
    "08:00, morning",
    "12:00, midday",
    "15:00, afternoon",
    "20:10, dusk",
    "20:40, dusk"
  })
  void theTimeOfDayIsToldByTheSun(LocalTime time, String word) {
    LocalDate midsummer = LocalDate.of(2024, 6, 21);
    assertEquals(
        Optional.of(word), TimesOfDay.of(occasion(51.4779, 0, midsummer, time, ZoneOffset.UTC)));
    // The same moment by clocks elsewhere is the same time of day at the place.
    assertEquals(
        Optional.of(word),
        TimesOfDay.of(
            occasion(
                51.4779,
                0,
                midsummer.atTime(time).plusHours(9).toLocalDate(),
                time.plusHours(9),
                ZoneOffset.ofHours(9))));
  }

  @ParameterizedTest
  @CsvSource({
    "05:00, dawn",
    "10:59, morning",
    "12:00, midday",
    "17:00, afternoon",
    "21:00, dusk",
    "22:00, night",
    "04:59, night"
  })
  void theTimeOfDayIsToldByTheClockWhereTheSunIsNotKnown(LocalTime time, String word) {
    Occasion bare =
        new Occasion(
            Optional.empty(),
            Optional.empty(),
            Optional.of(time),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    assertEquals(Optional.of(word), TimesOfDay.of(bare));
  }

  // By whole months: World Meteorological Organization, WMO-No. 100.
  @ParameterizedTest
  @CsvSource({
    "2024-12-01, winter, summer", "2024-02-29, winter, summer", "2024-03-01, spring, autumn",
    "2024-06-01, summer, winter", "2024-08-31, summer, winter", "2024-11-30, autumn, spring"
  })
  void theSeasonIsThatOfTheHemisphere(LocalDate day, String north, String south) {
    LocalTime noon = LocalTime.NOON;
    assertEquals(Optional.of(north), Seasons.of(occasion(53, 0, day, noon, ZoneOffset.UTC)));
    assertEquals(Optional.of(south), Seasons.of(occasion(-33, 18, day, noon, ZoneOffset.UTC)));
  }

  @Test
  void aDocumentSaysWhatItHas() {
    SetupDocument setup = setup();
    Traits traits = DocumentTraits.of(setup, Optional.empty()).build();
    assertEquals(
        Map.of(Trait.APERTURE, 5.6, Trait.ISO, 100.0, Trait.YEAR, 2024.0, Trait.MODIFIER, 1.2),
        traits.numbers());
    assertEquals(
        Map.of(
            Trait.GEAR, List.of("octagon"),
            Trait.INSIDE, List.of("outdoors"),
            Trait.SEASON, List.of("autumn"),
            Trait.TIME_OF_DAY, List.of("midday")),
        traits.words());
    assertEquals(Optional.of(new EarthPoint(53.2, 0.3)), traits.point());
  }

  @Test
  void whereItsOwnPlaceHasNoPointThatOfItsLocationCounts() {
    Optional<PlaceOnEarth> south =
        Optional.of(PlaceOnEarth.of(new Degrees(-33.9), new Degrees(18.4)));
    assertEquals(
        Optional.of(new EarthPoint(53.2, 0.3)), DocumentTraits.of(setup(), south).build().point());

    Map<String, Object> bare = new LinkedHashMap<>(Documents.setup("Pier"));
    bare.put("occasion", Map.of("place", Map.of("name", "Pier"), "date", "2024-10-03"));
    SetupDocument setup = StoredDocuments.read(SetupDocument.FORM, Documents.json(bare));
    Traits there = DocumentTraits.of(setup, south).build();
    assertEquals(Optional.of(new EarthPoint(-33.9, 18.4)), there.point());
    assertEquals(List.of("spring"), there.words().get(Trait.SEASON));
    assertEquals(Optional.empty(), DocumentTraits.of(setup, Optional.empty()).build().point());
  }

  @Test
  void aPictureIsFilteredByTheWordsOfItsSignature() {
    Traits.Builder traits = Traits.builder();
    PictureSignature picture =
        PictureSignature.of(
            Key.LOW, new Stops(6), -8, List.of(new Shade(0x148a8c, 0.2), new Shade(0, 0.7)));
    SignatureTraits.add(traits, picture);
    assertEquals(
        Map.of(
            Trait.PICTURE_KEY, List.of("low key"),
            Trait.CONTRAST, List.of("high contrast"),
            Trait.WARMTH, List.of("cool"),
            Trait.COLOUR, List.of("black", "teal")),
        traits.build().words());
  }

  private static SetupDocument setup() {
    Map<String, Object> light = new LinkedHashMap<>(Documents.light("key"));
    light.put(
        "modifier",
        Map.of(
            "name", "octa", "kind", "octagon", "face", Map.of("shape", "disc", "diameter_m", 1.2)));
    Map<String, Object> setup = Documents.with(Documents.setup("Pier"), "lights", List.of(light));
    setup.put(
        "occasion",
        Map.of(
            "place",
            Map.of("name", "Pier", "indoors", false, "latitude_deg", 53.2, "longitude_deg", 0.3),
            "date",
            "2024-10-03",
            "time",
            "12:40",
            "utc_offset",
            "+01:00"));
    return StoredDocuments.read(SetupDocument.FORM, Documents.json(setup));
  }
}
