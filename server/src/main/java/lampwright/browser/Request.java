package lampwright.browser;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.Phrases;
import lampwright.language.StopFraction;

/**
 * What a page asks.
 *
 * @param document the setup as plain values, right or wrong
 * @param notation how the person reads
 * @param wanted the parts of the answer; all where the request does not say
 * @param question what happened and what must stay, as plain values, right or wrong
 * @param kit what stands by, as plain values; absent where the request has none
 */
record Request(
    Object document,
    Notation notation,
    Set<Part> wanted,
    Optional<Object> question,
    Optional<Object> kit) {

  Request {
    wanted = Set.copyOf(wanted);
  }

  /**
   * Reads a request from plain values.
   *
   * @throws IllegalArgumentException where it is not as our pages write it: a slip in our own code
   */
  static Request read(Object plain) {
    Map<?, ?> fields = object(plain, "The request");
    return new Request(
        get(fields, "document"),
        new Notation(
            phrases(fields),
            known(fields, "lengths", LengthUnit::find),
            known(fields, "stops", StopFraction::find)),
        wanted(fields),
        question(fields),
        Optional.ofNullable(fields.get("kit")));
  }

  /** A place may stand as three numbers there, which a page has at hand. */
  private static Optional<Object> question(Map<?, ?> fields) {
    if (!fields.containsKey("happening")) {
      return Optional.empty();
    }
    Map<String, Object> question = new HashMap<>();
    question.put("happening", happening(get(fields, "happening")));
    Optional.ofNullable(fields.get("keep")).ifPresent(keep -> question.put("keep", keep));
    return Optional.of(question);
  }

  private static Object happening(Object plain) {
    if (plain instanceof Map<?, ?> happening
        && happening.get("moved") instanceof Map<?, ?> moved
        && moved.get("place") instanceof List<?> numbers
        && numbers.size() == 3) {
      Map<String, Object> place =
          Map.of("x_m", numbers.get(0), "y_m", numbers.get(1), "z_m", numbers.get(2));
      Map<String, Object> there = new HashMap<>();
      moved.forEach((key, value) -> there.put(key.toString(), value));
      there.put("place", place);
      return Map.of("moved", there);
    }
    return plain;
  }

  private static Phrases phrases(Map<?, ?> fields) {
    Map<String, String> byKey = new HashMap<>();
    object(get(fields, "phrases"), "phrases")
        .forEach((key, phrase) -> byKey.put(key.toString(), phrase.toString()));
    return new Phrases(known(fields, "language", Language::find), byKey);
  }

  private static Set<Part> wanted(Map<?, ?> fields) {
    Set<Part> wanted = EnumSet.noneOf(Part.class);
    if (fields.get("want") instanceof List<?> keys) {
      keys.forEach(key -> wanted.add(part(key.toString())));
      return wanted;
    }
    return EnumSet.allOf(Part.class);
  }

  private static Part part(String key) {
    return Part.find(key).orElseThrow(() -> unknown("want", key));
  }

  private static <T> T known(Map<?, ?> fields, String field, Function<String, Optional<T>> find) {
    String key = get(fields, field).toString();
    return find.apply(key).orElseThrow(() -> unknown(field, key));
  }

  private static Object get(Map<?, ?> fields, String field) {
    return Objects.requireNonNull(fields.get(field), () -> "No \"" + field + "\" in the request.");
  }

  private static Map<?, ?> object(Object plain, String what) {
    if (plain instanceof Map<?, ?> fields) {
      return fields;
    }
    throw new IllegalArgumentException(what + " must be an object.");
  }

  private static IllegalArgumentException unknown(String field, String key) {
    return new IllegalArgumentException(
        "The engine knows no \"" + field + "\" (\"" + key + "\") in a request.");
  }
}
