package lampwright.web.pages;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import lampwright.document.Problem;
import lampwright.document.Reading;
import lampwright.setup.PictureKind;
import lampwright.setup.PictureNote;
import lampwright.tasks.Refused;
import lampwright.wording.Wording;

/** The fields of the forms about pictures, on their way to a note and back. */
final class PictureFields {

  private PictureFields() {}

  /**
   * What was filled in.
   *
   * @throws Refused Invalid where that is wrong
   */
  static PictureNote read(UnaryOperator<String> sent) {
    Map<String, Object> json = new LinkedHashMap<>();
    for (String field : List.of(PictureForm.KIND, PictureForm.CAPTION)) {
      String text = sent.apply(field).strip().replace("\r\n", "\n");
      if (!text.isEmpty()) {
        json.put(field, text);
      }
    }
    json.put(PictureForm.MAY_SHOW_PLACE, sent.apply(PictureForm.MAY_SHOW_PLACE).equals("true"));
    return switch (PictureNote.FORM.read(json)) {
      case Reading.Sound<PictureNote>(PictureNote note) -> note;
      case Reading.Faulty<PictureNote> faulty -> throw Refused.invalid(faulty.problems());
    };
  }

  static List<PictureForm.Kind> kinds(List<PictureKind> may, String chosen, Wording words) {
    return may.stream()
        .map(
            kind ->
                new PictureForm.Kind(
                    kind.word(), PictureTile.kind(kind, words), kind.word().equals(chosen)))
        .toList();
  }

  static List<PictureKind> all() {
    return Arrays.asList(PictureKind.values());
  }

  /**
   * What is wrong, at its field.
   *
   * @param otherwise the field that a problem of the whole is about; may be empty
   */
  static FormErrors errors(List<Problem> problems, String otherwise) {
    return new FormErrors(
        problems.stream()
            .map(
                problem -> {
                  String field = problem.pointer().replaceFirst("^/", "");
                  boolean isOurs = List.of(PictureForm.KIND, PictureForm.CAPTION).contains(field);
                  return new FormErrors.FormError(isOurs ? field : otherwise, problem.message());
                })
            .toList());
  }
}
