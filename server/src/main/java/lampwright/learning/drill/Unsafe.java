package lampwright.learning.drill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampwright.gear.Head;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Caution;
import lampwright.setup.Cautions;
import lampwright.setup.Danger;
import lampwright.setup.Light;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;
import lampwright.setup.Subject;
import lampwright.setup.Target;

/** What can hurt somebody in a setup, from what stands in it. */
final class Unsafe implements Maker {

  private static final int MOST_OPTIONS = 4;

  /** Between these one could argue: not asked. */
  private static final double SURELY_LOW_M = 1.9;

  private static final double SURELY_SLOW_M_PER_S = 1.2;
  private static final double SURELY_AWAY_M = 1.4;

  @Override
  public Optional<Drill> make(Material material, Dice dice) {
    Set<Danger> there = EnumSet.noneOf(Danger.class);
    for (Caution caution : Cautions.of(material.setup())) {
      if (caution instanceof Caution.Of(Danger danger) && danger != Danger.STORED_CHARGE) {
        there.add(danger);
      }
    }
    List<Danger> absent =
        Arrays.stream(Danger.values())
            .filter(danger -> !there.contains(danger) && isSurelyAbsent(danger, there, material))
            .toList();
    boolean isPlaceKnown =
        material
            .setup()
            .occasion()
            .flatMap(Occasion::place)
            .flatMap(Occasion.Place::indoors)
            .isPresent();
    if (!isPlaceKnown || there.isEmpty() || absent.size() < 2) {
      return Optional.empty();
    }
    Danger right = dice.pick(List.copyOf(there));
    List<Danger> options = new ArrayList<>(dice.shuffled(absent));
    while (options.size() >= MOST_OPTIONS) {
      options.removeLast();
    }
    options.add(right);
    return Optional.of(drill(new Site(material.setup()), right, dice.shuffled(options)));
  }

  /** Heads always hold a charge, so that is no wrong answer; nor is what nearly is so. */
  private static boolean isSurelyAbsent(Danger danger, Set<Danger> there, Material material) {
    Site site = new Site(material.setup());
    return switch (danger) {
      case STORED_CHARGE -> false;
      case MAINS_OUTDOORS -> !site.hasMains();
      // Mains where it is wet is the graver of the two, and told alone.
      case WET -> site.isIndoors() && !there.contains(Danger.MAINS_OUTDOORS);
      case STANDS_IN_WIND -> site.isIndoors();
      case HEADS_OVERHEAD -> site.highestM() < SURELY_LOW_M;
      case RUNNING_SUBJECT -> site.fastestMPerS() < SURELY_SLOW_M_PER_S;
      case HEADS_NEAR_EYES -> site.nearestM() > SURELY_AWAY_M;
    };
  }

  private static Drill drill(Site site, Danger right, List<Danger> options) {
    return new Drill(
        DrillKind.UNSAFE,
        site.facts(),
        Said.of("drilling.unsafe.question"),
        Choosing.among(
            options,
            right,
            danger -> Said.of("caution.danger." + key(danger)),
            danger -> Optional.of(Said.of("drilling.unsafe.slip"))),
        List.of(
            Said.of("caution.act." + key(right)),
            Said.of("caution.act.stored_charge"),
            Said.of("drilling.unsafe.first")),
        List.of());
  }

  private static String key(Danger danger) {
    return danger.name().toLowerCase(Locale.ROOT);
  }

  /** What one sees when one comes to the place. */
  private record Site(SetupDocument setup) {

    boolean isIndoors() {
      return setup
          .occasion()
          .flatMap(Occasion::place)
          .flatMap(Occasion.Place::indoors)
          .orElse(false);
    }

    boolean hasMains() {
      return setup.lights().stream().anyMatch(light -> light.head().feed() == Head.Feed.MAINS);
    }

    double highestM() {
      return setup.lights().stream().mapToDouble(light -> light.place().z()).max().orElse(0);
    }

    double fastestMPerS() {
      return setup.subjects().stream()
          .map(Subject::speedMPerS)
          .flatMap(Optional::stream)
          .max(Double::compare)
          .orElse(0.0);
    }

    double nearestM() {
      return setup.lights().stream()
          .filter(light -> light.target().held() != Target.Held.ON_SURFACE)
          .mapToDouble(light -> light.place().distanceTo(light.target().at()).value())
          .min()
          .orElse(Double.POSITIVE_INFINITY);
    }

    double largestM() {
      return setup.lights().stream()
          .map(Light::modifierOrStandard)
          .mapToDouble(modifier -> modifier.face().largestDimension().value())
          .max()
          .orElse(0);
    }

    List<Said> facts() {
      Optional<String> weather = setup.occasion().flatMap(Occasion::weather);
      return Stream.of(
              Optional.of(
                  Said.of(isIndoors() ? "drilling.unsafe.indoors" : "drilling.unsafe.outdoors")),
              weather.map(w -> Said.of("drilling.unsafe.weather", Filling.text(w))),
              Optional.of(
                  Said.of(hasMains() ? "drilling.unsafe.mains" : "drilling.unsafe.batteries")),
              Optional.of(
                  Said.of(
                      "drilling.unsafe.lights",
                      Filling.length(highestM(), 1),
                      Filling.length(largestM(), 1))),
              Double.isFinite(nearestM())
                  ? Optional.of(Said.of("drilling.unsafe.nearest", Filling.length(nearestM(), 1)))
                  : Optional.<Said>empty(),
              Optional.of(
                  fastestMPerS() == 0
                      ? Said.of("drilling.unsafe.still")
                      : Said.of("drilling.unsafe.speed", Filling.number(fastestMPerS(), 1))))
          .flatMap(Optional::stream)
          .toList();
    }
  }
}
