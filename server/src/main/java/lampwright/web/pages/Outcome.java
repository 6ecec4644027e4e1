package lampwright.web.pages;

import java.util.List;
import lampwright.wording.Wording;

/** The author's judgement; every list may be empty. */
public record Outcome(
    List<String> worked,
    List<String> mistakes,
    List<String> mistakesKept,
    List<String> retouched,
    List<String> doDifferently) {

  public Outcome {
    worked = List.copyOf(worked);
    mistakes = List.copyOf(mistakes);
    mistakesKept = List.copyOf(mistakesKept);
    retouched = List.copyOf(retouched);
    doDifferently = List.copyOf(doDifferently);
  }

  /** One kind of judgement with its notes. */
  public record Group(String name, List<String> notes) {

    public Group {
      notes = List.copyOf(notes);
    }
  }

  /** The kinds that have notes, in the order of the trade: first what worked. */
  public List<Group> groups(Wording words) {
    return List.of(
            new Group(words.say("pages.outcome.worked"), worked),
            new Group(words.say("pages.outcome.mistake"), mistakes),
            new Group(words.say("pages.outcome.mistakeKept"), mistakesKept),
            new Group(words.say("pages.outcome.retouched"), retouched),
            new Group(words.say("pages.outcome.differently"), doDifferently))
        .stream()
        .filter(group -> !group.notes().isEmpty())
        .toList();
  }
}
