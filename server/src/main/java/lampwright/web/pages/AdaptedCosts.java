package lampwright.web.pages;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.Matter;
import lampwright.wording.Wording;

/** What an adaptation costs, matter by matter. */
final class AdaptedCosts {

  /** Less would read as nothing. */
  private static final double SHOWN_STOPS = 0.05;

  private static final int LONGEST = 100;

  private final Wording words;

  AdaptedCosts(Wording words) {
    this.words = words;
  }

  AdaptedPage.Costs of(Adaptation adaptation) {
    double dearest =
        adaptation.costs().values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    List<AdaptedPage.Cost> items =
        adaptation.costs().entrySet().stream()
            .filter(cost -> cost.getValue() >= SHOWN_STOPS)
            .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
            .map(
                cost ->
                    new AdaptedPage.Cost(
                        name(cost.getKey()),
                        tenths(cost.getValue()),
                        (int) Math.max(1, Math.rint(LONGEST * cost.getValue() / dearest))))
            .toList();
    return new AdaptedPage.Costs(tenths(adaptation.cost()), items);
  }

  String tenths(double stops) {
    return words.notation().size(stops);
  }

  String name(Matter matter) {
    return switch (matter) {
      case LEVELS -> words.say("pages.costs.levels");
      case AMBIENT -> words.say("pages.costs.ambient");
      case DEPTH -> words.say("pages.costs.depth");
      case MOVEMENT -> words.say("pages.costs.movement");
      case NOISE -> words.say("pages.costs.noise");
      case FRAMING -> words.say("pages.costs.framing");
      case SHAPE -> words.say("pages.costs.shape");
      case COLOUR -> words.say("pages.costs.colour");
      case EVENNESS -> words.say("pages.costs.evenness");
      case CARRYING -> words.say("pages.costs.carrying");
      case PACE -> words.say("pages.costs.pace");
      case HANDLING -> words.say("pages.costs.handling");
    };
  }
}
