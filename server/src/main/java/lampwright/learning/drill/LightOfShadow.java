package lampwright.learning.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.light.Point;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.Subject;
import lampwright.setup.building.FromHitMark;
import lampwright.setup.figures.Level;
import lampwright.setup.figures.LightFigures;

/** Which light throws a shadow that lies on the ground in a certain direction. */
final class LightOfShadow implements Maker {

  /** Shadows that lie closer than this to each other are not told apart. */
  private static final double APART_DEG = 35;

  /** A light that is so many stops under the strongest throws no shadow that one sees. */
  private static final double WEAKEST = 2.5;

  private static final double ON_THE_MARK_M = 0.3;
  private static final double LEAST_OVER_GROUND_M = 0.8;
  private static final int MOST_OPTIONS = 5;

  /** A light, and where it stands, in whole fives of degrees. */
  private record Placed(LightFigures figures, double directionDeg) {

    Light light() {
      return figures.light();
    }

    double level() {
      return figures.level().map(Level::fromShooting).orElseThrow().value();
    }
  }

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    Optional<Subject> subject =
        material.setup().subjects().stream()
            .filter(who -> overGround(who.place(), new Point(0, 0, 0)) <= ON_THE_MARK_M)
            .findFirst();
    List<Placed> lights = subject.map(who -> lighting(material, who)).orElse(List.of());
    if (lights.size() < 2) {
      return Optional.empty();
    }
    double strongest = lights.stream().mapToDouble(Placed::level).max().orElseThrow();
    Placed right = dice.pick(lights);
    List<Placed> others =
        lights.stream()
            .filter(
                l -> !l.equals(right) && apart(l.directionDeg(), right.directionDeg()) >= APART_DEG)
            .toList();
    if (right.level() < strongest - WEAKEST
        || others.isEmpty()
        || others.size() < lights.size() - 1) {
      return Optional.empty();
    }
    List<Placed> shown = new ArrayList<>(dice.shuffled(others));
    List<Placed> options = shown.subList(0, Math.min(MOST_OPTIONS - 1, shown.size()));
    options.add(right);
    return Optional.of(drill(material, subject.get(), right, inOrder(material, options)));
  }

  private static List<Placed> inOrder(Material material, List<Placed> options) {
    List<Light> order = material.setup().lightsInBuildOrder();
    return options.stream()
        .sorted((a, b) -> Integer.compare(order.indexOf(a.light()), order.indexOf(b.light())))
        .toList();
  }

  private static List<Placed> lighting(Material material, Subject subject) {
    return material.figures().lights().stream()
        .filter(l -> l.level().isPresent())
        .filter(l -> overGround(l.light().target().at(), subject.place()) <= 1)
        .filter(l -> overGround(l.light().place(), new Point(0, 0, 0)) >= LEAST_OVER_GROUND_M)
        .map(
            l ->
                new Placed(
                    l,
                    fives(FromHitMark.of(l.light().place(), material.setup()).direction().value())))
        .toList();
  }

  private static Drill drill(
      Material material, Subject subject, Placed right, List<Placed> options) {
    double shadow = (right.directionDeg() + 180) % 360;
    boolean isTrue = FromHitMark.of(right.light().place(), material.setup()).bearing().isPresent();
    return new Drill(
        DrillKind.LIGHT_OF_SHADOW,
        List.of(
            Said.of(
                isTrue
                    ? "drilling.lightOfShadow.given.true"
                    : "drilling.lightOfShadow.given.axis")),
        Said.of(
            "drilling.lightOfShadow.question",
            Filling.text(subject.name()),
            Filling.number(shadow, 0)),
        Choosing.among(
            options,
            right,
            LightOfShadow::option,
            option ->
                Optional.of(
                    apart(option.directionDeg(), shadow) < APART_DEG
                        ? Said.of("drilling.lightOfShadow.slip.toward")
                        : Said.of(
                            "drilling.lightOfShadow.slip.other",
                            Filling.number((option.directionDeg() + 180) % 360, 0)))),
        List.of(
            Said.of(
                "drilling.lightOfShadow.why",
                Filling.text(Fair.quoted(right.light())),
                Filling.number(right.directionDeg(), 0),
                Filling.number(shadow, 0))),
        List.of());
  }

  private static Said option(Placed placed) {
    Point place = placed.light().place();
    return Said.of(
        "drilling.lightOfShadow.option",
        Filling.text(Fair.quoted(placed.light())),
        Filling.number(placed.directionDeg(), 0),
        Filling.length(overGround(place, new Point(0, 0, 0)), 1),
        Filling.length(place.z(), 1));
  }

  private static double fives(double degrees) {
    return Math.rint(degrees / 5) * 5 % 360;
  }

  private static double apart(double one, double other) {
    double turn = Math.abs(one - other) % 360;
    return Math.min(turn, 360 - turn);
  }

  private static double overGround(Point one, Point other) {
    double x = one.x() - other.x();
    double y = one.y() - other.y();
    return Math.sqrt(x * x + y * y);
  }
}
