package lampwright.web.pages;

import java.util.List;
import java.util.Optional;

/** The pages of a setup's history, from invented data. */
final class LifePreviews {

  private static final String SETUP = "/demo/setups/k3v9";

  private LifePreviews() {}

  private static List<PastLine> lines() {
    return List.of(
        new PastLine(
            4,
            "Proven, brought back from revision 2",
            "16 October 2030, 09:12",
            "Imke Tal",
            "The wider rim lost the rope.",
            false),
        new PastLine(3, "Draft", "15 October 2030, 21:40", "Oren Vale", "Rim nearer.", true),
        new PastLine(2, "Draft", "15 October 2030, 08:05", "Imke Tal", "", true),
        new PastLine(1, "Draft", "14 October 2030, 17:52", "Imke Tal", "Begun", true));
  }

  static LifePart part() {
    return new LifePart(
        "Proven",
        "Everybody in the studio sees it.",
        lines().subList(0, 3),
        SETUP + "/revisions",
        "/demo/audit?setup=k3v9",
        Optional.of(new LifePart.StandingForm(SETUP + "/state", "c5rf", 4, true, false)));
  }

  static HistoryPage history() {
    return page(SETUP, 4, lines(), Optional.of(SETUP + "/revisions?cursor=1"));
  }

  static HistoryPage deleted() {
    return page(
        "",
        2,
        List.of(
            new PastLine(
                2,
                "Taken away",
                "16 October 2030, 09:12",
                "Imke Tal",
                "Themessagewithoutanyspaceinitthatsomebodypastedhere".repeat(6),
                true),
            new PastLine(1, "Draft", "14 October 2030, 17:52", "Imke Tal", "Begun", true)),
        Optional.empty());
  }

  private static HistoryPage page(
      String path, int current, List<PastLine> lines, Optional<String> next) {
    return new HistoryPage(
        PagePreviews.layout("History of Last ferry, slate quay"),
        "Last ferry, slate quay",
        path,
        SETUP + "/changes",
        current,
        lines,
        next,
        Optional.of(new HistoryPage.Restoring(SETUP + "/restorations", "c5rf")));
  }

  static ChangesPage changes() {
    return changes(
        List.of(
            new ChangesPage.Group(
                "Lights",
                List.of(
                    "Key moved 0.4 m closer, +0.7 stop at the hit mark",
                    "Key: power from 1/4 to 1/2, +1 stop",
                    "Fill taken out",
                    "Rim added")),
            new ChangesPage.Group(
                "Camera",
                List.of("Aperture from f/5.6 to f/8: one stop less for everything, ambient too")),
            new ChangesPage.Group(
                "Words", List.of("Title from Last ferry to Last ferry, slate quay"))));
  }

  static ChangesPage noChanges() {
    return changes(List.of());
  }

  private static ChangesPage changes(List<ChangesPage.Group> groups) {
    return new ChangesPage(
        PagePreviews.layout("What changed in Last ferry, slate quay"),
        "Last ferry, slate quay",
        SETUP + "/revisions",
        "From revision 2 to revision 4",
        groups,
        Optional.empty());
  }
}
