package lampwright.setup.signature;

import static lampwright.document.Field.required;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.engine.light.LightingRatio;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.LightId;
import lampwright.setup.Role;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.LightFigures;
import lampwright.setup.figures.SpillFigures;
import lampwright.setup.figures.TargetFigures;

/**
 * How far the key is over the fill at the key's target, toward the camera.
 *
 * @param keyOverFill in stops
 */
public record KeyToFill(Stops keyOverFill) implements Part {

  private static final Field<KeyToFill, Stops> KEY_OVER_FILL =
      required(
          "key_over_fill_stops", Numbers.stops(), KeyToFill::keyOverFill, "The key less the fill.");

  static final ObjectForm<KeyToFill> FORM =
      ObjectForm.of(
          "key_to_fill",
          "How far the key is over the fill.",
          values -> new KeyToFill(values.get(KEY_OVER_FILL)),
          List.of(KEY_OVER_FILL));

  static Optional<KeyToFill> find(Figures figures, Optional<ChosenKey> key, Gaps gaps) {
    List<LightFigures> fills =
        figures.lights().stream().filter(light -> light.light().role() == Role.FILL).toList();
    if (key.isEmpty()) {
      return gaps.none(PartName.RATIO, Why.KEY_UNKNOWN, ChosenKey.needs(figures));
    }
    if (fills.isEmpty()) {
      return gaps.none(PartName.RATIO, Why.NO_FILL, List.of("/lights"));
    }
    LightFigures keyLight = key.get().light();
    Optional<TargetFigures> at =
        figures.targets().stream()
            .filter(target -> target.lights().contains(keyLight.light().id()))
            .findFirst();
    Optional<LightingRatio> ratio =
        at.flatMap(TargetFigures::ratio).or(() -> at.flatMap(t -> reached(t, key.get(), fills)));
    return ratio.isPresent()
        ? ratio.map(found -> new KeyToFill(Numbers.tidy(found.keyOverFill())))
        : gaps.none(PartName.RATIO, Why.NOT_BOTH_AT_TARGET, needs(figures, keyLight, fills));
  }

  /** Where both are for different targets: what of each reaches that of the key. */
  private static Optional<LightingRatio> reached(
      TargetFigures at, ChosenKey key, List<LightFigures> fills) {
    LightId keyId = key.light().light().id();
    double ofKey = sum(at, id -> id.equals(keyId));
    double ofFill = sum(at, id -> fills.stream().anyMatch(fill -> fill.light().id().equals(id)));
    return ofKey > 0 && ofFill > 0
        ? Optional.of(new LightingRatio(Stops.ofRatio(ofKey / ofFill)))
        : Optional.empty();
  }

  private static double sum(TargetFigures at, Predicate<LightId> which) {
    return at.spill().reaches().stream()
        .filter(reach -> which.test(reach.light()))
        .map(SpillFigures.Reach::exposure)
        .mapToDouble(exposure -> exposure.value())
        .sum();
  }

  private static List<String> needs(Figures figures, LightFigures key, List<LightFigures> fills) {
    List<String> needs = new ArrayList<>(key.needs());
    fills.forEach(fill -> needs.addAll(fill.needs()));
    if (needs.isEmpty()) {
      needs.add("/lights/" + figures.lights().indexOf(key) + "/place");
      fills.forEach(fill -> needs.add("/lights/" + figures.lights().indexOf(fill) + "/place"));
    }
    return needs;
  }

  /** The same as x:1, in both ways of the trade. */
  public LightingRatio ratio() {
    return new LightingRatio(keyOverFill);
  }

  @Override
  public PartName part() {
    return PartName.RATIO;
  }

  /** "3:1", the lit side to the shadow side. */
  @Override
  public Said words() {
    return words(ratio());
  }

  static Said words(LightingRatio ratio) {
    return Said.of("signature.ratio.words", new Filling.Rounded(ratio.litToShadow(), 1));
  }

  @Override
  public Said sentence() {
    return Said.of(
        "signature.ratio.sentence",
        Numbers.against(keyOverFill),
        new Filling.Rounded(ratio().litToShadow(), 1),
        new Filling.Rounded(ratio().keyToFill(), 1));
  }
}
