package lampwright.document;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** The named parts of a JSON Schema under construction. Belongs to one schema, one thread. */
public final class Definitions {

  private final Map<String, Object> definitions = new TreeMap<>();
  private final Map<String, Form<?>> owners = new HashMap<>();

  /**
   * A reference to the definition of this name, which is made on first use.
   *
   * @param owner the form that is defined; two forms of one name would be a slip of ours
   */
  Map<String, Object> reference(
      String name, Form<?> owner, Supplier<Map<String, Object>> definition) {
    Form<?> before = owners.putIfAbsent(name, owner);
    if (before != null && !before.equals(owner)) {
      throw new IllegalStateException("Two forms are called " + name + " in one schema");
    }
    if (!definitions.containsKey(name)) {
      definitions.put(name, Map.of());
      definitions.put(name, definition.get());
    }
    return Map.of("$ref", "#/$defs/" + name);
  }

  /** The definitions of several forms and of all that they are made of, by name. */
  public static Map<String, Object> of(List<? extends Form<?>> forms) {
    Definitions definitions = new Definitions();
    forms.forEach(form -> form.schema(definitions));
    return definitions.definitions;
  }

  /**
   * The whole schema of a document.
   *
   * @param identity the address the schema is published at
   */
  public static Map<String, Object> schemaOf(Form<?> form, String identity) {
    Definitions definitions = new Definitions();
    Map<String, Object> body = form.schema(definitions);
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", identity);
    schema.putAll(body);
    schema.put("$defs", definitions.definitions);
    return schema;
  }
}
