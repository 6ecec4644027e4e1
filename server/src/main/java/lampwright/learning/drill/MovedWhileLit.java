package lampwright.learning.drill;

import java.util.List;
import java.util.Optional;
import lampwright.engine.exposure.ShutterTime;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.figures.MovementFigures;

/** How far a subject moves while a flash burns, or while the shutter is open. */
final class MovedWhileLit implements Maker {

  private static final double LEAST_MM = 0.3;
  private static final double MOST_MM = 900;

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    List<MovementFigures> movements =
        material.figures().movements().stream()
            .filter(m -> Fair.shown(m.speed().value(), 1) > 0)
            .toList();
    if (movements.isEmpty()) {
      return Optional.empty();
    }
    MovementFigures movement = dice.pick(movements);
    List<MovementFigures.FlashBlur> flashes =
        movement.flashes().stream().filter(flash -> !flash.longBurst()).toList();
    if (flashes.isEmpty()) {
      return Optional.empty();
    }
    MovementFigures.FlashBlur flash = dice.pick(flashes);
    double part = rounded(1 / flash.tenthTime().time().value());
    ShutterTime open = material.setup().exposure().time();
    double speed = Fair.shown(movement.speed().value(), 1);
    double byFlash = speed / part * 1000;
    double byShutter = speed * open.seconds() * 1000;
    boolean isOfFlash = dice.flip();
    double value = isOfFlash ? byFlash : byShutter;
    if (value < LEAST_MM || value > MOST_MM || byFlash >= byShutter) {
      return Optional.empty();
    }
    Answer.Slip other =
        isOfFlash
            ? new Answer.Slip(byShutter, Said.of("drilling.blur.slip.shutter"))
            : new Answer.Slip(byFlash, Said.of("drilling.blur.slip.flash"));
    return Optional.of(
        new Drill(
            DrillKind.BLUR,
            List.of(
                Said.of(
                    "drilling.blur.given",
                    Filling.text(movement.subject()),
                    Filling.number(speed, 1),
                    Filling.text("“" + flash.light() + "”"),
                    Filling.shown("1/" + (long) part + " s"),
                    Filling.shown(open))),
            Said.of(isOfFlash ? "drilling.blur.question.flash" : "drilling.blur.question.shutter"),
            Fair.number(
                Measure.MOVED_MM,
                value,
                other,
                new Answer.Slip(value * 10, Said.of("drilling.blur.slip.decimal")),
                new Answer.Slip(value / 10, Said.of("drilling.blur.slip.decimal")),
                new Answer.Slip(value / 1000, Said.of("drilling.blur.slip.metres"))),
            List.of(
                Said.of(
                    isOfFlash ? "drilling.blur.why.flash" : "drilling.blur.why.shutter",
                    new Filling.Rounded(value, value < 10 ? 1 : 0))),
            List.of()));
  }

  /** To two figures, as data sheets give durations. */
  private static double rounded(double parts) {
    double scale = 1;
    while (parts / scale >= 100) {
      scale *= 10;
    }
    return Math.rint(parts / scale) * scale;
  }
}
