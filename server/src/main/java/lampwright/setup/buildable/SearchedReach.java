package lampwright.setup.buildable;

import lampwright.engine.unit.Stops;
import lampwright.gear.Kit;
import lampwright.setup.SetupDocument;
import lampwright.setup.adapting.AdaptationSearch;
import lampwright.setup.figures.Figures;

/** How far a setup is off by the full search: it is asked again and again, by halving. */
record SearchedReach(SetupDocument setup, Figures figures, Kit kit) {

  /** The gear tells nothing apart that is so far off. */
  private static final double MOST_STOPS = 64;

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

  boolean isWithin(double stops) {
    return AdaptationSearch.isWithin(setup, figures, kit, new Stops(stops));
  }
}
