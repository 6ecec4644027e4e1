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
import lampwright.wording.Wording;

/** Puts a signature on the setup page: each part, or why it is not there. */
final class SignatureView {

  private SignatureView() {}

  static SignaturePart part(Signing.Signed signed) {
    List<SignaturePart.Trait> traits = new ArrayList<>();
    for (PartName name : PartName.values()) {
      find(signed.signature(), name)
          .or(() -> signed.signature().findMissing(name).map(SignatureView::trait))
          .ifPresent(traits::add);
    }
    signed.picture().map(SignatureView::trait).ifPresent(traits::add);
    return new SignaturePart(traits);
  }

  private static Optional<SignaturePart.Trait> find(Signature signature, PartName name) {
    return signature.parts().stream()
        .filter(part -> part.part() == name)
        .findFirst()
        .map(SignatureView::trait);
  }

  private static SignaturePart.Trait trait(Part part) {
    return new SignaturePart.Trait(
        Wording.capital(part.part().words()), part.words(), part.sentence());
  }

  private static SignaturePart.Trait trait(Missing missing) {
    return new SignaturePart.Trait(Wording.capital(missing.part().words()), "", missing.because());
  }

  private static SignaturePart.Trait trait(PictureSignature picture) {
    return new SignaturePart.Trait(
        "Finished picture",
        picture.key().tradeName() + ", " + picture.lean().words(),
        picture.sentence());
  }
}
