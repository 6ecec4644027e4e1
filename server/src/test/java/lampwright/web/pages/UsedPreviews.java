package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.drawing.StopRuler;
import lampwright.engine.Known;
import lampwright.engine.unit.Stops;
import lampwright.wording.Deviation;
import lampwright.wording.WordsForTests;

/** What was really used, on the setup page: told, told at length, and told wrongly. */
final class UsedPreviews {

  private UsedPreviews() {}

  static Kin kin() {
    return new Kin(
        Optional.of(new Link("Last ferry, north quay", "/demo/setups/n1")),
        List.of(
            new Link("Last ferry, two heads", "/demo/setups/t2"),
            new Link("Last ferry, hired packs", "/demo/setups/h3")));
  }

  static Kin longKin() {
    String name = "Harbourmasterofficestaircaseundertheemergencylamp and what came before";
    return new Kin(Optional.of(new Link(name, "")), List.of(new Link(name, "/demo/setups/t2")));
  }

  static UsedPart part() {
    return new UsedPart(
        "Revision 4 against the plan in revision 3, told by Imke Tal, 14 October 2030.",
        "The fog came in at six: fill down, key a step nearer.",
        List.of(
            light(1, "Key", -0.6, ""),
            light(2, "Fill", 0.2, "It stood 2.40 m from its target instead of 2.00 m.")),
        "As planned: 3 Rim, 4 Background.",
        List.of(
            new UsedPart.Setting("Aperture", "f/5.6", "f/5.6", ""),
            new UsedPart.Setting("Time", "1/125 s", "1/60 s", "+1.0 stop"),
            new UsedPart.Setting("ISO", "100", "200", "+1.0 stop")));
  }

  static UsedPart longPart() {
    UsedPart part = part();
    return new UsedPart(
        part.told(),
        (part.note() + " ").repeat(12),
        part.lights(),
        part.asPlanned(),
        part.camera());
  }

  private static UsedPart.UsedLight light(int number, String role, double off, String notes) {
    return new UsedPart.UsedLight(
        number,
        role,
        new UsedPart.Means("400 W·s battery head, box", "1/4", "", "f/5.6", Known.COMPUTED),
        new UsedPart.Means(
            "400 W·s battery head, box", "1/8 + 0.4", "−0.6 stop", "f/4 + 0.4", Known.METERED),
        StopRuler.of(role, WordsForTests.usual().notation())
            .withNames("used", "planned")
            .withBar(0)
            .withBand(0.6)
            .withDot(off)
            .svg(),
        Deviation.of(new Stops(off), WordsForTests.usual()),
        notes);
  }

  static ProposedPart proposed() {
    return new ProposedPart(
        "proposal-p1",
        "Proposed by Tam Orrin, 15 October 2030",
        Optional.of(part()),
        "/demo/setups/k3v9/proposals/p1",
        "/demo/setups/k3v9/proposals/p1/withdrawal",
        "Decline it",
        "c5rf",
        4,
        "Told of revision 3; here it stands against revision 4.");
  }

  static ProposedPart proposedToo() {
    return new ProposedPart(
        "proposal-p2",
        "Proposed by Tam Orrin, 16 October 2030",
        Optional.empty(),
        "",
        "/demo/setups/k3v9/proposals/p2/withdrawal",
        "Take it back",
        "c5rf",
        4,
        "The setup was changed since, and this does not fit it any more.");
  }

  static UsedForm form() {
    return form(FormErrors.none());
  }

  static UsedForm wrongForm() {
    return form(
        new FormErrors(
            List.of(
                new FormErrors.FormError(
                    "used-key-power",
                    "1 Key: Stops down (15 stops) must be within the head's range of 8 stops."),
                new FormErrors.FormError(
                    UsedForm.NOTE, "Note must not hold control characters."))));
  }

  private static UsedForm form(FormErrors errors) {
    return new UsedForm(
        "/demo/setups/k3v9/used",
        "c5rf",
        4,
        true,
        false,
        List.of(fields(1, "Key", "key"), fields(2, "Fill", "fill")),
        List.of(
            new UsedForm.TypedField("used-aperture", "Aperture, f/", "5.6", "", true),
            new UsedForm.TypedField("used-time", "Time, s", "1/60", "", false),
            new UsedForm.TypedField("used-iso", "ISO", "200", "", true)),
        "The fog came in at six.",
        errors);
  }

  private static UsedForm.LightFields fields(int number, String role, String id) {
    return new UsedForm.LightFields(
        number,
        role,
        List.of(
            new UsedForm.TypedField(
                "used-" + id + "-power", "Stops below full", "2.6", "planned 2.0: 1/4", true),
            new UsedForm.TypedField(
                "used-" + id + "-reading", "Meter gave, f/", "", "expected f/5.6", false),
            new UsedForm.TypedField(
                "used-" + id + "-distance", "Distance, m", "2.00", "planned 2.00", true)));
  }
}
