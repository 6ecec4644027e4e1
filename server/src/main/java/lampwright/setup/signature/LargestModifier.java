package lampwright.setup.signature;

import static lampwright.document.Field.required;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Metres;
import lampwright.gear.GearForms;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * The modifier with the largest face; of equals the first.
 *
 * @param size its longest straight side, or its diameter
 */
public record LargestModifier(LightId light, String name, Metres size) implements Part {

  private static final Field<LargestModifier, LightId> LIGHT =
      required("light", LightId.FORM, LargestModifier::light, "Which light it is on.");
  private static final Field<LargestModifier, String> NAME =
      required("name", Forms.text(GearForms.NAME), LargestModifier::name, "What it is called.");
  private static final Field<LargestModifier, Metres> SIZE =
      required("size_m", Numbers.metres(), LargestModifier::size, "Its longest side.");

  static final ObjectForm<LargestModifier> FORM =
      ObjectForm.of(
          "largest_modifier",
          "The modifier with the largest face.",
          values -> new LargestModifier(values.get(LIGHT), values.get(NAME), values.get(SIZE)),
          List.of(LIGHT, NAME, SIZE));

  static Optional<LargestModifier> find(SetupDocument setup, Gaps gaps) {
    Optional<LargestModifier> largest =
        setup.lights().stream()
            .map(LargestModifier::of)
            .filter(of -> of.size().value() > 0)
            .reduce((one, other) -> SMALLER.compare(one, other) < 0 ? other : one);
    return largest.isPresent()
        ? largest
        : gaps.none(
            PartName.LARGEST_MODIFIER,
            Why.ALL_POINTS,
            IntStream.range(0, setup.lights().size())
                .mapToObj(
                    i ->
                        "/lights/"
                            + i
                            + "/modifier"
                            + (setup.lights().get(i).modifier().isPresent() ? "/face" : ""))
                .toList());
  }

  private static final Comparator<LargestModifier> SMALLER =
      Comparator.comparing(LargestModifier::size);

  private static LargestModifier of(Light light) {
    double size = light.modifierOrStandard().face().largestDimension().value();
    return new LargestModifier(
        light.id(), light.modifierOrStandard().name(), new Metres(Numbers.tidy(size)));
  }

  @Override
  public PartName part() {
    return PartName.LARGEST_MODIFIER;
  }

  /** "1.5 m". */
  @Override
  public Said words() {
    return Said.of("signature.modifier.words", new Filling.Tape(size.value()));
  }

  @Override
  public Said sentence() {
    return Said.of(
        "signature.modifier.sentence",
        Filling.text(name),
        Filling.text(light),
        words().asFilling());
  }
}
