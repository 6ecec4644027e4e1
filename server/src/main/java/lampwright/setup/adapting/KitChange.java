package lampwright.setup.adapting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Metres;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Modifier;
import lampwright.gear.Several;
import lampwright.gear.Stand;

/** A kit with more in it, to try out what that would help. */
final class KitChange {

  private KitChange() {}

  static Kit withHeads(Kit kit, Head head, int more) {
    return of(kit, with(kit.heads(), head, more), kit.modifiers(), kit.stands());
  }

  static Kit withModifiers(Kit kit, Modifier modifier, int more) {
    boolean standard = modifier.equals(Modifier.standardReflector());
    return standard
        ? kit
        : of(kit, kit.heads(), with(kit.modifiers(), modifier, more), kit.stands());
  }

  /** With a stand like its highest that reaches so high. */
  static Kit withStand(Kit kit, Metres highest) {
    Stand stand =
        new Stand(
            "a stand that reaches",
            highest,
            Optional.empty(),
            3,
            0,
            Optional.empty(),
            Optional.empty());
    return of(kit, kit.heads(), kit.modifiers(), with(kit.stands(), stand, 1));
  }

  private static <G> List<Several<G>> with(List<Several<G>> several, G item, int more) {
    List<Several<G>> all = new ArrayList<>(several);
    all.add(new Several<>(more, item));
    return all;
  }

  private static Kit of(
      Kit kit,
      List<Several<Head>> heads,
      List<Several<Modifier>> modifiers,
      List<Several<Stand>> stands) {
    return new Kit(
        kit.name(),
        kit.note(),
        kit.bodies(),
        kit.lenses(),
        heads,
        kit.packs(),
        modifiers,
        kit.pairings(),
        kit.gels(),
        kit.neutralDensities(),
        stands);
  }
}
