package lampwright.setup.adapting;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.gear.GearForms;
import lampwright.setup.LightId;

/**
 * What somebody has decided about a light, so that only the rest is solved: this head stays key.
 *
 * @param head its name in the kit
 * @param modifier its name in the kit
 * @param heads how many heads make it
 * @param lit false for a light that is left out on purpose
 */
public record Pin(
    LightId light,
    Optional<String> head,
    Optional<String> modifier,
    Optional<Integer> heads,
    boolean lit) {

  private static final Field<Pin, LightId> LIGHT =
      required("light", LightId.FORM, Pin::light, "The light's id in the setup.");
  private static final Field<Pin, Optional<String>> HEAD =
      optional("head", GearForms.name(), Pin::head, "Only this head of the kit makes it.");
  private static final Field<Pin, Optional<String>> MODIFIER =
      optional(
          "modifier",
          GearForms.name(),
          Pin::modifier,
          "Only with this modifier of the kit; “standard reflector” for the head's own.");
  private static final Field<Pin, Optional<Integer>> HEADS =
      optional("heads", Forms.count(1, 12), Pin::heads, "Exactly so many heads make it.");
  private static final Field<Pin, Boolean> LIT =
      usually(
          true,
          "lit",
          Forms.flag(),
          Pin::lit,
          "False leaves the light out on purpose; usually true.");

  public static final ObjectForm<Pin> FORM =
      ObjectForm.of(
          "pin",
          "What is decided about a light, so that only the rest is solved.",
          values ->
              new Pin(
                  values.get(LIGHT),
                  values.get(HEAD),
                  values.get(MODIFIER),
                  values.get(HEADS),
                  values.get(LIT)),
          List.of(LIGHT, HEAD, MODIFIER, HEADS, LIT));
}
