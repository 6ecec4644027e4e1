package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Direction;
import lampwright.engine.light.Pattern;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.Stops;
import lampwright.search.filter.Trait;
import lampwright.setup.LightId;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.ShutterEffect;
import lampwright.wording.Deviation;
import lampwright.wording.Figure;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into a table how each light stands to its target, and how sure its level is. */
final class LightsView {

  static final String ID = "lights";

  /** A sixth of a stop shows; less is left to the working. */
  private static final double NOTABLE_LOSS = 1.0 / 6;

  private final FiguresOf of;
  private final Wording words;

  LightsView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  FiguresPart part() {
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      rows.add(row(of.figures().get(id)));
    }
    FiguresPart part =
        FiguresPart.of(
                ID, words.say("pages.figures.heading.lights"), words.say("pages.lights.lead"))
            .with(
                FiguresTable.of(
                    words.say("pages.lights.table"),
                    List.of(
                        FiguresTable.Column.words(words.say("pages.common.light")),
                        FiguresTable.Column.figures(words.say("pages.common.reading")),
                        FiguresTable.Column.figures(words.say("pages.lights.fromExposure")),
                        FiguresTable.Column.figures(words.say("pages.lights.fromKey")),
                        FiguresTable.Column.figures(words.say("pages.common.distance")),
                        FiguresTable.Column.words(words.say("pages.lights.comesFrom"))),
                    rows))
            .with(softness());
    for (LightId id : of.inBuildOrder()) {
      part = withWorkings(part, id);
    }
    return part.withMissing(
        of.missing("/lights/\\d+/(reading|stops_down|aim|target/held|head/duration_t05_ms)"));
  }

  private FiguresPart withWorkings(FiguresPart part, LightId id) {
    FiguresPart with = part;
    LightFigures light = of.figures().get(id);
    if (light.level().isPresent()) {
      with =
          with.with(
                  WorkingStep.of(light.level().get().working(), words)
                      .named(words.say("pages.lights.level", of.name(id))))
              .with(
                  WorkingStep.of(light.level().get().budget().working(), words)
                      .named(words.say("pages.lights.howSure", of.name(id))));
    }
    for (var working : light.shutter().map(ShutterEffect::workings).orElse(List.of())) {
      with =
          with.with(WorkingStep.of(working, words).named(of.name(id) + ": " + working.quantity()));
    }
    return with;
  }

  private FiguresTable.Row row(LightFigures light) {
    Optional<Level> level = light.level();
    return FiguresTable.Row.of(
            of.number(light.light().id()),
            of.role(light.light().id()),
            level
                .map(
                    l ->
                        FiguresTable.Cell.of(words.reading(l.reading()))
                            .after(words.known(l.known()))
                            .asMain())
                .orElseGet(() -> FiguresTable.Cell.notKnown(words)),
            level
                .map(
                    l ->
                        FiguresTable.Cell.of(words.signed(l.fromShooting()))
                            .after(words.giveOrTake(l.uncertainty())))
                .orElseGet(() -> FiguresTable.Cell.notKnown(words)),
            light
                .fromKey()
                .map(stops -> FiguresTable.Cell.of(words.signed(stops)))
                .orElseGet(() -> FiguresTable.Cell.notKnown(words)),
            distance(light.distance()),
            FiguresTable.Cell.of(from(light.direction()))
                .after(
                    light
                        .pattern()
                        .map(name -> new FilterWords(words).value(Trait.PATTERN, name))
                        .orElse("")))
        .withNote(note(light));
  }

  private FiguresTable softness() {
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      LightFigures light = of.figures().get(id);
      rows.add(
          FiguresTable.Row.of(
              of.number(id),
              of.role(id),
              looks(light.angularSize()),
              FiguresTable.Cell.of(
                  words.fixed(light.penumbra(LightFigures.USUAL_GAP).toMillimetres().value(), 0),
                  "mm"),
              light
                  .fallOffAcross(LightFigures.USUAL_WIDTH)
                  .map(stops -> FiguresTable.Cell.of(words.signed(stops.negated())))
                  .orElseGet(() -> FiguresTable.Cell.notKnown(words))));
    }
    return FiguresTable.of(
        words.say("pages.lights.softness", words.notation().tape(LightFigures.USUAL_WIDTH)),
        List.of(
            FiguresTable.Column.words(words.say("pages.common.light")),
            FiguresTable.Column.figures(words.say("pages.lights.looks")),
            FiguresTable.Column.figures(
                words.say("pages.lights.edge", words.notation().tape(LightFigures.USUAL_GAP))),
            FiguresTable.Column.figures(words.say("pages.lights.farSide"))),
        rows);
  }

  private FiguresTable.Cell looks(Degrees size) {
    if (size.value() == 0) {
      return FiguresTable.Cell.of(words.say("pages.lights.point"))
          .after(words.say("pages.lights.hard"));
    }
    FiguresTable.Cell cell = FiguresTable.Cell.of(words.degrees(size));
    return Pattern.isSoft(size) ? cell.after(words.say("pages.lights.soft")) : cell;
  }

  private FiguresTable.Cell distance(Metres distance) {
    Figure figure = words.length(distance, 2, "");
    return FiguresTable.Cell.of(figure.value(), figure.unit());
  }

  /** "45° right, 30° up", seen from the target, from the direction to the camera. */
  String from(Direction direction) {
    double aside = direction.azimuth().value();
    double up = direction.elevation().value();
    String size = words.degrees(new Degrees(Math.abs(aside)));
    String sided =
        Math.round(aside) == 0
            ? size
            : words.say(aside < 0 ? "pages.direction.left" : "pages.direction.right", size);
    return words.say(
        up < -0.5 ? "pages.direction.below" : "pages.direction.up",
        sided,
        words.degrees(new Degrees(Math.abs(up))));
  }

  private String note(LightFigures light) {
    List<String> notes = new ArrayList<>();
    light
        .computedMinusMetered()
        .filter(Deviation::isNotable)
        .ifPresent(off -> notes.add(words.say("pages.lights.model", words.signed(off))));
    light
        .shutter()
        .flatMap(ShutterEffect::wholeFrame)
        .filter(loss -> loss.value() >= NOTABLE_LOSS)
        .map(Stops::negated)
        .ifPresent(loss -> notes.add(words.say("pages.lights.shutter", words.signed(loss))));
    light.shutter().map(ShutterEffect::warnings).map(words::say).ifPresent(notes::addAll);
    return String.join(" ", notes);
  }
}
