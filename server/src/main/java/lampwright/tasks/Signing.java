package lampwright.tasks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lampwright.people.StudioId;
import lampwright.picture.ToneStatistics;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.signature.PictureSignature;
import lampwright.setup.signature.Signature;
import lampwright.store.Database;
import lampwright.store.Pictures;
import lampwright.store.Signatures;
import lampwright.store.StoredPicture;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;

/** Tells how the light of a setup is, and how its finished picture looks. */
public final class Signing {

  private final Database database;

  public Signing(Database database) {
    this.database = database;
  }

  /**
   * The signature of a revision.
   *
   * @param picture of the finished picture that was changed last; absent where there is none, and
   *     of a revision that is not the current one, to which no picture belongs for sure
   */
  public record Signed(int revision, Signature signature, Optional<PictureSignature> picture) {}

  /**
   * The signature of a setup as it is now.
   *
   * @throws Refused NotFound where there is none that may be seen
   */
  public Signed get(Caller caller, StudioId studio, SetupId id) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          StoredSetup stored = Sight.ask(in).get(in, id);
          return signed(
              in, id, stored.revision(), () -> in.setupDocuments().read(stored.document()));
        });
  }

  /**
   * @param document asked for only where the signature was not kept
   */
  static Signed signed(
      StudioTransaction in, SetupId id, int revision, Supplier<SetupDocument> document) {
    return new Signed(
        revision,
        new Signatures(in).find(id, revision).orElseGet(() -> Signature.of(document.get())),
        Optional.ofNullable(ofPictures(in, List.of(id)).get(id)));
  }

  /**
   * The signature of a setup as it was at a revision.
   *
   * @throws Refused NotFound where there is none that may be seen
   */
  public Signed get(Caller caller, StudioId studio, SetupId id, int revision) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          SetupDocument document =
              Histories.get(in, Histories.sight(in, id), id, revision).document();
          return new Signed(
              revision,
              new Signatures(in).find(id, revision).orElseGet(() -> Signature.of(document)),
              Optional.empty());
        });
  }

  /** How the finished pictures of some setups look, of those that have one. */
  static Map<SetupId, PictureSignature> ofPictures(StudioTransaction in, List<SetupId> setups) {
    Map<SetupId, PictureSignature> looks = new HashMap<>();
    new Pictures(in).finals(setups).forEach((id, picture) -> looks.put(id, of(picture)));
    return looks;
  }

  private static PictureSignature of(StoredPicture picture) {
    return of(PictureFacts.readStatistics(picture.file().statistics()));
  }

  /** How a picture of these tones looks. */
  static PictureSignature of(ToneStatistics tones) {
    return PictureSignature.of(
        tones.key(),
        tones.spread(),
        tones.warmth(),
        tones.colours().stream()
            .map(colour -> new PictureSignature.Shade(colour.rgb(), colour.share()))
            .toList());
  }
}
