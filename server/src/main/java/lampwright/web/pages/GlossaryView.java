package lampwright.web.pages;

import java.util.Arrays;
import java.util.Optional;
import lampwright.drawing.DistanceBook;
import lampwright.drawing.FlipBook;
import lampwright.drawing.GelBook;
import lampwright.drawing.PowerBook;
import lampwright.drawing.RatioBook;
import lampwright.drawing.SoftnessBook;
import lampwright.drawing.TimeBook;
import lampwright.drawing.TurnBook;
import lampwright.language.Notation;
import lampwright.learning.glossary.Term;
import lampwright.learning.glossary.TermGroup;
import lampwright.wording.Wording;

/** Puts the terms into words and draws what has a drawing. */
final class GlossaryView {

  private GlossaryView() {}

  static GlossaryPage page(Layout layout) {
    Wording words = layout.words();
    return new GlossaryPage(
        layout,
        Arrays.stream(TermGroup.values())
            .map(
                group ->
                    new GlossaryPage.Group(
                        group.anchor(),
                        words.say("glossary.group." + group.key()),
                        group.terms().stream().map(term -> entry(term, words)).toList()))
            .toList());
  }

  private static GlossaryPage.Entry entry(Term term, Wording words) {
    return new GlossaryPage.Entry(
        term.anchor(),
        name(term, words),
        words.say("glossary.term." + term.key() + ".text"),
        words.say("glossary.term." + term.key() + ".here"),
        term.seeAlso().stream().map(other -> link(other, words)).toList(),
        book(term, words.notation()));
  }

  private static Link link(Term term, Wording words) {
    return new Link(name(term, words), "#" + term.anchor());
  }

  static String name(Term term, Wording words) {
    return words.say("glossary.term." + term.key() + ".name");
  }

  private static Optional<FlipBook> book(Term term, Notation notation) {
    return switch (term) {
      case INVERSE_SQUARE -> Optional.of(DistanceBook.of(notation));
      case SOFTNESS -> Optional.of(SoftnessBook.of(notation));
      case LIGHTING_RATIO -> Optional.of(RatioBook.of(notation));
      case FEATHERING -> Optional.of(TurnBook.of(notation));
      case AMBIENT_OFFSET -> Optional.of(TimeBook.of(notation));
      case FREEZING -> Optional.of(PowerBook.of(notation));
      case MIRED -> Optional.of(GelBook.of(notation));
      default -> Optional.empty();
    };
  }
}
