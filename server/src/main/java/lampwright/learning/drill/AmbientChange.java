package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ExposureSettings;
import lampwright.engine.exposure.MarkedScale;
import lampwright.engine.exposure.ShutterTime;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Camera;

/** Where the ambient is, in stops from the shooting exposure, after something changed. */
final class AmbientChange implements Maker {

  /** Longer than this the picture is another one. */
  private static final double LONGEST_S = 1;

  /** Farther off there is nothing left of it, or nothing else. */
  private static final double FARTHEST = 5;

  private static final List<Integer> STEPS = List.of(-2, -1, 1, 2);

  /** What changes. */
  private enum Change {
    FALLS,
    TIME,
    APERTURE
  }

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    return material
        .figures()
        .ambient()
        .flatMap(
            ambient -> {
              double before = Fair.shown(ambient.offset().value(), 1);
              int stops = dice.pick(STEPS);
              return switch (dice.pick(List.of(Change.values()))) {
                case FALLS -> Optional.of(falls(before, stops));
                case TIME -> time(material, before, stops);
                case APERTURE -> aperture(material, before, stops);
              };
            })
        .filter(
            drill ->
                drill.answer() instanceof Answer.OfNumber after
                    && Math.abs(after.value()) <= FARTHEST);
  }

  private static Drill falls(double before, int stops) {
    String way = stops > 0 ? "falls" : "rises";
    return drill(
        before,
        before - stops,
        Said.of("drilling.ambientChange.question." + way, new Filling.Briefly(Math.abs(stops))),
        Said.of("drilling.ambientChange.why." + way, new Filling.Briefly(Math.abs(stops))),
        new Answer.Slip(before + stops, Said.of("drilling.ambientChange.slip.way")),
        new Answer.Slip(before, Said.of("drilling.ambientChange.slip.nothing")));
  }

  private static Optional<Drill> time(Material material, double before, int stops) {
    ShutterTime from = material.setup().exposure().time();
    ShutterTime to = from.plus(new Stops(stops));
    boolean isMarked =
        MarkedScale.SHUTTER_THIRD.findExact(from.seconds()).isPresent()
            && MarkedScale.SHUTTER_THIRD.findExact(to.seconds()).isPresent();
    boolean isFlashSafe =
        material
            .setup()
            .camera()
            .flatMap(Camera::body)
            .filter(body -> to.seconds() >= body.sync().seconds())
            .isPresent();
    if (!isMarked || !isFlashSafe || to.seconds() > LONGEST_S) {
      return Optional.empty();
    }
    return Optional.of(
        drill(
            before,
            before + stops,
            Said.of("drilling.ambientChange.question.time", Filling.shown(from), Filling.shown(to)),
            Said.of("drilling.ambientChange.why.time", new Filling.SignedBriefly(stops)),
            new Answer.Slip(before - stops, Said.of("drilling.slip.sign.time")),
            new Answer.Slip(before, Said.of("drilling.ambientChange.slip.time"))));
  }

  private static Optional<Drill> aperture(Material material, double before, int stops) {
    ExposureSettings settings = material.setup().exposure().settings();
    Optional<MarkedScale.Mark> from =
        MarkedScale.APERTURE_THIRD.findExact(settings.aperture().value());
    Optional<MarkedScale.Mark> to =
        MarkedScale.APERTURE_THIRD.findExact(
            settings.aperture().closedBy(new Stops(stops)).value());
    return from.flatMap(
        one ->
            to.map(
                other ->
                    drill(
                        before,
                        before - stops,
                        Said.of(
                            "drilling.ambientChange.question." + (stops > 0 ? "closed" : "opened"),
                            Filling.shown(one.text()),
                            Filling.shown(other.text()),
                            new Filling.Briefly(Math.abs(stops))),
                        Said.of(
                            "drilling.ambientChange.why.aperture",
                            new Filling.SignedBriefly(-stops)),
                        new Answer.Slip(before + stops, Said.of("drilling.slip.sign.aperture")),
                        new Answer.Slip(before, Said.of("drilling.ambientChange.slip.aperture")))));
  }

  private static Drill drill(
      double before, double after, Said question, Said why, Answer.Slip... slips) {
    return new Drill(
        DrillKind.AMBIENT_CHANGE,
        List.of(Said.of("drilling.ambientChange.given", new Filling.SignedBriefly(before + 0.0))),
        question,
        Fair.number(Measure.STOPS_COUNTED, Fair.shown(after, 1), slips),
        List.of(why),
        List.of());
  }
}
