package lampwright.gear;

import java.util.List;
import lampwright.document.Form;
import lampwright.document.Json;
import lampwright.document.Problem;
import lampwright.document.Reading;

/** Gear for tests, from JSON with single quotes that names only the fields that matter. */
final class GearDocuments {

  private GearDocuments() {}

  /** A head that must be right. */
  static Head head(String fields) {
    return sound(Head.FORM, headJson(fields));
  }

  /** The text of a head with these fields besides those that must be there. */
  static String headJson(String fields) {
    return "{'name':'monolight','energy_ws':400,'output':{'kind':'guide_number','guide_number_m':60}"
        + (fields.isEmpty() ? "" : "," + fields)
        + "}";
  }

  /** What the text stands for, which must be right. */
  static <T> T sound(Form<T> form, String json) {
    return switch (form.read(parsed(json))) {
      case Reading.Sound<T> sound -> sound.value();
      case Reading.Faulty<T> faulty -> throw new AssertionError(faulty.problems() + " in " + json);
    };
  }

  /** The problems of text that must be wrong. */
  static List<Problem> problems(Form<?> form, String json) {
    return switch (form.read(parsed(json))) {
      case Reading.Sound<?> sound -> throw new AssertionError("No problem in " + json);
      case Reading.Faulty<?> faulty -> faulty.problems();
    };
  }

  /** What the form writes, as its reader will see it. */
  static <T> Object written(Form<T> form, T value) {
    return Json.parse(Json.print(form.write(value)));
  }

  /** The tree that the text stands for. */
  static Object parsed(String json) {
    return Json.parse(json.replace('\'', '"'));
  }
}
