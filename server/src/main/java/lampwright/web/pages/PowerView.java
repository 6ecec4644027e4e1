package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import lampwright.engine.Known;
import lampwright.engine.Working;
import lampwright.engine.unit.Seconds;
import lampwright.setup.LightId;
import lampwright.setup.figures.HeatFigures;
import lampwright.setup.figures.MainsFigures;
import lampwright.setup.figures.PowerFigures;
import lampwright.wording.Figure;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into words and tables what the pictures cost in energy and time. */
final class PowerView {

  static final String ID = "power";

  private final FiguresOf of;
  private final Wording words;

  PowerView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  ShortLine line(String path) {
    PowerFigures power = of.figures().power();
    return new ShortLine(
        words.say("pages.figures.heading.power"),
        path,
        figures(),
        power.pace().isEmpty() && power.charge().isEmpty() ? missing() : wish());
  }

  private List<Figure> figures() {
    PowerFigures power = of.figures().power();
    List<Figure> figures = new ArrayList<>();
    power
        .energyPerFrame()
        .map(e -> words.energy(e, words.say("pages.power.frame")))
        .ifPresent(figures::add);
    power
        .pace()
        .ifPresent(
            pace ->
                figures.add(
                    Figure.of(
                            seconds(pace.betweenFrames()),
                            "s",
                            words.say("pages.power.between", of.name(pace.slowest())))
                        .with(Known.COMPUTED)));
    power
        .charge()
        .ifPresent(
            charge ->
                figures.add(
                    Figure.of(
                            frames(charge.frames()),
                            words.say("pages.power.frames"),
                            words.say("pages.power.byCharge", of.name(charge.first())))
                        .with(Known.COMPUTED)));
    return figures;
  }

  FiguresPart part() {
    FiguresPart part =
        FiguresPart.of(ID, words.say("pages.figures.heading.power"), words.say("pages.power.lead"));
    for (Figure figure : figures()) {
      part = part.with(figure);
    }
    part = withMains(part).with(table());
    if (!wish().isEmpty()) {
      part = part.withNote(wish());
    }
    for (Working working : of.figures().power().workings()) {
      part = part.with(WorkingStep.of(working, words));
    }
    return part.withMissing(missing());
  }

  private FiguresPart withMains(FiguresPart before) {
    FiguresPart part = before;
    if (of.figures().power().mains().isPresent()) {
      MainsFigures mains = of.figures().power().mains().get();
      for (String caution : words.say(MainsFigures.CAUTIONS)) {
        part = part.withCaution(caution);
      }
      part =
          part.with(
                  Figure.of(
                          words.fixed(mains.current().value(), 1),
                          "A",
                          words.say("pages.power.mains"))
                      .with(Known.COMPUTED))
              .with(
                  Figure.of(
                          words.about(mains.generator().value()),
                          "VA",
                          words.say("pages.power.generator"))
                      .with(Known.COMPUTED));
      for (String assumption : words.say(mains.assumptions())) {
        part = part.withNote(assumption);
      }
    }
    if (of.figures().power().heat().isPresent()) {
      HeatFigures heat = of.figures().power().heat().get();
      part =
          part.with(
                  Figure.of(
                          words.about(heat.load().average().value()),
                          "W",
                          words.say("pages.power.heat", of.name(heat.hottest())))
                      .with(Known.COMPUTED))
              .withNote(
                  words.say(
                      heat.isPaceOfPlan() ? "pages.power.heatPlanned" : "pages.power.heatFastest"));
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
        words.say("pages.power.table"),
        List.of(
            FiguresTable.Column.words(words.say("pages.common.light")),
            FiguresTable.Column.figures(words.say("pages.power.aFrame")),
            FiguresTable.Column.figures(words.say("pages.power.ready")),
            FiguresTable.Column.figures(words.say("pages.power.framesTo"))),
        rows);
  }

  private FiguresTable.Row row(PowerFigures.LightPower power) {
    Figure energy = words.energy(power.energy(), "");
    return FiguresTable.Row.of(
        of.number(power.light().id()),
        of.role(power.light().id()),
        FiguresTable.Cell.of(energy.value(), energy.unit()),
        power.recycle().map(this::ready).orElseGet(() -> FiguresTable.Cell.notKnown(words)),
        power
            .framesPerCharge()
            .map(
                frames ->
                    FiguresTable.Cell.of(frames(frames)).after(words.say("pages.power.atMost")))
            .orElseGet(() -> FiguresTable.Cell.notKnown(words)));
  }

  private FiguresTable.Cell ready(Seconds time) {
    return time.value() < 0.05
        ? FiguresTable.Cell.of(words.say("pages.power.atOnce"))
        : FiguresTable.Cell.of(seconds(time), "s");
  }

  private String wish() {
    List<String> said = new ArrayList<>();
    of.figures()
        .power()
        .wish()
        .ifPresent(
            wish -> {
              wish.keepsPace()
                  .ifPresent(
                      keeps ->
                          said.add(
                              keeps
                                  ? words.say("pages.power.keeps")
                                  : words.say("pages.power.slow")));
              wish.charges()
                  .ifPresent(charges -> said.add(words.count("pages.power.charges", charges)));
            });
    return String.join(" ", said);
  }

  private String seconds(Seconds time) {
    return words.fixed(time.value(), 1);
  }

  private String frames(double frames) {
    return words.about(Math.floor(frames));
  }

  private String missing() {
    return of.missing("/lights/\\d+/(stops_down|head/(recycle_s|flashes_per_charge))");
  }
}
