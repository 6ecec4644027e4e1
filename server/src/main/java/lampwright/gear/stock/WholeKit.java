package lampwright.gear.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lampwright.document.Pointer;
import lampwright.document.Problem;
import lampwright.gear.Head;
import lampwright.gear.Kit;
import lampwright.gear.Pairing;
import lampwright.gear.Several;

/**
 * What a written kit comes to with the studio's gear as it is now.
 *
 * @param kit the kit that can be used: of each piece as many as are asked for and in order
 * @param missing what is asked for beyond that
 * @param problems why the kit could not be kept, at their places in the written kit; none for a kit
 *     that was kept
 */
public record WholeKit(Kit kit, List<Missing> missing, List<Problem> problems) {

  /** Copies the lists. */
  public WholeKit {
    missing = List.copyOf(missing);
    problems = List.copyOf(problems);
  }

  /**
   * Puts it together.
   *
   * @param stock the studio's gear, at least what the kit names where it is there
   */
  public static WholeKit of(WrittenKit written, Map<GearId, GearItem> stock) {
    if (written.gear().isEmpty()) {
      return new WholeKit(written.own(), List.of(), List.of());
    }
    List<PlacedGear> asked = new ArrayList<>();
    List<Problem> unknown = new ArrayList<>();
    for (int i = 0; i < written.gear().size(); i++) {
      GearUse use = written.gear().get(i);
      GearItem item = stock.get(use.id());
      if (item == null) {
        unknown.add(
            new Problem(
                at(i).field("id").text(),
                "Id (\"%s\") must be the id of one of the studio's gear.".formatted(use.id())));
      } else {
        asked.add(new PlacedGear(i, use.count(), item));
      }
    }
    List<Problem> problems = new ArrayList<>(unknown);
    if (unknown.isEmpty()) {
      problems.addAll(new WholeKitChecks(written.own(), asked).problems());
    }
    List<Missing> missing = new ArrayList<>();
    Kit usable = PlacedGear.join(written.own(), inOrder(asked, missing));
    Kit standing = withoutHeadsThatLackAPack(usable, written, asked, missing);
    return new WholeKit(withoutIdlePairings(standing), missing, problems);
  }

  static Pointer at(int number) {
    return Pointer.root().field("gear").item(number);
  }

  private static List<PlacedGear> inOrder(List<PlacedGear> asked, List<Missing> missing) {
    List<PlacedGear> there = new ArrayList<>();
    for (PlacedGear placed : asked) {
      int inOrder = placed.item().inOrder();
      if (placed.count() > inOrder) {
        missing.add(
            new Missing(
                at(placed.number()).text(),
                "%s \"%s\": %d asked for, %d of %d in order."
                    .formatted(
                        placed.item().kind().title(),
                        placed.item().name(),
                        placed.count(),
                        inOrder,
                        placed.item().count())));
      }
      int usable = Math.min(placed.count(), inOrder);
      if (usable > 0) {
        there.add(new PlacedGear(placed.number(), usable, placed.item()));
      }
    }
    return there;
  }

  /** A head whose pack is being repaired gives no light. */
  private static Kit withoutHeadsThatLackAPack(
      Kit kit, WrittenKit written, List<PlacedGear> asked, List<Missing> missing) {
    Set<String> packs =
        kit.packs().stream().map(pack -> pack.item().name()).collect(Collectors.toSet());
    Set<String> broken =
        asked.stream()
            .filter(placed -> placed.item().kind() == GearKind.PACK)
            .map(placed -> placed.item().name())
            .filter(name -> !packs.contains(name))
            .collect(Collectors.toSet());
    Predicate<Head> lacks = head -> head.pack().filter(broken::contains).isPresent();
    for (int i = 0; i < written.own().heads().size(); i++) {
      Head head = written.own().heads().get(i).item();
      if (lacks.test(head)) {
        missing.add(lacking("/heads/" + i, head));
      }
    }
    for (PlacedGear placed : asked) {
      if (placed.item().piece() instanceof Head head && lacks.test(head)) {
        missing.add(lacking(at(placed.number()).text(), head));
      }
    }
    List<Several<Head>> fed =
        kit.heads().stream().filter(head -> !lacks.test(head.item())).toList();
    return with(kit, fed, kit.pairings());
  }

  private static Missing lacking(String pointer, Head head) {
    return new Missing(
        pointer,
        "Head \"%s\": its pack \"%s\" is not in order."
            .formatted(head.name(), head.pack().orElse("")));
  }

  /** Those of gear that is not there tonight; what was metered of it stays in the document. */
  private static Kit withoutIdlePairings(Kit kit) {
    return with(
        kit,
        kit.heads(),
        kit.pairings().stream().filter(pairing -> isComplete(kit, pairing)).toList());
  }

  private static boolean isComplete(Kit kit, Pairing pairing) {
    return kit.heads().stream().anyMatch(head -> head.item().name().equals(pairing.head()))
        && kit.modifiers().stream()
            .anyMatch(modifier -> modifier.item().name().equals(pairing.modifier()));
  }

  private static Kit with(Kit kit, List<Several<Head>> heads, List<Pairing> pairings) {
    return new Kit(
        kit.name(),
        kit.note(),
        kit.bodies(),
        kit.lenses(),
        heads,
        kit.packs(),
        kit.modifiers(),
        pairings,
        kit.gels(),
        kit.neutralDensities(),
        kit.stands());
  }
}
