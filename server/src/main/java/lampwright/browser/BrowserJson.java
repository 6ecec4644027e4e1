package lampwright.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.document.JsonNull;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;

/**
 * JSON text to the plain values that forms read, and back, by the browser's own parser. It stands
 * in for {@link lampwright.document.Json}, whose parser is too much to send to a browser.
 */
final class BrowserJson {

  private static final int NONE = 0;
  private static final int TEXT = 1;
  private static final int NUMBER = 2;
  private static final int TRUTH = 3;
  private static final int LIST = 4;

  private BrowserJson() {}

  /** Reads JSON text; a page that sends what is no JSON gets the browser's own SyntaxError. */
  static Object parse(String text) {
    return plain(parsed(text));
  }

  private static Object plain(JSObject value) {
    return switch (kind(value)) {
      case NONE -> JsonNull.NULL;
      case TEXT -> text(value);
      case NUMBER -> number(value);
      case TRUTH -> truth(value);
      case LIST -> list(value);
      default -> object(value);
    };
  }

  private static List<Object> list(JSObject value) {
    int size = size(value);
    List<Object> items = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      items.add(plain(item(value, i)));
    }
    return items;
  }

  private static Map<String, Object> object(JSObject value) {
    JSObject keys = keys(value);
    int size = size(keys);
    Map<String, Object> fields = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      JSObject key = item(keys, i);
      fields.put(text(key), plain(field(value, key)));
    }
    return fields;
  }

  /** Writes plain values as compact JSON text. */
  static String print(Object plain) {
    StringBuilder json = new StringBuilder(64_000);
    print(plain, json);
    return json.toString();
  }

  private static void print(Object plain, StringBuilder json) {
    switch (plain) {
      case String text -> json.append(quoted(text));
      case Double number -> json.append(digits(number));
      case Map<?, ?> fields -> printFields(fields, json);
      case List<?> items -> printItems(items, json);
      case JsonNull nothing -> json.append("null");
      default -> json.append(plain);
    }
  }

  private static void printFields(Map<?, ?> fields, StringBuilder json) {
    char before = '{';
    for (Map.Entry<?, ?> field : fields.entrySet()) {
      json.append(before).append(quoted(field.getKey().toString())).append(':');
      print(field.getValue(), json);
      before = ',';
    }
    json.append(fields.isEmpty() ? "{}" : "}");
  }

  private static void printItems(List<?> items, StringBuilder json) {
    char before = '[';
    for (Object item : items) {
      json.append(before);
      print(item, json);
      before = ',';
    }
    json.append(items.isEmpty() ? "[]" : "]");
  }

  @JSBody(params = "text", script = "return JSON.parse(text);")
  private static native JSObject parsed(String text);

  @JSBody(
      params = "value",
      script =
          "switch (typeof value) { case 'string': return 1; case 'number': return 2;"
              + " case 'boolean': return 3; default:"
              + " return value === null ? 0 : Array.isArray(value) ? 4 : 5; }")
  private static native int kind(JSObject value);

  @JSBody(params = "value", script = "return value;")
  private static native String text(JSObject value);

  @JSBody(params = "value", script = "return value;")
  private static native double number(JSObject value);

  @JSBody(params = "value", script = "return value;")
  private static native boolean truth(JSObject value);

  @JSBody(params = "list", script = "return list.length;")
  private static native int size(JSObject list);

  @JSBody(
      params = {"list", "index"},
      script = "return list[index];")
  private static native JSObject item(JSObject list, int index);

  @JSBody(params = "object", script = "return Object.keys(object);")
  private static native JSObject keys(JSObject object);

  @JSBody(
      params = {"object", "key"},
      script = "return object[key];")
  private static native JSObject field(JSObject object, JSObject key);

  @JSBody(params = "text", script = "return JSON.stringify(text);")
  private static native String quoted(String text);

  /** The shortest digits that read back as the same number. */
  @JSBody(params = "number", script = "return JSON.stringify(number);")
  private static native String digits(double number);
}
