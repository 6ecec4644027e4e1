package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.wording.Figure;

/** Kits, gear, people and archives: full, empty, at length, and filled in wrongly. */
final class StudioPreviews {

  private static final String LONG =
      "Batteryheadthatalwayscomesbackfromthequaywithsandinitsbayonet and one more ";

  private StudioPreviews() {}

  static KitsPage kits() {
    return new KitsPage(
        PagePreviews.layout("Kits"),
        List.of(
            new KitsPage.Card(
                "Van kit", "/demo/kits/v", "4 heads · 9 modifiers · 1 body", "For the quay.", ""),
            new KitsPage.Card(
                LONG.repeat(2),
                "/demo/kits/l",
                "1 head",
                LONG.repeat(5),
                "2 things it asks for are not in order.")),
        "/demo/gear",
        "/demo/kits/new");
  }

  static KitsPage noKits() {
    return new KitsPage(PagePreviews.layout("Kits"), List.of(), "/demo/gear", "");
  }

  static KitPage kit() {
    return new KitPage(
        PagePreviews.layout("Van kit"),
        "Van kit " + LONG,
        LONG.repeat(3),
        List.of(Figure.of("4", "", "heads"), Figure.of("1.60", "kJ", "in one flash of all")),
        List.of("3 of “" + LONG + "” are asked for and 2 are in order."),
        List.of(
            new KitPage.Shelf(
                "Heads",
                List.of(
                    new KitPage.Row(12, "400 W·s battery head", "/demo/gear/h", "400 W·s · 2.7 kg"),
                    new KitPage.Row(1, LONG.repeat(2), "", LONG.repeat(4))))),
        "/demo/setups?q=x",
        "/demo/packing?kit=v",
        "/demo/kits/v/change",
        "/demo/kits");
  }

  static KitEditPage wrongKit() {
    return new KitEditPage(
        PagePreviews.layout("Change Van kit"),
        "Change Van kit",
        "/demo/kits/v/change",
        "/demo/kits/v",
        "c5rf",
        3,
        "",
        LONG,
        List.of(
            new KitEditPage.Shelf(
                "Heads",
                List.of(
                    new KitEditPage.Choice("gear-h", "400 W·s head", "two", "3 in order"),
                    new KitEditPage.Choice("gear-l", LONG.repeat(2), "", "12 in order")))),
        List.of("1 × old umbrella"),
        "/demo/kits/v/removal",
        new FormErrors(
            List.of(
                new FormErrors.FormError("name", "Name must not be empty."),
                new FormErrors.FormError(
                    "gear-h", "How many (“two”) must be a whole number from 0 to 99."))));
  }

  static GearListPage gear() {
    return new GearListPage(
        PagePreviews.layout("Gear"),
        List.of(
            new GearListPage.Shelf(
                "Heads",
                List.of(
                    new GearListPage.Row(
                        5, LONG, "/demo/gear/h", "1 out of order", LONG.repeat(3), "8 readings")))),
        "/demo/kits",
        List.of(new Link("head", "/demo/gear/new?kind=head")));
  }

  static GearListPage noGear() {
    return new GearListPage(PagePreviews.layout("Gear"), List.of(), "/demo/kits", List.of());
  }

  static GearEditPage wrongGear() {
    GearEditPage.Field name =
        new GearEditPage.Field("piece-name", "Name", GearEditPage.Kind.LINE, "", List.of());
    return new GearEditPage(
        PagePreviews.layout("Change " + LONG),
        "Change " + LONG,
        "/demo/gear/h/change",
        "/demo/gear/h",
        "c5rf",
        "head",
        3,
        List.of(
            new GearEditPage.Group(
                "What it gives",
                LONG,
                List.of(
                    name,
                    new GearEditPage.Field(
                        "piece-output-kind",
                        "Known by",
                        GearEditPage.Kind.CHOICE,
                        "reading",
                        List.of(
                            new GearEditPage.Choice("guide_number", "the maker"),
                            new GearEditPage.Choice("reading", "a meter"))),
                    new GearEditPage.Field(
                        "piece-note",
                        "Note",
                        GearEditPage.Kind.PARAGRAPH,
                        LONG.repeat(3),
                        List.of())))),
        List.of(
            new GearEditPage.Group(
                "Noticed 1",
                "",
                List.of(
                    new GearEditPage.Field(
                        "condition-0-date",
                        "Day",
                        GearEditPage.Kind.DATE,
                        "2026-10-03",
                        List.of())))),
        List.of(
            new GearEditPage.Group(
                "Reading 1",
                "",
                List.of(
                    new GearEditPage.Field(
                        "readings-0-metered",
                        "Meter gave f/",
                        GearEditPage.Kind.NUMBER,
                        "soon",
                        List.of())))),
        "/demo/gear/h/removal",
        new FormErrors(
            List.of(
                new FormErrors.FormError("piece-name", "Name must not be empty."),
                new FormErrors.FormError("readings-0-metered", "F number must be a number."),
                new FormErrors.FormError("", "Somebody changed this gear since."))));
  }

