package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.power.Beaufort;
import lampwright.engine.power.Wind;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.setup.LightId;
import lampwright.setup.figures.WindFigures;
import lampwright.wording.Figure;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into a table what the wind does to each stand, the cautions always before the numbers. */
final class WindView {

  static final String ID = "wind";

  private final FiguresOf of;
  private final Wording words;

  WindView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  boolean isAbsent() {
    return of.figures().winds().isEmpty() && missing().isEmpty();
  }

  private Optional<Wind> wind() {
    return of.figures().winds().stream().flatMap(w -> w.wind().stream()).findFirst();
  }

  /** In words, so that the caution goes before every number. */
  ShortLine line(String path) {
    String said = words.say(WindFigures.CAUTIONS.getFirst()) + " " + missing();
    return new ShortLine(
        words.say("pages.figures.heading.wind"),
        path,
        List.of(),
        (said.strip() + " " + wind().map(this::asking).orElse("")).strip());
  }

  private String asking(Wind wind) {
    List<String> asking =
        of.figures().winds().stream()
            .filter(w -> w.ballast().filter(b -> b.value() > 0).isPresent())
            .map(w -> of.name(w.light()))
            .toList();
    return asking.isEmpty()
        ? words.say("pages.wind.noBallast", metresPerSecond(wind.mean()), wind.force().number())
        : words.say(
            "pages.wind.asking",
            metresPerSecond(wind.mean()),
            wind.force().number(),
            words.listed(asking));
  }

  private Figure blows(Wind wind) {
    return Figure.of(
        metresPerSecond(wind.mean()),
        "m/s",
        words.say(
            "pages.wind.blows",
            wind.force().number(),
            words.say("figuring.force." + wind.force().number())));
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(ID, words.say("pages.figures.heading.wind"), words.say("pages.wind.lead"));
    for (String caution : words.say(WindFigures.CAUTIONS)) {
      part = part.withCaution(caution);
    }
    if (wind().isPresent()) {
      part = part.with(blows(wind().get()));
    }
    part = part.with(table());
    for (String note : notes()) {
      part = part.withNote(note);
    }
    for (WindFigures wind : of.figures().winds()) {
      for (Working working : wind.workings()) {
        part =
            part.with(
                WorkingStep.of(working, words)
                    .named(of.name(wind.light()) + ": " + working.quantity()));
      }
    }
    return part.withMissing(missing());
  }

  private FiguresTable table() {
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      of.figures().winds().stream()
          .filter(wind -> wind.light().equals(id))
          .map(this::row)
          .forEach(rows::add);
    }
    return FiguresTable.of(
        words.say("pages.wind.table"),
        List.of(
            FiguresTable.Column.words(words.say("pages.common.light")),
            FiguresTable.Column.figures(words.say("pages.wind.face")),
            FiguresTable.Column.figures(words.say("pages.wind.weight")),
            FiguresTable.Column.figures(words.say("pages.wind.ballast")),
            FiguresTable.Column.figures(words.say("pages.wind.marginEnds")),
            FiguresTable.Column.figures(words.say("pages.wind.goesOver"))),
        rows);
  }

  private FiguresTable.Row row(WindFigures wind) {
    return FiguresTable.Row.of(
        of.number(wind.light()),
        of.role(wind.light()),
        FiguresTable.Cell.of(words.fixed(wind.stand().face().value(), 2), "m²"),
        FiguresTable.Cell.of(words.fixed(wind.stand().mass().value(), 1), "kg"),
        wind.ballast()
            .map(
                ballast ->
                    FiguresTable.Cell.of(words.fixed(Math.ceil(ballast.value()), 0), "kg").asMain())
            .orElseGet(() -> FiguresTable.Cell.notKnown(words)),
        speed(wind.speedWithMargin()),
        speed(wind.speedAtWhichItGoes()));
  }

  private FiguresTable.Cell speed(MetresPerSecond mean) {
    return FiguresTable.Cell.of(metresPerSecond(mean), "m/s")
        .after(words.say("pages.wind.force", Beaufort.of(mean).number()));
  }

  private String metresPerSecond(MetresPerSecond speed) {
    return words.fixed(speed.value(), 1);
  }

  /** What was assumed, each said once for all the lights that it holds for. */
  private List<String> notes() {
    Map<String, List<String>> whose = new LinkedHashMap<>();
    for (WindFigures wind : of.figures().winds()) {
      for (String assumption : words.say(wind.assumptions())) {
        whose.computeIfAbsent(assumption, a -> new ArrayList<>()).add(of.name(wind.light()));
      }
    }
    List<String> notes = new ArrayList<>();
    notes.add(
        words.say(
            "pages.wind.gusts",
            words.fixed(WindFigures.GUST_FACTOR, 1),
            words.fixed(WindFigures.SAFETY_FACTOR, 1)));
    whose.forEach(
        (assumption, lights) ->
            notes.add(
                lights.size() == of.figures().winds().size()
                    ? assumption
                    : words.listed(lights) + ": " + assumption));
    return notes;
  }

  private String missing() {
    return of.missing("/occasion/wind_m_per_s", "/lights/\\d+/stand(/.*)?");
  }
}
