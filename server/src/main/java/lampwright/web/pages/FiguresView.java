package lampwright.web.pages;

import java.util.ArrayList;
import java.util.List;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;
import lampwright.wording.MissingInput;
import lampwright.wording.Wording;

/** Puts the figures of a setup on their own page, and in short on the setup's. */
final class FiguresView {

  private final FiguresOf of;

  FiguresView(SetupDocument setup, Figures figures, Wording words) {
    this.of = FiguresOf.of(setup, figures, words);
  }

  FiguresPage page(Layout layout, String setupPath) {
    PathView path = new PathView(of);
    WindView wind = new WindView(of);
    MovementView movement = new MovementView(of);
    SunView sun = new SunView(of);
    List<FiguresPart> parts = new ArrayList<>();
    parts.add(new DialsView(of).part());
    parts.add(new LightsView(of).part());
    parts.add(new TargetsView(of).part());
    parts.add(new SpillView(of).part());
    if (!path.isAbsent()) {
      parts.add(path.part());
    }
    if (!movement.isAbsent()) {
      parts.add(movement.part());
    }
    parts.add(new OpticsView(of).part());
    if (!sun.isAbsent()) {
      parts.add(sun.part());
    }
    parts.add(new ColourView(of).part());
    parts.add(new PowerView(of).part());
    if (!wind.isAbsent()) {
      parts.add(wind.part());
    }
    return new FiguresPage(
        layout,
        of.setup().title(),
        setupPath,
        parts,
        of.allMissing(),
        of.words().say(of.figures().leftOut()));
  }

  /** What a stop on each dial does. */
  DialsInShort dials() {
    return new DialsView(of).inShort();
  }

  /** One line a subject, each with the way to the part that tells it in full. */
  List<ShortLine> lines(String figuresPath) {
    PathView path = new PathView(of);
    WindView wind = new WindView(of);
    MovementView movement = new MovementView(of);
    SunView sun = new SunView(of);
    List<ShortLine> lines = new ArrayList<>();
    if (!movement.isAbsent()) {
      lines.add(movement.line(figuresPath + "#" + MovementView.ID));
    }
    if (!path.isAbsent()) {
      lines.add(path.line(figuresPath + "#" + PathView.ID));
    }
    lines.add(new OpticsView(of).line(figuresPath + "#" + OpticsView.ID));
    if (!sun.isAbsent()) {
      lines.add(sun.line(figuresPath + "#" + SunView.ID));
    }
    lines.add(new ColourView(of).line(figuresPath + "#" + ColourView.ID));
    lines.add(new PowerView(of).line(figuresPath + "#" + PowerView.ID));
    if (!wind.isAbsent()) {
      lines.add(wind.line(figuresPath + "#" + WindView.ID));
    }
    return lines;
  }

  List<MissingInput> missing() {
    return of.allMissing();
  }
}
