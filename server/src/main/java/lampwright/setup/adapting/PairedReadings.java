package lampwright.setup.adapting;

import java.util.Optional;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.Output;
import lampwright.setup.SetupDocument;

/**
 * What somebody metered of a head with a modifier on it: as the kit says, else as the setup says of
 * the very same two.
 */
record PairedReadings(SetupDocument setup, Kit kit) {

  Optional<Output.ByReading> of(Head head, Modifier modifier) {
    return kit.findPairing(head, modifier).or(() -> fromSetup(head, modifier));
  }

  private Optional<Output.ByReading> fromSetup(Head head, Modifier modifier) {
    return setup.lights().stream()
        .filter(light -> light.head().equals(head) && light.modifierOrStandard().equals(modifier))
        .flatMap(light -> light.output().stream())
        .findFirst();
  }
}
