package lampwright.web.pages;

import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lampwright.drawing.StopRuler;
import lampwright.setup.takes.ComparedReading;
import lampwright.setup.takes.Take;
import lampwright.tasks.LoggedTake;
import lampwright.wording.Deviation;
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
        take.readings().stream().map(this::line).toList(),
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

  private TakesPage.ReadingLine line(ComparedReading of) {
    String name = TakeFields.name(of.reading().light());
    StopRuler ruler =
        StopRuler.of(name, words.notation())
            .withNames(words.say("pages.takes.isMetered"), words.say("pages.takes.isExpected"));
    ruler = of.metered().map(at -> at.fromShooting().value()).map(ruler::withDot).orElse(ruler);
    ruler = of.expected().map(at -> at.fromShooting().value()).map(ruler::withBar).orElse(ruler);
    ruler = of.uncertainty().map(stops -> stops.value()).map(ruler::withBand).orElse(ruler);
    return new TakesPage.ReadingLine(
        name,
        words.reading(of.reading().meter().fNumber()),
        of.expected().map(level -> words.reading(level.reading())).orElseGet(words::notKnown),
        of.uncertainty().map(words::giveOrTake).orElse(""),
        of.over().map(over -> Deviation.of(over, words)),
        ruler.svg(),
        of.over().isPresent() && of.remedy().isEmpty() ? "" : words.say(of.sentence()));
  }

  String when(OffsetDateTime at) {
    return new DayWords(words).timeAndDay(at.toLocalTime(), at.toLocalDate());
  }
}
