package lampwright.web.pages;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.drawing.MeteredLine;
import lampwright.setup.takes.Take;
import lampwright.tasks.LoggedTake;
import lampwright.wording.Wording;

/** Takes as the log of the day shows them. */
final class TakeCards {

  private final Wording words;

  TakeCards(Wording words) {
    this.words = words;
  }

  TakesPage.TakeCard card(
      LoggedTake take, Optional<TakesPage.Correction> correction, Optional<KeepingForm> keeping) {
    Take document = take.document();
    boolean isRunThrough = document.kind() == Take.Kind.RUN_THROUGH;
    return new TakesPage.TakeCard(
        place(take),
        label(document.kind(), take.number()),
        when(document.at()),
        isRunThrough && document.kept() == Take.Kept.UNDECIDED
            ? ""
            : switch (document.kept()) {
              case YES -> words.say("pages.takes.kept");
              case NO -> words.say("pages.takes.notKept");
              case UNDECIDED -> words.say("pages.takes.undecided");
            },
        document.kept() == Take.Kept.YES,
        document.why().orElse(""),
        document.changed().orElse(""),
        take.readings().stream().map(reading -> MeteredLine.of(reading, words)).toList(),
        correction,
        keeping);
  }

  /** Where it stands on its page. */
  static String place(LoggedTake take) {
    return "take-" + take.id();
  }

  String label(Take.Kind kind, int number) {
    return words.say(
        kind == Take.Kind.TAKE ? "pages.takes.takeNumber" : "pages.takes.runThroughNumber",
        String.valueOf(number));
  }

  /**
   * Where a take is corrected.
   *
   * @param typed what stands in its fields
   */
  static TakesPage.Correction correction(
      String action,
      String csrfToken,
      LoggedTake take,
      boolean mayWithdraw,
      TakeFields fields,
      UnaryOperator<String> typed,
      FormErrors errors) {
    return new TakesPage.Correction(
        action,
        csrfToken,
        take.revision(),
        typed.apply(TakeForm.WHY),
        fields.meters("-" + place(take), typed),
        mayWithdraw ? action + "/withdrawal" : "",
        !errors.isEmpty(),
        errors);
  }

  String when(OffsetDateTime at) {
    return new DayWords(words).timeAndDay(at.toLocalTime(), at.toLocalDate());
  }
}
