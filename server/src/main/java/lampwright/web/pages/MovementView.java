package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lampwright.engine.Known;
import lampwright.engine.Working;
import lampwright.setup.figures.MovementFigures;
import lampwright.setup.figures.MovementFigures.Blur;
import lampwright.setup.figures.MovementFigures.FlashBlur;
import lampwright.wording.Figure;
import lampwright.wording.KeyFigures;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into words and tables how movement shows in the picture. */
final class MovementView {

  static final String ID = "movement";

  private static final double PIXEL = 1;

  private final FiguresOf of;
  private final Wording words;

  MovementView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  boolean isAbsent() {
    return of.figures().movements().isEmpty()
        && of.setup().subjects().stream()
            .allMatch(s -> s.path().isEmpty() && s.speedMPerS().isEmpty());
  }

  ShortLine line(String path) {
    List<MovementFigures> movements = of.figures().movements();
    if (movements.isEmpty()) {
      return new ShortLine(words.say("pages.figures.heading.movement"), path, List.of(), missing());
    }
    MovementFigures first = movements.getFirst();
    List<Figure> figures = new ArrayList<>();
    KeyFigures.longest(first)
        .ifPresent(
            flash ->
                figures.add(
                    KeyFigures.blur(
                        flash.tenthTime(),
                        words.say("pages.movement.byFlash", of.name(flash.light())),
                        words)));
    figures.add(KeyFigures.blur(first.ambient(), words.say("pages.movement.byAmbient"), words));
    return new ShortLine(
        words.say("pages.figures.heading.movement"),
        path,
        figures,
        first
            .ghost()
            .map(ghost -> first.subject() + ": " + words.inSentence(words.say(ghost.inWords())))
            .orElse(""));
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID,
            words.say("pages.figures.heading.movement"),
            words.say(
                "pages.movement.lead",
                words.fixed(MovementFigures.LIMBS_AT_LEAST, 1),
                words.fixed(MovementFigures.LIMBS_AT_MOST, 0)));
    for (MovementFigures movement : of.figures().movements()) {
      part = withSubject(part, movement);
    }
    return part.withMissing(missing());
  }

  private FiguresPart withSubject(FiguresPart before, MovementFigures movement) {
    FiguresPart part =
        before.with(
            Figure.of(
                words.fixed(movement.speed().value(), 1),
                "m/s",
                words.say("pages.movement.speed", movement.subject())));
    if (movement.ghost().isPresent()) {
      MovementFigures.Ghost ghost = movement.ghost().get();
      part =
          part.with(
                  Figure.of(
                          words.signed(ghost.flashOverAmbient()),
                          words.stopsUnit(),
                          words.say("pages.movement.flashOver", movement.subject()))
                      .with(Known.COMPUTED))
              .withNote(movement.subject() + ": " + words.inSentence(words.say(ghost.inWords())));
    }
    if (movement.inFocus().isPresent()) {
      MovementFigures.TimeInFocus sharp = movement.inFocus().get();
      part =
          part.with(
              Figure.of(
                      words.fixed(sharp.time().value(), 1),
                      "s",
                      words.say(
                          sharp.entersSharp() || sharp.endsSharp()
                              ? "pages.movement.inFocusAtLeast"
                              : "pages.movement.inFocus"))
                  .with(Known.COMPUTED));
    }
    part = part.with(table(movement));
    for (String assumption : words.say(movement.assumptions())) {
      part = part.withNote(movement.subject() + ": " + words.inSentence(assumption));
    }
    for (Working working : movement.workings()) {
      part = part.with(WorkingStep.of(working, words));
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
    rows.add(row(0, words.say("pages.setup.ambient"), shutter(), movement.ambient()));
    return FiguresTable.of(
        words.say("pages.movement.streak", movement.subject()),
        List.of(
            FiguresTable.Column.words(words.say("pages.movement.drawn")),
            FiguresTable.Column.figures(words.say("pages.movement.over")),
            FiguresTable.Column.figures(words.say("pages.movement.sensor")),
            FiguresTable.Column.figures(words.say("pages.movement.pixels")),
            FiguresTable.Column.figures(words.say("pages.movement.ofHeight"))),
        rows);
  }

  private FiguresTable.Cell over(boolean longBurst, Blur blur) {
    return longBurst || blur.time().value() >= of.setup().exposure().time().seconds()
        ? shutter()
        : FiguresTable.Cell.of(words.duration(blur.time()), "s");
  }

  private FiguresTable.Cell shutter() {
    return FiguresTable.Cell.of(words.time(of.setup().exposure().time()), "s")
        .after(words.say("pages.movement.shutter"));
  }

  private FiguresTable.Row row(int number, String name, FiguresTable.Cell over, Blur blur) {
    return FiguresTable.Row.of(
        number,
        name,
        over,
        onSensor(blur),
        blur.pixels()
            .map(
                pixels ->
                    pixels < PIXEL
                        ? FiguresTable.Cell.of(words.pixels(pixels), "px")
                            .after(words.say("pages.movement.frozen"))
                            .asMain()
                        : FiguresTable.Cell.of(words.pixels(pixels), "px").asMain())
            .orElseGet(() -> FiguresTable.Cell.notKnown(words)),
        FiguresTable.Cell.of(words.percent(blur.shareOfFrameHeight()), "%"));
  }

  private FiguresTable.Cell onSensor(Blur blur) {
    Figure length = words.onSensor(blur.onSensor());
    return FiguresTable.Cell.of(length.value(), length.unit());
  }

  private String note(FlashBlur flash) {
    List<String> notes = new ArrayList<>();
    if (flash.longBurst()) {
      notes.add(words.say("pages.movement.long"));
    }
    if (flash.prints() > 1) {
      notes.add(words.say("pages.movement.prints", flash.prints()));
    }
    if (flash.lowerBound()) {
      notes.add(words.say("pages.movement.atLeast"));
    }
    return String.join(" ", notes);
  }

  private String missing() {
    return of.missing(
        "/subjects/\\d+/speed_m_per_s",
        "/camera/(place|aim|body|lens|body/pixels_wide)",
        "/lights/\\d+/head/duration_t05_ms");
  }
}
