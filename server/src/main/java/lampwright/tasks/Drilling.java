package lampwright.tasks;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import lampwright.engine.unit.Bounds;
import lampwright.gear.Kit;
import lampwright.gear.KitId;
import lampwright.language.Said;
import lampwright.learning.drill.Answer;
import lampwright.learning.drill.Drill;
import lampwright.learning.drill.DrillKind;
import lampwright.learning.drill.Drills;
import lampwright.learning.drill.Material;
import lampwright.learning.drill.Measure;
import lampwright.learning.drill.Repetition;
import lampwright.people.StudioId;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.store.Database;
import lampwright.store.DrillAnswers;
import lampwright.store.Kits;
import lampwright.store.Setups;
import lampwright.store.StoredDrillAnswer;
import lampwright.store.StoredKit;
import lampwright.store.StudioTransaction;

/** Asks members drills that are made from what the studio has, and keeps what they answer. */
public final class Drilling {

  /** Seeds have at most nine digits, so that every program writes them plainly. */
  public static final int LARGEST_SEED = 999_999_999;

  /** So many setups are tried before the studio counts as having nothing for a kind. */
  private static final int MOST_TRIED = 24;

  /** More kits than this are not looked through. */
  private static final int MOST_KITS = 50;

  private final Database database;
  private final RandomGenerator random;
  private final Clock clock;

  /**
   * @param random where a drill's seed comes from that nobody names
   */
  public Drilling(Database database, RandomGenerator random, Clock clock) {
    this.database = database;
    this.random = random;
    this.clock = clock;
  }

  /**
   * Which drill is wished.
   *
   * @param kind the one that is due, where absent
   * @param setup one of the studio's proven ones, where absent
   * @param seed any, where absent
   */
  public record Wish(Optional<DrillKind> kind, Optional<SetupId> setup, Optional<Integer> seed) {}

  /** An answer. */
  public sealed interface Given {

    /** To a drill that asks for one. */
    record OfNumber(double value) implements Given {}

    /**
     * To a drill that has several to choose from.
     *
     * @param place of the option, from 0
     */
    record OfOption(int place) implements Given {}
  }

  /** A drill that was answered, and what is to be said of it. */
  public record Judged(AskedDrill asked, Given given, Answer.Verdict verdict) {}

  /**
   * How far a member is.
   *
   * @param byKind those that they answered
   * @param next the kind that is to be asked next
   */
  public record Progress(Map<DrillKind, Repetition> byKind, DrillKind next, Instant now) {}

