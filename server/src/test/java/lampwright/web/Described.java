package lampwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import lampwright.document.Json;

/** The API's description of itself, and what is held against it. */
public final class Described {

  private final String text;
  private final Map<?, ?> description;
  private final Set<String> done = new TreeSet<>();

  /** With all components in each, which takes longer than to hold a reply against it. */
  private final Map<Map<?, ?>, Schema> schemas = new HashMap<>();

  public Described(String text) {
    this.text = text;
    this.description = (Map<?, ?>) Json.parse(text);
  }

  String text() {
    return text;
  }

  /** Every verb and path that is described. */
  public Set<String> operations() {
    Set<String> all = new TreeSet<>();
    map(description, "paths")
        .forEach(
            (path, verbs) ->
                ((Map<?, ?>) verbs)
                    .keySet()
                    .forEach(
                        verb -> all.add(verb.toString().toUpperCase(Locale.ROOT) + " " + path)));
    return all;
  }

  /** Whether a status of an operation is described by itself. */
  boolean tells(String operation, int status) {
    return map(verb(operation), "responses").containsKey(Integer.toString(status));
  }

  /** The media types of the bodies that an operation takes. */
  public Set<String> takes(String operation) {
    Set<String> types = new TreeSet<>();
    if (verb(operation).containsKey("requestBody")) {
      map(verb(operation), "requestBody", "content")
          .keySet()
          .forEach(type -> types.add(type.toString()));
    }
    return types;
  }

  /** The parameters of an operation in one place: in the path, the query or the headers. */
  public List<Map<?, ?>> parameters(String operation, String place) {
    if (!(verb(operation).get("parameters") instanceof List<?> all)) {
      return List.of();
    }
    List<Map<?, ?>> found = new ArrayList<>();
    for (Object one : all) {
      Map<?, ?> parameter = resolved((Map<?, ?>) one);
      if (place.equals(parameter.get("in"))) {
        found.add(parameter);
      }
    }
    return found;
  }

  private Map<?, ?> verb(String operation) {
    int space = operation.indexOf(' ');
    return map(
        description,
        "paths",
        operation.substring(space + 1),
        operation.substring(0, space).toLowerCase(Locale.ROOT));
  }

  /** Those of which a reply that was no refusal was held against the description. */
  Set<String> done() {
    return done;
  }

  /**
   * Holds a reply against what is described for this status of this operation.
   *
   * @param operation verb and path
   * @return the reply
   */
  HttpResponse<String> mustFit(String operation, int status, HttpResponse<String> reply) {
    String where = operation + " " + reply.statusCode() + ": " + reply.body();
    assertEquals(status, reply.statusCode(), where);
    Map<?, ?> responses = map(verb(operation), "responses");
    assertTrue(responses.containsKey(Integer.toString(status)), where + " is not described");
    Map<?, ?> response = resolved(map(responses, Integer.toString(status)));
    if (response.containsKey("headers")) {
      map(response, "headers")
          .forEach(
              (name, header) -> {
                boolean needed = Boolean.TRUE.equals(resolved((Map<?, ?>) header).get("required"));
                assertTrue(
                    !needed || reply.headers().firstValue(name.toString()).isPresent(),
                    () -> where + " lacks " + name);
              });
    }
    if (response.containsKey("content")) {
      String type = reply.headers().firstValue("Content-Type").orElse("").replaceAll(";.*", "");
      Map<?, ?> content = map(response, "content");
      assertTrue(content.containsKey(type), where + " is " + type);
      if (!type.startsWith("image/")
          && !type.equals("text/plain")
          && !type.equals("application/zip")
          && !type.equals("application/pdf")) {
        assertEquals("", faults(map(content, type, "schema"), reply.body()), where);
      }
    } else {
      assertEquals("", reply.body(), where);
    }
    if (status < 300) {
      done.add(operation);
    }
    return reply;
  }

  private String faults(Map<?, ?> schema, String json) {
    StringBuilder faults = new StringBuilder();
    schemas
        .computeIfAbsent(schema, this::compiled)
        .validate(json, InputFormat.JSON)
        .forEach(fault -> faults.append(fault).append('\n'));
    return faults.toString();
  }

  private Schema compiled(Map<?, ?> schema) {
    Map<Object, Object> whole = new LinkedHashMap<>(schema);
    whole.put("components", description.get("components"));
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Json.print(whole), InputFormat.JSON);
  }

  /** What a schema of this name says against a text; empty where nothing. */
  String faultsBy(String name, String json) {
    return faults(Map.of("$ref", "#/components/schemas/" + name), json);
  }

  private Map<?, ?> resolved(Map<?, ?> part) {
    return part.get("$ref") instanceof String reference
        ? map(description, (Object[]) reference.substring(2).split("/"))
        : part;
  }

  private static Map<?, ?> map(Map<?, ?> of, Object... path) {
    Map<?, ?> at = of;
    for (Object step : path) {
      if (!(at.get(step) instanceof Map<?, ?> next)) {
        throw new AssertionError("Nothing is described at " + step);
      }
      at = next;
    }
    return at;
  }
}
