package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.StopRuler;
import lampwright.engine.Known;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.wording.CautionLine;
import lampwright.wording.Deviation;
import lampwright.wording.Figure;
import lampwright.wording.LightRow;
import lampwright.wording.MissingInput;
import lampwright.wording.Wording;
import lampwright.wording.WordsForTests;
import lampwright.wording.WorkingStep;
import org.jspecify.annotations.Nullable;

/** The setup page: a full sheet, one with the least that a setup may hold, one with long words. */
final class SetupPreviews {

  private static final Wording WORDS = WordsForTests.usual();

  private SetupPreviews() {}

  static SetupPage full() {
    return new SetupPage(
        PagePreviews.layout("Last ferry, slate quay"),
        "Last ferry, slate quay",
        "Slate quay, Veskarn Sound · 14 October 2030, 17:52",
        "Dusk, after rain. Alone but not lost: one warm window of light, the sea already night.",
        UsedPreviews.kin(),
        List.of(mood("lonely"), mood("cold"), mood("last light")),
        PicturePreviews.part(),
        strip(),
        Optional.of(PagePreviews.plan()),
        SignaturePreviews.full(),
        lights(),
        Optional.of(UsedPreviews.part()),
        List.of(UsedPreviews.proposed(), UsedPreviews.proposedToo()),
        Optional.of(UsedPreviews.form()),
        "Off the model",
        build(),
        "/demo/setups/k3v9/figures",
        FiguresPreviews.dialsInShort(),
        FiguresPreviews.lines(),
        List.of(
            new SetupPage.Mark("The deckhand", "1.8 m tall, 1.2 m/s"),
            new SetupPage.Mark("start", "Out of the shed door, rope on the left shoulder."),
            new SetupPage.Mark("hit mark", "Looks back once, at the window.")),
        List.of(
            Figure.of("8.4", "EV", "at ISO 100").with(Known.METERED),
            Figure.of("6800", "K", "sky").with(Known.ESTIMATED),
            Figure.of("3°", "up, 262°", "sun").with(Known.COMPUTED)),
        "Incident, dome to the sky, at the hit mark, at 17:50. It fell a stop in nine minutes.",
        List.of(
            Figure.of("80", "mm", "lens"),
            Figure.of("4.0", "m", "focus").with(Known.SET),
            Figure.of("3.4–4.9", "m", "sharp from to").with(Known.COMPUTED),
            Figure.of("5200", "K", "white balance").with(Known.SET)),
        "Medium format, 1.2 m up, level, 4 m before the mark.",
        List.of(
            new CautionLine(
                "Wet ground and mains",
                "Battery heads only on the quay; keep every connector off the ground."),
            new CautionLine(
                "Stands in wind",
                "Light 2 has 1.8 m² of sail. Ballast it, and have somebody hold it above a fresh"
                    + " breeze."),
            new CautionLine(
                "Running subject and cables", "No cable crosses the path from the start.")),
        new Outcome(
            List.of("The rim kept the coat off the wall without a halo."),
            List.of("Fill metered before the rain stopped: a third too high in the first takes."),
            List.of("Accent a third hot on the bollard. It reads as a lamp; kept."),
            List.of("Reflection of light 4 in the second window."),
            List.of("Start twenty minutes earlier; the sky died before the last takes.")),
        FiguresPreviews.missing(),
        List.of("Light that walls, ground and clothes give back."),
        PagePreviews.kitForm(""),
        NowPreviews.form(),
        LifePreviews.part(),
        Optional.of(AuditPreviews.part()),
        "Revision 3, by Imke Tal, 15 October 2030",
        List.of(
            new Link("Field sheet", "/demo/setups/k3v9/sheet"),
            new Link("Revisions", "/demo/setups/k3v9/revisions")));
  }

