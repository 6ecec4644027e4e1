package lampwright.picture;

/** The smaller versions that are made of each picture; none is ever larger than the picture. */
public enum PictureSize {
  THUMBNAIL(320),
  SCREEN(1280),
  LARGE_SCREEN(2560);

  private final int longerSide;

  PictureSize(int longerSide) {
    this.longerSide = longerSide;
  }

  /** The most pixels of the longer side. */
  public int longerSide() {
    return longerSide;
  }
}
