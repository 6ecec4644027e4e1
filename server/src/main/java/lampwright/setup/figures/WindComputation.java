package lampwright.setup.figures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.engine.power.Legs;
import lampwright.engine.power.StandInWind;
import lampwright.engine.power.Wind;
import lampwright.engine.unit.Kilograms;
import lampwright.engine.unit.Metres;
import lampwright.engine.unit.SquareMetres;
import lampwright.gear.Modifier;
import lampwright.gear.Stand;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;

/** Computes what the wind does to the lights whose stands are known; nothing indoors. */
public final class WindComputation {

  /** How a cupped face takes the wind (source nasa-drag; within its range a judgement). */
  private static final double CUPPED = 1.4;

  /** What less than this shows to the wind is the head's, not the face's, in square metres. */
  private static final double NO_FACE_M2 = 1e-4;

  /** Nearer to the ground nothing tips a stand, in metres. */
  private static final double LOWEST_M = 0.05;

  private WindComputation() {}

  /** What the wind does to a setup's stands; nothing indoors. */
  public static List<WindFigures> of(SetupDocument setup) {
    return of(setup, new LinkedHashSet<>());
  }

  static List<WindFigures> of(SetupDocument setup, Set<String> needs) {
    if (SunComputation.isIndoors(setup)) {
      return List.of();
    }
    Optional<Wind> wind =
        setup
            .occasion()
            .flatMap(Occasion::wind)
            .map(mean -> Wind.of(mean, WindFigures.GUST_FACTOR));
    List<WindFigures> all = new ArrayList<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      Light light = setup.lights().get(i);
      double oneFaceM2 = light.modifierOrStandard().face().area().value();
      SquareMetres face = new SquareMetres(oneFaceM2 * light.heads());
      if (light.stand().isEmpty() || face.value() < NO_FACE_M2 || light.place().z() < LOWEST_M) {
        continue;
      }
      Stand stand = light.stand().get();
      if (wind.isEmpty()) {
        needs.add("/occasion/wind_m_per_s");
      }
      if (stand.legRadius().isEmpty()) {
        needs.add("/lights/" + i + "/stand/leg_radius_m");
        continue;
      }
      all.add(figures(light, stand, stand.legRadius().get(), face, wind));
    }
    return all;
  }

  private static WindFigures figures(
      Light light, Stand stand, Metres legRadius, SquareMetres face, Optional<Wind> wind) {
    List<Said> assumptions = new ArrayList<>(5);
    double mass = stand.ballastKg();
    mass += weight("stand", stand.weightKg(), assumptions);
    mass += weight("head", light.head().weightKg(), assumptions) * light.heads();
    if (light.modifier().isPresent()) {
      mass += weight("modifier", light.modifier().get().weightKg(), assumptions) * light.heads();
    }
    if (light.heads() > 1) {
      assumptions.add(Said.of("figuring.wind.faces", Filling.number(light.heads(), 0)));
    }
    boolean cupped = light.modifierOrStandard().kind() == Modifier.Kind.UMBRELLA;
    assumptions.add(cupped ? Said.of("figuring.wind.cup") : Said.of("figuring.wind.plate"));
    return new WindFigures(
        light.id(),
        new StandInWind(
            face,
            cupped ? CUPPED : StandInWind.FLAT_PLATE,
            new Metres(light.place().z()),
            new Legs(stand.legs(), legRadius),
            new Kilograms(mass)),
        wind,
        assumptions);
  }

  private static double weight(String what, Optional<Double> kg, List<Said> assumptions) {
    if (kg.isEmpty()) {
      assumptions.add(Said.of("figuring.wind.noWeight." + what));
    }
    return kg.orElse(0.0);
  }
}
