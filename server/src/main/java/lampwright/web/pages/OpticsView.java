package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Working;
import lampwright.engine.lens.CropBasis;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.setup.figures.OpticsFigures;
import lampwright.wording.Figure;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into words and tables what camera and lens make of the picture. */
final class OpticsView {

  static final String ID = "focus";

  /** Formats nearer to 36 by 24 mm than this have nothing to convert. */
  private static final double LEAST_CROP_SHOWN = 0.005;

  private final FiguresOf of;
  private final Wording words;

  OpticsView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  ShortLine line(String path) {
    List<Figure> figures = new ArrayList<>();
    of.figures()
        .optics()
        .ifPresent(
            optics -> {
              optics.focused().ifPresent(focused -> addFocused(figures, focused));
              figures.add(angle(optics.angleAcross(), words.say("pages.optics.across")));
            });
    return new ShortLine(words.say("pages.figures.heading.focus"), path, figures, missing());
  }

  private void addFocused(List<Figure> figures, OpticsFigures.Focused focused) {
    figures.add(sharp(focused.depths().getFirst()).with(Known.COMPUTED));
    figures.add(frame(focused).with(Known.COMPUTED));
  }

  private Figure sharp(DepthOfField depth) {
    return fromTo(depth, words.say("pages.optics.sharp"));
  }

  private Figure frame(OpticsFigures.Focused focused) {
    return joined(
        length(focused.fieldWidth(), ""),
        " × ",
        length(focused.fieldHeight(), ""),
        words.say("pages.optics.frame"));
  }

  private Figure angle(Degrees angle, String name) {
    return Figure.of(words.degrees(angle), "", name).with(Known.COMPUTED);
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID, words.say("pages.figures.heading.focus"), words.say("pages.optics.lead"));
    Optional<OpticsFigures> found = of.figures().optics();
    if (found.isPresent()) {
      part = with(part, found.get());
    }
    return part.withMissing(missing());
  }

  private FiguresPart with(FiguresPart before, OpticsFigures optics) {
    FiguresPart part = before;
    if (optics.focused().isPresent()) {
      OpticsFigures.Focused focused = optics.focused().get();
      part =
          part.with(
                  length(focused.lens().focus(), words.say("pages.optics.focus"))
                      .with(focused.known()))
              .with(frame(focused).with(Known.COMPUTED));
    }
    part =
        part.with(angle(optics.angleAcross(), words.say("pages.optics.across")))
            .with(angle(optics.angleUpright(), words.say("pages.optics.upright")))
            .with(angle(optics.angleDiagonal(), words.say("pages.optics.corner")))
            .with(depths(optics))
            .with(equivalents(optics));
    part = part.withNote(diffraction(optics));
    for (Working working : optics.workings()) {
      part = part.with(WorkingStep.of(working, words));
    }
    return part;
  }

  private FiguresTable depths(OpticsFigures optics) {
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < optics.hyperfocals().size(); i++) {
      OpticsFigures.Hyperfocal hyperfocal = optics.hyperfocals().get(i);
      int at = i;
      Optional<DepthOfField> depth = optics.focused().map(focused -> focused.depths().get(at));
      rows.add(
          FiguresTable.Row.of(
              0,
              hyperfocal.convention(),
              depth
                  .map(d -> cell(d.near()).asMain())
                  .orElseGet(() -> FiguresTable.Cell.notKnown(words)),
              depth
                  .map(
                      d ->
                          d.far()
                              .map(far -> cell(far).asMain())
                              .orElseGet(() -> FiguresTable.Cell.of("∞").asMain()))
                  .orElseGet(() -> FiguresTable.Cell.notKnown(words)),
              cell(hyperfocal.distance())));
    }
    return FiguresTable.of(
        words.say("pages.optics.depths"),
        List.of(
            FiguresTable.Column.words(words.say("pages.optics.circle")),
            FiguresTable.Column.figures(words.say("pages.optics.near")),
            FiguresTable.Column.figures(words.say("pages.optics.far")),
            FiguresTable.Column.figures(words.say("pages.optics.hyperfocal"))),
        rows);
  }

  /** Without rows for a format that is 36 by 24 mm itself. */
  private FiguresTable equivalents(OpticsFigures optics) {
    boolean isOtherFormat =
        optics.equivalents().stream().anyMatch(e -> Math.abs(e.crop() - 1) >= LEAST_CROP_SHOWN);
    return FiguresTable.of(
        words.say("pages.optics.worth", words.number(optics.focal().value())),
        List.of(
            FiguresTable.Column.words(words.say("pages.optics.by")),
            FiguresTable.Column.figures(words.say("pages.optics.length")),
            FiguresTable.Column.figures(words.say("pages.optics.crop"))),
        optics.equivalents().stream()
            .filter(equivalent -> isOtherFormat)
            .map(
                equivalent ->
                    FiguresTable.Row.of(
                        0,
                        words(equivalent.basis()),
                        FiguresTable.Cell.of(words.fixed(equivalent.focal().value(), 0), "mm"),
                        FiguresTable.Cell.of(words.fixed(equivalent.crop(), 2))))
            .toList());
  }

  private String words(CropBasis basis) {
    return switch (basis) {
      case DIAGONAL -> words.say("pages.optics.diagonal");
      case LONG_SIDE -> words.say("pages.optics.long");
      case SHORT_SIDE -> words.say("pages.optics.short");
    };
  }

  private String diffraction(OpticsFigures optics) {
    String disc =
        words.fixed(
            optics
                .focused()
                .map(OpticsFigures.Focused::airyDiscCloseUp)
                .orElse(optics.airyDisc())
                .value(),
            1);
    String key =
        optics
            .diffractionExceedsTwoPixels()
            .map(more -> more ? "pages.optics.discMore" : "pages.optics.discLess")
            .orElse("pages.optics.disc");
    return words.say(key, disc);
  }

  private Figure fromTo(DepthOfField depth, String name) {
    Figure near = length(depth.near(), "");
    Figure far = depth.far().map(f -> length(f, "")).orElse(Figure.of("∞", near.unit(), ""));
    return joined(near, "–", far, name);
  }

  private static Figure joined(Figure one, String by, Figure other, String name) {
    return Figure.of(one.value() + by + other.value(), other.unit(), name);
  }

  /** Fine where it is near, without its unit in metres. */
  private Figure length(Metres length, String name) {
    double m = length.value();
    return words.length(length, m < 9.995 ? 2 : m < 99.95 ? 1 : 0, name);
  }

  private FiguresTable.Cell cell(Metres metres) {
    Figure length = length(metres, "");
    return FiguresTable.Cell.of(length.value(), length.unit());
  }

  private String missing() {
    return of.missing("/camera", "/camera/(body|lens|focus_distance_m|body/pixels_wide)");
  }
}
