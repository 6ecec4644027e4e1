package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.StopFraction;

/** The page on which a setup is changed, from invented data, as it is without scripts. */
final class EditorPreviews {

  private EditorPreviews() {}

  static EditorPage full() {
    return page(FormErrors.none());
  }

  static EditorPage wrong() {
    return page(
        new FormErrors(
            List.of(
                new FormErrors.FormError("title", "Title is missing."),
                new FormErrors.FormError(
                    "light-key-stops_down",
                    "Light \"key\": Stops down (9) must be within the head's range of 6."),
                new FormErrors.FormError("", "Somebody changed this setup since."))));
  }

  private static EditorPage page(FormErrors errors) {
    return new EditorPage(
        PagePreviews.layout("Change Last ferry, slate quay"),
        new Notation(PhraseFiles.read(Language.ENGLISH), LengthUnit.METRES, StopFraction.TENTHS),
        "Change Last ferry, slate quay",
        "/demo/setups/k3v9/edit",
        "/demo/setups/k3v9",
        "c5rf",
        4,
        "Last ferry, slate quay",
        "portrait",
        "Dusk, after rain. Alone but not lost.",
        "cold, waiting",
        List.of(light(1, "key", "Key"), light(2, "rim-left", "Rim")),
        Optional.empty(),
        errors,
        "{\"title\":\"</script><b>\"}");
  }

  private static EditorPage.Group light(int number, String id, String name) {
    return new EditorPage.Group(
        String.valueOf(number),
        name,
        List.of(
            new EditorPage.Field("light-" + id + "-x_m", "To the right, m", "−1.4", false, false),
            new EditorPage.Field(
                "light-" + id + "-stops_down", "Stops below full", "2", false, true),
            new EditorPage.Field(
                "light-" + id + "-reason", "Why it is there", "It is the sky.", true, false)));
  }
}
