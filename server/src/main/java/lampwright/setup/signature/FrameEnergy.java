package lampwright.setup.signature;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.WattSeconds;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.figures.Figures;

/**
 * What one picture takes of flash.
 *
 * @param energy of all heads and pops
 */
public record FrameEnergy(WattSeconds energy) implements Part {

  private static final Field<FrameEnergy, WattSeconds> ENERGY =
      required(
          "energy_ws",
          Forms.number("W·s").atLeast(0).as(WattSeconds::new, WattSeconds::value),
          FrameEnergy::energy,
          "Of all heads and pops.");

  static final ObjectForm<FrameEnergy> FORM =
      ObjectForm.of(
          "frame_energy",
          "What one picture takes of flash.",
          values -> new FrameEnergy(values.get(ENERGY)),
          List.of(ENERGY));

  static Optional<FrameEnergy> find(Figures figures, Gaps gaps) {
    return figures.energyPerFrame().isPresent()
        ? figures
            .energyPerFrame()
            .map(energy -> new FrameEnergy(new WattSeconds(Numbers.tidy(energy.value()))))
        : gaps.none(
            PartName.ENERGY,
            Why.POWER_UNKNOWN,
            IntStream.range(0, figures.lights().size())
                .filter(i -> figures.lights().get(i).energy().isEmpty())
                .mapToObj(i -> "/lights/" + i + "/stops_down")
                .toList());
  }

  @Override
  public PartName part() {
    return PartName.ENERGY;
  }

  /** "410 W·s". */
  @Override
  public Said words() {
    return Said.of(
        "signature.energy.words", new Filling.Rounded(energy.value(), energy.value() < 10 ? 1 : 0));
  }

  @Override
  public Said sentence() {
    return Said.of("signature.energy.sentence", words().asFilling());
  }
}
