package lampwright.web.pages;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lampwright.setup.adapting.Adaptation;
import lampwright.setup.adapting.Matter;

/** What an adaptation costs, matter by matter. */
final class AdaptedCosts {

  /** Less would read as nothing. */
  private static final double SHOWN_STOPS = 0.05;

  private static final int LONGEST = 100;

  private AdaptedCosts() {}

  static AdaptedPage.Costs of(Adaptation adaptation) {
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

  static String tenths(double stops) {
    return String.format(Locale.ROOT, "%.1f", stops + 0.0);
  }

  static String name(Matter matter) {
    return switch (matter) {
      case LEVELS -> "Levels of the lights";
      case AMBIENT -> "Ambient against flash";
      case DEPTH -> "Depth of field";
      case MOVEMENT -> "How movement shows";
      case NOISE -> "Noise";
      case FRAMING -> "Framing";
      case SHAPE -> "Softness and spread";
      case COLOUR -> "Colour of the lights";
      case EVENNESS -> "Edges of the frame";
      case CARRYING -> "Things to carry";
      case PACE -> "Wait between frames";
      case HANDLING -> "More to handle";
    };
  }
}
