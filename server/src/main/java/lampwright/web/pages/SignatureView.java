package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.setup.signature.Missing;
import lampwright.setup.signature.Part;
import lampwright.setup.signature.PartName;
import lampwright.setup.signature.PictureSignature;
import lampwright.setup.signature.Signature;
import lampwright.tasks.Signing;
import lampwright.wording.LightNames;
import lampwright.wording.Wording;

/** Puts a signature on the setup page: each part, or why it is not there. */
final class SignatureView {

  private SignatureView() {}

  static SignaturePart part(Signing.Signed signed, LightNames names) {
    List<SignaturePart.Trait> traits = new ArrayList<>();
    Wording words = names.words();
    for (PartName name : PartName.values()) {
      find(signed.signature(), name, names)
          .or(() -> signed.signature().findMissing(name).map(missing -> trait(missing, words)))
          .ifPresent(traits::add);
    }
    signed.picture().map(picture -> trait(picture, words)).ifPresent(traits::add);
    return new SignaturePart(traits);
  }

  private static Optional<SignaturePart.Trait> find(
      Signature signature, PartName name, LightNames names) {
    return signature.parts().stream()
        .filter(part -> part.part() == name)
        .findFirst()
        .map(part -> trait(part, names));
  }

  private static SignaturePart.Trait trait(Part part, LightNames names) {
    Wording words = names.words();
    return new SignaturePart.Trait(
        words.say(part.part().words()), words.say(part.words()), names.say(part.sentence()));
  }

  private static SignaturePart.Trait trait(Missing missing, Wording words) {
    return new SignaturePart.Trait(
        words.say(missing.part().words()),
        "",
        words.say("signature.why." + Wording.key(missing.because())));
  }

  private static SignaturePart.Trait trait(PictureSignature picture, Wording words) {
    return new SignaturePart.Trait(
        words.say("signature.part.picture"),
        words.say(picture.words()),
        words.say(picture.sentence()));
  }
}
