package lampwright.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.setup.adapting.Wishes;
import lampwright.web.api.WishFields;
import lampwright.web.pages.WishPairs.Pair;

/**
 * Reads the wishes from an address and writes them into one, by the form that programs use: what is
 * wrong is told in the same words. Of an occasion's weather, wind and kind of place an address says
 * nothing.
 */
final class AdaptedQuery {

  private static final String HEAD = "head";
  private static final String LIGHT = "light";

  private final Map<String, Object> document = new LinkedHashMap<>();

  /** The name in the address that stands at a place of the document. */
  private final Map<String, String> names = new LinkedHashMap<>();

  private AdaptedQuery(WishPairs pairs) {
    names.put("/" + WishPairs.KIT, WishPairs.KIT);
    for (WishName name : WishName.values()) {
      pairs.find(name.text()).ifPresent(value -> put(name, value));
    }
    weights(pairs);
    pins(pairs);
    tonight(pairs);
    giveUp(pairs);
  }

  /** What came of reading an address. */
  sealed interface Read {

    /** It can be asked. */
    record Sound(Wishes wishes) implements Read {}

    /**
     * It cannot.
     *
     * @param errors each at its name in the address
     */
    record Wrong(FormErrors errors) implements Read {}
  }

  /** Reads what an address wishes. */
  static Read read(WishPairs pairs) {
    AdaptedQuery query = new AdaptedQuery(pairs);
    return switch (WishFields.FORM.read(query.document)) {
      case Reading.Sound<Wishes>(Wishes wishes) -> new Read.Sound(wishes);
      case Reading.Faulty<Wishes>(List<Problem> problems) ->
          new Read.Wrong(errors(pairs, problems));
    };
  }

  /** What is wrong with the document that programs would send, at the address's own names. */
  static FormErrors errors(WishPairs pairs, List<Problem> problems) {
    AdaptedQuery query = new AdaptedQuery(pairs);
    return new FormErrors(
        problems.stream()
            .map(
                problem ->
                    new FormErrors.FormError(query.name(problem.pointer()), problem.message()))
            .toList());
  }

  /** The wishes as an address has them, what is usual left out. */
  static WishPairs write(Wishes wishes) {
    Map<String, Object> document = WishFields.FORM.writeObject(wishes);
    List<Pair> pairs = new ArrayList<>();
    for (WishName name : WishName.values()) {
      find(document, name.path())
          .ifPresent(json -> pairs.add(new Pair(name.text(), name.kind().toText(json))));
    }
    writeWeights(document, pairs);
    writePins(document, pairs);
    writeTonight(document, pairs);
    find(document, List.of("limits", "may_give_up"))
        .ifPresent(
            lights ->
                ((List<?>) lights)
                    .forEach(id -> pairs.add(new Pair(WishPairs.GIVE_UP, id.toString()))));
    return new WishPairs(pairs);
  }

  private void put(WishName name, String value) {
    Map<String, Object> object = document;
    List<String> path = name.path();
    for (String field : path.subList(0, path.size() - 1)) {
      object = object(object, field);
    }
    object.put(path.getLast(), name.kind().toJson(value));
    names.put(name.pointer(), name.text());
  }

  private void weights(WishPairs pairs) {
    for (Pair pair : pairs.about(WishPairs.WEIGHT)) {
      object(document, "weights").put(pair.name(), WishName.Kind.NUMBER.toJson(pair.value()));
      names.put("/weights/" + pair.name(), WishPairs.WEIGHT + pair.name());
    }
  }

  private void pins(WishPairs pairs) {
    Items pins = new Items("pins", LIGHT);
    for (Pair pair : pairs.pairs()) {
      if (pair.name().equals(WishPairs.WITHOUT)) {
        pins.put(pair.value(), "lit", false, WishPairs.WITHOUT);
      }
    }
    pins.putAll(pairs, WishPairs.HEAD, HEAD, WishName.Kind.TEXT);
    pins.putAll(pairs, WishPairs.MODIFIER, "modifier", WishName.Kind.TEXT);
    pins.putAll(pairs, WishPairs.COUNT, "heads", WishName.Kind.NUMBER);
    pins.addTo(document);
  }

  private void tonight(WishPairs pairs) {
    Items tonight = new Items("tonight", HEAD);
    tonight.putAll(pairs, WishPairs.DEAD, "dead", WishName.Kind.NUMBER);
    tonight.putAll(pairs, WishPairs.CHARGE, "charge_share", WishName.Kind.PERCENT);
    tonight.addTo(document);
  }

