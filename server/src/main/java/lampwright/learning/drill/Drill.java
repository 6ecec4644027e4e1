package lampwright.learning.drill;

import java.util.List;
import lampwright.engine.Working;
import lampwright.language.Said;

/**
 * A question with a computed answer. Ids of lights stand in quotes in what it says, to be replaced
 * by their names.
 *
 * @param given what one is told, a line each
 * @param question what is asked
 * @param why how the answer comes about, in words
 * @param workings the engine's own steps, where it has some
 */
public record Drill(
    DrillKind kind,
    List<Said> given,
    Said question,
    Answer answer,
    List<Said> why,
    List<Working> workings) {

  public Drill {
    given = List.copyOf(given);
    why = List.copyOf(why);
    workings = List.copyOf(workings);
  }
}
