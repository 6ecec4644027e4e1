package lampwright.web.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Parts of a document as plain values, found and put by their path; see Form. */
final class PlainObject {

  private PlainObject() {}

  /** What stands at a path; empty where nothing does. */
  static Optional<Object> find(Object plain, List<String> path) {
    Object value = plain;
    for (String step : path) {
      Object inner = value instanceof Map<?, ?> object ? object.get(step) : null;
      if (inner == null) {
        return Optional.empty();
      }
      value = inner;
    }
    return Optional.of(value);
  }

  /** A copy of an object that may be changed; empty for what is none. */
  static Map<String, Object> copy(Object plain) {
    Map<String, Object> copy = new LinkedHashMap<>();
    if (plain instanceof Map<?, ?> fields) {
      fields.forEach((key, value) -> copy.put(String.valueOf(key), value));
    }
    return copy;
  }

  /** Puts a value at a path. */
  static void put(Map<String, Object> object, List<String> path, Object value) {
    String first = path.getFirst();
    if (path.size() == 1) {
      object.put(first, value);
      return;
    }
    Map<String, Object> inner = copy(object.getOrDefault(first, ""));
    put(inner, path.subList(1, path.size()), value);
    object.put(first, inner);
  }

  /** Takes out what stands at a path, and the objects round it that hold nothing any more. */
  static void remove(Map<String, Object> object, List<String> path) {
    String first = path.getFirst();
    if (path.size() == 1) {
      object.remove(first);
      return;
    }
    Map<String, Object> inner = copy(object.getOrDefault(first, ""));
    remove(inner, path.subList(1, path.size()));
    if (inner.isEmpty()) {
      object.remove(first);
    } else {
      object.put(first, inner);
    }
  }
}
