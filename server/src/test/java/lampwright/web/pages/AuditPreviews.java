package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.wording.WordsForTests;

/** Who did what, and a setup shown to somebody outside: full, empty, at length. */
final class AuditPreviews {

  private static final String LONG =
      "Thelongestnamethatanybodyevergaveasetupwithoutonespaceinit".repeat(3);

  private AuditPreviews() {}

  static AuditPage full() {
    return page(
        true,
        List.of(
            new AuditPage.Day(
                "4 May 2031",
                List.of(
                    line("14:05", "Ines Vahr changed the setup “Rope in the rain”", "revision 3"),
                    line("13:58", "Ines Vahr made a link that shows “" + LONG + "” outside", ""),
                    line("09:12", "Somebody outside opened a link that shows “Rope” outside", ""))),
            new AuditPage.Day(
                "3 May 2031", List.of(line("23:40", "Imke Tal let a former member go", "")))),
        "/demo/audit?cursor=12");
  }

  static AuditPage empty() {
    return page(false, List.of(), "");
  }

  private static AuditPage page(boolean filtered, List<AuditPage.Day> days, String earlier) {
    return new AuditPage(
        PagePreviews.layout("Who did what"),
        "/demo/audit",
        List.of(
            new AuditPage.Choice("", "Everybody", !filtered),
            new AuditPage.Choice("ines0000", "Ines Vahr", filtered)),
        List.of(
            new AuditPage.Choice("", "Everything", true),
            new AuditPage.Choice("setup", "Setups", false)),
        filtered
            ? Optional.of(
                new AuditPage.OneSetup(
                    "k3v9", "Only what was done to “" + LONG + "”", "/demo/setups/k3v9"))
            : Optional.empty(),
        filtered ? "2031-05-01" : "",
        "",
        filtered,
        days,
        earlier);
  }

  private static AuditPage.Line line(String at, String said, String more) {
    return new AuditPage.Line(at, "2031-05-04T" + at + ":00Z", said, more);
  }

  static SharePart part() {
    return new SharePart(
        "/demo/setups/k3v9/share-links",
        "c5rf",
        14,
        90,
        List.of(
            new SharePart.Open(
                "Ends 18 May 2031",
                "Revision 3 · with pictures · made by Imke Tal, 4 May 2031",
                "Not opened yet",
                "/demo/setups/k3v9/share-links/l1/removal")));
  }

  static ShareMadePage made() {
    return new ShareMadePage(
        PagePreviews.layout("A link for somebody outside"),
        "Last ferry, slate quay",
        "/demo/setups/k3v9#share",
        "https://light.veskarn.example/shared/" + "k3v9Qe7".repeat(6),
        "It ends 18 May 2031.");
  }

  static SharedPage shared() {
    SetupPage setup = SetupPreviews.full();
    return new SharedPage(
        new Layout(
            "Last ferry, slate quay",
            Optional.empty(),
            Theme.DEVICE,
            WordsForTests.usual(),
            PagePreviews.ASSETS),
        setup.title(),
        setup.placeAndDate(),
        "As it was at revision 3, 4 May 2031; later changes are not shown.",
        "This link ends 18 May 2031.",
        List.of("lonely", "cold", LONG),
        setup.pictures().finished().stream().toList(),
        setup.figures(),
        PagePreviews.plan(),
        setup.cautions(),
        setup.cameraNote(),
        setup.camera(),
        setup.lights(),
        setup.lines(),
        setup.leftOut());
  }
}
