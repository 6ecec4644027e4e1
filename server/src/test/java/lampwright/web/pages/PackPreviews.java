package lampwright.web.pages;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import lampwright.drawing.DaySheet;
import lampwright.setup.DemoSeeds;
import lampwright.setup.SetupDocument;
import lampwright.setup.packing.DayPlan;
import lampwright.setup.packing.DayWishes;
import lampwright.setup.packing.WorkTimes;
import lampwright.wording.WordsForTests;

/** A day is packed: full and at length, and before anything is chosen. */
final class PackPreviews {

  private static final String LONG = "Harbourmasterofficestaircaseundertheemergencylamp again";

  private PackPreviews() {}

  static PackPage full() {
    SetupDocument setup = new DemoSeeds().setup("over-the-cut");
    DaySheet sheet =
        new DaySheet(
            DayPlan.of(
                List.of(setup),
                new DayWishes(2, WorkTimes.usual(), List.of(Optional.empty()), Optional.empty())),
            List.of(setup),
            List.of(Optional.empty()),
            List.of(),
            ZoneOffset.UTC,
            WordsForTests.usual().notation());
    return new PackPage(
        PagePreviews.layout("Pack and go"),
        form(List.of(chosen(1, "Last ferry"), chosen(2, LONG)), "ferry"),
        FormErrors.of("hands", "Hands must be 1 to 8."),
        List.of(new Link(LONG, "/demo/packing?setup=k3v9")),
        Optional.of(
            new PackPage.Day(
                "In all 2 h 10 min.",
                List.of(LONG + ": 4 min late. In time with 3 people."),
                List.of(
                    new PackPage.Section(
                        "Heads",
                        List.of(
                            new PackPage.Piece(
                                "heads a", 12, LONG, "12 for setup 2", "32.4 kg", "3 are missing"),
                            new PackPage.Piece("heads b", 1, "lamp", "", "", "")))),
                "Together 32.4 kg, as far as it is known.",
                List.of(
                    new PackPage.Battery(
                        "charged a", LONG, "2 batteries", "Change after frame 40.")),
                List.of("Last ferry: 1200 W while all charge."),
                List.of("Nobody wrote down the power of: 3 Rim."),
                new DrawingView(sheet.svg(), "Boxes are as long as the work takes.", sheet.table()),
                List.of("sunset 19:12"),
                List.of("Two lift what is heavy."))));
  }

  static PackPage empty() {
    return new PackPage(
        PagePreviews.layout("Pack and go"),
        form(List.of(), ""),
        FormErrors.none(),
        List.of(),
        Optional.empty());
  }

  private static PackForm form(List<PackForm.Chosen> setups, String asked) {
    return new PackForm(
        "/demo/packing",
        setups,
        asked,
        2,
        8,
        List.of(new PackForm.Kit("v", LONG, true)),
        true,
        "2026-11-28",
        "",
        false,
        List.of(new PackForm.Time("aim_minutes", "Aim", "", 2)));
  }

  private static PackForm.Chosen chosen(int number, String title) {
    return new PackForm.Chosen(
        "k3v9",
        number,
        title,
        "/demo/setups/k3v9",
        List.of(new PackForm.Option("any_time", "any light", true)),
        number == 1 ? "18:40" : "");
  }
}
