package lampwright.setup.without;

import java.util.Map;
import java.util.Optional;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.LuxSeconds;
import lampwright.engine.unit.Stops;
import lampwright.setup.Burning;
import lampwright.setup.LightId;
import lampwright.setup.Role;
import lampwright.setup.figures.TargetFigures;

/**
 * The two sides of what the key is for. A meter there points at the camera; for the shadow side a
 * hand shades every key off it, as the trade does it: common practice, no source.
 *
 * @param face the meter there, toward the camera
 * @param figures of that target
 * @param roles of all the setup's lights
 */
public record FaceSides(MeterPlace face, TargetFigures figures, Map<LightId, Role> roles) {

  public FaceSides {
    roles = Map.copyOf(roles);
  }

  /** All that burns; absent where it is dark. */
  public Optional<Stops> lit(Burning burning) {
    return face.level(burning);
  }

  /** All that burns but the keys; absent where that is dark. */
  public Optional<Stops> shadow(Burning burning) {
    return face.level(shaded(burning));
  }

  private Burning shaded(Burning burning) {
    Burning shaded = burning;
    for (Map.Entry<LightId, Role> light : roles.entrySet()) {
      if (light.getValue() == Role.KEY) {
        shaded = shaded.without(light.getKey());
      }
    }
    return shaded;
  }

  public Shift litShift(Burning from, Burning to) {
    return new Shift(lit(from), lit(to));
  }

  public Shift shadowShift(Burning from, Burning to) {
    return new Shift(shadow(from), shadow(to));
  }

  /** How far the lit side is over the shadow side; absent where one of them is dark. */
  public Optional<Stops> apart(Burning burning) {
    return lit(burning).flatMap(lit -> shadow(burning).map(lit::minus));
  }

  /** Key and fill together against fill, absent where one of them does not burn. */
  public Optional<LightingRatio> ratio(Burning burning) {
    double key = of(Role.KEY, burning);
    double fill = of(Role.FILL, burning);
    return key > 0 && fill > 0
        ? Optional.of(LightingRatio.of(new LuxSeconds(key), new LuxSeconds(fill)))
        : Optional.empty();
  }

  private double of(Role role, Burning burning) {
    double sum = 0;
    for (TargetFigures.Share share : figures.shares()) {
      if (roles.get(share.light()) == role && burning.burns(share.light())) {
        sum += share.exposure().value();
      }
    }
    return sum;
  }
}
