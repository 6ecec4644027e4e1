package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lampwright.engine.light.Direction;
import lampwright.engine.light.Pattern;
import lampwright.engine.unit.Degrees;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.ShutterEffect;

/** Puts into a table how each light stands to its target, and how sure its level is. */
final class LightsView {

  static final String ID = "lights";
  static final String HEADING = "Each light at its target";

  /** A sixth of a stop shows; less is left to the working. */
  private static final double NOTABLE_LOSS = 1.0 / 6;

  private final FiguresOf of;

  LightsView(FiguresOf of) {
    this.of = of;
  }

  FiguresPart part() {
    List<FiguresTable.Row> rows = new ArrayList<>();
    for (LightId id : of.inBuildOrder()) {
      rows.add(row(of.figures().get(id)));
    }
    FiguresPart part =
        FiguresPart.of(
                ID,
                HEADING,
                "The larger a light looks from its target, the softer it is. How sure a level is,"
                    + " is one standard deviation: two times out of three the meter agrees within"
                    + " it.")
            .with(
                FiguresTable.of(
                    "Each light’s level and where it comes from",
                    List.of(
                        FiguresTable.Column.words("Light"),
                        FiguresTable.Column.figures("Reading"),
                        FiguresTable.Column.figures("From the exposure, stops"),
                        FiguresTable.Column.figures("From the key, stops"),
                        FiguresTable.Column.figures("Distance"),
                        FiguresTable.Column.words("Comes from")),
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
          with.with(Wording.working(light.level().get().working()).named(of.name(id) + ": level"))
              .with(
                  Wording.working(light.level().get().budget().working())
                      .named(of.name(id) + ": how sure"));
    }
    for (var working : light.shutter().map(ShutterEffect::workings).orElse(List.of())) {
      with = with.with(Wording.working(working).named(of.name(id) + ": " + working.quantity()));
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
                        FiguresTable.Cell.of(l.reading().tenthsText())
                            .after(Wording.known(l.known()).word())
                            .asMain())
                .orElseGet(FiguresTable.Cell::notKnown),
            level
                .map(
                    l ->
                        FiguresTable.Cell.of(Wording.signed(l.fromShooting()))
                            .after(Wording.giveOrTake(l.uncertainty())))
                .orElseGet(FiguresTable.Cell::notKnown),
            light
                .fromKey()
                .map(stops -> FiguresTable.Cell.of(Wording.signed(stops)))
                .orElseGet(FiguresTable.Cell::notKnown),
            FiguresTable.Cell.of(String.format(Locale.ROOT, "%.2f", light.distance().value()), "m"),
            FiguresTable.Cell.of(from(light.direction())).after(light.pattern().orElse("")))
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
                  String.format(
                      Locale.ROOT,
                      "%.0f",
                      light.penumbra(LightFigures.USUAL_GAP).toMillimetres().value()),
                  "mm"),
              light
                  .fallOffAcross(LightFigures.USUAL_WIDTH)
                  .map(stops -> FiguresTable.Cell.of(Wording.signed(stops.negated())))
                  .orElseGet(FiguresTable.Cell::notKnown)));
    }
    return FiguresTable.of(
        "Softness, and fall-off across a subject " + LightFigures.USUAL_WIDTH + " wide",
        List.of(
            FiguresTable.Column.words("Light"),
            FiguresTable.Column.figures("Looks"),
            FiguresTable.Column.figures("Edge of a shadow " + LightFigures.USUAL_GAP + " behind"),
            FiguresTable.Column.figures("Far side, stops")),
        rows);
  }

  private static FiguresTable.Cell looks(Degrees size) {
    if (size.value() == 0) {
      return FiguresTable.Cell.of("a point").after("hard");
    }
    FiguresTable.Cell cell = FiguresTable.Cell.of(Wording.degrees(size));
    return Pattern.isSoft(size) ? cell.after("soft") : cell;
  }

  /** "45° right, 30° up", seen from the target, from the direction to the camera. */
  static String from(Direction direction) {
    double aside = direction.azimuth().value();
    double up = direction.elevation().value();
    return Wording.degrees(new Degrees(Math.abs(aside)))
        + (Math.round(aside) == 0 ? "" : aside < 0 ? " left" : " right")
        + ", "
        + Wording.degrees(new Degrees(Math.abs(up)))
        + (up < -0.5 ? " below" : " up");
  }

  private static String note(LightFigures light) {
    List<String> notes = new ArrayList<>();
    light
        .computedMinusMetered()
        .filter(off -> Deviation.ofTenths(off.value()).notable())
        .ifPresent(
            off ->
                notes.add(
                    "The model gives "
                        + Wording.signed(off)
                        + " against the meter; the meter counts."));
    light
        .shutter()
        .flatMap(ShutterEffect::wholeFrame)
        .filter(loss -> loss.value() >= NOTABLE_LOSS)
        .map(Stops::negated)
        .ifPresent(
            loss -> notes.add("In the picture " + Wording.signed(loss) + " by the shutter."));
    light.shutter().map(ShutterEffect::warnings).ifPresent(notes::addAll);
    return String.join(" ", notes);
  }
}
