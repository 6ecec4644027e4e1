package lampwright.document;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A change of plain JSON values (see {@link Json#parse}) that names only what it changes, after RFC
 * 7396: a member that is null is taken out, an object is merged with the one that is there,
 * anything else, lists too, takes the place of what is there.
 */
public final class MergePatch {

  private MergePatch() {}

  /**
   * What a value is after a change; the value itself stays as it is.
   *
   * @param value what is changed, of any kind
   * @param patch what it is to be, of any kind
   */
  public static Object apply(Object value, Object patch) {
    if (!(patch instanceof Map<?, ?> changes)) {
      return patch;
    }
    Map<Object, Object> changed =
        value instanceof Map<?, ?> members ? new LinkedHashMap<>(members) : new LinkedHashMap<>();
    changes.forEach(
        (name, change) -> {
          if (change == JsonNull.NULL) {
            changed.remove(name);
          } else {
            changed.put(name, apply(changed.getOrDefault(name, JsonNull.NULL), change));
          }
        });
    return changed;
  }
}
