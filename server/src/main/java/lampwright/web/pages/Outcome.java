package lampwright.web.pages;

import java.util.List;

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
  public List<Group> groups() {
    return List.of(
            new Group("Worked", worked),
            new Group("Mistake", mistakes),
            new Group("Mistake, kept", mistakesKept),
            new Group("Retouched", retouched),
            new Group("Do differently", doDifferently))
        .stream()
        .filter(group -> !group.notes().isEmpty())
        .toList();
  }
}
