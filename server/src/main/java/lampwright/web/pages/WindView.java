package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.power.Beaufort;
import lampwright.engine.power.Wind;
import lampwright.engine.unit.MetresPerSecond;
import lampwright.setup.LightId;
import lampwright.setup.figures.WindFigures;

/** Puts into a table what the wind does to each stand, the cautions always before the numbers. */
final class WindView {

  static final String ID = "wind";
  static final String HEADING = "Wind on the stands";

  private final FiguresOf of;

  WindView(FiguresOf of) {
    this.of = of;
  }

  boolean isAbsent() {
    return of.figures().winds().isEmpty() && missing().isEmpty();
  }

  private Optional<Wind> wind() {
    return of.figures().winds().stream().flatMap(w -> w.wind().stream()).findFirst();
  }

  /** In words, so that the caution goes before every number. */
  ShortLine line(String path) {
    String words = WindFigures.CAUTIONS.getFirst() + " " + missing();
    return new ShortLine(
        HEADING, path, List.of(), (words.strip() + wind().map(this::asking).orElse("")).strip());
  }

  private String asking(Wind wind) {
    List<String> asking =
        of.figures().winds().stream()
            .filter(w -> w.ballast().filter(b -> b.value() > 0).isPresent())
            .map(w -> of.name(w.light()))
            .toList();
    String at =
        " In a wind of "
            + metresPerSecond(wind.mean())
            + " m/s (force "
            + wind.force().number()
            + ") ";
    return asking.isEmpty()
        ? at + "no stand asks for more ballast by this check; watch them all the same."
        : at + "more ballast is asked for by " + MissingInput.listed(asking) + ".";
  }

  private static Figure blows(Wind wind) {
    return Figure.of(
        metresPerSecond(wind.mean()),
        "m/s",
        "wind, force " + wind.force().number() + ", " + wind.force().tradeName());
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID,
            HEADING,
            "What a gust does with the face turned square to it. Wind speeds are means; the gusts"
                + " decide.");
    for (String caution : WindFigures.CAUTIONS) {
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
                Wording.working(working).named(of.name(wind.light()) + ": " + working.quantity()));
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
        "Each light on its stand",
        List.of(
            FiguresTable.Column.words("Light"),
            FiguresTable.Column.figures("Face"),
            FiguresTable.Column.figures("Weight, all"),
            FiguresTable.Column.figures("More ballast"),
            FiguresTable.Column.figures("Margin ends at"),
            FiguresTable.Column.figures("Goes over at")),
        rows);
  }

  private FiguresTable.Row row(WindFigures wind) {
    return FiguresTable.Row.of(
        of.number(wind.light()),
        of.role(wind.light()),
        FiguresTable.Cell.of(String.format(Locale.ROOT, "%.2f", wind.stand().face().value()), "m²"),
        FiguresTable.Cell.of(String.format(Locale.ROOT, "%.1f", wind.stand().mass().value()), "kg"),
        wind.ballast()
            .map(
                ballast ->
                    FiguresTable.Cell.of(
                            String.format(Locale.ROOT, "%.0f", Math.ceil(ballast.value())), "kg")
                        .asMain())
            .orElseGet(FiguresTable.Cell::notKnown),
        speed(wind.speedWithMargin()),
        speed(wind.speedAtWhichItGoes()));
  }

  private static FiguresTable.Cell speed(MetresPerSecond mean) {
    return FiguresTable.Cell.of(metresPerSecond(mean), "m/s")
        .after("force " + Beaufort.of(mean).number());
  }

  private static String metresPerSecond(MetresPerSecond speed) {
    return String.format(Locale.ROOT, "%.1f", speed.value());
  }

  /** What was assumed, each said once for all the lights that it holds for. */
  private List<String> notes() {
    Map<String, List<String>> whose = new LinkedHashMap<>();
    for (WindFigures wind : of.figures().winds()) {
      for (String assumption : wind.assumptions()) {
        whose.computeIfAbsent(assumption, a -> new ArrayList<>()).add(of.name(wind.light()));
      }
    }
    List<String> notes = new ArrayList<>();
    notes.add(
        String.format(
            Locale.ROOT,
            "Gusts are taken as %.1f times the mean, and ballast as %.1f times what holds them;"
                + " near people take twice. The margin ends where the ballast holds no longer %.1f"
                + " times.",
            WindFigures.GUST_FACTOR,
            WindFigures.SAFETY_FACTOR,
            WindFigures.SAFETY_FACTOR));
    whose.forEach(
        (assumption, lights) ->
            notes.add(
                lights.size() == of.figures().winds().size()
                    ? assumption
                    : MissingInput.listed(lights) + ": " + assumption));
    return notes;
  }

  private String missing() {
    return of.missing("/occasion/wind_m_per_s", "/lights/\\d+/stand(/.*)?");
  }
}
