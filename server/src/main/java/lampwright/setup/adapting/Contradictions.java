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
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/** Wishes that no gear could fulfil, or that speak of gear and lights that are not there. */
final class Contradictions {

  private Contradictions() {}

  /** What cannot be, one sentence each; empty where the search can begin. */
  static List<Said> of(SetupDocument setup, Kit kit, Wishes wishes) {
    List<Said> found = new ArrayList<>();
    found.addAll(KitTonight.unknown(kit, wishes.tonight()));
    ofPins(setup, kit, wishes, found);
    for (LightId id : wishes.limits().mayGiveUp()) {
      if (!has(setup, id)) {
        found.add(Said.of("adapting.cannot.giveUp", Filling.text(id)));
      }
    }
    found.addAll(CameraChoice.contradictions(setup, kit, wishes.limits()));
    return found;
  }

  private static void ofPins(SetupDocument setup, Kit kit, Wishes wishes, List<Said> found) {
    Set<LightId> pinned = new HashSet<>();
    for (Pin pin : wishes.pins()) {
      if (!has(setup, pin.light())) {
        found.add(Said.of("adapting.cannot.pinned", Filling.text(pin.light())));
      }
      if (!pinned.add(pin.light())) {
        found.add(Said.of("adapting.cannot.pinnedTwice", Filling.text(pin.light())));
      }
      if (!pin.lit()
          && (pin.head().isPresent() || pin.modifier().isPresent() || pin.heads().isPresent())) {
        found.add(Said.of("adapting.cannot.leftOutAndPinned", Filling.text(pin.light())));
      }
      ofPin(kit, wishes, pin, found);
    }
  }

  private static void ofPin(Kit kit, Wishes wishes, Pin pin, List<Said> found) {
    Filling light = Filling.text(pin.light());
    Optional<Several<Head>> head =
        pin.head()
            .flatMap(
                name -> kit.heads().stream().filter(h -> h.item().name().equals(name)).findFirst());
    if (pin.head().isPresent() && head.isEmpty()) {
      found.add(Said.of("adapting.cannot.noSuchHead", light, Filling.text(pin.head().get())));
    }
    Optional<Modifier> modifier = pin.modifier().flatMap(name -> modifier(kit, name));
    if (pin.modifier().isPresent() && modifier.isEmpty()) {
      found.add(
          Said.of("adapting.cannot.noSuchModifier", light, Filling.text(pin.modifier().get())));
    }
    if (head.isPresent() && modifier.isPresent() && !modifier.get().fits(head.get().item())) {
      found.add(
          Said.of(
              "adapting.cannot.fit",
              light,
              Filling.text(modifier.get().name()),
              Filling.text(head.get().item().name())));
    }
    if (head.isPresent() && left(wishes, head.get()) < pin.heads().orElse(1)) {
      Filling name = Filling.text(head.get().item().name());
      Filling left = Filling.number(left(wishes, head.get()), 0);
      found.add(
          pin.heads().isPresent()
              ? Said.of(
                  "adapting.cannot.soManyLeft",
                  light,
                  name,
                  left,
                  Filling.number(pin.heads().get(), 0))
              : Said.of("adapting.cannot.left", light, name, left));
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
  static Said ambientNotHeld(Wishes wishes) {
    return Said.of(
        "adapting.cannot.ambient",
        Filling.stops(wishes.limits().ambientWithin().map(s -> s.value()).orElse(0.0)));
  }
}
