package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.setup.figures.MovementFigures;
import lampwright.setup.figures.MovementFigures.Blur;
import lampwright.setup.figures.MovementFigures.FlashBlur;

/** Puts into words and tables how movement shows in the picture. */
final class MovementView {

  static final String ID = "movement";
  static final String HEADING = "Movement and blur";

  private static final double PIXEL = 1;

  private final FiguresOf of;

  MovementView(FiguresOf of) {
    this.of = of;
  }

  boolean isAbsent() {
    return of.figures().movements().isEmpty()
        && of.setup().subjects().stream()
            .allMatch(s -> s.path().isEmpty() && s.speedMPerS().isEmpty());
  }

  ShortLine line(String path) {
    List<MovementFigures> movements = of.figures().movements();
    if (movements.isEmpty()) {
      return new ShortLine(HEADING, path, List.of(), missing());
    }
    MovementFigures first = movements.getFirst();
    List<Figure> figures = new ArrayList<>();
    longest(first)
        .ifPresent(
            flash ->
                figures.add(blur(flash.tenthTime(), "by the flash, " + of.name(flash.light()))));
    figures.add(blur(first.ambient(), "by the ambient"));
    return new ShortLine(
        HEADING,
        path,
        figures,
        first
            .ghost()
            .map(ghost -> first.subject() + ": " + Wording.uncapital(ghost.inWords()))
            .orElse(""));
  }

  /** The blur of the flash that blurs most, for the strip. */
  static Optional<Figure> inStrip(List<MovementFigures> movements) {
    return movements.stream()
        .findFirst()
        .flatMap(MovementView::longest)
        .map(flash -> blur(flash.tenthTime(), "blur by the flash"));
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID,
            HEADING,
            String.format(
                Locale.ROOT,
                "How long a streak the body draws at its mark. Limbs, cloth and hair move %.1f to"
                    + " %.0f times as fast, and blur so much more.",
                MovementFigures.LIMBS_AT_LEAST,
                MovementFigures.LIMBS_AT_MOST));
    for (MovementFigures movement : of.figures().movements()) {
      part = withSubject(part, movement);
    }
    return part.withMissing(missing());
  }

  private FiguresPart withSubject(FiguresPart before, MovementFigures movement) {
    FiguresPart part =
        before.with(
            Figure.of(
                String.format(Locale.ROOT, "%.1f", movement.speed().value()),
                "m/s",
                "speed of " + movement.subject()));
    if (movement.ghost().isPresent()) {
      MovementFigures.Ghost ghost = movement.ghost().get();
      part =
          part.with(
                  Figure.of(
                          Wording.signed(ghost.flashOverAmbient()),
                          "stops",
                          "flash over ambient on " + movement.subject())
                      .with(Known.COMPUTED))
              .withNote(movement.subject() + ": " + Wording.uncapital(ghost.inWords()));
    }
    if (movement.inFocus().isPresent()) {
      MovementFigures.TimeInFocus sharp = movement.inFocus().get();
      part =
          part.with(
              Figure.of(
                      String.format(Locale.ROOT, "%.1f", sharp.time().value()),
                      "s",
                      "in focus" + (sharp.entersSharp() || sharp.endsSharp() ? ", at least" : ""))
                  .with(Known.COMPUTED));
    }
    part = part.with(table(movement));
    for (String assumption : movement.assumptions()) {
      part = part.withNote(movement.subject() + ": " + Wording.uncapital(assumption));
    }
    for (Working working : movement.workings()) {
      part = part.with(Wording.working(working));
    }
    return part;
  }

  private FiguresTable table(MovementFigures movement) {
    List<FiguresTable.Row> rows = new ArrayList<>();
    movement.flashes().stream()
        .sorted(Comparator.comparingInt((FlashBlur flash) -> of.number(flash.light())))
        .forEach(
            flash ->
                rows.add(
                    row(
                            of.number(flash.light()),
                            of.role(flash.light()),
                            over(flash.longBurst(), flash.tenthTime()),
                            flash.tenthTime())
                        .withNote(note(flash))));
    rows.add(row(0, "Ambient", shutter(), movement.ambient()));
    return FiguresTable.of(
        "Streak of " + movement.subject() + " by each light",
        List.of(
            FiguresTable.Column.words("Drawn by"),
            FiguresTable.Column.figures("Over"),
            FiguresTable.Column.figures("On the sensor"),
            FiguresTable.Column.figures("Pixels"),
            FiguresTable.Column.figures("Of the frame’s height")),
        rows);
  }

  private FiguresTable.Cell over(boolean longBurst, Blur blur) {
    return longBurst || blur.time().value() >= of.setup().exposure().time().seconds()
        ? shutter()
        : FiguresTable.Cell.of(Wording.duration(blur.time()), "s");
  }

  private FiguresTable.Cell shutter() {
    return FiguresTable.Cell.of(of.setup().exposure().time().toString().replace(" s", ""), "s")
        .after("the shutter");
  }

  private static FiguresTable.Row row(int number, String name, FiguresTable.Cell over, Blur blur) {
    return FiguresTable.Row.of(
        number,
        name,
        over,
        Wording.onSensor(blur.onSensor()),
        blur.pixels()
            .map(
                pixels ->
                    pixels < PIXEL
                        ? FiguresTable.Cell.of(Wording.pixels(pixels), "px")
                            .after("frozen")
                            .asMain()
                        : FiguresTable.Cell.of(Wording.pixels(pixels), "px").asMain())
            .orElseGet(FiguresTable.Cell::notKnown),
        FiguresTable.Cell.of(Wording.percent(blur.shareOfFrameHeight()), "%"));
  }

  private static String note(FlashBlur flash) {
    List<String> notes = new ArrayList<>();
    if (flash.longBurst()) {
      notes.add("A long burst: it blurs with the shutter.");
    }
    if (flash.prints() > 1) {
      notes.add("Prints " + flash.prints() + " times, once a pop.");
    }
    if (flash.lowerBound()) {
      notes.add("At least: this head flashes longer at lower power, by how much is not known.");
    }
    return String.join(" ", notes);
  }

  private static Optional<FlashBlur> longest(MovementFigures movement) {
    return movement.flashes().stream()
        .max(Comparator.comparingDouble(flash -> flash.tenthTime().onSensor().value()));
  }

  private static Figure blur(Blur blur, String name) {
    return blur.pixels()
        .map(pixels -> Figure.of(Wording.pixels(pixels), "px", name))
        .orElseGet(
            () ->
                Figure.of(
                    Wording.percent(blur.shareOfFrameHeight()),
                    "%",
                    name + ", of the frame’s height"))
        .with(Known.COMPUTED);
  }

  private String missing() {
    return of.missing(
        "/subjects/\\d+/speed_m_per_s",
        "/camera/(place|aim|body|lens|body/pixels_wide)",
        "/lights/\\d+/head/duration_t05_ms");
  }
}
