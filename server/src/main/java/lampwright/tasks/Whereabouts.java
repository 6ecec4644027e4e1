package lampwright.tasks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.language.Filling;
import lampwright.language.Said;
import lampwright.place.Location;
import lampwright.place.LocationId;
import lampwright.search.filter.EarthPoint;
import lampwright.search.filter.Filter;
import lampwright.search.filter.Nearest;
import lampwright.search.filter.ReadFilter;
import lampwright.store.Locations;
import lampwright.store.StudioTransaction;

/** Where the locations are that filters name, in whatever capitals. */
final class Whereabouts {

  private final Locations locations;
  private final Map<LocationId, String> names;

  Whereabouts(StudioTransaction in) {
    locations = new Locations(in);
    names = locations.names();
  }

  /** The filter with the place of its location; any other filter as it is. */
  ReadFilter locate(Filter filter) {
    Optional<Filter.Spot.Location> named = Finding.locationOf(filter);
    if (named.isEmpty() || !(filter instanceof Filter.Near near)) {
      return new ReadFilter.Understood(filter);
    }
    String key = Filter.key(named.get().name());
    return names.entrySet().stream()
        .filter(location -> Filter.key(location.getValue()).equals(key))
        .flatMap(location -> point(location.getKey()).map(p -> at(near, location, p)).stream())
        .<ReadFilter>map(ReadFilter.Understood::new)
        .findFirst()
        .orElseGet(() -> new ReadFilter.Unclear(unknown(named.get().name())));
  }

  /** A filter by the distance from a location of a name; none where there is no such location. */
  Optional<Filter> find(String name, double km) {
    Filter near = new Filter.Near(km, new Filter.Spot.Location(name, Optional.empty()));
    return locate(near) instanceof ReadFilter.Understood(Filter located)
        ? Optional.of(located)
        : Optional.empty();
  }

  private static Filter at(
      Filter.Near near, Map.Entry<LocationId, String> location, EarthPoint point) {
    return new Filter.Near(
        near.km(), new Filter.Spot.Location(location.getValue(), Optional.of(point)));
  }

  private Optional<EarthPoint> point(LocationId id) {
    return locations
        .find(id)
        .flatMap(stored -> StoredDocuments.find(Location.FORM, stored.document(), stored.id()))
        .map(location -> new EarthPoint(location.latitude().value(), location.longitude().value()));
  }

  private Said unknown(String name) {
    List<String> known = List.copyOf(names.values());
    return Said.of(
        "finding.fault.noLocation",
        Filling.text(name),
        meant(name, known)
            .map(near -> Said.of("finding.fault.maybe", Filling.text(near)))
            .orElseGet(() -> Said.of("finding.fault.fromLocations"))
            .asFilling());
  }

  /** The name with the fewest slips, or else the first that holds what was written. */
  private static Optional<String> meant(String name, List<String> known) {
    String key = Filter.key(name);
    return known.stream()
        .filter(one -> Nearest.find(key, List.of(Filter.key(one))).isPresent())
        .findFirst()
        .or(() -> known.stream().filter(one -> Filter.key(one).contains(key)).findFirst());
  }
}
