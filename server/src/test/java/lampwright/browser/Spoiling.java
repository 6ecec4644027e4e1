package lampwright.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import lampwright.document.JsonNull;

/** Puts one thing wrong, or at least otherwise, into a document. */
final class Spoiling {

  private static final List<Object> WRONG =
      List.of(
          -1.0,
          0.0,
          1e9,
          1e-7,
          0.1 + 0.2,
          1234.5678,
          "",
          " ",
          "nonsense",
          "a\u202Eb",
          "\u0007",
          "\uD83D\uDCA1 über 40 Zeichen lang, damit die Meldung es kürzen muss",
          true,
          JsonNull.NULL,
          List.of(),
          Map.of());

  private Spoiling() {}

  /** The document with one value somewhere in it replaced, left out or given a wrong name. */
  static Object of(Object document, Random dice) {
    return switch (document) {
      case Map<?, ?> fields when !fields.isEmpty() -> spoiltField(fields, dice);
      case List<?> items when !items.isEmpty() -> spoiltItem(items, dice);
      default -> WRONG.get(dice.nextInt(WRONG.size()));
    };
  }

  private static Object spoiltField(Map<?, ?> fields, Random dice) {
    Map<Object, Object> spoilt = new LinkedHashMap<>(fields);
    Object key = new ArrayList<>(fields.keySet()).get(dice.nextInt(fields.size()));
    switch (dice.nextInt(12)) {
      case 0 -> spoilt.remove(key);
      case 1 -> spoilt.put(key + "_\u00fc~/", spoilt.remove(key));
      default -> spoilt.put(key, of(Objects.requireNonNull(fields.get(key)), dice));
    }
    return spoilt;
  }

  private static Object spoiltItem(List<?> items, Random dice) {
    List<Object> spoilt = new ArrayList<>(items);
    int at = dice.nextInt(items.size());
    if (dice.nextInt(12) == 0) {
      spoilt.add(items.get(at));
    } else {
      spoilt.set(at, of(items.get(at), dice));
    }
    return spoilt;
  }
}
