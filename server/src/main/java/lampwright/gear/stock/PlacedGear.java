package lampwright.gear.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lampwright.gear.Body;
import lampwright.gear.Gel;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Lens;
import lampwright.gear.Modifier;
import lampwright.gear.NeutralDensity;
import lampwright.gear.Pack;
import lampwright.gear.Piece;
import lampwright.gear.Several;
import lampwright.gear.Stand;

/**
 * A studio's gear at its place in a kit.
 *
 * @param number its place in the kit's list of gear, from 0
 * @param count how many of it are in the kit
 */
record PlacedGear(int number, int count, GearItem item) {

  /** A kit with gear added at the end of its lists, in the order of the gear. */
  static Kit join(Kit own, List<PlacedGear> gear) {
    return new Kit(
        own.name(),
        own.note(),
        joined(own.bodies(), singles(gear, Body.class)),
        joined(own.lenses(), singles(gear, Lens.class)),
        joined(own.heads(), several(gear, Head.class)),
        joined(own.packs(), several(gear, Pack.class)),
        joined(own.modifiers(), several(gear, Modifier.class)),
        own.pairings(),
        joined(own.gels(), several(gear, Gel.class)),
        joined(own.neutralDensities(), singles(gear, NeutralDensity.class)),
        joined(own.stands(), several(gear, Stand.class)));
  }

  private static <T> List<T> joined(List<T> own, Stream<T> more) {
    List<T> all = new ArrayList<>(own);
    more.forEach(all::add);
    return List.copyOf(all);
  }

  private static <P extends Piece> Stream<Several<P>> several(
      List<PlacedGear> gear, Class<P> type) {
    return gear.stream()
        .filter(placed -> type.isInstance(placed.item().piece()))
        .map(placed -> new Several<>(placed.count(), type.cast(placed.item().piece())));
  }

  private static <P extends Piece> Stream<P> singles(List<PlacedGear> gear, Class<P> type) {
    return gear.stream()
        .filter(placed -> type.isInstance(placed.item().piece()))
        .map(placed -> type.cast(placed.item().piece()));
  }
}
