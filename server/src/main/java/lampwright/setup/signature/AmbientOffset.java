package lampwright.setup.signature;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.figures.Figures;

/**
 * How far the ambient lies from the shooting exposure.
 *
 * @param fromShooting -1 is one stop under
 */
public record AmbientOffset(Stops fromShooting) implements Part {

  private static final Field<AmbientOffset, Stops> FROM_SHOOTING =
      required(
          "from_shooting_stops",
          Numbers.stops(),
          AmbientOffset::fromShooting,
          "From the shooting exposure; -1 is one stop under.");

  static final ObjectForm<AmbientOffset> FORM =
      ObjectForm.of(
          "ambient_offset",
          "How far the ambient lies from the shooting exposure.",
          values -> new AmbientOffset(values.get(FROM_SHOOTING)),
          List.of(FROM_SHOOTING));

  static Optional<AmbientOffset> find(Figures figures, Gaps gaps) {
    return figures.ambient().isPresent()
        ? figures.ambient().map(ambient -> new AmbientOffset(Numbers.tidy(ambient.offset())))
        : gaps.none(PartName.AMBIENT, Why.AMBIENT_UNKNOWN, List.of("/ambient"));
  }

  @Override
  public PartName part() {
    return PartName.AMBIENT;
  }

  /** "−1.0 stop". */
  @Override
  public Said words() {
    return Said.of("signature.ambient.words", new Filling.Signed(fromShooting.value()));
  }

  @Override
  public Said sentence() {
    return Said.of("signature.ambient.sentence", Numbers.against(fromShooting));
  }
}
