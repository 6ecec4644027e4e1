package lampwright.setup;

import java.util.HashSet;
import java.util.Set;

/**
 * Which of a setup's lights burn, told by those that do not.
 *
 * @param out lights that are turned off
 * @param ambient whether the ambient is there too
 */
public record Burning(Set<LightId> out, boolean ambient) {

  /** The setup as it is. */
  public static final Burning ALL = new Burning(Set.of(), true);

  public Burning {
    out = Set.copyOf(out);
  }

  /** The ambient, and no light of a setup. */
  public static Burning noLightOf(SetupDocument setup) {
    Set<LightId> out = new HashSet<>();
    setup.lights().forEach(light -> out.add(light.id()));
    return new Burning(out, true);
  }

  public boolean burns(LightId light) {
    return !out.contains(light);
  }

  /** Asks whether nothing is turned off. */
  public boolean isAll() {
    return out.isEmpty() && ambient;
  }

  /** The same with a light on. */
  public Burning with(LightId light) {
    Set<LightId> fewer = new HashSet<>(out);
    fewer.remove(light);
    return new Burning(fewer, ambient);
  }

  /** The same with a light off. */
  public Burning without(LightId light) {
    Set<LightId> more = new HashSet<>(out);
    more.add(light);
    return new Burning(more, ambient);
  }

  public Burning withAmbient() {
    return new Burning(out, true);
  }

  public Burning withoutAmbient() {
    return new Burning(out, false);
  }
}
