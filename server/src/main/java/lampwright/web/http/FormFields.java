package lampwright.web.http;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import lampwright.tasks.Refused;

/** The fields of a form that was sent. */
public final class FormFields {

  /** More than the gear of a studio, each of which has one in the form of a kit. */
  private static final int MOST_FIELDS = 1_200;

  private final Map<String, String> fields;

  private FormFields(Map<String, String> fields) {
    this.fields = fields;
  }

  static FormFields parse(String text) {
    Map<String, String> fields = new LinkedHashMap<>();
    String[] pairs = text.split("&", MOST_FIELDS + 1);
    if (pairs.length > MOST_FIELDS) {
      throw Refused.notReadable("The form has more than " + MOST_FIELDS + " fields.");
    }
    for (String pair : pairs) {
      int equals = pair.indexOf('=');
      String name = equals < 0 ? pair : pair.substring(0, equals);
      String value = equals < 0 ? "" : pair.substring(equals + 1);
      fields.putIfAbsent(
          Escapes.decode(name.replace('+', ' ')), Escapes.decode(value.replace('+', ' ')));
    }
    return new FormFields(Collections.unmodifiableMap(fields));
  }

  /** The names of the fields, as they were sent. */
  public Set<String> names() {
    return fields.keySet();
  }

  /** What was typed into a field; empty where the form has no such field. */
  public String get(String field) {
    return fields.getOrDefault(field, "");
  }
}
