package lampwright.web.api;

import io.javalin.http.Context;
import lampwright.document.Form;
import lampwright.document.Reading;
import lampwright.tasks.Refused;
import lampwright.web.http.Body;

/** Reads what a program sent as a document of a known form. */
final class Documents {

  private Documents() {}

  /**
   * The document in the body.
   *
   * @throws Refused when the body is no JSON, or the document has a problem
   */
  static <T> T read(Context context, Form<T> form) {
    return switch (form.read(Body.json(context))) {
      case Reading.Sound<T>(T value) -> value;
      case Reading.Faulty<T> faulty -> throw Refused.invalid(faulty.problems());
    };
  }
}
