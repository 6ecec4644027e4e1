package lampwright.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lampwright.document.JsonNull;

/** Changes one thing somewhere in a JSON document, as a slip or a hostile hand would. */
final class Damage {

  private static final List<Object> ODD_VALUES =
      List.of(
          JsonNull.NULL,
          true,
          false,
          0L,
          -1L,
          1L,
          1e17,
          -1e17,
          4.9e-324,
          0.1,
          3.7,
          100L,
          1e15,
          "",
          " ",
          "x",
          "1/125",
          "key",
          "2024-10-03",
          "25:00",
          "\u00a0",
          "\ufeff",
          "\ud83d\ude00",
          "a\u0000b",
          "\n",
          "x".repeat(500),
          List.of(),
          Map.of(),
          List.of(List.of()),
          Map.of("x_m", 0L, "y_m", 0L, "z_m", 0L));

  private Damage() {}

  static Object of(Object json, Random random) {
    return switch (json) {
      case Map<?, ?> object when !object.isEmpty() && random.nextInt(12) > 0 ->
          inObject(object, random);
      case List<?> list when !list.isEmpty() && random.nextInt(12) > 0 -> inList(list, random);
      case Double number when random.nextInt(3) > 0 -> perturbed(number, random);
      default -> random.nextInt(8) == 0 ? nested(random.nextInt(40)) : odd(random);
    };
  }

  private static Object odd(Random random) {
    return ODD_VALUES.get(random.nextInt(ODD_VALUES.size()));
  }

  private static Object perturbed(double number, Random random) {
    double changed =
        switch (random.nextInt(5)) {
          case 0 -> -number;
          case 1 -> number * (1 + 0.1 * random.nextGaussian());
          case 2 -> number * 1_000;
          case 3 -> Math.rint(number);
          default -> number + 1;
        };
    return changed;
  }

  private static Object nested(int deep) {
    Object inside = 1L;
    for (int i = 0; i < deep; i++) {
      inside = i % 2 == 0 ? List.of(inside) : Map.of("lights", inside);
    }
    return inside;
  }

  private static Object inObject(Map<?, ?> object, Random random) {
    Map<String, Object> copy = new LinkedHashMap<>();
    object.forEach((key, value) -> copy.put((String) key, value));
    List<String> keys = List.copyOf(copy.keySet());
    String key = keys.get(random.nextInt(keys.size()));
    switch (random.nextInt(12)) {
      case 0 -> copy.remove(key);
      case 1 -> copy.put(random.nextBoolean() ? key + "s" : "~/" + key, copy.get(key));
      default -> copy.computeIfPresent(key, (k, value) -> of(value, random));
    }
    return copy;
  }

  private static Object inList(List<?> list, Random random) {
    List<Object> copy = new ArrayList<>(list);
    int index = random.nextInt(copy.size());
    switch (random.nextInt(8)) {
      case 0 -> copy.remove(index);
      case 1 -> copy.add(copy.get(index));
      default -> copy.set(index, of(copy.get(index), random));
    }
    return copy;
  }
}