  static SetupPage bare() {
    return new SetupPage(
        PagePreviews.layout("Window test"),
        "Window test",
        "",
        "",
        new Kin(Optional.empty(), List.of()),
        List.of(),
        PicturePreviews.noPart(),
        List.of(
            Figure.of("f/8", "", "aperture"),
            Figure.of("1/125", "", "time"),
            Figure.of("100", "", "ISO")),
        Optional.empty(),
        SignaturePreviews.none(),
        List.of(
            new SetupLight(
                row(
                    1,
                    "Key",
                    "400 W·s battery head, 1.2 m octagon",
                    "1/4",
                    "f/8",
                    "set",
                    "0.0",
                    "",
                    Optional.empty(),
                    "",
                    List.of()),
                StopRuler.of("Key", WordsForTests.usual().notation()).withDot(0).svg())),
        Optional.empty(),
        List.of(),
        Optional.of(UsedPreviews.form().proposing(true)),
        "",
        List.of(),
        "/demo/setups/w1/figures",
        FiguresPreviews.dialsWithoutAmbient(),
        List.of(
            new ShortLine(
                "Focus and framing",
                "/demo/setups/w1/figures#focus",
                List.of(),
                "Needs the body and the lens.")),
        List.of(),
        List.of(),
        "",
        List.of(),
        "",
        List.of(),
        new Outcome(List.of(), List.of(), List.of(), List.of(), List.of()),
        List.of(
            new MissingInput(
                "Camera", List.of("the body", "the lens"), "Needs the body and the lens."),
            new MissingInput(
                "Ambient", List.of("an ambient reading"), "Needs an ambient reading.")),
        List.of(),
        new KitForm("/demo/setups/w1/adapted", List.of(), "/demo/kits/new"),
        NowPreviews.bareForm(),
        new LifePart(
            "Draft",
            "Readers do not see it.",
            List.of(),
            "/demo/setups/w1/revisions",
            "",
            Optional.empty()),
        Optional.empty(),
        "",
        List.of());
  }

  static SetupPage longWords() {
    SetupPage full = full();
    String sentence = "A second story of light between the boats, wanted a little too much. ";
    return new SetupPage(
        full.layout(),
        "Harbourmasterofficestaircaseundertheemergencylamp and what came after it, part two",
        full.placeAndDate() + ", behind the third warehouse from the slip, second floor",
        sentence.repeat(6),
        UsedPreviews.longKin(),
        List.of(mood("melancholy without self-pity"), mood("unsettled"), mood("slow")),
        PicturePreviews.longPart(),
        full.figures(),
        full.plan(),
        SignaturePreviews.longWords(),
        full.lights().stream().map(SetupPreviews::longer).toList(),
        Optional.of(UsedPreviews.longPart()),
        List.of(),
        Optional.of(UsedPreviews.wrongForm()),
        full.offHeading(),
        full.buildOrder(),
        full.figuresPath(),
        full.dials(),
        full.lines().stream()
            .map(l -> new ShortLine(l.name(), l.path(), l.figures(), l.words() + sentence))
            .toList(),
        full.movement(),
        full.ambient(),
        sentence.repeat(3),
        full.camera(),
        full.cameraNote(),
        full.cautions(),
        full.outcome(),
        full.missing(),
        full.leftOut(),
        full.kitForm(),
        full.now(),
        full.life(),
        Optional.empty(),
        full.revision(),
        full.actions());
  }

  private static SetupLight longer(SetupLight light) {
    LightRow row = light.row();
    return new SetupLight(
        row(
            row.number() + 9,
            row.role(),
            row.gear() + " with an extra scrim in front and a half-density warming gel, double",
            row.power() + " − 0.3",
            row.reading(),
            row.known(),
            "−6.0",
            "±0.8",
            row.off(),
            row.reason().repeat(3),
            row.workings()),
        StopRuler.of(row.role(), WordsForTests.usual().notation())
            .withDot(-6)
            .withBar(5.2)
            .withBand(0.8)
            .svg());
  }

  private static LightRow row(
      int number,
      String role,
      String gear,
      String power,
      String reading,
      String known,
      String level,
      String uncertainty,
      Optional<Deviation> off,
      String reason,
      List<WorkingStep> workings) {
    return new LightRow(
        new LightId("light-" + number),
        number,
        role,
        gear,
        power,
        reading,
        known,
        level,
        uncertainty,
        "2.4 m",
        off,
        reason,
        Optional.empty(),
        workings);
  }

  private static Link mood(String word) {
    return new Link(word, "/demo/setups?mood=" + word.replace(' ', '+'));
  }

