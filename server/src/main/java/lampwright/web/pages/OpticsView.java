package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.lens.CropBasis;
import lampwright.engine.lens.DepthOfField;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.setup.figures.OpticsFigures;

/** Puts into words and tables what camera and lens make of the picture. */
final class OpticsView {

  static final String ID = "focus";
  static final String HEADING = "Focus and framing";

  /** Formats nearer to 36 by 24 mm than this have nothing to convert. */
  private static final double LEAST_CROP_SHOWN = 0.005;

  private final FiguresOf of;

  OpticsView(FiguresOf of) {
    this.of = of;
  }

  ShortLine line(String path) {
    List<Figure> figures = new ArrayList<>();
    of.figures()
        .optics()
        .ifPresent(
            optics -> {
              optics.focused().ifPresent(focused -> addFocused(figures, focused));
              figures.add(angle(optics.angleAcross(), "taken in across"));
            });
    return new ShortLine(HEADING, path, figures, missing());
  }

  private static void addFocused(List<Figure> figures, OpticsFigures.Focused focused) {
    figures.add(sharp(focused.depths().getFirst()).with(Known.COMPUTED));
    figures.add(frame(focused).with(Known.COMPUTED));
  }

  private static Figure sharp(DepthOfField depth) {
    return Figure.of(
        metres(depth.near()) + "–" + depth.far().map(OpticsView::metres).orElse("∞"),
        "m",
        "sharp from and to");
  }

  private static Figure frame(OpticsFigures.Focused focused) {
    return Figure.of(
        metres(focused.fieldWidth()) + " × " + metres(focused.fieldHeight()),
        "m",
        "in the frame at the focus");
  }

  private static Figure angle(Degrees angle, String name) {
    return Figure.of(Wording.degrees(angle), "", name).with(Known.COMPUTED);
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID,
            HEADING,
            "What looks sharp hangs on how closely one looks: the circle of confusion is a"
                + " convention, not a wall.");
    Optional<OpticsFigures> found = of.figures().optics();
    if (found.isPresent()) {
      part = with(part, found.get());
    }
    return part.withMissing(missing());
  }

  private static FiguresPart with(FiguresPart before, OpticsFigures optics) {
    FiguresPart part = before;
    if (optics.focused().isPresent()) {
      OpticsFigures.Focused focused = optics.focused().get();
      part =
          part.with(
                  Figure.of(metres(focused.lens().focus()), "m", "focus")
                      .with(Wording.known(focused.known())))
              .with(frame(focused).with(Known.COMPUTED));
    }
    part =
        part.with(angle(optics.angleAcross(), "taken in across"))
            .with(angle(optics.angleUpright(), "upright"))
            .with(angle(optics.angleDiagonal(), "corner to corner"))
            .with(depths(optics))
            .with(equivalents(optics));
    part = part.withNote(diffraction(optics));
    for (Working working : optics.workings()) {
      part = part.with(Wording.working(working));
    }
    return part;
  }

  private static FiguresTable depths(OpticsFigures optics) {
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
                  .map(d -> FiguresTable.Cell.of(metres(d.near()), "m").asMain())
                  .orElseGet(FiguresTable.Cell::notKnown),
              depth
                  .map(
                      d ->
                          d.far()
                              .map(far -> FiguresTable.Cell.of(metres(far), "m").asMain())
                              .orElseGet(() -> FiguresTable.Cell.of("∞").asMain()))
                  .orElseGet(FiguresTable.Cell::notKnown),
              FiguresTable.Cell.of(metres(hyperfocal.distance()), "m")));
    }
    return FiguresTable.of(
        "Sharp from and to, by the circle of confusion",
        List.of(
            FiguresTable.Column.words("Circle"),
            FiguresTable.Column.figures("Nearest sharp"),
            FiguresTable.Column.figures("Furthest sharp"),
            FiguresTable.Column.figures("Hyperfocal")),
        rows);
  }

  /** Without rows for a format that is 36 by 24 mm itself. */
  private static FiguresTable equivalents(OpticsFigures optics) {
    boolean isOtherFormat =
        optics.equivalents().stream().anyMatch(e -> Math.abs(e.crop() - 1) >= LEAST_CROP_SHOWN);
    return FiguresTable.of(
        "What " + Wording.number(optics.focal().value()) + " mm is worth on 36 × 24 mm",
        List.of(
            FiguresTable.Column.words("Measured by"),
            FiguresTable.Column.figures("Focal length"),
            FiguresTable.Column.figures("Crop")),
        optics.equivalents().stream()
            .filter(equivalent -> isOtherFormat)
            .map(
                equivalent ->
                    FiguresTable.Row.of(
                        0,
                        words(equivalent.basis()),
                        FiguresTable.Cell.of(
                            String.format(Locale.ROOT, "%.0f", equivalent.focal().value()), "mm"),
                        FiguresTable.Cell.of(
                            String.format(Locale.ROOT, "%.2f", equivalent.crop()))))
            .toList());
  }

  private static String words(CropBasis basis) {
    return switch (basis) {
      case DIAGONAL -> "the diagonal";
      case LONG_SIDE -> "the long side";
      case SHORT_SIDE -> "the short side";
    };
  }

  private static String diffraction(OpticsFigures optics) {
    String disc =
        String.format(
            Locale.ROOT,
            "Diffraction spreads a point over %.1f µm",
            optics
                .focused()
                .map(OpticsFigures.Focused::airyDiscCloseUp)
                .orElse(optics.airyDisc())
                .value());
    return optics
        .diffractionExceedsTwoPixels()
        .map(
            more ->
                disc
                    + (more
                        ? ", more than two pixels: finer pixels would show no more."
                        : ", less than two pixels: it costs no sharpness yet."))
        .orElse(disc + ".");
  }

  private static String metres(Metres metres) {
    double value = metres.value();
    return String.format(
        Locale.ROOT, value < 9.995 ? "%.2f" : value < 99.95 ? "%.1f" : "%.0f", value);
  }

  private String missing() {
    return of.missing("/camera", "/camera/(body|lens|focus_distance_m|body/pixels_wide)");
  }
}