  /**
   * Asks a drill.
   *
   * @throws Refused NotFound where the member sees no such setup, Clash where the studio has
   *     nothing that such a drill could be made from
   */
  public AskedDrill ask(Caller caller, StudioId studio, Wish wish) {
    int seed = wish.seed().orElseGet(() -> random.nextInt(LARGEST_SEED + 1));
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight sight = Sight.ask(in);
          DrillKind kind = wish.kind().orElseGet(() -> progress(in, caller).next());
          return wish.setup()
              .map(id -> make(in, kind, Cataloguing.get(in, sight, id), seed))
              .orElseGet(() -> fromAny(in, sight, kind, seed))
              .orElseThrow(() -> nothingFor(kind));
        });
  }

  private static Refused nothingFor(DrillKind kind) {
    return new Refused(
        new Refusal.Clash(
            "No setup tells enough for a drill of the kind %s. Ask for another kind or setup."
                .formatted(kind.word())));
  }

  /** The setups that are proven, each for the same seed in the same order. */
  private static Optional<AskedDrill> fromAny(
      StudioTransaction in, Sight sight, DrillKind kind, int seed) {
    List<SetupId> proven =
        new Setups(in)
            .revisions(Set.of(Standing.PROVEN)).keySet().stream()
                .sorted(Comparator.comparing(SetupId::text))
                .toList();
    int size = proven.size();
    return Stream.iterate(0, i -> i < Math.min(size, MOST_TRIED), i -> i + 1)
        .map(i -> proven.get((int) ((seed + (long) i * 7919) % size)))
        .map(id -> make(in, kind, Cataloguing.get(in, sight, id), seed))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<AskedDrill> make(
      StudioTransaction in, DrillKind kind, Catalogued setup, int seed) {
    SetupDocument document = setup.document();
    return Drills.make(kind, Material.of(document, kit(in, seed)), seed)
        .map(drill -> new AskedDrill(drill, setup, seed));
  }

  /** One of the studio's kits, by the seed. */
  private static Optional<Kit> kit(StudioTransaction in, int seed) {
    List<KitId> kits =
        new Kits(in)
            .list(Optional.empty(), MOST_KITS).items().stream()
                .map(StoredKit::id)
                .sorted(Comparator.comparing(KitId::text))
                .toList();
    return kits.isEmpty()
        ? Optional.empty()
        : KitKeeping.find(in, kits.get(seed % kits.size())).map(KeptKit::document);
  }

  /**
   * An answer to a question.
   *
   * @param fingerprint of the question
   */
  public record Answered(
      DrillKind kind, SetupId setup, int seed, String fingerprint, Given given) {}

  /**
   * Judges an answer and keeps it.
   *
   * @throws Refused Clash where the setup or the kits have changed so that the question is another
   *     now, Invalid at {@code /number} or {@code /option} for what is no answer to it
   */
  public Judged answer(Caller caller, StudioId studio, Answered answered) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Judged judged = judge(in, answered);
          new DrillAnswers(in)
              .add(
                  new DrillAnswers.Given(
                      answered.kind().word(),
                      answered.setup(),
                      judged.asked().setup().revision(),
                      answered.seed(),
                      written(answered.given()),
                      judged.verdict() instanceof Answer.Verdict.Right,
                      slip(judged.verdict()).map(Said::key)));
          return judged;
        });
  }

  /** What is to be said of an answer, which is not kept: to show it again. */
  public Judged judge(Caller caller, StudioId studio, Answered answered) {
    return database.inStudio(studio, caller.asker(), in -> judge(in, answered));
  }

  private static Judged judge(StudioTransaction in, Answered answered) {
    Catalogued setup = Cataloguing.get(in, Sight.ask(in), answered.setup());
    AskedDrill asked =
        make(in, answered.kind(), setup, answered.seed())
            .filter(made -> made.fingerprint().equals(answered.fingerprint()))
            .orElseThrow(Drilling::changed);
    return new Judged(asked, answered.given(), judge(asked.drill(), answered.given()));
  }

  private static Refused changed() {
    return new Refused(
        new Refusal.Clash(
            "The setup or the kit has changed since this was asked. Ask for a new drill."));
  }

  private static Answer.Verdict judge(Drill drill, Given given) {
    return switch (drill.answer()) {
      case Answer.OfNumber number -> number.judge(number(number.measure(), given));
      case Answer.OfChoice choice -> choice.judge(option(choice, given));
    };
  }

  private static double number(Measure measure, Given given) {
    if (!(given instanceof Given.OfNumber(double value))) {
      throw Refused.invalid("/number", "Number is missing: this drill asks for one.");
    }
    if (!(value >= measure.lowest() && value <= measure.highest())) {
      throw Refused.invalid(
          "/number",
          "Number (%s) must be from %s to %s."
              .formatted(
                  Bounds.plain(value),
                  Bounds.plain(measure.lowest()),
                  Bounds.plain(measure.highest())));
    }
    return value;
  }

  private static int option(Answer.OfChoice choice, Given given) {
    if (!(given instanceof Given.OfOption(int place))) {
      throw Refused.invalid("/option", "Option is missing: this drill has some to choose from.");
    }
    if (place >= choice.options().size()) {
      throw Refused.invalid(
          "/option",
          "Option (%d) must be from 0 to %d.".formatted(place, choice.options().size() - 1));
    }
    return place;
  }

  private static String written(Given given) {
    return switch (given) {
      case Given.OfNumber(double value) -> Bounds.plain(value);
      case Given.OfOption(int place) -> "option " + place;
    };
  }

  private static Optional<Said> slip(Answer.Verdict verdict) {
    return verdict instanceof Answer.Verdict.Wrong(Optional<Said> slip) ? slip : Optional.empty();
  }

  /** How far the caller is. */
  public Progress progress(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Sight.ask(in);
          return progress(in, caller);
        });
  }

  private Progress progress(StudioTransaction in, Caller caller) {
    Instant now = clock.instant();
    Map<DrillKind, Repetition> byKind = Repetition.of(answers(in, caller));
    return new Progress(byKind, next(byKind, now), now);
  }

  private static List<Repetition.Answered> answers(StudioTransaction in, Caller caller) {
    List<Repetition.Answered> answers = new ArrayList<>();
    for (StoredDrillAnswer stored : new DrillAnswers(in).listOf(caller.person().id())) {
      DrillKind.find(stored.kind())
          .ifPresent(
              kind -> answers.add(new Repetition.Answered(kind, stored.isRight(), stored.at())));
    }
    return answers;
  }

  /** What is due longest; else the first that was never asked; else what is due soonest. */
  private static DrillKind next(Map<DrillKind, Repetition> byKind, Instant now) {
    Optional<Map.Entry<DrillKind, Repetition>> soonest =
        byKind.entrySet().stream().min(Comparator.comparing(entry -> entry.getValue().due()));
    return soonest
        .filter(entry -> entry.getValue().isDue(now))
        .map(Map.Entry::getKey)
        .or(
            () ->
                Arrays.stream(DrillKind.values())
                    .filter(kind -> !byKind.containsKey(kind))
                    .findFirst())
        .or(() -> soonest.map(Map.Entry::getKey))
        .orElseThrow();
  }
}
