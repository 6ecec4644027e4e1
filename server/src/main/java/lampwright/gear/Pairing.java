package lampwright.gear;

import static lampwright.document.Field.required;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.ObjectForm;

/**
 * What somebody metered of one kind of head with one kind of modifier on it. It is surer than a
 * head's output less a modifier's loss, and wins over it.
 *
 * @param head its name in the kit
 * @param modifier its name in the kit
 */
public record Pairing(String head, String modifier, Output.ByReading reading) {

  private static final Field<Pairing, String> HEAD =
      required("head", GearForms.name(), Pairing::head, "The head's name in this kit.");
  private static final Field<Pairing, String> MODIFIER =
      required("modifier", GearForms.name(), Pairing::modifier, "The modifier's name in this kit.");
  private static final Field<Pairing, Output.ByReading> READING =
      required("reading", Output.ByReading.WITH_MODIFIER, Pairing::reading, "What the meter gave.");

  static final ObjectForm<Pairing> FORM =
      ObjectForm.of(
          "pairing",
          "What somebody metered of a head with a modifier on it.",
          values -> new Pairing(values.get(HEAD), values.get(MODIFIER), values.get(READING)),
          List.of(HEAD, MODIFIER, READING));
}
