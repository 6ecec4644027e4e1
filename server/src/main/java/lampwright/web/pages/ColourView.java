package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.Working;
import lampwright.engine.unit.Kelvin;
import lampwright.engine.unit.Mired;
import lampwright.setup.LightId;
import lampwright.setup.figures.ColourFigures;
import lampwright.setup.figures.ColourFigures.Colour;

/** Puts into a table the colour of each light against the white balance. */
final class ColourView {

  static final String ID = "colour";
  static final String HEADING = "Colour";

  private final FiguresOf of;

  ColourView(FiguresOf of) {
    this.of = of;
  }

  ShortLine line(String path) {
    ColourFigures colour = of.figures().colour();
    List<Figure> figures = new ArrayList<>();
    colour
        .whiteBalance()
        .ifPresent(
            kelvin -> figures.add(Figure.of(kelvin(kelvin), "K", "white balance").with(Known.SET)));
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
                                        of.name(key.light()) + " against it")
                                    .with(Wording.known(key.known())))));
    return new ShortLine(HEADING, path, figures, missing());
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
            HEADING,
            "Against the white balance, plus is warmer. About "
                + String.format(Locale.ROOT, "%.0f", ColourFigures.JUST_SEEN.value())
                + " mired is just seen side by side. This says nothing about green and magenta.");
    if (colour.whiteBalance().isPresent()) {
      part =
          part.with(
              Figure.of(kelvin(colour.whiteBalance().get()), "K", "white balance").with(Known.SET));
    }
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      ColourFigures.OfLight light = of(id);
      rows.add(
          row(of.number(id), of.role(id), light.colour(), Wording.known(light.known()).word()));
    }
    colour.ambient().ifPresent(a -> rows.add(row(0, "Ambient", a, "")));
    part =
        part.with(
                FiguresTable.of(
                    "The colour of each light",
                    List.of(
                        FiguresTable.Column.words("Light"),
                        FiguresTable.Column.figures("Temperature"),
                        FiguresTable.Column.figures("Against the white balance")),
                    rows))
            .withMissing(missing());
    for (Working working : colour.workings()) {
      part = part.with(Wording.working(working));
    }
    return part;
  }

  private static FiguresTable.Row row(int number, String name, Colour colour, String known) {
    return FiguresTable.Row.of(
        number,
        name,
        colour
            .temperature()
            .map(kelvin -> FiguresTable.Cell.of(kelvin(kelvin), "K").after(known))
            .orElseGet(() -> FiguresTable.Cell.of("–").after("bluer than any")),
        colour
            .fromWhiteBalance()
            .map(shift -> FiguresTable.Cell.of(signed(shift), "mired").after(tone(shift)))
            .orElseGet(FiguresTable.Cell::notKnown));
  }

  private static String tone(Mired shift) {
    if (Math.abs(shift.value()) < ColourFigures.JUST_SEEN.value()) {
      return "neutral";
    }
    return shift.value() > 0 ? "warmer" : "cooler";
  }

  private static String kelvin(Kelvin kelvin) {
    return String.format(Locale.ROOT, "%.0f", kelvin.value());
  }

  private static String signed(Mired shift) {
    long whole = Math.round(shift.value());
    return whole == 0 ? "0" : (whole < 0 ? "−" : "+") + Math.abs(whole);
  }

  private String missing() {
    return of.missing("/exposure/white_balance_k", "/ambient/temperature_k");
  }
}
