package lampwright.drawing;

import lampwright.gear.Modifier;

/**
 * The pale wedge of a light's half-peak spread; its reach says nothing, its angle is the spread's.
 */
record Wedge(Sheet sheet, double spreadDeg, Spot apex, Spot heading, double reach) {

  /** A wedge leaves at least this, and no more than this share of its aim, uncovered. */
  private static final double SHARE = 0.55;

  private static final double SHORTEST_SHARE = 0.36;
  private static final double WIDEST_DEG = 170;
  private static final int HATCH_LINES = 7;

  static Wedge of(Sheet sheet, Modifier modifier, Spot apex, Spot heading, double aimLength) {
    double most = sheet.format().longestWedge;
    return new Wedge(
        sheet,
        Math.min(WIDEST_DEG, HalfPeakSpread.of(modifier).value()),
        apex,
        heading,
        Math.clamp(aimLength * SHARE, most * SHORTEST_SHARE, most));
  }

  void draw(Markup markup) {
    markup.path(
        "plan-spread",
        new Strokes()
            .from(apex)
            .to(apex.along(heading.turned(-spreadDeg / 2), reach))
            .arc(reach, apex.along(heading.turned(spreadDeg / 2), reach))
            .close());
    if (sheet.isWhole()) {
      Strokes hatch = new Strokes();
      for (int i = 1; i <= HATCH_LINES; i++) {
        Spot ray = heading.turned(spreadDeg * ((double) i / (HATCH_LINES + 1) - 0.5));
        hatch.from(apex.along(ray, reach * 0.3)).to(apex.along(ray, reach * 0.96));
      }
      // Shown on paper only, where the wedge has no tint.
      markup.path("plan-hatch", hatch);
    }
  }
}
