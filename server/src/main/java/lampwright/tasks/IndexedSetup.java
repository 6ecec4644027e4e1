package lampwright.tasks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampwright.picture.ToneStatistics;
import lampwright.search.IndexEntry;
import lampwright.search.filter.Trait;
import lampwright.search.filter.Traits;
import lampwright.setup.BuildStep;
import lampwright.setup.Camera;
import lampwright.setup.Light;
import lampwright.setup.Occasion;
import lampwright.setup.Outcome;
import lampwright.setup.SetupDocument;
import lampwright.setup.Standing;
import lampwright.setup.Subject;
import lampwright.setup.signature.PictureSignature;
import lampwright.setup.signature.Signature;
import lampwright.store.SetupOfStudio;
import lampwright.store.StoredSetup;

/** What the index takes of a stored setup. */
public final class IndexedSetup {

  private IndexedSetup() {}

  /** Reads it; one document that cannot be read must not keep all others from being found. */
  public static Optional<IndexEntry> find(SetupOfStudio read) {
    StoredSetup stored = read.setup();
    return StoredDocuments.find(SetupDocument.FORM, stored.document(), stored.id())
        .map(setup -> entry(read, stored, setup));
  }

  private static IndexEntry entry(SetupOfStudio read, StoredSetup stored, SetupDocument setup) {
    Optional<ToneStatistics> tones =
        read.tones().flatMap(text -> PictureFacts.findStatistics(text, stored.id()));
    Signature signature = read.signature().orElseGet(() -> Signature.of(setup));
    IndexEntry.Builder entry =
        IndexEntry.of(read.studio().text(), stored.id().text(), stored.revision(), setup.title())
            .meaning(read.meaning())
            .changedAt(stored.changedAt())
            .intent(setup.intent().orElse(""))
            .moods(setup.moods())
            .written(written(setup))
            .gear(gear(setup))
            .roles(setup.lights().stream().map(light -> light.role().name()).distinct().toList())
            .lightCount(setup.lights().size())
            .traits(traits(read, setup, signature, tones.map(Signing::of)))
            .light(LikeThis.packed(signature))
            .standing(
                stored.standing().state().word(),
                stored.standing().archived(),
                stored.standing().equals(Standing.PROVEN));
    tones.map(LikeTones::packed).ifPresent(entry::picture);
    setup.genre().ifPresent(entry::genre);
    Optional<Occasion.Place> place = setup.occasion().flatMap(Occasion::place);
    place.map(Occasion.Place::name).ifPresent(entry::placeName);
    place.flatMap(Occasion.Place::kind).ifPresent(entry::placeKind);
    return entry.build();
  }

  private static Traits traits(
      SetupOfStudio read,
      SetupDocument setup,
      Signature signature,
      Optional<PictureSignature> picture) {
    Traits.Builder traits = DocumentTraits.of(setup, read.location());
    SignatureTraits.add(traits, signature);
    picture.ifPresent(look -> SignatureTraits.add(traits, look));
    // People by their ids: whoever asks is told their names as they are then.
    return traits.words(Trait.AUTHOR, read.author().text()).build();
  }

  private static List<String> written(SetupDocument setup) {
    List<String> texts = new ArrayList<>();
    setup.lights().forEach(light -> light.reason().ifPresent(texts::add));
    setup.buildOrder().stream().map(BuildStep::what).flatMap(Optional::stream).forEach(texts::add);
    setup.outcome().stream().map(Outcome::text).forEach(texts::add);
    texts.addAll(setup.retouchNotes());
    setup.occasion().flatMap(Occasion::weather).ifPresent(texts::add);
    for (Subject subject : setup.subjects()) {
      texts.add(subject.name());
      subject.path().forEach(mark -> mark.cue().ifPresent(texts::add));
    }
    return texts;
  }

  private static List<String> gear(SetupDocument setup) {
    List<String> names = new ArrayList<>();
    for (Light light : setup.lights()) {
      names.add(light.head().name());
      light.modifier().ifPresent(modifier -> names.add(modifier.name()));
      light.gels().forEach(gel -> names.add(gel.name()));
    }
    setup.camera().flatMap(Camera::body).ifPresent(body -> names.add(body.name()));
    setup.camera().flatMap(Camera::lens).ifPresent(lens -> names.add(lens.name()));
    return names.stream().distinct().toList();
  }
}
