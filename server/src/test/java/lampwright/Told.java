package lampwright;

import java.util.List;
import java.util.Map;

/** Looks into parsed JSON, and says plainly where something is not there. */
public final class Told {

  private Told() {}

  /** What stands at a path of keys and list indexes. */
  public static Object at(Object json, Object... path) {
    Object found = json;
    for (Object step : path) {
      Object next =
          step instanceof Integer index
              ? ((List<?>) found).get(index)
              : ((Map<?, ?>) found).get(step);
      if (next == null) {
        throw new AssertionError("There is no " + step + " in " + found);
      }
      found = next;
    }
    return found;
  }

  public static double number(Object json, Object... path) {
    return (Double) at(json, path);
  }

  public static List<?> list(Object json, Object... path) {
    return (List<?>) at(json, path);
  }
}
