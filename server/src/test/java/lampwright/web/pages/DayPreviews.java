package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.MeteredLine;
import lampwright.drawing.StopRuler;
import lampwright.engine.unit.Stops;
import lampwright.wording.Deviation;
import lampwright.wording.Figure;
import lampwright.wording.Wording;

/** Locations and the log of the day: full, empty, at length, and filled in wrongly. */
final class DayPreviews {

  private static final String LONG =
      "Harbourmasterofficestaircaseundertheemergencylamp and what came before ";

  private DayPreviews() {}

  static TakesPage takes(String words) {
    return new TakesPage(
        PagePreviews.layout("Takes"),
        "Last ferry" + words,
        "/demo/setups/k3v9",
        "Number 4 is taken back.",
        Optional.of(take("t1", words, FormErrors.none())),
        Optional.of(takeForm(FormErrors.none())),
        List.of(take("t0", words, FormErrors.of("why-take-t0", "Why must be shorter."))),
        "/demo/takes?cursor=1-t1",
        List.of(
            new TakesPage.NoteCard("Sandbag the boom." + words, "Imke Tal", "On the light key")),
        Optional.of(new TakesPage.NoteForm("/demo/notes", "c5rf", "", FormErrors.none())));
  }

  static TakesPage.TakeCard take(String id, String words, FormErrors errors) {
    Wording english = new Wording(PagePreviews.layout("Takes").notation());
    return new TakesPage.TakeCard(
        "take-" + id,
        "Take 3",
        "19:13, 12 September 2025",
        "Kept",
        true,
        "The best of the hands." + words,
        "Rim a step to the left." + words,
        List.of(
            new MeteredLine(
                "Key" + words,
                "f/8",
                "f/11",
                "±0.6",
                Optional.of(Deviation.of(new Stops(-1), english)),
                StopRuler.of("Key", english.notation()).withDot(-1).withBar(0).svg(),
                "Key 1.0 stop under: about 0.6 m closer, or 1.0 stop up, to 1/4.")),
        Optional.of(
            new TakesPage.Correction(
                "/demo/takes/" + id,
                "c5rf",
                1,
                "The best of the hands.",
                meters("-take-" + id),
                "/demo/takes/" + id + "/withdrawal",
                !errors.isEmpty(),
                errors)),
        Optional.of(
            new KeepingForm(
                "/demo/takes/" + id + "/readings",
                "c5rf",
                4,
                List.of(
                    new KeepingForm.Chosen("reading-of-key", "Key" + words, true),
                    new KeepingForm.Chosen("reading-of-rim-left", "Rim left", false)),
                !errors.isEmpty(),
                errors)));
  }

  private static List<MeterField> meters(String place) {
    return List.of(
        new MeterField("reading-key" + place, "reading-key", "tenths-key", "Key", "f/11", "", ""),
        new MeterField(
            "reading-rim-left" + place,
            "reading-rim-left",
            "tenths-rim-left",
            "Rim left",
            "f/4 + 0.9",
            "4",
            "7"));
  }

  static TakesPage longTakes() {
    return takes(" " + LONG.repeat(4));
  }

  static TakesPage noTakes() {
    return takes(Optional.empty());
  }

  static TakesPage wrongTake() {
    return takes(
        Optional.of(
            takeForm(FormErrors.of("reading-key", "F-number (\"bright\") must be a number."))));
  }

  private static TakesPage takes(Optional<TakeForm> form) {
    return new TakesPage(
        PagePreviews.layout("Takes"),
        "Last ferry",
        "/demo/setups/k3v9",
        "",
        Optional.empty(),
        form,
        List.of(),
        "",
        List.of(),
        Optional.empty());
  }

  private static TakeForm takeForm(FormErrors errors) {
    return new TakeForm(
        "/demo/takes",
        "c5rf",
        4,
        "clientkey",
        3,
        "2025-09-12T19:13",
        "+01:00",
        false,
        "",
        "",
        List.of(new TakeForm.Reason("reason-face", "The face", true)),
        List.of(new TakeForm.Reason("reason-eyes", "Eyes shut", false)),
        meters(""),
        errors);
  }

  static LocationsPage locations() {
    return new LocationsPage(
        PagePreviews.layout("Locations"),
        List.of(
            new LocationsPage.Card("The slipway", "/demo/locations/s1", "harbour", "2 hazards"),
            new LocationsPage.Card(LONG.repeat(3), "/demo/locations/s2", LONG, "")),
        "/demo/locations?cursor=1-s2",
        "/demo/locations/new");
  }

  static LocationsPage noLocations() {
    return new LocationsPage(PagePreviews.layout("Locations"), List.of(), "", "");
  }

  static LocationPage location() {
    return new LocationPage(
        PagePreviews.layout("The slipway"),
        "The slipway",
        "harbour · 50.3500°, −4.1500°",
        List.of("Wet stone below the tide line.", LONG),
        "By the yard gate.",
        "Mains, 2 outlets, 16 A a circuit.",
        List.of(
            new LocationPage.Permission("The harbour office.", "until 4 May 2031", false),
            new LocationPage.Permission("The yard.", "over since 1 January 2024", true)),
        sun(Optional.of("Date must be a day such as 2025-09-12. Today is shown.")),
        List.of(
            new LocationPage.Reading(
                "12 September 2025, 19:13", "9.0", "incident, the sky", "overcast", LONG)),
        Optional.empty(),
        List.of(new Link("Last ferry, north quay", "/demo/setups/k3v9")),
        "High water covers the lower third.",
        "/demo/locations/s1/change",
        "/demo/locations");
  }

  static LocationPage bareLocation() {
    return new LocationPage(
        PagePreviews.layout("The kitchen"),
        "The kitchen",
        "50.3500°, −4.1500°",
        List.of(),
        "",
        "",
        List.of(),
        sun(Optional.empty()),
        List.of(),
        Optional.empty(),
        List.of(),
        "",
        "",
        "/demo/locations");
  }

  private static LocationPage.Sun sun(Optional<String> dateError) {
    return new LocationPage.Sun(
        "/demo/locations/s1",
        "2025-09-12",
        "by clocks +01:00 of universal time",
        dateError,
        List.of(Figure.of("13:12", "", "highest sun")),
        List.of(new LocationPage.Turn("Sun on the horizon", "06:47", "19:36")),
        Optional.empty(),
        List.of(
            new LocationPage.Moment("00:00", "−33°", "338°", ""),
            new LocationPage.Moment("12:00", "41°", "156°", "14.8")));
  }

  static LocationForm wrongForm() {
    return new LocationForm(
        PagePreviews.layout("A new location"),
        "A new location",
        "/demo/locations/new",
        "/demo/locations",
        "c5rf",
        0,
        new LocationForm.Fields(
            "Quarry", "", "91", "1", "", "", "", "yes", "", "", "", "Loose stone.", ""),
        new FormErrors(
            List.of(
                new FormErrors.FormError("latitude_deg", "Latitude (91°) must be at most 90°."))));
  }
}
