package lampwright.setup.comparing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * Which light of one setup answers to which of another: the ones of the same id, as revisions of a
 * setup have them; of the rest the ones of the same role, in the build order of both.
 */
public final class LightPairs {

  private final List<Pair> pairs;

  private LightPairs(List<Pair> pairs) {
    this.pairs = List.copyOf(pairs);
  }

  /** A light of the first, of the second, or of both; never of neither. */
  public record Pair(Optional<Light> before, Optional<Light> after) {}

  /** The pairs of two setups. */
  public static LightPairs of(SetupDocument before, SetupDocument after) {
    List<Light> old = new ArrayList<>(before.lightsInBuildOrder());
    List<Light> now = after.lightsInBuildOrder();
    Map<LightId, Light> found = new LinkedHashMap<>();
    pair(old, now, found, (was, is) -> was.id().equals(is.id()));
    pair(old, now, found, (was, is) -> was.role() == is.role());
    List<Pair> pairs = new ArrayList<>();
    for (Light light : now) {
      pairs.add(new Pair(Optional.ofNullable(found.get(light.id())), Optional.of(light)));
    }
    old.forEach(light -> pairs.add(new Pair(Optional.of(light), Optional.empty())));
    return new LightPairs(pairs);
  }

  private static void pair(
      List<Light> old,
      List<Light> now,
      Map<LightId, Light> found,
      BiPredicate<Light, Light> belongs) {
    for (Light light : now) {
      if (!found.containsKey(light.id())) {
        old.stream()
            .filter(was -> belongs.test(was, light))
            .findFirst()
            .ifPresent(
                was -> {
                  found.put(light.id(), was);
                  old.remove(was);
                });
      }
    }
  }

  /** All of them: the second's lights in its build order, then what only the first has. */
  public List<Pair> all() {
    return pairs;
  }

  /** The light of the first that answers to one of the second. */
  public Optional<Light> before(LightId after) {
    return pairs.stream()
        .filter(pair -> pair.after().filter(light -> light.id().equals(after)).isPresent())
        .findFirst()
        .flatMap(Pair::before);
  }

  /** The light of the second that answers to one of the first. */
  public Optional<Light> after(LightId before) {
    return pairs.stream()
        .filter(pair -> pair.before().filter(light -> light.id().equals(before)).isPresent())
        .findFirst()
        .flatMap(Pair::after);
  }
}
