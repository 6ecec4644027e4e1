package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.Several;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/** Wishes that no gear could fulfil, or that speak of gear and lights that are not there. */
final class Contradictions {

  private Contradictions() {}

  /** What cannot be, one sentence each; empty where the search can begin. */
  static List<String> of(SetupDocument setup, Kit kit, Wishes wishes) {
    List<String> found = new ArrayList<>();
    found.addAll(KitTonight.unknown(kit, wishes.tonight()));
    ofPins(setup, kit, wishes, found);
    for (LightId id : wishes.limits().mayGiveUp()) {
      if (!has(setup, id)) {
        found.add("“" + id + "” may be given up, but the setup has no such light.");
      }
    }
    found.addAll(CameraChoice.contradictions(setup, kit, wishes.limits()));
    return found;
  }

  private static void ofPins(SetupDocument setup, Kit kit, Wishes wishes, List<String> found) {
    Set<LightId> pinned = new HashSet<>();
    for (Pin pin : wishes.pins()) {
      if (!has(setup, pin.light())) {
        found.add("“" + pin.light() + "” is pinned, but the setup has no such light.");
      }
      if (!pinned.add(pin.light())) {
        found.add("“" + pin.light() + "” is pinned twice.");
      }
      if (!pin.lit()
          && (pin.head().isPresent() || pin.modifier().isPresent() || pin.heads().isPresent())) {
        found.add("“" + pin.light() + "” is left out, so nothing can be pinned to it.");
      }
      ofPin(kit, wishes, pin, found);
    }
  }

  private static void ofPin(Kit kit, Wishes wishes, Pin pin, List<String> found) {
    String light = "“" + pin.light() + "”";
    Optional<Several<Head>> head =
        pin.head()
            .flatMap(
                name -> kit.heads().stream().filter(h -> h.item().name().equals(name)).findFirst());
    if (pin.head().isPresent() && head.isEmpty()) {
      found.add(light + " is pinned to “" + pin.head().get() + "”, but the kit has no such head.");
    }
    Optional<Modifier> modifier = pin.modifier().flatMap(name -> modifier(kit, name));
    if (pin.modifier().isPresent() && modifier.isEmpty()) {
      found.add(
          light
              + " is pinned to “"
              + pin.modifier().get()
              + "”, but the kit has no such modifier.");
    }
    if (head.isPresent() && modifier.isPresent() && !modifier.get().fits(head.get().item())) {
      found.add(
          light
              + " is pinned to “"
              + modifier.get().name()
              + "” on “"
              + head.get().item().name()
              + "”, but the one does not fit the other.");
    }
    if (head.isPresent() && left(wishes, head.get()) < pin.heads().orElse(1)) {
      found.add(
          light
              + " is pinned to "
              + pin.heads().map(count -> count + " of ").orElse("")
              + "“"
              + head.get().item().name()
              + "”, but "
              + left(wishes, head.get())
              + " of the kit's are left.");
    }
  }

  private static int left(Wishes wishes, Several<Head> heads) {
    int dead =
        wishes.tonight().stream()
            .filter(state -> state.head().equals(heads.item().name()))
            .mapToInt(HeadTonight::dead)
            .sum();
    return Math.max(0, heads.count() - dead);
  }

  private static Optional<Modifier> modifier(Kit kit, String name) {
    Modifier standard = Modifier.standardReflector();
    return name.equals(standard.name())
        ? Optional.of(standard)
        : kit.modifiers().stream()
            .map(Several::item)
            .filter(m -> m.name().equals(name))
            .findFirst();
  }

  private static boolean has(SetupDocument setup, LightId id) {
    return setup.lights().stream().anyMatch(light -> light.id().equals(id));
  }

  /** What to say where no setting of the camera holds the ambient as near as it must be. */
  static String ambientNotHeld(Wishes wishes) {
    return "No setting of the camera keeps the ambient within "
        + Losses.stops(wishes.limits().ambientWithin().map(s -> s.value()).orElse(0.0))
        + " of the setup's.";
  }
}
