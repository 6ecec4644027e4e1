package lampwright.tasks;

import java.time.Instant;
import java.util.List;
import lampwright.gear.Kit;
import lampwright.gear.KitId;
import lampwright.gear.stock.Missing;
import lampwright.gear.stock.WrittenKit;

/**
 * A kit of a studio as it is now.
 *
 * @param written as somebody wrote it, with the gear of the studio by its ids
 * @param document the whole kit, with that gear in it, as far as it is in order
 * @param missing what the kit asks for beyond that
 */
public record KeptKit(
    KitId id,
    int revision,
    Instant changedAt,
    WrittenKit written,
    Kit document,
    List<Missing> missing) {

  public KeptKit {
    missing = List.copyOf(missing);
  }
}
