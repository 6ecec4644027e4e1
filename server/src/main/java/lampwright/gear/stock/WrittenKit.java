package lampwright.gear.stock;

import static lampwright.document.Field.list;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.document.Reading;
import lampwright.gear.Kit;

/**
 * A kit as somebody wrote it: what is written out in it, and which of the studio's gear it takes
 * besides. {@link WholeKit} is what it comes to.
 *
 * @param own what is written out; its pairings and its heads' packs may name gear of the studio
 */
public record WrittenKit(Kit own, List<GearUse> gear) {

  private static final int MOST_USES = 200;

  private static final Field<WrittenKit, List<GearUse>> GEAR =
      list(
          "gear",
          GearUse.FORM,
          MOST_USES,
          WrittenKit::gear,
          "Gear of the studio that belongs to the kit besides, each once.");

  /** The kit as a document. */
  public static final ObjectForm<WrittenKit> FORM =
      Kit.PARTS
          .with(
              "kit_document",
              "The gear that somebody has tonight: written out, taken from the studio's gear, or"
                  + " both. What all of it comes to must be a whole kit; a piece of the studio's"
                  + " gear must not be called as another piece of its kind in the kit.",
              GEAR,
              WrittenKit::own,
              WrittenKit::new)
          .checked(WrittenKit::check);

  /** Copies the list. */
  public WrittenKit {
    gear = List.copyOf(gear);
  }

  public String name() {
    return own.name();
  }

  /** What is wrong whatever the studio has. */
  private static void check(WrittenKit kit, Pointer at, Problems problems) {
    Set<GearId> seen = new HashSet<>();
    for (int i = 0; i < kit.gear.size(); i++) {
      if (!seen.add(kit.gear.get(i).id())) {
        problems.add(
            at.field("gear").item(i).field("id"),
            "Id must stand here once. Maybe raise the other's count?");
      }
    }
    if (kit.gear.isEmpty()
        && Kit.FORM.read(Kit.FORM.write(kit.own)) instanceof Reading.Faulty<Kit> faulty) {
      faulty
          .problems()
          .forEach(p -> problems.add(new Pointer(at.text() + p.pointer()), p.message()));
    }
  }
}
