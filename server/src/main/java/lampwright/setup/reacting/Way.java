package lampwright.setup.reacting;

import java.util.List;
import java.util.Optional;
import lampwright.engine.unit.Stops;
import lampwright.setup.LightId;
import lampwright.setup.SetupDocument;
import lampwright.setup.figures.Figures;

/**
 * One way to react, and what the setup is like then.
 *
 * @param turns what to do, in the order of doing it: heads, camera, powers
 * @param givenUp lights that do not shine any more
 * @param misses of the ambient, where it is known, then of each light whose level is known, in the
 *     document's order
 * @param price what it costs besides
 * @param loss everything that is lost, in weighted stops; see the package
 * @param document the setup as it is then
 * @param figures of that document
 */
public record Way(
    List<Turn> turns,
    List<LightId> givenUp,
    List<Miss> misses,
    Price price,
    double loss,
    SetupDocument document,
    Figures figures) {

  public Way {
    turns = List.copyOf(turns);
    givenUp = List.copyOf(givenUp);
    misses = List.copyOf(misses);
  }

  /** How many things a hand turns. */
  public int dials() {
    return turns.stream().mapToInt(Turn::dials).sum();
  }

  /** Asks whether every light shines and everything is within a third of where it was. */
  public boolean holdsAll() {
    return givenUp.isEmpty() && misses.stream().allMatch(Miss::isHeld);
  }

  /** What is not within a third of where it was. */
  public List<Miss> off() {
    return misses.stream().filter(miss -> !miss.isHeld()).toList();
  }

  /** How far the ambient is from where it was; absent where it is not known. */
  public Optional<Stops> ambientMiss() {
    return misses.stream().filter(miss -> miss.light().isEmpty()).map(Miss::stops).findFirst();
  }
}
