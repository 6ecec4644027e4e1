package lampwright.drawing;

import lampwright.language.Language;
import lampwright.language.LengthUnit;
import lampwright.language.Notation;
import lampwright.language.PhraseFiles;
import lampwright.language.StopFraction;

/** English, metres and tenths. */
final class UsualNotation {

  static final Notation READ =
      new Notation(PhraseFiles.read(Language.ENGLISH), LengthUnit.METRES, StopFraction.TENTHS);

  private UsualNotation() {}
}
