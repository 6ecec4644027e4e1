package lampwright.web.http;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampwright.document.Json;
import lampwright.document.Problem;

/**
 * What a refused request is answered with (RFC 9457).
 *
 * @param kind what went wrong
 * @param detail about this occurrence, for a person
 * @param reference the number under which the log has this request
 * @param errors single faults; may be empty
 */
public record ProblemDetails(
    ProblemKind kind, String detail, String reference, List<Problem> errors) {

  static final String MEDIA_TYPE = "application/problem+json";

  public ProblemDetails {
    errors = List.copyOf(errors);
  }

  String toJson() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("type", kind.type());
    json.put("title", kind.title());
    json.put("status", kind.status());
    json.put("detail", detail);
    json.put("instance", reference);
    if (!errors.isEmpty()) {
      json.put(
          "errors",
          errors.stream()
              .map(error -> Map.of("pointer", error.pointer(), "message", error.message()))
              .toList());
    }
    return Json.print(json);
  }
}
