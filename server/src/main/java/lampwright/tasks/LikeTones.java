package lampwright.tasks;

import java.util.List;
import java.util.Optional;
import lampwright.language.Said;
import lampwright.picture.ToneStatistics;
import lampwright.search.Packed;
import lampwright.search.Question;
import lampwright.search.Resemblance;
import lampwright.setup.signature.BriefTones;
import lampwright.setup.signature.PictureLikeness;
import lampwright.setup.signature.PictureSignature;
import lampwright.store.StoredPicture;

/** Searches for finished pictures that look like one that is not kept, by its tones in brief. */
public final class LikeTones {

  private LikeTones() {}

  /** The measure that holds every picture against one. */
  private static final class Against implements Resemblance {
    private final BriefTones tones;
    private final byte[] asked;

    Against(BriefTones tones) {
      this.tones = tones;
      this.asked = tones.toBytes();
    }

    @Override
    public double of(byte[] bytes, int offset, int length) {
      return PictureLikeness.rank(asked, bytes, offset, length);
    }
  }

  /**
   * What a search goes by.
   *
   * @param tones as an address says them
   * @throws Refused Invalid at {@code /like_tones} where they are none
   */
  public static Question.Like read(String tones) {
    BriefTones brief =
        BriefTones.find(tones)
            .orElseThrow(
                () ->
                    Refused.invalid(
                        "/like_tones",
                        "Tones must be as a picture gave them that was shown here. Maybe show it"
                            + " again?"));
    return new Question.Like(
        Optional.empty(), Question.Facts.PICTURE, Packed.of(brief.toBytes()), new Against(brief));
  }

  static BriefTones brief(ToneStatistics tones) {
    return BriefTones.of(
        tones.lightness(),
        tones.colours().stream()
            .map(colour -> new PictureSignature.Shade(colour.rgb(), colour.share()))
            .toList());
  }

  /** What the index keeps of a finished picture. */
  static Packed packed(ToneStatistics tones) {
    return Packed.of(brief(tones).toBytes());
  }

  /** What is alike in a picture that was found, and what is not. */
  static List<Said> reasons(Question.Like like, StoredPicture found) {
    return like.measure() instanceof Against against
        ? PictureLikeness.sentences(
            against.tones, brief(PictureFacts.readStatistics(found.file().statistics())))
        : List.of();
  }
}
