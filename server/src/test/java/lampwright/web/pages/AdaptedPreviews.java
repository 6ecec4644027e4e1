package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.StopRuler;
import lampwright.engine.Known;
import lampwright.engine.unit.Stops;
import lampwright.wording.CautionLine;
import lampwright.wording.Deviation;
import lampwright.wording.Figure;
import lampwright.wording.WordsForTests;

/**
 * The page of a setup for another kit: it fits, it nearly fits, nothing fits, it was asked wrong.
 */
final class AdaptedPreviews {

  private static final String TITLE = "Last ferry, slate quay";
  private static final String SETUP = "/demo/setups/k3v9";
  private static final String PATH = SETUP + "/adapted";

  private AdaptedPreviews() {}

  static AdaptedPage full() {
    return page(
        "the van, five battery heads",
        "All five lights within a third of a stop.",
        lights(-0.2),
        List.of(),
        List.of("Key: from 1/2 to 1/1.", "ISO: from 100 to 200.", "Fill: half a metre nearer."));
  }

  static AdaptedPage notEnough() {
    return page(
        "two small heads and an umbrella",
        "Not quite: the accent falls short. The rest is within a third of a stop.",
        lights(-0.7),
        List.of(
            new Shortfall(
                "5 Accent",
                "0.7 stop under",
                List.of(
                    "Half a metre closer. Solved again: then within 0.1 stop.",
                    "The dish without its grid. Solved again: then within 0.2 stop.",
                    "A second head on it. Solved again: then within 0.0 stop."))),
        List.of());
  }

  static AdaptedPage nothingFits() {
    return new AdaptedPage(
        PagePreviews.layout("For one torch"),
        TITLE,
        SETUP,
        "one torch",
        "This kit has one head; the setup needs five.",
        "",
        false,
        List.of(),
        wishes(FormErrors.none()),
        List.of(),
        List.of(
            new Shortfall("1 Key", "no head left", List.of("One more head of 200 W·s or more.")),
            new Shortfall(
                "4 Background", "no head left", List.of("Give it up; the sky carries it."))),
        List.of("ISO 400, and every light two stops down."),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of(),
        new AdaptedPage.Costs("", List.of()),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        "");
  }

  /** Nothing was computed: the form says why. */
  static AdaptedPage wrong() {
    return AdaptedPage.of(
        PagePreviews.layout(TITLE),
        TITLE,
        SETUP,
        "the van, five battery heads",
        wishes(
            new FormErrors(
                List.of(
                    new FormErrors.FormError(
                        "wish-iso", "ISO at most (\"many\") must be a number. Maybe 100?")))));
  }

  private static AdaptedPage page(
      String kit,
      String verdict,
      List<AdaptedLight> lights,
      List<Shortfall> shortfalls,
      List<String> changes) {
    return new AdaptedPage(
        PagePreviews.layout("For " + kit),
        TITLE,
        SETUP,
        kit,
        verdict,
        "No better way exists with this kit.",
        shortfalls.isEmpty(),
        List.of(
            new AdaptedPage.Chip("ISO 400 at most", PATH + "?kit=van"),
            new AdaptedPage.Chip("1 Key: 250 W·s battery head", PATH + "?kit=van&iso=400")),
        wishes(FormErrors.none()),
        changes,
        shortfalls,
        List.of(),
        Optional.of(comparison()),
        List.of(
            Figure.of("f/4", "", "aperture"),
            Figure.of("1/125", "", "time"),
            Figure.of("100", "", "ISO"),
            Figure.of("−1.3", "stops", "ambient"),
            Figure.of("0.62", "kJ", "a frame, 5 heads"),
            Figure.of("210", "", "frames a charge")),
        Optional.of(PagePreviews.plan()),
        lights,
        List.of(
            setting("Aperture", "f/5.6", "f/4", "1 stop wider"),
            setting("Time", "1/125", "1/125", ""),
            setting("ISO", "100", "100", ""),
            setting("ND", "none", "0.3", "1 stop"),
            setting("Focus", "4.0 m", "4.0 m", "")),
        new AdaptedPage.Costs(
            "1.2",
            List.of(
                new AdaptedPage.Cost("Levels of the lights", "0.7", 100),
                new AdaptedPage.Cost("Depth of field", "0.4", 57),
                new AdaptedPage.Cost("Things to carry", "0.1", 14))),
        List.of(
            "Sharp from 3.6 to 4.5 m instead of 3.4 to 4.9 m.",
            "The key is a little harder: 15° wide instead of 19°."),
        List.of("What a pack’s modelling lamps draw."),
        List.of(
            new CautionLine(
                "Stands in wind", "The umbrella lifts; ballast it and take it down in gusts.")),
        Optional.of(
            new SaveForm(
                PATH + "?kit=van&way=1", "c5rf", TITLE + ", with " + kit, Optional.empty())),
        PATH.replace("/adapted", "/sheet") + "?kit=van&way=1");
  }

  private static AdaptedPage.Setting setting(String name, String was, String now, String change) {
    return new AdaptedPage.Setting(
        name, was, now, change, Optional.of(new Link("keep", PATH + "?kit=van&keep=it")));
  }

