package lampwright.setup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.gear.Kit;

/** Documents for tests: from resources and from text, with a change at a pointer. */
public final class Documents {

  /** Every setup that stands in the test resources. */
  public static final List<String> SETUPS =
      List.of("slipway-at-dusk.json", "one-light.json", "odd-settings.json");

  private Documents() {}

  /** The JSON of a resource of this package. */
  public static Object resource(String name) {
    try (InputStream in =
        Objects.requireNonNull(Documents.class.getResourceAsStream("/lampwright/setup/" + name))) {
      return Json.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A setup document that must be right. */
  public static SetupDocument setup(Object json) {
    return sound(SetupDocument.FORM, json);
  }

  /** A kit that must be right. */
  public static Kit kit(Object json) {
    return sound(Kit.FORM, json);
  }

  /** What a form makes of JSON that must be right. */
  public static <T> T sound(Form<T> form, Object json) {
    return switch (form.read(json)) {
      case Reading.Sound<T> sound -> sound.value();
      case Reading.Faulty<T> faulty ->
          throw new AssertionError(faulty.problems() + "\n" + Json.print(json));
    };
  }

  /** The problems of JSON that must be wrong. */
  public static <T> List<Problem> problems(Form<T> form, Object json) {
    return switch (form.read(json)) {
      case Reading.Sound<T> sound -> throw new AssertionError("No problem in " + Json.print(json));
      case Reading.Faulty<T> faulty -> faulty.problems();
    };
  }

  /** What stands at a pointer. */
  public static Object at(Object json, String pointer) {
    Object here = json;
    for (String part : List.of(pointer.substring(1).split("/", -1))) {
      Object inside =
          here instanceof List<?> list
              ? list.get(Integer.parseInt(part))
              : ((Map<?, ?>) here).get(part);
      here = Objects.requireNonNull(inside, pointer);
    }
    return here;
  }

  /** The same JSON with another value at a pointer; a new key is added to its object. */
  public static Object with(Object json, String pointer, Object value) {
    return changed(json, List.of(pointer.substring(1).split("/", -1)), value);
  }

  /** The same JSON without what stands at a pointer. */
  public static Object without(Object json, String pointer) {
    return changed(json, List.of(pointer.substring(1).split("/", -1)), GONE);
  }

  private static final Object GONE = new Object();

  private static Object changed(Object json, List<String> path, Object value) {
    if (path.isEmpty()) {
      return value;
    }
    List<String> rest = path.subList(1, path.size());
    if (json instanceof List<?> list) {
      List<Object> copy = new ArrayList<>(list);
      int index = Integer.parseInt(path.getFirst());
      Object now = changed(index < copy.size() ? copy.get(index) : Map.of(), rest, value);
      if (now == GONE) {
        copy.remove(index);
      } else if (index == copy.size()) {
        copy.add(now);
      } else {
        copy.set(index, now);
      }
      return copy;
    }
    Map<String, Object> copy = new LinkedHashMap<>();
    ((Map<?, ?>) json).forEach((key, kept) -> copy.put((String) key, kept));
    Object now = changed(copy.getOrDefault(path.getFirst(), Map.of()), rest, value);
    if (now == GONE) {
      copy.remove(path.getFirst());
    } else {
      copy.put(path.getFirst(), now);
    }
    return copy;
  }
}
