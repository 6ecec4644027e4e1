package lampwright.setup.adapting;

import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.gear.GearForms;

/**
 * How a head of the kit, or a pack, is today: some died, or their batteries are half empty.
 *
 * @param head its name in the kit
 * @param dead how many of its kind cannot be used
 * @param chargeShare what is left of the charge in each, 0 to 1; spare batteries are full
 */
public record HeadTonight(String head, int dead, double chargeShare) {

  private static final Field<HeadTonight, String> HEAD =
      required("head", GearForms.name(), HeadTonight::head, "A head or a pack of the kit.");
  private static final Field<HeadTonight, Integer> DEAD =
      usually(
          0,
          "dead",
          Forms.count(0, 99),
          HeadTonight::dead,
          "How many of them cannot be used; usually none.");
  private static final Field<HeadTonight, Double> CHARGE =
      usually(
          1.0,
          "charge_share",
          Forms.number("").atLeast(0).atMost(1).maybe(0.5),
          HeadTonight::chargeShare,
          "What is left of the charge in each of them: 0.5 is half; usually 1.");

  public static final ObjectForm<HeadTonight> FORM =
      ObjectForm.of(
          "head_tonight",
          "How a head or a pack of the kit is today.",
          values -> new HeadTonight(values.get(HEAD), values.get(DEAD), values.get(CHARGE)),
          List.of(HEAD, DEAD, CHARGE));
}
