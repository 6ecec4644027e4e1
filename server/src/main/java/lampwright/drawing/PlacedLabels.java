package lampwright.drawing;

import java.util.List;
import lampwright.drawing.Label.Kind;

/** Labels in their places, written over everything else. */
record PlacedLabels(Sheet.Format format, List<Label.Placed> labels) {

  /** Drawn before what they lead from, which then hides their beginnings. */
  void drawLeaders(Markup markup) {
    Strokes leaders = new Strokes();
    for (Label.Placed placed : labels) {
      if (placed.isFar()) {
        leaders.line(placed.leader());
      }
    }
    markup.path("plan-leader", leaders);
  }

  /** Everything but the discs, which belong to their lights. */
  void draw(Markup markup) {
    for (Label.Placed placed : labels) {
      Label label = placed.label();
      Spot at = placed.wish().at();
      if (label.kind() != Kind.DISC) {
        String anchor =
            switch (placed.wish().side()) {
              case START -> "start";
              case MIDDLE -> "middle";
              case END -> "end";
            };
        if (format == Sheet.Format.PAPER || format == Sheet.Format.PAPER_SIDE) {
          Box under = placed.box().grown(-2);
          markup.path("plan-under", under.outline());
        }
        PlanFrame.text(markup, cssClass(label.kind()), label.words(), anchor, at);
      }
    }
  }

  /** The disc of a light, wherever it found its place. */
  void drawDisc(Markup markup, int number) {
    drawDisc(markup, number, "plan-disc", "plan-disc-figure");
  }

  /** The disc of a light that is off: an open ring. */
  void drawRing(Markup markup, int number) {
    drawDisc(markup, number, "plan-ring", "plan-disc-figure plan-ring-figure");
  }

  private void drawDisc(Markup markup, int number, String disc, String figure) {
    String words = Integer.toString(number);
    for (Label.Placed placed : labels) {
      if (placed.label().kind() == Kind.DISC && placed.label().words().equals(words)) {
        markup.circle(disc, placed.wish().at(), format.disc);
        PlanFrame.text(markup, figure, words, "middle", placed.wish().at());
      }
    }
  }

  private static String cssClass(Kind kind) {
    return switch (kind) {
      case WORDS -> "plan-label";
      case QUIET_WORDS -> "plan-label plan-quiet";
      case FIGURE -> "plan-label plan-figure";
      case HEIGHT -> "plan-label plan-figure plan-height";
      case LEVEL -> "plan-contour-figure";
      case ODD_LEVEL -> "plan-contour-figure plan-contour-odd";
      case DISC -> "plan-disc-figure";
    };
  }
}