  private static List<Figure> strip() {
    return List.of(
        Figure.of("f/5.6", "", "aperture"),
        Figure.of("1/125", "", "time"),
        Figure.of("100", "", "ISO"),
        Figure.of("−1.3", "stops", "ambient")
            .with(
                new WorkingStep(
                    "ambient offset",
                    "−1.3",
                    "stops",
                    "EV(ambient) − EV(shooting exposure)",
                    "ISO 2720",
                    List.of(
                        new WorkingStep("ambient", "8.4", "EV 100", "", "metered", List.of()),
                        new WorkingStep(
                            "shooting exposure",
                            "9.7",
                            "EV 100",
                            "log2(N² / t)",
                            "ISO 2720",
                            List.of(
                                new WorkingStep("N", "5.6", "", "", "set", List.of()),
                                new WorkingStep("t", "1/125", "s", "", "set", List.of())))))),
        Figure.of("4.2 : 1", "", "key + fill to fill"),
        Figure.of("6", "px", "blur at the hit mark"),
        Figure.of("1.16", "kJ", "a frame, 5 heads"));
  }

  static List<SetupLight> lights() {
    return List.of(
        light(1, "Key", "400 W·s, 0.9 × 1.2 m box", "1/2 − 0.2", "f/5.6", Known.METERED, -0.1)
            .because("one window of warm light, from where the ferry would be", -0.1),
        light(2, "Fill", "400 W·s, 1.5 m octagon", "1/8", "f/3.2", Known.METERED, -1.7)
            .because("keeps the coat readable; it must not be seen as a source", 0.3333),
        light(3, "Rim", "400 W·s, reflector", "1/16 + 0.3", "f/7.1", Known.METERED, 0.6)
            .because("cuts the shoulder out of the wall", 0.0),
        light(4, "Background", "200 W·s, reflector", "1/8", "f/4", Known.COMPUTED, -1.0)
            .because("the wall one stop under, so that it stays slate", null),
        light(5, "Accent", "200 W·s, gridded dish", "1/32", "f/3.5", Known.COMPUTED, -1.3)
            .because("a lamp that might stand on the bollard", null));
  }

  /** A light before its reason is told. */
  private record Told(
      int number,
      String role,
      String gear,
      String power,
      String reading,
      Known known,
      double stops) {

    private SetupLight because(String reason, @Nullable Double off) {
      StopRuler ruler = StopRuler.of(role, WordsForTests.usual().notation()).withDot(stops);
      return new SetupLight(
          row(
              number,
              role,
              gear,
              power,
              reading,
              WORDS.known(known),
              WORDS.signed(new Stops(stops)),
              known == Known.COMPUTED ? "±0.4" : "±0.1",
              off == null ? Optional.empty() : Optional.of(Deviation.of(new Stops(off), WORDS)),
              reason,
              number == 4 ? List.of(working()) : List.of()),
          (known == Known.COMPUTED ? ruler.withBand(0.4) : ruler).svg());
    }
  }

  private static Told light(
      int number,
      String role,
      String gear,
      String power,
      String reading,
      Known known,
      double stops) {
    return new Told(number, role, gear, power, reading, known, stops);
  }

  private static WorkingStep working() {
    return new WorkingStep(
        "reading on the wall",
        "f/4",
        "",
        "√(H · S / C)",
        "ISO 2720",
        List.of(
            new WorkingStep(
                "luminous exposure",
                "40",
                "lx·s",
                "Q · t / d²",
                "inverse square, lobe of the reflector",
                List.of(
                    new WorkingStep("distance", "2.7", "m", "", "set", List.of()),
                    new WorkingStep("power", "1/8", "", "", "set", List.of()))),
            new WorkingStep("C", "250", "lx·s", "", "flat receptor", List.of())));
  }

  private static List<BuildStep> build() {
    return List.of(
        new BuildStep(
            1,
            "Key: box at 2.3 m, edge just out of frame",
            "First: everything else is set against it.",
            "f/5.6",
            List.of(
                new CautionLine(
                    "Stand on wet slate", "Ballast before the head goes up, never after."))),
        new BuildStep(
            2,
            "Fill: octagon beside the camera",
            "Meter it alone, the key off.",
            "f/3.2",
            List.of()),
        new BuildStep(3, "Rim: reflector behind the path", "", "f/7.1", List.of()),
        new BuildStep(
            4,
            "Background: reflector low by the slip, on the wall",
            "Now that the sky is near its offset; it sets how dark the wall may fall.",
            "f/4",
            List.of()),
        new BuildStep(
            5, "Accent: dish on the ground", "Last; only if the sky holds.", "", List.of()));
  }
}