  private static Comparison comparison() {
    return new Comparison(
        List.of(
            new Comparison.Way("A", PATH + "?kit=van&way=1", true),
            new Comparison.Way("B", PATH + "?kit=van&way=2", false),
            new Comparison.Way("C", PATH + "?kit=van&way=3", false)),
        List.of(
            row("Aperture", "f/5.6", "f/4", "f/5.6", "f/5.6"),
            row("Time", "1/125 s", "1/125 s", "1/125 s", "1/125 s"),
            row("ISO", "100", "100", "200", "100"),
            row("Farthest off", "", "−0.2", "−0.2", "+0.1"),
            row("Ready again", "1.4 s", "4.8 s", "2.2 s", "4.8 s"),
            row("To carry", "", "12.4 kg", "12.4 kg", "9.1 kg"),
            row("Cost", "", "1.2", "1.6", "1.9")),
        List.of(
            new Comparison.Strengths(List.of("The best by what matters.")),
            new Comparison.Strengths(List.of("Ready again 2.6 s sooner.")),
            new Comparison.Strengths(List.of("3.3 kg less to carry."))));
  }

  private static Comparison.Row row(String name, String shot, String... ways) {
    List<Comparison.Cell> cells =
        List.of(ways).stream().map(way -> new Comparison.Cell(way, "")).toList();
    return new Comparison.Row(name, shot, cells, cells.stream().distinct().count() > 1);
  }

  private static WishesForm wishes(FormErrors errors) {
    return new WishesForm(
        PATH,
        List.of(
            choice("kit", "With the kit", "van", "The van: five battery heads"),
            choice("preset", "What matters most", "", "The closest look"),
            field("iso", "ISO at most", WishesForm.Kind.NUMBER, "", errors)),
        List.of(
            new WishesForm.Group(
                "Heads and places",
                "",
                false,
                List.of(
                    field("move", "Lights may move", WishesForm.Kind.TICK, "yes", errors),
                    field("nearest", "No nearer than", WishesForm.Kind.NUMBER, "0.8", errors))),
            new WishesForm.Group(
                "The light there now",
                "A reading goes before a place and time.",
                true,
                List.of(
                    field("ambient", "Ambient now", WishesForm.Kind.NUMBER, "9.5", errors),
                    field("date", "Another day", WishesForm.Kind.DATE, "", errors),
                    field("clock", "At", WishesForm.Kind.TIME_OF_DAY, "17:40", errors)))),
        List.of(new WishesForm.Kept("head.key", "250 W·s battery head")),
        errors);
  }

  private static WishesForm.Field field(
      String name, String label, WishesForm.Kind kind, String value, FormErrors errors) {
    String id = WishFieldMaker.id(name);
    return new WishesForm.Field(
        id, name, label, kind, value, "m", "0.5", false, List.of(), errors.find(id));
  }

  private static WishesForm.Field choice(String name, String label, String value, String words) {
    return new WishesForm.Field(
        WishFieldMaker.id(name),
        name,
        label,
        WishesForm.Kind.CHOICE,
        "",
        "",
        "",
        false,
        List.of(new WishesForm.Choice(value, words, true)),
        Optional.empty());
  }

  private static List<AdaptedLight> lights(double accentOff) {
    return List.of(
        light(1, "Key", "400 W·s, 0.9 × 1.2 m box", "1/2 − 0.2", "f/5.6", -0.1)
            .now("250 W·s, 1.0 m umbrella", "1/2", "f/4", 0.1, "Harder: 15° instead of 19°."),
        light(2, "Fill", "400 W·s, 1.5 m octagon", "1/8", "f/3.2", -1.7)
            .now("250 W·s, 1.5 m octagon", "1/8 + 0.1", "f/2.2", 0.0, ""),
        light(3, "Rim", "400 W·s, reflector", "1/16 + 0.3", "f/7.1", 0.6)
            .now("250 W·s, reflector", "1/16", "f/5.6", 0.4, ""),
        light(4, "Background", "200 W·s, reflector", "1/8", "f/4", -1.0)
            .now("200 W·s, reflector", "1/16", "f/2.8", 0.0, ""),
        light(5, "Accent", "200 W·s, gridded dish", "1/32", "f/3.5", -1.3)
            .now(
                "60 W·s, gridded dish",
                "1/1",
                "f/2",
                accentOff,
                "At full power it recycles in 4.8 s; the path takes 3.1 s."));
  }

  /** A light as it was shot. */
  private record Shot(int number, String role, AdaptedLight.Means means, double stops) {

    private AdaptedLight now(String gear, String power, String reading, double off, String notes) {
      return new AdaptedLight(
          number,
          role,
          means,
          new AdaptedLight.Means(
              gear, power, "2 flashes", "2.1 m", "0.4 m nearer", reading, Known.COMPUTED),
          StopRuler.of(role, WordsForTests.usual().notation())
              .withDot(stops)
              .withBar(stops + off)
              .withBand(0.3)
              .svg(),
          Deviation.of(new Stops(off), WordsForTests.usual()),
          notes,
          List.of(new Link("keep this head", PATH + "?kit=van&head.key=it")),
          number == 1 ? List.of(new Link("250 W·s battery head", PATH)) : List.of());
    }
  }

  private static Shot light(
      int number, String role, String gear, String power, String reading, double stops) {
    return new Shot(
        number,
        role,
        new AdaptedLight.Means(gear, power, "", "2.5 m", "", reading, Known.METERED),
        stops);
  }
}
