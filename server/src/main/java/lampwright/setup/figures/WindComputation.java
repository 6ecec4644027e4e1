package lampwright.setup.figures;

import java.util.ArrayList;
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
import lampwright.setup.Light;
import lampwright.setup.Occasion;
import lampwright.setup.SetupDocument;

/** Computes what the wind does to the lights whose stands are known; nothing indoors. */
final class WindComputation {

  /** How a cupped face takes the wind (source nasa-drag; within its range a judgement). */
  private static final double CUPPED = 1.4;

  /** What less than this shows to the wind is the head's, not the face's, in square metres. */
  private static final double NO_FACE_M2 = 1e-4;

  /** Nearer to the ground nothing tips a stand, in metres. */
  private static final double LOWEST_M = 0.05;

  private WindComputation() {}

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
    List<String> assumptions = new ArrayList<>(5);
    double mass = stand.ballastKg();
    mass += weight("The stand", stand.weightKg(), assumptions);
    mass += weight("The head", light.head().weightKg(), assumptions) * light.heads();
    if (light.modifier().isPresent()) {
      mass +=
          weight("The modifier", light.modifier().get().weightKg(), assumptions) * light.heads();
    }
    if (light.heads() > 1) {
      assumptions.add("Each of the " + light.heads() + " heads carries a face of its own.");
    }
    boolean cupped = light.modifierOrStandard().kind() == Modifier.Kind.UMBRELLA;
    assumptions.add(
        cupped
            ? "The face is turned square to the wind and cups it."
            : "The face is turned square to the wind, as a flat plate.");
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

  private static double weight(String what, Optional<Double> kg, List<String> assumptions) {
    if (kg.isEmpty()) {
      assumptions.add(what + "'s weight is not known: reckoned as nothing.");
    }
    return kg.orElse(0.0);
  }
}
