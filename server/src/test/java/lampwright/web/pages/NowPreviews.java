package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import lampwright.wording.ReactionLines;

/** What to change now: answered, without help, asked wrongly. */
final class NowPreviews {

  private static final String SETUP = "/demo/setups/k3v9";

  private NowPreviews() {}

  static NowForm form() {
    return new NowForm(
        SETUP + "/now",
        "",
        List.of(
            new NowForm.Choice("key", "1 Key", false), new NowForm.Choice("rim", "2 Rim", false)),
        List.of(new NowForm.Choice("van", "Van kit: four strong battery heads", false)),
        false);
  }

  static NowForm bareForm() {
    return new NowForm(
        SETUP + "/now", "", List.of(new NowForm.Choice("key", "1 Key", false)), List.of(), false);
  }

  static NowPage answered() {
    return page(
        FormErrors.none(),
        Optional.of(
            new ReactionLines(
                "The ambient has fallen by 1.0 stop.",
                "Untouched: Ambient at −2.3, 1.0 stop under.",
                List.of(
                    new ReactionLines.WayLines(
                        "1 dial",
                        true,
                        List.of("Shutter 1/60 → 1/30"),
                        "Ambient back at −1.3. Every light where it was.",
                        List.of("The ambient draws movement twice as far.")),
                    new ReactionLines.WayLines(
                        "3 dials",
                        false,
                        List.of(
                            "ISO 100 → 200", "1 Key: 1/4 → 1/8", "2 Rim: 1/2 − 0.3 → 1/4 − 0.3"),
                        "Ambient at −1.8, 0.5 stop under. "
                            + "Harbourmasterslampwithnospacesinitatall".repeat(3),
                        List.of("More noise: 1.0 stop of ISO."))),
                "",
                List.of())));
  }

  static NowPage nothingHelps() {
    return page(
        FormErrors.none(),
        Optional.of(
            new ReactionLines(
                "The head of 2 Rim is dead.",
                "Untouched: 2 Rim is out.",
                List.of(),
                "No dial makes up for it: leave the rest as it is.",
                List.of(
                    "A dead head can still hold its charge.",
                    "Local codes, the makers' instructions and licensed practice come first."))));
  }

  static NowPage wrong() {
    return page(
        FormErrors.of("now-ambient", "Ambient EV100 (99 EV) must be at most 20. Maybe 10 EV?"),
        Optional.empty());
  }

  private static NowPage page(FormErrors errors, Optional<ReactionLines> answer) {
    return new NowPage(
        PagePreviews.layout("What to change now: Tea at low water"),
        "Tea at low water",
        SETUP,
        form(),
        errors,
        answer);
  }
}
