package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.language.Said;
import lampwright.people.Ids;
import lampwright.search.Packed;
import lampwright.search.Question;
import lampwright.search.Resemblance;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.signature.LightLikeness;
import lampwright.setup.signature.PackedLight;
import lampwright.setup.signature.Signature;
import lampwright.store.Signatures;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;

/**
 * A setup whose light others should have.
 *
 * @param title the setup's
 * @param like what the search goes by
 */
public record LikeThis(String title, Question.Like like) {

  private static final int LONGEST_SHOWN = 40;

  /** The measure that holds every setup against one light. */
  private record Against(PackedLight asked) implements Resemblance {
    @Override
    public double of(byte[] bytes, int offset, int length) {
      return LightLikeness.rank(asked, PackedLight.ofBytes(bytes, offset, length));
    }
  }

  /**
   * The setup of that id.
   *
   * @throws Refused Invalid at {@code /like} where there is none that may be seen
   */
  static LikeThis find(StudioTransaction in, Sight sight, String setup) {
    StoredSetup stored =
        Optional.of(setup)
            .filter(Ids::isId)
            .flatMap(id -> sight.find(in, new SetupId(id)))
            .orElseThrow(
                () ->
                    Refused.invalid(
                        "/like",
                        "There is no setup “"
                            + setup.substring(0, Math.min(setup.length(), LONGEST_SHOWN))
                            + "”. Maybe it was deleted?"));
    PackedLight light =
        PackedLight.of(
            new Signatures(in)
                .find(stored.id(), stored.revision())
                .or(
                    () ->
                        StoredDocuments.findSetup(in, stored.document(), stored.id())
                            .map(Signature::of))
                .orElseThrow(
                    () ->
                        Refused.invalid(
                            "/like",
                            "Setup “"
                                + stored.title()
                                + "” cannot be read, so how its light is is not known.")));
    return new LikeThis(
        stored.title(),
        new Question.Like(
            Optional.of(stored.id().text()),
            Question.Facts.LIGHT,
            Packed.of(light.toBytes()),
            new Against(light)));
  }

  /** What the index keeps of a setup's light. */
  static Packed packed(Signature signature) {
    return Packed.of(PackedLight.of(signature).toBytes());
  }

  /** What is alike in a setup that was found, and what is not. */
  static List<Said> reasons(Question.Like like, SetupDocument found) {
    byte[] asked = like.asked().toBytes();
    return LightLikeness.of(
            PackedLight.ofBytes(asked, 0, asked.length), PackedLight.of(Signature.of(found)))
        .sentences();
  }
}