  static GearPage gearPiece() {
    FiguresTable readings =
        FiguresTable.of(
            "Readings beside the fit",
            List.of(
                FiguresTable.Column.words("Reading"),
                FiguresTable.Column.figures("Where"),
                FiguresTable.Column.figures("Power"),
                FiguresTable.Column.figures("Metered"),
                FiguresTable.Column.figures("Fit"),
                FiguresTable.Column.figures("Off the fit")),
            List.of(
                FiguresTable.Row.of(
                    0,
                    "1. " + LONG,
                    FiguresTable.Cell.of("2.0 m", ""),
                    FiguresTable.Cell.of("full", ""),
                    FiguresTable.Cell.of("f/22 + 0.7", ""),
                    FiguresTable.Cell.of("f/22 + 0.6", ""),
                    FiguresTable.Cell.of("+0.1", "").asMain()),
                FiguresTable.Row.of(
                    0,
                    "2. head",
                    FiguresTable.Cell.of("2.0 m", ""),
                    FiguresTable.Cell.of("−1.0", ""),
                    FiguresTable.Cell.of("f/11", ""),
                    FiguresTable.Cell.of("f/16 + 0.6", ""),
                    FiguresTable.Cell.of("−1.6", "").after("let go"))));
    return new GearPage(
        PagePreviews.layout("A head"),
        "Heads",
        LONG,
        "× 5, 1 out of order",
        LONG.repeat(3),
        Optional.of(
            new GearPage.Calibrated(
                List.of(Figure.of("58.4", "m", "guide number at ISO 100, ±0.1 in 19 of 20")),
                Optional.empty(),
                Optional.of(readings),
                List.of("Reading 2 is 1.6 stops too low: power dial?"),
                new GearPage.Adopt("/demo/gear/h/calibration", "c5rf", 3))),
        List.of(new GearPage.Noticed("4 May 2031", LONG)),
        List.of(new Link("Van kit", "/demo/kits/v")),
        "Revision 3, by Imke Tal, 4 May 2031",
        "/demo/gear",
        "/demo/gear/h/change");
  }

  static GearPage gearWithoutReadings() {
    return new GearPage(
        PagePreviews.layout("A head"),
        "Heads",
        "A head",
        "× 1",
        "400 W·s",
        Optional.of(GearView.withoutReadings()),
        List.of(),
        List.of(),
        "Revision 1, by Imke Tal, 4 May 2031",
        "/demo/gear",
        "");
  }

  static StudiosPage studios() {
    return new StudiosPage(
        PagePreviews.layout("Your studios"),
        "proof",
        List.of(
            new StudiosPage.One("Veskarn Light", "/demo/setups", "owner", "/studios/x7/name", 2),
            new StudiosPage.One(LONG, "/demo/setups", "reader", "", 0)),
        true,
        FormErrors.of("", "Name of the studio is missing. Type it in."));
  }

  static PeoplePage people() {
    return new PeoplePage(
        PagePreviews.layout("People"),
        List.of(
            new PeoplePage.One("Imke Tal", "owner", true, "owner", 1, "/studios/x7/people/a1"),
            new PeoplePage.One(LONG, "reader", false, "reader", 2, "/studios/x7/people/b2")),
        List.of("owner", "author", "crew", "reader"),
        List.of(
            new PeoplePage.Row("read setups", List.of(true, true, true, true)),
            new PeoplePage.Row("manage who belongs to it", List.of(true, false, false, false))),
        Optional.of(
            new PeoplePage.Managing(
                "proof",
                "/demo/audit",
                "/studios/x7/people/invitations",
                List.of(
                    new PeoplePage.Choice("owner", "owner"),
                    new PeoplePage.Choice("reader", "reader")),
                List.of(new PeoplePage.Open(LONG, "crew", "5 December 2026, 13:00 UTC", "/x7")),
                Optional.of(new PeoplePage.Handed("The link", "http://127.0.0.1/invitations/x7")),
                "",
                "7",
                FormErrors.of(PeoplePage.DAYS, "Days (90) must be 1 to 30."))));
  }

  static IndexPage index() {
    return new IndexPage(
        PagePreviews.layout("Search index"),
        List.of(
            Figure.of("74", "", "setups found by searching"),
            Figure.of("0.3", "s", "behind the last change")),
        List.of("It shows everything that is kept.", LONG),
        Optional.of(
            new IndexPage.Work(
                12,
                75,
                "12 of 75 setups",
                "400 a second, 2 s left",
                "{0} of {1} setups",
                "{0} a second, {1} s left",
                "/api/demo/index")),
        "",
        "",
        "/demo/index/stop",
        "c5rf",
        "/demo/index",
        "/demo/archive");
  }

  static ArchivePage archive() {
    return new ArchivePage(
        PagePreviews.layout("Archive"),
        "/api/demo/archive",
        "/demo/index",
        new ArchivePage.BringIn("/demo/archive", "c5rf", "20 GB"),
        new FormErrors(
            List.of(
                new FormErrors.FormError(
                    "file", "The archive ended before it was complete. Send it again."))));
  }

  static ImportPage running() {
    return imported(
        "Coming in",
        Optional.of(
            new ImportPage.Work(
                12, 40, "12 of 40 steps", "{0} of {1} steps", "/api/demo/imports/i")),
        List.of());
  }

  static ImportPage faulty() {
    return imported(
        "Not sound", Optional.empty(), List.of("data/setups.jsonl, 3: " + LONG.repeat(2)));
  }

  private static ImportPage imported(
      String state, Optional<ImportPage.Work> work, List<String> faults) {
    return new ImportPage(
        PagePreviews.layout("An archive comes in"),
        state,
        "Nothing is changed yet.",
        work,
        Optional.of(
            new ImportPage.Plan(
                "The whole studio “" + LONG + "”, made 4 May 2031.",
                List.of(new ImportPage.Row("Setups", 3, 1, 2)),
                List.of("Names that come in without being members here: Imke Tal."),
                List.of(new ImportPage.Item(LONG, "setup", "clashes with what is here", true)))),
        faults,
        work.isPresent() ? "" : "/demo/imports/i/execution",
        "/demo/imports/i/removal",
        "c5rf",
        "/demo/imports/i",
        "/demo/archive");
  }
}
