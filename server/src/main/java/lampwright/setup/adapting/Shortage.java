package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import lampwright.gear.Kit;
import lampwright.gear.Several;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.LightFigures;

/** The lights that a kit has no head for, and what to say of them. */
record Shortage(SetupDocument setup, Kit kit, Figures original) {

  /** The lights that were given up, in the setup's order. */
  List<LightId> unlit(HeadChoice.Chosen chosen) {
    List<LightId> unlit = new ArrayList<>();
    for (int i = 0; i < setup.lights().size(); i++) {
      if (chosen.heads().get(i).isEmpty()) {
        unlit.add(setup.lights().get(i).id());
      }
    }
    return unlit;
  }

  /** Why they are not, one sentence each. */
  List<String> reasons(List<LightId> unlit) {
    List<String> reasons = new ArrayList<>();
    int count = kit.heads().stream().mapToInt(Several::count).sum();
    int lights = setup.lights().size();
    for (LightId id : unlit) {
      if (original.get(id).level().isEmpty()) {
        reasons.add("The level of “" + id + "” is not known, so it cannot be made again.");
      } else if (count >= lights) {
        reasons.add("No head of the kit comes near what “" + id + "” needs.");
      } else {
        reasons.add("No head is left for “" + id + "”.");
      }
    }
    if (count < lights) {
      reasons.add(
          "The kit has "
              + (count == 1 ? "1 head" : count + " heads")
              + " for "
              + (lights == 1 ? "1 light." : lights + " lights."));
    }
    return reasons;
  }

  /** What would help, one sentence a light. */
  List<String> remedies(List<LightId> unlit) {
    List<String> remedies = new ArrayList<>();
    for (LightId id : unlit) {
      LightFigures light = original.get(id);
      remedies.add(
          light.level().isEmpty()
              ? "Meter “" + id + "” or say its power in the setup."
              : "One more head of about "
                  + light.light().head().energy()
                  + " for “"
                  + id
                  + "”, or give it up.");
    }
    return remedies;
  }
}
