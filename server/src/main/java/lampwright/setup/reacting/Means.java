package lampwright.setup.reacting;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.NeutralDensity;
import lampwright.gear.Several;
import lampwright.setup.Light;
import lampwright.setup.SetupDocument;

/**
 * What there is to react with, beyond the gear that stands.
 *
 * @param kept dials of the camera that must stay, as the time where the camera is held by hand
 * @param spares heads that stand by, one for each that there is
 * @param filters grey filters that stand by; one at a time goes before the lens
 */
public record Means(Set<CameraDial> kept, List<Head> spares, List<NeutralDensity> filters) {

  public Means {
    kept = Set.copyOf(kept);
    spares = List.copyOf(spares);
    filters = List.copyOf(filters);
  }

  /** The setup's own gear, every dial free. */
  public static Means ofSetup() {
    return new Means(Set.of(), List.of(), List.of());
  }

  /** What of a kit does not stand in a setup, by the names of the heads; every dial free. */
  public static Means of(SetupDocument setup, Kit kit) {
    List<Head> spares = new ArrayList<>();
    for (Several<Head> kind : kit.heads()) {
      int stand =
          setup.lights().stream()
              .filter(light -> light.head().name().equals(kind.item().name()))
              .mapToInt(Light::heads)
              .sum();
      for (int i = stand; i < kind.count(); i++) {
        spares.add(kind.item());
      }
    }
    return new Means(Set.of(), spares, kit.neutralDensities());
  }

  /** The same with these dials left as they are. */
  public Means keeping(Set<CameraDial> dials) {
    return new Means(dials, spares, filters);
  }
}
