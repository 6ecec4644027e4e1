package lampwright.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lampwright.setup.LightId;
import lampwright.tasks.LoggedTake;
import lampwright.wording.Wording;

/**
 * Where an author keeps what the meter gave in a take: with the setup, whose figures then follow
 * it, or with the heads, for their calibration.
 *
 * @param setupRevision of the setup that is looked at
 * @param lights whose readings there are
 * @param isAgain whether it was refused as it was sent
 */
public record KeepingForm(
    String action,
    String csrfToken,
    int setupRevision,
    List<Chosen> lights,
    boolean isAgain,
    FormErrors errors) {

  public static final String SETUP_REVISION = "setup-revision";
  public static final String INTO = "into";
  public static final String SETUP = "setup";
  public static final String GEAR = "gear";

  private static final String LIGHT = "reading-of-";

  public KeepingForm {
    lights = List.copyOf(lights);
  }

  /** A light that can be chosen. */
  public record Chosen(String field, String name, boolean isChosen) {}

  /** All readings of a take, chosen until somebody says otherwise. */
  static KeepingForm of(
      LoggedTake take,
      String action,
      String csrfToken,
      int setupRevision,
      Optional<Refusal> again) {
    return new KeepingForm(
        action,
        csrfToken,
        setupRevision,
        take.document().readings().stream()
            .map(
                reading ->
                    new Chosen(
                        LIGHT + reading.light(),
                        TakeFields.name(reading.light()),
                        again.isEmpty() || again.get().chosen().contains(reading.light())))
            .toList(),
        again.isPresent(),
        again.map(Refusal::errors).orElseGet(FormErrors::none));
  }

  /** What was chosen, and what is wrong with it. */
  record Refusal(List<LightId> chosen, FormErrors errors) {}

  /** The lights that were chosen of a take. */
  static List<LightId> chosen(LoggedTake take, Predicate<String> isSent) {
    return take.document().readings().stream()
        .map(reading -> reading.light())
        .filter(light -> isSent.test(LIGHT + light))
        .toList();
  }

  /** What is wrong, in the words of the page where nothing was chosen. */
  static FormErrors nothingChosen(Wording words) {
    return FormErrors.of("", words.say("pages.takes.chooseReadings"));
  }
}
