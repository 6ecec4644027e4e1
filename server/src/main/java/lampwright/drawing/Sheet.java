package lampwright.drawing;

import lampwright.engine.light.Point;
import lampwright.language.Notation;

/**
 * A piece of ground, or of an upright plane, on a sheet: the one scale of both axes. All drawings
 * of a format are equally wide, so that letters have one size whatever the extent; the scale
 * follows from the extent. On paper a tall one is less wide, for it must leave room on its side.
 *
 * @param width of the view box
 */
record Sheet(Format format, View view, Extent extent, Notation notation, double width) {

  /** As wide as drawings of its format are. */
  Sheet(Format format, View view, Extent extent, Notation notation) {
    this(format, view, extent, notation, format.width);
  }

  /** As wide as lets it stay within a height, and no wider than its format. */
  static Sheet within(
      double mostHeight, Format format, View view, Extent extent, Notation notation) {
    double upright = extent.height() / extent.width();
    double free = (mostHeight - format.topMargin - format.bottomMargin) / upright;
    double width = free + format.leftMargin + format.rightMargin;
    return new Sheet(format, view, extent, notation, Math.min(format.width, width));
  }

  /**
   * How large a drawing and its signs are, in units of its view box. The letters are the phone's,
   * the largest that the style sheet sets: labels are laid out for these, and smaller letters fit
   * the same places.
   */
  enum Format {
    /** On a setup's page, about 790 pixels wide or as wide as a phone. */
    PAGE(790, 50, 16, 16, 40, 0.09, 4, 21, 19, 16, 14, 112),
    /**
     * The plan of the field sheet. Letters stand to its signs as on a page; there is less ground.
     */
    PAPER(560, 50, 8, 8, 34, 0.06, 4, 21, 19, 16, 14, 112),
    /** An elevation beside it, whose letters are as large. */
    PAPER_SIDE(560, 50, 8, 8, 34, 0.06, 4, 21, 19, 16, 14, 80),
    /** In a list, about 160 pixels wide. */
    LIST(160, 1, 1, 1, 1, 0.13, 1, 9, 9, 5.5, 4, 30);

    final double width;
    final double leftMargin;
    final double rightMargin;
    final double topMargin;
    final double bottomMargin;

    /** Ground left free round what is shown, as a share of the longer side. */
    final double groundShare;

    /** Least way between a label and a heavy stroke or the frame. */
    final double gap;

    final double words;
    final double figures;
    final double disc;
    final double subject;
    final double longestWedge;

    Format(
        double width,
        double leftMargin,
        double rightMargin,
        double topMargin,
        double bottomMargin,
        double groundShare,
        double gap,
        double words,
        double figures,
        double disc,
        double subject,
        double longestWedge) {
      this.width = width;
      this.leftMargin = leftMargin;
      this.rightMargin = rightMargin;
      this.topMargin = topMargin;
      this.bottomMargin = bottomMargin;
      this.groundShare = groundShare;
      this.gap = gap;
      this.words = words;
      this.figures = figures;
      this.disc = disc;
      this.subject = subject;
      this.longestWedge = longestWedge;
    }
  }

  /** Asks whether it has words and all its signs. */
  boolean isWhole() {
    return format != Format.LIST;
  }

  /** Asks whether it is printed on the field sheet. */
  boolean isPaper() {
    return format == Format.PAPER || format == Format.PAPER_SIDE;
  }

  /** Units of the drawing for a metre on the ground, the same across and away. */
  double unitsPerMetre() {
    return (width - format.leftMargin - format.rightMargin) / extent.width();
  }

  double units(double metres) {
    return metres * unitsPerMetre();
  }

  double height() {
    return format.topMargin + units(extent.height()) + format.bottomMargin;
  }

  Box frame() {
    return new Box(
        format.leftMargin,
        format.topMargin,
        width - format.rightMargin,
        format.topMargin + units(extent.height()));
  }

  /** Where a place lies that is so many metres along and up the sheet from the hit mark. */
  Spot spot(double along, double up) {
    return new Spot(
        format.leftMargin + units(along - extent.left()),
        format.topMargin + units(extent.far() - up));
  }

  /** Where a place lies on the sheet, seen as the sheet sees it. */
  Spot spot(Point place) {
    return spot(view.along(place), view.up(place));
  }

  boolean shows(Point place) {
    return frame().contains(spot(place));
  }

  /** Where the line of sight from the hit mark to a place off the sheet leaves the frame. */
  Spot border(Point place, double inset) {
    Box inner = frame().grown(-inset);
    Segment sight = new Segment(spot(0, 0), spot(place));
    return inner.clip(sight).orElse(sight).to();
  }
}
