package lampwright.setup.signature;

import static lampwright.document.Field.required;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Stops;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.Target;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.TargetFigures;

/**
 * The flash against the ambient at the first target that gets both, toward the camera.
 *
 * @param flashOverAmbient in stops; below 0 the ambient is the stronger
 * @param where the target, to stand after a reading: "at the face"
 */
public record FlashBalance(Stops flashOverAmbient, String where) implements Part {

  /** Which of both makes the picture. */
  public enum Leads {
    FLASH,
    /** Within a third of a stop, which is just seen side by side (common practice, no source). */
    NEITHER,
    AMBIENT
  }

  private static final Field<FlashBalance, Stops> FLASH_OVER_AMBIENT =
      required(
          "flash_over_ambient_stops",
          Numbers.stops(),
          FlashBalance::flashOverAmbient,
          "The flash less the ambient.");
  private static final Field<FlashBalance, String> WHERE =
      required("where", Forms.text(410), FlashBalance::where, "At which target.");

  static final ObjectForm<FlashBalance> FORM =
      ObjectForm.of(
          "flash_balance",
          "The flash against the ambient.",
          values -> new FlashBalance(values.get(FLASH_OVER_AMBIENT), values.get(WHERE)),
          List.of(FLASH_OVER_AMBIENT, WHERE));

  static Optional<FlashBalance> find(Figures figures, Gaps gaps) {
    Optional<FlashBalance> found =
        figures
            .againstAmbient()
            .map(at -> of(at.balance(), at.target()))
            .or(() -> figures.targets().stream().flatMap(FlashBalance::of).findFirst());
    if (found.isPresent()) {
      return found;
    }
    if (figures.ambient().isEmpty()) {
      return gaps.none(PartName.BALANCE, Why.AMBIENT_UNKNOWN, List.of("/ambient"));
    }
    List<String> needs =
        figures.lights().stream().flatMap(light -> light.needs().stream()).toList();
    return gaps.none(
        PartName.BALANCE,
        Why.NOTHING_TOWARD_CAMERA,
        needs.isEmpty() ? List.of("/lights/0/target") : needs);
  }

  private static Stream<FlashBalance> of(TargetFigures target) {
    return target.flashOverAmbient().map(balance -> of(balance, target.target())).stream();
  }

  private static FlashBalance of(Stops balance, Target at) {
    return new FlashBalance(Numbers.tidy(balance), at.where());
  }

  public Leads leads() {
    if (flashOverAmbient.abs().compareTo(Stops.THIRD) <= 0) {
      return Leads.NEITHER;
    }
    return flashOverAmbient.value() > 0 ? Leads.FLASH : Leads.AMBIENT;
  }

  /** How far the ambient lies over the flash, below 0 under it. */
  public Stops ambientOverFlash() {
    return flashOverAmbient.negated();
  }

  @Override
  public PartName part() {
    return PartName.BALANCE;
  }

  @Override
  public Said words() {
    return Said.of("signature.leads." + Numbers.key(leads()));
  }

  @Override
  public Said sentence() {
    return Said.of(
        "signature.balance.sentence",
        Numbers.against(ambientOverFlash()),
        new Filling.Where(where),
        words().asFilling());
  }
}
