package lampwright.web.pages;

import java.util.List;
import lampwright.drawing.StopRuler;
import lampwright.engine.Known;
import lampwright.wording.Figure;
import lampwright.wording.MissingInput;
import lampwright.wording.WordsForTests;
import lampwright.wording.WorkingStep;

/** The figures in full: all parts, one that can tell next to nothing, one with long words. */
final class FiguresPreviews {

  private FiguresPreviews() {}

  static FiguresPage full() {
    return new FiguresPage(
        PagePreviews.layout("Figures of Last ferry, slate quay"),
        "Last ferry, slate quay",
        "/demo/setups/k3v9",
        List.of(exposure(), together(), movement(), wind()),
        missing(),
        List.of("Light that walls, ground and clothes give back."));
  }

  static FiguresPage bare() {
    return new FiguresPage(
        PagePreviews.layout("Figures of Window test"),
        "Window test",
        "/demo/setups/w1",
        List.of(
            FiguresPart.of(
                    "exposure", "On this exposure", WordsForTests.usual().say("pages.dials.theme"))
                .withMissing("Needs an ambient reading."),
            FiguresPart.of("focus", "Focus and framing", "")
                .withMissing("Needs the body and the lens.")),
        List.of(
            new MissingInput(
                "Camera", List.of("the body", "the lens"), "Needs the body and the lens."),
            new MissingInput(
                "Ambient", List.of("an ambient reading"), "Needs an ambient reading.")),
        List.of());
  }

  static FiguresPage longWords() {
    String word = "Harbourmasterofficestaircaseundertheemergencylamp";
    FiguresPart part = movement();
    return new FiguresPage(
        PagePreviews.layout(word),
        word.repeat(3),
        "/demo/setups/k3v9",
        List.of(
            part.with(
                    FiguresTable.of(
                        word,
                        columns(),
                        List.of(
                            FiguresTable.Row.of(
                                    12,
                                    word,
                                    FiguresTable.Cell.of("1/10000", "s").after("not known"),
                                    FiguresTable.Cell.of("10.25", "mm").asMain(),
                                    FiguresTable.Cell.of("10000", "px"),
                                    FiguresTable.Cell.of("100", "%").after(word))
                                .withNote((word + " ").repeat(4)))))
                .withNote(word.repeat(4))
                .withCaution(word.repeat(4))
                .with(Figure.of("−10000.5", "m/s", word).with(Known.ESTIMATED))
                .with(new WorkingStep(word, "10000", "m/s", word.repeat(2), word, List.of()))),
        List.of(new MissingInput(word, List.of(word, word), word)),
        List.of(word.repeat(3)));
  }

  static DialsInShort dialsInShort() {
    return new DialsInShort(
        WordsForTests.usual().say("pages.dials.theme"),
        List.of(Figure.of("+1.8", "stops", "flash over ambient at the face").with(Known.COMPUTED)),
        dials(),
        "");
  }

  static DialsInShort dialsWithoutAmbient() {
    return new DialsInShort(
        WordsForTests.usual().say("pages.dials.theme"),
        List.of(),
        FiguresTable.of(dials().caption(), dials().columns(), List.of()),
        "Needs an ambient reading.");
  }

  static List<ShortLine> lines() {
    return List.of(
        new ShortLine(
            "Movement and blur",
            "/demo/setups/k3v9/figures#movement",
            List.of(
                Figure.of("0.8", "px", "by the flash, 1 Key").with(Known.COMPUTED),
                Figure.of("48", "px", "by the ambient").with(Known.COMPUTED)),
            "The deckhand: trails show."),
        new ShortLine(
            "Sun",
            "/demo/setups/k3v9/figures#exposure",
            List.of(),
            "Needs the clock’s offset from universal time."));
  }

  static List<MissingInput> missing() {
    return List.of(
        new MissingInput(
            "Lights",
            List.of("the time to recycle of light 5"),
            "Needs the time to recycle of light 5."),
        new MissingInput(
            "Place and time",
            List.of("the clock’s offset from universal time"),
            "Needs the clock’s offset from universal time."));
  }

  private static FiguresTable dials() {
    return FiguresTable.of(
        "A stop more light by each dial",
        List.of(
            FiguresTable.Column.words("Dial"),
            FiguresTable.Column.figures("Flash"),
            FiguresTable.Column.figures("Ambient"),
            FiguresTable.Column.figures("Flash against ambient")),
        List.of(
            FiguresTable.Row.of(
                0,
                "Aperture f/5.6 → f/4",
                FiguresTable.Cell.of("+1.0"),
                FiguresTable.Cell.of("+1.0"),
                FiguresTable.Cell.of("0.0").after("both alike")),
            FiguresTable.Row.of(
                    0,
                    "Time 1/125 s → 1/60 s",
                    FiguresTable.Cell.of("0.0"),
                    FiguresTable.Cell.of("+1.0"),
                    FiguresTable.Cell.of("−1.0").after("to the ambient").asMain())
                .withNote("The time is longer than one can hold still.")));
  }

  private static FiguresPart exposure() {
    return FiguresPart.of(
            "exposure", "On this exposure", WordsForTests.usual().say("pages.dials.theme"))
        .with(
            Figure.of("+1.8", "stops", "flash over ambient at the face")
                .with(
                    new WorkingStep(
                        "flash over ambient",
                        "1.8",
                        "stops",
                        "log2(H / (E · t))",
                        "derived",
                        List.of())))
        .with(dials());
  }

  private static FiguresPart together() {
    return FiguresPart.of("together", "All the light together", "Lights add as light.")
        .with(
            FiguresTable.of(
                "All the light at each target",
                List.of(
                    FiguresTable.Column.words("Target"),
                    FiguresTable.Column.rulers("Against the shooting exposure, stops"),
                    FiguresTable.Column.figures("Stops")),
                List.of(
                    FiguresTable.Row.of(
                        0,
                        "Face",
                        FiguresTable.Cell.ruler(
                            StopRuler.of("face", WordsForTests.usual().notation())
                                .withDot(0.3)
                                .svg()),
                        FiguresTable.Cell.of("+0.3").after("±0.1")))));
  }

  private static FiguresPart movement() {
    return FiguresPart.of("movement", "Movement and blur", "How long a streak the body draws.")
        .with(Figure.of("1.2", "m/s", "speed of the deckhand").with(Known.SET))
        .with(
            FiguresTable.of(
                "Streak of the deckhand by each light",
                columns(),
                List.of(
                    FiguresTable.Row.of(
                        1,
                        "Key",
                        FiguresTable.Cell.of("1/850", "s"),
                        FiguresTable.Cell.of("4.2", "µm"),
                        FiguresTable.Cell.of("0.8", "px").after("frozen").asMain(),
                        FiguresTable.Cell.notKnown(WordsForTests.usual())))))
        .withNote("The deckhand: trails show.")
        .with(new WorkingStep("blur by the key", "0.0042", "mm", "v · t", "derived", List.of()));
  }

  private static List<FiguresTable.Column> columns() {
    return List.of(
        FiguresTable.Column.words("Drawn by"),
        FiguresTable.Column.figures("Over"),
        FiguresTable.Column.figures("On the sensor"),
        FiguresTable.Column.figures("Pixels"),
        FiguresTable.Column.figures("Of the frame’s height"));
  }

  private static FiguresPart wind() {
    return FiguresPart.of("wind", "Wind on the stands", "")
        .withCaution("A rough check of the plan and no permission.")
        .with(Figure.of("8", "m/s", "wind").with(Known.ESTIMATED));
  }
}
