package lampwright.setup.buildable;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.AdaptationSearch;
import lampwright.setup.figures.Figures;

/** How far a setup is off by the full search: it is asked again and again, by halving. */
public record SearchedReach(SetupDocument setup, Figures figures, Kit kit) {

  /** The gear tells nothing apart that is so far off. */
  private static final double MOST_STOPS = 64;

  private static final int HUNDREDTHS = 100;

  Verdict judge(Stops within) {
    if (isWithin(within.value())) {
      return new Verdict.Within();
    }
    if (!isWithin(MOST_STOPS)) {
      return new Verdict.Never(Verdict.Reason.TOO_FEW_MODIFIERS);
    }
    double no = within.value();
    double yes = MOST_STOPS;
    while (yes - no > Judge.TOLERANCE_STOPS) {
      double middle = (no + yes) / 2;
      if (isWithin(middle)) {
        yes = middle;
      } else {
        no = middle;
      }
    }
    return new Verdict.Beyond(new Stops(yes));
  }

  /**
   * How far it is off, right to half a hundredth of a stop, while somebody waits.
   *
   * @param stop asked now and then, says yes once that was long enough
   * @return empty where it was told to stop before it could tell
   */
  public Optional<Verdict> find(BooleanSupplier stop) {
    int no = -1;
    int yes = 1;
    while (true) {
      Optional<Boolean> made = isWithin(yes, stop);
      if (made.isEmpty()) {
        return Optional.empty();
      }
      if (made.get()) {
        break;
      }
      no = yes;
      yes *= 4;
      if (no > MOST_STOPS * HUNDREDTHS) {
        return Optional.of(new Verdict.Never(Verdict.Reason.TOO_FEW_MODIFIERS));
      }
    }
    while (yes - no > 1) {
      int middle = (no + yes) / 2;
      Optional<Boolean> made = isWithin(middle, stop);
      if (made.isEmpty()) {
        return Optional.empty();
      }
      yes = made.get() ? middle : yes;
      no = made.get() ? no : middle;
    }
    return Optional.of(
        yes == 0 ? new Verdict.Within() : new Verdict.Beyond(new Stops(yes / (double) HUNDREDTHS)));
  }

  /** Whether it is made where what is off is rounded to so many hundredths of a stop. */
  private Optional<Boolean> isWithin(int hundredths, BooleanSupplier stop) {
    Stops stops = new Stops((hundredths + 0.5) / HUNDREDTHS);
    return AdaptationSearch.isWithin(setup, figures, kit, stops, stop);
  }

  boolean isWithin(double stops) {
    return AdaptationSearch.isWithin(setup, figures, kit, new Stops(stops));
  }
}
