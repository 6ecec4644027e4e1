package lampwright.web.pages;

import java.util.Optional;
import lampwright.people.StudioId;
import lampwright.picture.PictureSize;
import lampwright.setup.PictureId;
import lampwright.setup.PictureKind;
import lampwright.setup.SetupId;
import lampwright.tasks.Finding;
import lampwright.tasks.KeptPicture;
import lampwright.tasks.PictureGiving.Whereabouts;
import lampwright.wording.Wording;

/**
 * A picture as pages show it among others.
 *
 * @param path to its own page
 * @param source the address of its bytes
 * @param largeSource the same twice as large, for fine screens; empty where there is none
 * @param alt what is seen on it, for those who do not see it
 * @param kind what it is: "Behind the scenes"
 * @param caption may be empty
 * @param width of the bytes, in pixels, so that the page does not jump
 * @param height of the bytes, in pixels
 * @param whereabouts where its file is
 */
public record PictureTile(
    String path,
    String source,
    String largeSource,
    String alt,
    String kind,
    String caption,
    int width,
    int height,
    Whereabouts whereabouts) {

  /** Whether its bytes can be asked for. */
  public boolean isThere() {
    return whereabouts == Whereabouts.THERE;
  }

  /** Whether they may be there again soon. */
  public boolean isAway() {
    return whereabouts == Whereabouts.AWAY;
  }

  /** A picture at thumbnail size. */
  static PictureTile small(
      StudioId studio, KeptPicture picture, Whereabouts whereabouts, Wording words) {
    return tile(studio, picture, whereabouts, PictureSize.THUMBNAIL, words);
  }

  /** A picture at the size of a screen. */
  static PictureTile large(
      StudioId studio, KeptPicture picture, Whereabouts whereabouts, Wording words) {
    return tile(studio, picture, whereabouts, PictureSize.SCREEN, words);
  }

  private static PictureTile tile(
      StudioId studio,
      KeptPicture picture,
      Whereabouts whereabouts,
      PictureSize size,
      Wording words) {
    boolean large = size == PictureSize.SCREEN;
    String api = apiPath(studio, picture.setup(), picture.id());
    String caption = picture.note().caption().orElse("");
    String kind = kind(picture.note().kind(), words);
    int longer = Math.max(picture.width(), picture.height());
    return new PictureTile(
        PicturePages.path(studio, picture.setup()) + "/" + picture.id(),
        api + (large ? "/screen" : "/thumbnail"),
        large && longer > size.longerSide() ? api + "/screen?width=2560" : "",
        caption.isEmpty() ? words.say("picture.noCaption", kind) : caption,
        kind,
        caption,
        side(picture.width(), longer, size),
        side(picture.height(), longer, size),
        whereabouts);
  }

  /** The finished picture of a setup that was found. */
  static PictureTile of(
      StudioId studio, SetupId setup, Finding.FoundPicture picture, Wording words) {
    int longer = Math.max(picture.width(), picture.height());
    return new PictureTile(
        PicturePages.path(studio, setup) + "/" + picture.id(),
        apiPath(studio, setup, picture.id()) + "/thumbnail",
        "",
        picture.caption().orElse(""),
        kind(PictureKind.FINAL, words),
        picture.caption().orElse(""),
        side(picture.width(), longer, PictureSize.THUMBNAIL),
        side(picture.height(), longer, PictureSize.THUMBNAIL),
        Whereabouts.THERE);
  }

  /** A finished picture for somebody outside: no way on, and nobody's words. */
  static PictureTile shared(KeptPicture picture, String source, String alt) {
    int longer = Math.max(picture.width(), picture.height());
    return new PictureTile(
        "",
        source,
        "",
        alt,
        "",
        "",
        side(picture.width(), longer, PictureSize.SCREEN),
        side(picture.height(), longer, PictureSize.SCREEN),
        Whereabouts.THERE);
  }

  private static int side(int whole, int longer, PictureSize size) {
    double shrunk = Math.min(1, (double) size.longerSide() / longer);
    return Math.max(1, (int) Math.round(whole * shrunk));
  }

  static String apiPath(StudioId studio, SetupId setup, PictureId picture) {
    return "/api" + PicturePages.path(studio, setup) + "/" + picture;
  }

  static String kind(PictureKind kind, Wording words) {
    return words.say("picture.kind." + kind.word());
  }

  /** The sources for an {@code img} by their widths; absent where there is but one. */
  public Optional<String> sources() {
    return largeSource.isEmpty()
        ? Optional.empty()
        : Optional.of(source + " 1x, " + largeSource + " 2x");
  }
}
