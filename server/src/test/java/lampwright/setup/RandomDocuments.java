package lampwright.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import lampwright.document.Definitions;
import lampwright.document.Form;
import lampwright.document.Reading;
import lampwright.gear.Kit;

/**
 * Random valid documents, made after the published schema: each number is one of its bounds, or
 * between them. What the schema cannot say is put right afterwards.
 */
public final class RandomDocuments {

  private static final List<String> TEXTS =
      List.of(
          "2024-10-03",
          "18:40",
          "+01:00",
          "1/125",
          "1/32000",
          "1/8000",
          "30",
          "600",
          "0.3",
          "1/60");

  private static final int MOST_ITEMS = 3;

  private final Random random;
  private final Map<?, ?> definitions;
  private final Map<?, ?> schema;

  private RandomDocuments(Form<?> form, Random random) {
    this.random = random;
    this.schema = Definitions.schemaOf(form, "https://lampwright.example/random.json");
    this.definitions = (Map<?, ?>) Documents.at(schema, "/$defs");
  }

  /** A random valid setup. */
  public static SetupDocument setup(Random random) {
    return valid(SetupDocument.FORM, random);
  }

  /** A random valid kit. */
  public static Kit kit(Random random) {
    return valid(Kit.FORM, random);
  }

  private static <T> T valid(Form<T> form, Random random) {
    RandomDocuments documents = new RandomDocuments(form, random);
    for (int tries = 0; tries < 1_000; tries++) {
      if (form.read(documents.value(documents.schema)) instanceof Reading.Sound<T> sound) {
        return sound.value();
      }
    }
    throw new AssertionError("No valid document in a thousand tries");
  }

  private Object value(Map<?, ?> form) {
    if (form.get("$ref") instanceof String reference) {
      String name = reference.substring("#/$defs/".length());
      Map<?, ?> body = (Map<?, ?>) Objects.requireNonNull(definitions.get(name));
      return repaired(name, object(body));
    }
    if (form.get("oneOf") instanceof List<?> choices) {
      return value((Map<?, ?>) choices.get(random.nextInt(choices.size())));
    }
    if (form.get("const") instanceof String fixed) {
      return fixed;
    }
    if (form.get("enum") instanceof List<?> choices) {
      return choices.get(random.nextInt(choices.size()));
    }
    return switch ((String) Objects.requireNonNull(form.get("type"))) {
      case "boolean" -> random.nextBoolean();
      case "string" -> text(form);
      case "integer" -> Math.rint(number(form));
      case "number" -> number(form);
      default -> list(form);
    };
  }

  private String text(Map<?, ?> form) {
    String pattern = (String) Objects.requireNonNull(form.get("pattern"));
    List<String> fitting =
        TEXTS.stream().filter(text -> !pattern.equals("\\S") && text.matches(pattern)).toList();
    if (pattern.startsWith("^[a-z0-9]")) {
      return "id-" + random.nextInt(1_000_000);
    }
    return fitting.isEmpty() ? "text" : fitting.get(random.nextInt(fitting.size()));
  }

  private double number(Map<?, ?> form) {
    double low = bound(form, "minimum").orElse(-1e3);
    double high = bound(form, "maximum").orElse(1e3);
    double middle = low + (high - low) * random.nextDouble();
    double value =
        switch (random.nextInt(6)) {
          case 0 -> low;
          case 1 -> high;
          case 2 -> middle;
          default -> {
            List<?> examples = form.get("examples") instanceof List<?> list ? list : List.of();
            double likely =
                examples.isEmpty() ? middle : ((Number) examples.getFirst()).doubleValue();
            yield Math.min(high, Math.max(low, likely * (0.5 + random.nextDouble())));
          }
        };
    boolean open = bound(form, "exclusiveMinimum").isPresent() && value <= 0;
    return open ? Math.min(high, 1e-3) : value;
  }

  private static Optional<Double> bound(Map<?, ?> form, String name) {
    return form.get(name) instanceof Number number
        ? Optional.of(number.doubleValue())
        : Optional.empty();
  }

  private List<Object> list(Map<?, ?> form) {
    int fewest = ((Number) Objects.requireNonNull(form.get("minItems"))).intValue();
    int size = Math.max(fewest, random.nextInt(MOST_ITEMS + 1));
    List<Object> items = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      items.add(value((Map<?, ?>) Objects.requireNonNull(form.get("items"))));
    }
    return items;
  }

  private Map<String, Object> object(Map<?, ?> body) {
    Map<String, Object> object = new LinkedHashMap<>();
    List<?> required = (List<?>) Objects.requireNonNull(body.get("required"));
    ((Map<?, ?>) Objects.requireNonNull(body.get("properties")))
        .forEach(
            (key, form) -> {
              if (required.contains(key) || random.nextInt(3) > 0) {
                object.put((String) key, value((Map<?, ?>) form));
              }
            });
    return object;
  }

  private static Map<String, Object> repaired(String name, Map<String, Object> object) {
    switch (name) {
      case "body" -> {
        object.remove("iso_lowest");
        object.computeIfPresent("iso_highest", (key, iso) -> Math.max(100, (double) iso));
      }
      case "lens" -> object.remove("smallest_f_number");
      case "place" -> {
        if (object.keySet().removeIf(key -> key.endsWith("itude_deg"))) {
          object.put("latitude_deg", 50.0);
          object.put("longitude_deg", -4.0);
        }
      }
      case "build_step" -> object.put("what", "text");
      case "target" -> object.put("surface_facing_deg", 30.0);
      case "setup" ->
          object.computeIfPresent(
              "build_order", (key, steps) -> List.of(Map.of("what", "Read the ambient.")));
      case "kit" -> {
        object.remove("pairings");
        hangHeadsOnOnePack(object);
      }
      case "light" -> {
        double range =
            ((Map<?, ?>) Objects.requireNonNull(object.get("head"))).get("range_stops")
                    instanceof Double stated
                ? stated
                : 6.0;
        object.computeIfPresent("stops_down", (key, down) -> Math.min(range, (double) down));
        if (!object.containsKey("reading")) {
          object.putIfAbsent("stops_down", 0.0);
        }
      }
      default -> {}
    }
    return object;
  }

  /** All names are the same word here, so that a second pack would bear the first one's. */
  private static void hangHeadsOnOnePack(Map<String, Object> kit) {
    List<?> packs = (List<?>) kit.getOrDefault("packs", List.of());
    if (!packs.isEmpty()) {
      kit.put("packs", packs.subList(0, 1));
      return;
    }
    for (Object heads : (List<?>) kit.getOrDefault("heads", List.of())) {
      ((Map<?, ?>) Documents.at(heads, "/head")).remove("pack");
    }
  }
}
