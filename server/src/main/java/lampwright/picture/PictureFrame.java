package lampwright.picture;

/**
 * What a file is and how large.
 *
 * @param width of the upright picture, in pixels
 * @param height of the upright picture, in pixels
 */
public record PictureFrame(PictureFormat format, int width, int height)
    implements PictureExamination {

  static PictureFrame of(Parts parts, Orientation turn) {
    return turn.swapsSides()
        ? new PictureFrame(parts.format(), parts.height(), parts.width())
        : new PictureFrame(parts.format(), parts.width(), parts.height());
  }
}
