package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lampwright.engine.Working;
import lampwright.engine.unit.Seconds;
import lampwright.setup.LightId;
import lampwright.setup.figures.HeatFigures;
import lampwright.setup.figures.MainsFigures;
import lampwright.setup.figures.PowerFigures;

/** Puts into words and tables what the pictures cost in energy and time. */
final class PowerView {

  static final String ID = "power";
  static final String HEADING = "Power and pace";

  private final FiguresOf of;

  PowerView(FiguresOf of) {
    this.of = of;
  }

  ShortLine line(String path) {
    PowerFigures power = of.figures().power();
    return new ShortLine(
        HEADING,
        path,
        figures(),
        power.pace().isEmpty() && power.charge().isEmpty() ? missing() : wish());
  }

  private List<Figure> figures() {
    PowerFigures power = of.figures().power();
    List<Figure> figures = new ArrayList<>();
    power.energyPerFrame().map(e -> Wording.energy(e, "a frame")).ifPresent(figures::add);
    power
        .pace()
        .ifPresent(
            pace ->
                figures.add(
                    Figure.of(
                            seconds(pace.betweenFrames()),
                            "s",
                            "between frames, by " + of.name(pace.slowest()))
                        .with(Known.COMPUTED)));
    power
        .charge()
        .ifPresent(
            charge ->
                figures.add(
                    Figure.of(
                            frames(charge.frames()),
                            "frames",
                            "at most to a charge, by " + of.name(charge.first()))
                        .with(Known.COMPUTED)));
    return figures;
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(
            ID,
            HEADING,
            "The slowest light sets the pace. Frames to a charge are an upper bound: cold, age and"
                + " stand-by take their share.");
    for (Figure figure : figures()) {
      part = part.with(figure);
    }
    part = withMains(part).with(table());
    if (!wish().isEmpty()) {
      part = part.withNote(wish());
    }
    for (Working working : of.figures().power().workings()) {
      part = part.with(Wording.working(working));
    }
    return part.withMissing(missing());
  }

  private FiguresPart withMains(FiguresPart before) {
    FiguresPart part = before;
    if (of.figures().power().mains().isPresent()) {
      MainsFigures mains = of.figures().power().mains().get();
      for (String caution : MainsFigures.CAUTIONS) {
        part = part.withCaution(caution);
      }
      part =
          part.with(
                  Figure.of(
                          String.format(Locale.ROOT, "%.1f", mains.current().value()),
                          "A",
                          "from the mains while all charge")
                      .with(Known.COMPUTED))
              .with(
                  Figure.of(
                          Wording.about(mains.generator().value()),
                          "VA",
                          "generator, with its margin")
                      .with(Known.COMPUTED));
      for (String assumption : mains.assumptions()) {
        part = part.withNote(assumption);
      }
    }
    if (of.figures().power().heat().isPresent()) {
      HeatFigures heat = of.figures().power().heat().get();
      part =
          part.with(
                  Figure.of(
                          Wording.about(heat.load().average().value()),
                          "W",
                          "heat in the hottest head, " + of.name(heat.hottest()))
                      .with(Known.COMPUTED))
              .withNote(
                  (heat.isPaceOfPlan()
                          ? "Heat at the pace that is planned."
                          : "Heat at the fastest that the lights can.")
                      + " The maker’s limit in flashes a minute goes before it.");
    }
    return part;
  }

  private FiguresTable table() {
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      of.figures().power().lights().stream()
          .filter(light -> light.light().id().equals(id))
          .map(this::row)
          .forEach(rows::add);
    }
    return FiguresTable.of(
        "Each light’s energy, time to recycle and charge",
        List.of(
            FiguresTable.Column.words("Light"),
            FiguresTable.Column.figures("A frame"),
            FiguresTable.Column.figures("Ready again in"),
            FiguresTable.Column.figures("Frames to a charge")),
        rows);
  }

  private FiguresTable.Row row(PowerFigures.LightPower power) {
    Figure energy = Wording.energy(power.energy(), "");
    return FiguresTable.Row.of(
        of.number(power.light().id()),
        of.role(power.light().id()),
        FiguresTable.Cell.of(energy.value(), energy.unit()),
        power.recycle().map(PowerView::ready).orElseGet(FiguresTable.Cell::notKnown),
        power
            .framesPerCharge()
            .map(frames -> FiguresTable.Cell.of(frames(frames)).after("at most"))
            .orElseGet(FiguresTable.Cell::notKnown));
  }

  private static FiguresTable.Cell ready(Seconds time) {
    return seconds(time).equals("0.0")
        ? FiguresTable.Cell.of("at once")
        : FiguresTable.Cell.of(seconds(time), "s");
  }

  private String wish() {
    List<String> words = new ArrayList<>();
    of.figures()
        .power()
        .wish()
        .ifPresent(
            wish -> {
              wish.keepsPace()
                  .ifPresent(
                      keeps ->
                          words.add(
                              keeps
                                  ? "Keeps the pace that is planned."
                                  : "Too slow for the pace that is planned."));
              wish.charges()
                  .ifPresent(
                      charges ->
                          words.add(
                              "The frames that are planned need "
                                  + charges
                                  + (charges == 1 ? " charge." : " charges.")));
            });
    return String.join(" ", words);
  }

  private static String seconds(Seconds time) {
    return String.format(Locale.ROOT, "%.1f", time.value());
  }

  private static String frames(double frames) {
    return Wording.about(Math.floor(frames));
  }

  private String missing() {
    return of.missing("/lights/\\d+/(stops_down|head/(recycle_s|flashes_per_charge))");
  }
}
