package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.gear.Kit;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Nearest;
import lampwright.search.filter.ReadFilter;
import lampwright.store.Kits;
import lampwright.store.StoredKit;
import lampwright.store.StudioTransaction;

/** The studio's kits by name, in whatever capitals; of several alike the last changed. */
final class KitNames {

  private final StudioTransaction in;
  private final List<StoredKit> kits;

  KitNames(StudioTransaction in) {
    this.in = in;
    this.kits = new Kits(in).list(Optional.empty(), KitKeeping.MOST_KITS).items();
  }

  /** The kit with all of its gear that is in order. */
  Optional<Kit> find(String name) {
    return stored(name).flatMap(kit -> KitKeeping.find(in, kit.id())).map(KeptKit::document);
  }

  /** The filter with the name as the studio writes it. */
  ReadFilter locate(Filter.Buildable filter) {
    return stored(filter.kit())
        .<ReadFilter>map(
            kit -> new ReadFilter.Understood(new Filter.Buildable(kit.name(), filter.stops())))
        .orElseGet(() -> new ReadFilter.Unclear(unknown(filter.kit())));
  }

  List<String> names() {
    return kits.stream().map(StoredKit::name).sorted().toList();
  }

  private Optional<StoredKit> stored(String name) {
    String key = Filter.key(name);
    return kits.stream().filter(kit -> Filter.key(kit.name()).equals(key)).findFirst();
  }

  private Said unknown(String name) {
    String key = Filter.key(name);
    return Said.of(
        "finding.fault.noKit",
        Filling.text(name),
        kits.stream()
            .map(StoredKit::name)
            .filter(one -> Nearest.find(key, List.of(Filter.key(one))).isPresent())
            .findFirst()
            .or(() -> names().stream().filter(one -> Filter.key(one).contains(key)).findFirst())
            .map(near -> Said.of("finding.fault.maybe", Filling.text(near)))
            .orElseGet(
                () ->
                    kits.isEmpty()
                        ? Said.of("finding.fault.noKits")
                        : Said.of("finding.fault.kits", Filling.text(String.join(", ", names()))))
            .asFilling());
  }
}
