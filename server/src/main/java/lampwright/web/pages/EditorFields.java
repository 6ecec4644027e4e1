package lampwright.web.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.engine.unit.Stops;
import lampwright.language.Notation;
import lampwright.setup.Light;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;

/**
 * The fields of the editor's form that need no script, to and fro: filled from a document, and read
 * over it again, so that what the form does not ask stays.
 */
final class EditorFields {

  static final String TITLE = "title";
  static final String INTENT = "intent";
  static final String MOODS = "moods";

  private static final List<String> PLACE = List.of("x_m", "y_m", "z_m");
  private static final String POWER = "stops_down";

  private final SetupDocument setup;
  private final Notation notation;

  EditorFields(SetupDocument setup, Notation notation) {
    this.setup = setup;
    this.notation = notation;
  }

  /** What stands in a field before anybody has typed; empty for a field that is none. */
  String filled(String field) {
    return switch (field) {
      case TITLE -> setup.title();
      case INTENT -> setup.intent().orElse("");
      case MOODS -> String.join(", ", setup.moods());
      default ->
          setup.lights().stream()
              .filter(light -> field.startsWith(id(light.id(), "")))
              .map(light -> filled(light, field.substring(id(light.id(), "").length())))
              .filter(value -> !value.isEmpty())
              .findFirst()
              .orElse("");
    };
  }

  private String filled(Light light, String name) {
    return switch (name) {
      case "x_m" -> notation.rounded(light.place().x(), 3);
      case "y_m" -> notation.rounded(light.place().y(), 3);
      case "z_m" -> notation.rounded(light.place().z(), 3);
      case POWER ->
          light.stopsDown().map(Stops::value).map(down -> notation.rounded(down, 3)).orElse("");
      default -> "";
    };
  }

  /**
   * The fields of each light, in build order.
   *
   * @param typed what stands in each field
   */
  List<EditorPage.LightFields> lights(UnaryOperator<String> typed) {
    Map<LightId, Integer> numbers = setup.numbersInBuildOrder();
    List<EditorPage.LightFields> lights = new ArrayList<>();
    for (Light light : setup.lightsInBuildOrder()) {
      List<EditorPage.Field> fields = new ArrayList<>();
      for (String name : PLACE) {
        fields.add(field(light, name, typed));
      }
      fields.add(field(light, POWER, typed));
      lights.add(
          new EditorPage.LightFields(
              Objects.requireNonNull(numbers.get(light.id()), "every light has a number"),
              notation.say("editor.role." + light.role().name().toLowerCase(Locale.ROOT)),
              fields));
    }
    return lights;
  }

  private EditorPage.Field field(Light light, String name, UnaryOperator<String> typed) {
    String id = id(light.id(), name);
    return new EditorPage.Field(id, notation.say("editor.plain." + name), typed.apply(id));
  }

  private static String id(LightId light, String name) {
    return "light-" + light + "-" + name;
  }

  /** The document with what was typed over it. */
  Reading<SetupDocument> read(UnaryOperator<String> typed) {
    Map<String, Object> document = new LinkedHashMap<>(SetupDocument.FORM.writeObject(setup));
    document.put(TITLE, typed.apply(TITLE).strip());
    put(document, INTENT, typed.apply(INTENT).replace("\r\n", "\n").strip());
    document.put(
        MOODS,
        Arrays.stream(typed.apply(MOODS).split(",", -1))
            .map(String::strip)
            .filter(mood -> !mood.isEmpty())
            .toList());
    List<Map<String, Object>> lights = new ArrayList<>();
    for (Light light : setup.lights()) {
      lights.add(read(light, typed));
    }
    document.put("lights", lights);
    return SetupDocument.FORM.read(document);
  }

  private Map<String, Object> read(Light light, UnaryOperator<String> typed) {
    Map<String, Object> written = new LinkedHashMap<>(Light.FORM.writeObject(light));
    Map<String, Object> place = new LinkedHashMap<>();
    boolean moved = false;
    List<Double> before = List.of(light.place().x(), light.place().y(), light.place().z());
    for (int i = 0; i < PLACE.size(); i++) {
      String id = id(light.id(), PLACE.get(i));
      // What nobody has touched keeps all its digits.
      boolean changed = !typed.apply(id).strip().equals(filled(id));
      place.put(PLACE.get(i), changed ? number(typed.apply(id)) : before.get(i));
      moved |= changed;
    }
    written.put("place", place);
    String power = typed.apply(id(light.id(), POWER)).strip();
    boolean turned = !power.equals(filled(id(light.id(), POWER)));
    if (turned) {
      put(written, POWER, power.isEmpty() ? "" : number(power));
    }
    // As where one tells what was used: a reading holds for the place and power it was taken at.
    if ((moved || turned) && written.containsKey(POWER)) {
      written.remove("reading");
    }
    return written;
  }

  private static void put(Map<String, Object> object, String field, Object value) {
    if (value.equals("")) {
      object.remove(field);
    } else {
      object.put(field, value);
    }
  }

  /** A number where it is one, else the text, about which the form then has something to say. */
  private static Object number(String typed) {
    String text = typed.strip().replace('−', '-').replace(',', '.');
    return text.matches("-?\\d{1,9}(\\.\\d{1,9})?") ? Double.valueOf(text) : text;
  }

  /** What is wrong, at the fields. */
  FormErrors errors(List<Problem> problems) {
    return new FormErrors(problems.stream().map(this::error).toList());
  }

  private FormErrors.FormError error(Problem problem) {
    String[] parts = problem.pointer().split("/", -1);
    if (parts.length > 3 && parts[1].equals("lights")) {
      Light light = setup.lights().get(Integer.parseInt(parts[2]));
      // All of a place is wrong at its first field.
      String name = parts[3].equals("place") ? parts.length > 4 ? parts[4] : "x_m" : parts[3];
      String field = PLACE.contains(name) || name.equals(POWER) ? id(light.id(), name) : "";
      return new FormErrors.FormError(field, "Light \"" + light.id() + "\": " + problem.message());
    }
    String field = parts.length > 1 ? parts[1] : "";
    return new FormErrors.FormError(
        List.of(TITLE, INTENT, MOODS).contains(field) ? field : "", problem.message());
  }
}
