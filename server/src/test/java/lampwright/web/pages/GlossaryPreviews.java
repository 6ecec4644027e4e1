package lampwright.web.pages;

import java.util.Optional;
import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.StopFraction;
import lampwright.wording.Wording;

/** The glossary as it is, in English, and in German with feet and thirds. */
final class GlossaryPreviews {

  private GlossaryPreviews() {}

  static GlossaryPage english() {
    return GlossaryView.page(PagePreviews.layout("Glossary"));
  }

  static GlossaryPage german() {
    Notation german =
        new Notation(PhraseFiles.read(Language.GERMAN), LengthUnit.FEET, StopFraction.THIRDS);
    return GlossaryView.page(
        new Layout(
            "Glossar",
            Optional.of(PagePreviews.member("Veskarn Light")),
            Theme.DEVICE,
            new Wording(german),
            PagePreviews.ASSETS));
  }
}
