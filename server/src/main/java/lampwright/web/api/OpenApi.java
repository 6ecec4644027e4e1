package lampwright.web.api;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.document.Definitions;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.gear.Kit;
import lampwright.gear.calibration.CalibrationSheet;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.Limits;

/**
 * The API's description of itself (OpenAPI 3.1). What is written by hand stands in {@code
 * openapi.json}; the schemas of what is read come from the forms that read it, so that the two
 * cannot disagree.
 */
public final class OpenApi {

  private static final String RESOURCE = "/lampwright/openapi.json";
  private static final String IN_A_SCHEMA = "#/$defs/";
  private static final String IN_THE_DESCRIPTION = "#/components/schemas/";

  private final String description;

  public OpenApi() {
    List<Form<?>> forms =
        new ArrayList<>(List.of(SetupDocument.FORM, Kit.FORM, Limits.FORM, CalibrationSheet.FORM));
    forms.addAll(ComputingApi.forms());
    forms.addAll(ReadingMapApi.forms());
    forms.add(SessionApi.credentialsForm());
    forms.add(TokenApi.wishForm());
    forms.add(UsedApi.form());
    description = Json.print(completed(byHand(), Definitions.of(forms)));
  }

  /** Shows it. */
  public void show(Context context) {
    context.header("Cache-Control", "public, max-age=300");
    context.result(description).contentType("application/json");
  }

  private static Map<?, ?> byHand() {
    try (InputStream in = OpenApi.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("The resource " + RESOURCE + " is missing");
      }
      return (Map<?, ?>) Json.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<?, ?> completed(Map<?, ?> byHand, Map<String, Object> definitions) {
    Map<Object, Object> components = new LinkedHashMap<>(part(byHand, "components"));
    Map<Object, Object> schemas = new LinkedHashMap<>(part(components, "schemas"));
    definitions.forEach(
        (name, schema) -> {
          if (schemas.put(name, moved(schema)) != null) {
            throw new IllegalStateException("Two schemas are called " + name);
          }
        });
    components.put("schemas", schemas);
    Map<Object, Object> all = new LinkedHashMap<>(byHand);
    all.put("components", components);
    return all;
  }

  private static Map<?, ?> part(Map<?, ?> of, String name) {
    if (of.get(name) instanceof Map<?, ?> part) {
      return part;
    }
    throw new IllegalStateException(RESOURCE + " has no " + name);
  }

  /** A schema whose references point to where the definitions stand in the description. */
  private static Object moved(Object schema) {
    return switch (schema) {
      case Map<?, ?> map -> {
        Map<Object, Object> copy = new LinkedHashMap<>();
        map.forEach(
            (key, value) ->
                copy.put(
                    key,
                    key.equals("$ref") && value instanceof String reference
                        ? reference.replace(IN_A_SCHEMA, IN_THE_DESCRIPTION)
                        : moved(value)));
        yield copy;
      }
      case List<?> list -> list.stream().map(OpenApi::moved).toList();
      default -> schema;
    };
  }
}