  private void giveUp(WishPairs pairs) {
    List<Object> lights = new ArrayList<>();
    for (Pair pair : pairs.pairs()) {
      if (pair.name().equals(WishPairs.GIVE_UP)) {
        lights.add(pair.value());
      }
    }
    if (!lights.isEmpty()) {
      object(document, "limits").put("may_give_up", lights);
      names.put("/limits/may_give_up", WishPairs.GIVE_UP);
    }
  }

  /** The name whose place holds the pointer; empty where it is no place of the address's. */
  private String name(String pointer) {
    String at = pointer;
    while (!at.isEmpty()) {
      if (names.containsKey(at)) {
        return names.get(at);
      }
      at = at.substring(0, at.lastIndexOf('/'));
    }
    return names.entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(pointer + "/"))
        .map(Map.Entry::getValue)
        .findFirst()
        .or(() -> WishName.findAt(pointer))
        .orElse("");
  }

  /** A list of the document whose items are told apart by one field. */
  private final class Items {
    private final String list;
    private final String key;
    private final Map<String, Map<String, Object>> items = new LinkedHashMap<>();

    Items(String list, String key) {
      this.list = list;
      this.key = key;
    }

    void putAll(WishPairs pairs, String prefix, String field, WishName.Kind kind) {
      for (Pair pair : pairs.about(prefix)) {
        put(pair.name(), field, kind.toJson(pair.value()), prefix + pair.name());
      }
    }

    void put(String of, String field, Object value, String name) {
      Map<String, Object> item = items.computeIfAbsent(of, _ -> new LinkedHashMap<>());
      item.putIfAbsent(key, of);
      item.putIfAbsent(field, value);
      String at = "/" + list + "/" + List.copyOf(items.keySet()).indexOf(of);
      names.putIfAbsent(at + "/" + key, name);
      names.putIfAbsent(at + "/" + field, name);
    }

    void addTo(Map<String, Object> document) {
      if (!items.isEmpty()) {
        document.put(list, List.copyOf(items.values()));
      }
    }
  }

  private static void writeWeights(Map<String, Object> document, List<Pair> pairs) {
    if (document.get("weights") instanceof Map<?, ?> weights) {
      weights.forEach(
          (matter, weight) ->
              pairs.add(new Pair(WishPairs.WEIGHT + matter, WishName.Kind.NUMBER.toText(weight))));
    }
  }

  private static void writePins(Map<String, Object> document, List<Pair> pairs) {
    for (Map<?, ?> pin : items(document, "pins")) {
      String light = text(pin, LIGHT).orElse("");
      text(pin, HEAD).ifPresent(head -> pairs.add(new Pair(WishPairs.HEAD + light, head)));
      text(pin, "modifier")
          .ifPresent(modifier -> pairs.add(new Pair(WishPairs.MODIFIER + light, modifier)));
      text(pin, "heads").ifPresent(heads -> pairs.add(new Pair(WishPairs.COUNT + light, heads)));
      if (Boolean.FALSE.equals(pin.get("lit"))) {
        pairs.add(new Pair(WishPairs.WITHOUT, light));
      }
    }
  }

  private static void writeTonight(Map<String, Object> document, List<Pair> pairs) {
    for (Map<?, ?> one : items(document, "tonight")) {
      String head = text(one, HEAD).orElse("");
      text(one, "dead").ifPresent(dead -> pairs.add(new Pair(WishPairs.DEAD + head, dead)));
      Optional.<Object>ofNullable(one.get("charge_share"))
          .map(WishName.Kind.PERCENT::toText)
          .ifPresent(charge -> pairs.add(new Pair(WishPairs.CHARGE + head, charge)));
    }
  }

  private static Optional<String> text(Map<?, ?> item, String field) {
    return Optional.<Object>ofNullable(item.get(field)).map(Object::toString);
  }

  private static List<Map<?, ?>> items(Map<String, Object> document, String list) {
    List<Map<?, ?>> items = new ArrayList<>();
    if (document.get(list) instanceof List<?> found) {
      for (Object item : found) {
        if (item instanceof Map<?, ?> object) {
          items.add(object);
        }
      }
    }
    return items;
  }

  private static Optional<Object> find(Map<?, ?> document, List<String> path) {
    Object at = document;
    for (String field : path) {
      if (!(at instanceof Map<?, ?> object) || !object.containsKey(field)) {
        return Optional.empty();
      }
      at = object.get(field);
    }
    return Optional.ofNullable(at);
  }

  @SuppressWarnings("unchecked") // only this class puts objects there
  private static Map<String, Object> object(Map<String, Object> in, String field) {
    return (Map<String, Object>)
        in.computeIfAbsent(field, _ -> new LinkedHashMap<String, Object>());
  }
}
