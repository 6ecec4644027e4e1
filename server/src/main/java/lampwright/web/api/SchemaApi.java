package lampwright.web.api;

import io.javalin.http.Context;
import java.util.Map;
import java.util.function.Supplier;
import lampwright.document.Json;
import lampwright.tasks.Refused;

/** The JSON Schemas of the documents, for whoever writes them by program. */
public final class SchemaApi {

  private static final String SUFFIX = ".json";

  private final Map<String, Supplier<Map<String, Object>>> schemas;

  /**
   * @param schemas each schema by its name
   */
  public SchemaApi(Map<String, Supplier<Map<String, Object>>> schemas) {
    this.schemas = Map.copyOf(schemas);
  }

  /** Shows one, at its name and {@code .json}. */
  public void show(Context context) {
    String file = context.pathParam("file");
    Supplier<Map<String, Object>> schema =
        file.endsWith(SUFFIX)
            ? schemas.get(file.substring(0, file.length() - SUFFIX.length()))
            : null;
    if (schema == null) {
      throw Refused.notFound();
    }
    context.header("Cache-Control", "public, max-age=300");
    context.result(Json.print(schema.get())).contentType("application/schema+json");
  }
}
