package lampwright.web.api;

import io.javalin.http.Context;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.MergePatch;
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
    return sound(form.read(Body.json(context)));
  }

  /**
   * A document as the change in the body makes it (RFC 7396); problems are pointed at where they
   * stand in the whole document.
   *
   * @param based the revision that the change is for
   * @param revision that of the document
   * @throws Refused when the two differ, the body is no such change, or what comes out has a
   *     problem
   */
  static <T> T changed(Context context, Form<T> form, int based, int revision, T document) {
    if (based != revision) {
      throw Refused.stale(revision);
    }
    Object before = Json.parse(Json.print(form.write(document)));
    return sound(form.read(MergePatch.apply(before, Body.mergePatch(context))));
  }

  private static <T> T sound(Reading<T> reading) {
    return switch (reading) {
      case Reading.Sound<T>(T value) -> value;
      case Reading.Faulty<T> faulty -> throw Refused.invalid(faulty.problems());
    };
  }
}
