package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.Known;
import lampwright.engine.Working;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Mired;
import lampwright.setup.LightId;
import lampwright.setup.figures.ColourFigures;
import lampwright.setup.figures.ColourFigures.Colour;
import lampwright.wording.Figure;
import lampwright.wording.Wording;
import lampwright.wording.WorkingStep;

/** Puts into a table the colour of each light against the white balance. */
final class ColourView {

  static final String ID = "colour";

  private final FiguresOf of;
  private final Wording words;

  ColourView(FiguresOf of) {
    this.of = of;
    this.words = of.words();
  }

  ShortLine line(String path) {
    ColourFigures colour = of.figures().colour();
    List<Figure> figures = new ArrayList<>();
    colour
        .whiteBalance()
        .ifPresent(
            kelvin ->
                figures.add(
                    Figure.of(kelvin(kelvin), "K", words.say("pages.colour.whiteBalance"))
                        .with(Known.SET)));
    key()
        .ifPresent(
            key ->
                key.colour()
                    .fromWhiteBalance()
                    .ifPresent(
                        shift ->
                            figures.add(
                                Figure.of(
                                        signed(shift),
                                        "mired",
                                        words.say(
                                            "pages.colour.lightAgainst", of.name(key.light())))
                                    .with(key.known()))));
    return new ShortLine(words.say("pages.figures.heading.colour"), path, figures, missing());
  }

  private Optional<ColourFigures.OfLight> key() {
    return of.inBuildOrder().stream().findFirst().map(this::of);
  }

  private ColourFigures.OfLight of(LightId id) {
    return of.figures().colour().lights().stream()
        .filter(light -> light.light().equals(id))
        .findFirst()
        .orElseThrow();
  }

  FiguresPart part() {
    ColourFigures colour = of.figures().colour();
    FiguresPart part =
        FiguresPart.of(
            ID,
            words.say("pages.figures.heading.colour"),
            words.say("pages.colour.lead", words.fixed(ColourFigures.JUST_SEEN.value(), 0)));
    if (colour.whiteBalance().isPresent()) {
      part =
          part.with(
              Figure.of(
                      kelvin(colour.whiteBalance().get()),
                      "K",
                      words.say("pages.colour.whiteBalance"))
                  .with(Known.SET));
    }
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      ColourFigures.OfLight light = of(id);
      rows.add(row(of.number(id), of.role(id), light.colour(), words.known(light.known())));
    }
    colour.ambient().ifPresent(a -> rows.add(row(0, words.say("pages.setup.ambient"), a, "")));
    part =
        part.with(
                FiguresTable.of(
                    words.say("pages.colour.table"),
                    List.of(
                        FiguresTable.Column.words(words.say("pages.common.light")),
                        FiguresTable.Column.figures(words.say("pages.colour.temperature")),
                        FiguresTable.Column.figures(words.say("pages.colour.against"))),
                    rows))
            .withMissing(missing());
    for (Working working : colour.workings()) {
      part = part.with(WorkingStep.of(working, words));
    }
    return part;
  }

  private FiguresTable.Row row(int number, String name, Colour colour, String known) {
    return FiguresTable.Row.of(
        number,
        name,
        colour
            .temperature()
            .map(kelvin -> FiguresTable.Cell.of(kelvin(kelvin), "K").after(known))
            .orElseGet(() -> FiguresTable.Cell.of("–").after(words.say("pages.colour.bluer"))),
        colour
            .fromWhiteBalance()
            .map(shift -> FiguresTable.Cell.of(signed(shift), "mired").after(tone(shift)))
            .orElseGet(() -> FiguresTable.Cell.notKnown(words)));
  }

  private String tone(Mired shift) {
    if (Math.abs(shift.value()) < ColourFigures.JUST_SEEN.value()) {
      return words.say("pages.colour.neutral");
    }
    return shift.value() > 0 ? words.say("pages.colour.warmer") : words.say("pages.colour.cooler");
  }

  private String kelvin(Kelvin kelvin) {
    return words.fixed(kelvin.value(), 0);
  }

  private static String signed(Mired shift) {
    long whole = Math.round(shift.value());
    return whole == 0 ? "0" : (whole < 0 ? "−" : "+") + Math.abs(whole);
  }

  private String missing() {
    return of.missing("/exposure/white_balance_k", "/ambient/temperature_k");
  }
}
