package lampwright.engine.sun;

import java.util.List;

/** Whether the sun stands in a direction again. */
public sealed interface SunAgain {

  /**
   * It does.
   *
   * @param spells in order of time, at least one
   */
  record Returns(List<Spell> spells) implements SunAgain {
    public Returns {
      spells = List.copyOf(spells);
    }
  }

  /**
   * It does not come so near in the days that were searched.
   *
   * @param nearest the nearest it comes
   */
  record StaysAway(Encounter nearest) implements SunAgain {}

  /**
   * Days in a row on each of which the sun comes near enough; most years have two, before and after
   * a solstice.
   *
   * @param first on the first such day
   * @param nearest on the best day
   * @param last on the last such day
   */
  record Spell(Encounter first, Encounter nearest, Encounter last) {}
}
