package lampwright.setup.reacting;

import java.util.List;

/** What to change now. */
public sealed interface Reaction {

  /** What happened. */
  Happening happening();

  /** What the setup is like if nobody touches anything. */
  Way untouched();

  /** Everything is within a third of a stop of where it was: change nothing. */
  record ChangeNothing(Happening happening, Way untouched) implements Reaction {}

  /**
   * What helps.
   *
   * @param ways best first; the first may still leave something off, which its misses tell
   */
  record Turns(Happening happening, Way untouched, List<Way> ways) implements Reaction {
    public Turns {
      ways = List.copyOf(ways);
    }
  }

  /** No dial brings anything nearer; the misses of the untouched setup tell what falls short. */
  record NothingHelps(Happening happening, Way untouched) implements Reaction {}

  /**
   * The setup does not say enough.
   *
   * @param needs what it would have to say, as JSON Pointers
   */
  record NotKnown(Happening happening, Way untouched, List<String> needs) implements Reaction {
    public NotKnown {
      needs = List.copyOf(needs);
    }
  }
}
