package lampwright.web.api;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampwright.language.Said;
import lampwright.learning.drill.Answer;
import lampwright.learning.drill.Drill;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.drill.Measure;
import lampwright.learning.drill.Repetition;
import lampwright.tasks.AskedDrill;
import lampwright.tasks.Drilling;
import lampwright.wording.LightNames;
import lampwright.wording.Wording;

/** Drills as the API tells them. */
final class DrillJson {

  private DrillJson() {}

  /**
   * A drill to be answered.
   *
   * @param question names what is asked, for the answer to name it
   * @param measure of the number that is asked for; absent where one of the options is
   */
  record Asked(
      String kind,
      SetupJson setup,
      int seed,
      String question,
      List<String> given,
      String asks,
      Optional<String> measure,
      List<String> options) {

    static Asked of(AskedDrill asked) {
      Drill drill = asked.drill();
      LightNames names = names(asked);
      return new Asked(
          drill.kind().word(),
          SetupJson.of(asked),
          asked.seed(),
          asked.fingerprint(),
          names.say(drill.given()),
          names.say(drill.question()),
          drill.answer() instanceof Answer.OfNumber number
              ? Optional.of(word(number.measure()))
              : Optional.empty(),
          drill.answer() instanceof Answer.OfChoice choice
              ? names.say(choice.options().stream().map(Answer.Option::text).toList())
              : List.of());
    }
  }

  /** The setup that a drill was made from. */
  record SetupJson(String id, int revision, String title) {
    static SetupJson of(AskedDrill asked) {
      return new SetupJson(
          asked.setup().id().text(), asked.setup().revision(), asked.setup().document().title());
    }
  }

  /**
   * What is to be said of an answer.
   *
   * @param slip what is likely wrong about it
   * @param answer the right one in words
   * @param number the right one where a number was asked for
   * @param option the place of the right one where one of several was
   */
  record Judged(
      boolean right,
      Optional<String> slip,
      String answer,
      Optional<Double> number,
      Optional<Integer> option,
      List<String> why,
      List<WorkingJson> workings) {

    static Judged of(Drilling.Judged judged) {
      Drill drill = judged.asked().drill();
      LightNames names = names(judged.asked());
      Optional<Said> slip =
          judged.verdict() instanceof Answer.Verdict.Wrong(Optional<Said> told)
              ? told
              : Optional.empty();
      return switch (drill.answer()) {
        case Answer.OfNumber number ->
            new Judged(
                judged.verdict() instanceof Answer.Verdict.Right,
                slip.map(names::say),
                names.say(number.measure().inWords(number.value())),
                Optional.of(number.value()),
                Optional.empty(),
                names.say(drill.why()),
                WorkingJson.list(drill.workings()));
        case Answer.OfChoice choice ->
            new Judged(
                judged.verdict() instanceof Answer.Verdict.Right,
                slip.map(names::say),
                names.say(choice.options().get(choice.right()).text()),
                Optional.empty(),
                Optional.of(choice.right()),
                names.say(drill.why()),
                WorkingJson.list(drill.workings()));
      };
    }
  }

  /**
   * How far somebody is.
   *
   * @param next the kind to ask next
   */
  record Progress(List<Kind> kinds, String next) {
    static Progress of(Drilling.Progress progress) {
      return new Progress(
          Arrays.stream(DrillKind.values()).map(kind -> Kind.of(kind, progress.byKind())).toList(),
          progress.next().word());
    }
  }

  /**
   * One kind of drill.
   *
   * @param box from 0 to 4; absent where it was never answered, as is when it is due
   */
  record Kind(String kind, int answered, int right, Optional<Integer> box, Optional<Instant> due) {

    static Kind of(DrillKind kind, Map<DrillKind, Repetition> byKind) {
      Optional<Repetition> so = Optional.ofNullable(byKind.get(kind));
      return new Kind(
          kind.word(),
          so.map(Repetition::answered).orElse(0),
          so.map(Repetition::right).orElse(0),
          so.map(Repetition::box),
          so.map(Repetition::due));
    }
  }

  private static LightNames names(AskedDrill asked) {
    return new LightNames(asked.setup().document(), new Wording(InEnglish.NOTATION));
  }

  private static String word(Measure measure) {
    return measure.name().toLowerCase(Locale.ROOT);
  }
}
