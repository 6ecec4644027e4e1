package lampwright.setup.signature;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.light.Direction;
import lampwright.engine.light.FaceSide;
import lampwright.engine.light.Pattern;
import lampwright.engine.unit.Degrees;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;

/**
 * Where the key comes from, measured from where the first subject's nose points.
 *
 * @param byRole whether the setup calls it the key; else it is the light that gives most
 * @param azimuth from the nose, above -180 to 180, positive to camera right for a face that looks
 *     at the camera
 * @param elevation above the level of its target, -90 to 90
 * @param faceYaw where the nose points, from the direction to the camera, positive to camera right
 */
public record KeyLight(
    LightId light, boolean byRole, Degrees azimuth, Degrees elevation, Degrees faceYaw)
    implements Part {

  private static final Field<KeyLight, LightId> LIGHT =
      required("light", LightId.FORM, KeyLight::light, "Which light it is.");
  private static final Field<KeyLight, Boolean> BY_ROLE =
      required("by_role", Forms.flag(), KeyLight::byRole, "Whether the setup calls it the key.");
  private static final Field<KeyLight, Degrees> AZIMUTH =
      required("azimuth_deg", Numbers.degrees(), KeyLight::azimuth, "From the nose.");
  private static final Field<KeyLight, Degrees> ELEVATION =
      required("elevation_deg", Numbers.degrees(), KeyLight::elevation, "Above the target.");
  private static final Field<KeyLight, Degrees> FACE_YAW =
      required("face_yaw_deg", Numbers.degrees(), KeyLight::faceYaw, "Where the nose points.");

  static final ObjectForm<KeyLight> FORM =
      ObjectForm.of(
          "key_light",
          "Where the key comes from.",
          values ->
              new KeyLight(
                  values.get(LIGHT),
                  values.get(BY_ROLE),
                  values.get(AZIMUTH),
                  values.get(ELEVATION),
                  values.get(FACE_YAW)),
          List.of(LIGHT, BY_ROLE, AZIMUTH, ELEVATION, FACE_YAW));

  static Optional<KeyLight> find(
      SetupDocument setup, Figures figures, Optional<ChosenKey> key, Gaps gaps) {
    if (key.isEmpty()) {
      return gaps.none(PartName.KEY, Why.KEY_UNTOLD, ChosenKey.needs(figures));
    }
    ChosenKey chosen = key.get();
    if (setup.subjects().isEmpty()) {
      return gaps.none(PartName.KEY, Why.NO_SUBJECT, List.of("/subjects"));
    }
    if (ChosenKey.isSurface(chosen.light().light().target())) {
      int index = figures.lights().indexOf(chosen.light());
      return gaps.none(
          PartName.KEY, Why.KEY_ON_SURFACE, List.of("/lights/" + index + "/target/held"));
    }
    Degrees yaw = setup.subjects().getFirst().facing();
    Direction fromNose = chosen.light().direction().fromNose(yaw);
    return Optional.of(
        new KeyLight(
            chosen.light().light().id(),
            chosen.byRole(),
            Numbers.tidy(Numbers.tidy(fromNose.azimuth()).toHalfTurns()),
            Numbers.tidy(fromNose.elevation()),
            Numbers.tidy(yaw)));
  }

  /** The direction from the nose. */
  public Direction fromNose() {
    return new Direction(azimuth, elevation);
  }

  public KeySide side() {
    return KeySide.of(azimuth);
  }

  /** The trade's name for the direction, and its neighbour's within 10 degrees of a border. */
  public Pattern.Named pattern() {
    return Pattern.named(fromNose());
  }

  /** Whether it lights the side of a turned face that the camera sees more of. */
  public FaceSide faceSide() {
    return FaceSide.of(azimuth.plus(faceYaw), faceYaw);
  }

  @Override
  public PartName part() {
    return PartName.KEY;
  }

  /** "loop", "between loop and Rembrandt". */
  @Override
  public Said words() {
    Pattern.Named named = pattern();
    return named
        .neighbour()
        .map(
            other ->
                Said.of(
                    "signature.pattern.between",
                    pattern(named.pattern()).asFilling(),
                    pattern(other).asFilling()))
        .orElseGet(() -> pattern(named.pattern()));
  }

  private static Said pattern(Pattern pattern) {
    return Said.of("signature.pattern." + Numbers.key(pattern));
  }

  @Override
  public Said sentence() {
    Filling where = Said.of("signature.key.at", where(), height()).asFilling();
    Filling how = words().asFilling();
    Filling turned = Said.of("signature.key.turned." + Numbers.key(faceSide())).asFilling();
    return byRole
        ? Said.of("signature.key.sentence", where, how, turned)
        : Said.of("signature.key.strongest", Filling.text(light), where, how, turned);
  }

  private Filling where() {
    return fromNose(azimuth).asFilling();
  }

  /** From where a light comes, as one sees who looks the subject in the face. */
  static Said fromNose(Degrees azimuth) {
    return switch (KeySide.of(azimuth)) {
      case NEITHER ->
          Said.of(
              Math.abs(azimuth.value()) < 90 ? "signature.from.before" : "signature.from.behind");
      case LEFT -> Said.of("signature.from.left", Numbers.size(azimuth));
      case RIGHT -> Said.of("signature.from.right", Numbers.size(azimuth));
    };
  }

  private Filling height() {
    if (Numbers.isLevel(elevation)) {
      return Said.of("signature.height.level").asFilling();
    }
    return Said.of(
            elevation.value() > 0 ? "signature.height.above" : "signature.height.below",
            Numbers.size(elevation))
        .asFilling();
  }
}
