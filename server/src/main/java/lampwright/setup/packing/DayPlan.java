package lampwright.setup.packing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.setup.SetupDocument;

/**
 * Who does what when, so that each setup stands ready before its light.
 *
 * <p>Setups are built, shot and struck one after the other, all hands together; each build and each
 * strike is as short as the search finds it, and begins as late as the light allows. What could be
 * won by building the next setup with gear that the one before does not need is not looked for.
 *
 * @param stages in order, minutes counted from the start of the first
 * @param begins the first stage; absent where no setup has a wanted light
 * @param shortfalls what cannot be done in time
 */
public record DayPlan(
    List<Stage> stages, int hands, Optional<Instant> begins, List<Shortfall> shortfalls) {

  /**
   * A setup that does not stand ready before its light.
   *
   * @param setup its place in the order of the day, from 0
   * @param minutes by which it is late
   * @param enoughHands the fewest hands with which it would be in time; absent where more hands do
   *     not help, and beginning so many minutes sooner, or waiting for less, is what is left
   */
  public record Shortfall(int setup, int minutes, Optional<Integer> enoughHands) {}

  public DayPlan {
    stages = List.copyOf(stages);
    shortfalls = List.copyOf(shortfalls);
  }

  /** Plans a day; a setup that has no wanted light comes right before what follows it. */
  public static DayPlan of(List<SetupDocument> setups, DayWishes wishes) {
    DayPlan plan = laid(setups, wishes);
    if (plan.shortfalls().isEmpty()) {
      return plan;
    }
    List<DayPlan> withMore =
        IntStream.rangeClosed(wishes.hands() + 1, DayWishes.MOST_HANDS)
            .mapToObj(hands -> laid(setups, wishes.withHands(hands)))
            .toList();
    return new DayPlan(
        plan.stages(),
        plan.hands(),
        plan.begins(),
        plan.shortfalls().stream().map(late -> helped(late, withMore)).toList());
  }

  private static Shortfall helped(Shortfall late, List<DayPlan> withMore) {
    return new Shortfall(
        late.setup(),
        late.minutes(),
        withMore.stream()
            .filter(plan -> plan.shortfalls().stream().noneMatch(s -> s.setup() == late.setup()))
            .map(DayPlan::hands)
            .findFirst());
  }

  /** Lays the stages backward from the last. */
  private static DayPlan laid(List<SetupDocument> setups, DayWishes wishes) {
    Staging staging = new Staging(wishes.times(), wishes.hands());
    Optional<Instant> zero = wishes.wanted().stream().flatMap(Optional::stream).findFirst();
    List<Stage> laid = new ArrayList<>();
    List<Shortfall> shortfalls = new ArrayList<>();
    Optional<Integer> next = Optional.empty();
    for (int i = setups.size() - 1; i >= 0; i--) {
      Stage build = staging.build(i, setups.get(i));
      Stage shoot = staging.shoot(i, setups.get(i));
      Stage strike = staging.strike(i, setups.get(i));
      boolean isLast = i == setups.size() - 1;
      int after = shoot.minutes() + strike.minutes() + (isLast ? 0 : wishes.times().move());
      Optional<Integer> following = next;
      Optional<Integer> wanted = minute(wishes, i, zero);
      int shot = wanted.or(() -> before(following, after)).orElse(0);
      int free = next.map(begins -> begins - shot - after).orElse(0);
      if (free < 0) {
        shortfalls.addFirst(new Shortfall(i + 1, -free, Optional.empty()));
      }
      int reserve = wanted.isPresent() ? wishes.times().reserve() : 0;
      int built = shot - reserve - build.minutes();
      List<Stage> own = new ArrayList<>();
      own.add(build.shifted(built));
      own.add(shoot.shifted(shot));
      own.add(strike.shifted(shot + shoot.minutes()));
      if (!isLast) {
        own.add(staging.move(i).shifted(shot + shoot.minutes() + strike.minutes()));
      }
      laid.addAll(0, own);
      next = Optional.of(built);
    }
    int first = laid.getFirst().from();
    Optional<Instant> begins = zero.map(at -> at.plus(Duration.ofMinutes(first)));
    begins.flatMap(at -> lateStart(wishes, at)).ifPresent(shortfalls::addFirst);
    return new DayPlan(
        laid.stream().map(stage -> stage.shifted(stage.from() - first)).toList(),
        wishes.hands(),
        begins,
        shortfalls);
  }

  private static Optional<Integer> before(Optional<Integer> begins, int after) {
    return begins.map(at -> at - after);
  }

  /** The wanted light in minutes from the first that is wanted, rounded down to be there sooner. */
  private static Optional<Integer> minute(DayWishes wishes, int setup, Optional<Instant> zero) {
    return wishes
        .wanted()
        .get(setup)
        .flatMap(at -> zero.map(from -> Math.floorDiv(Duration.between(from, at).toSeconds(), 60)))
        .map(Long::intValue);
  }

  private static Optional<Shortfall> lateStart(DayWishes wishes, Instant begins) {
    return wishes
        .notBefore()
        .filter(begins::isBefore)
        .map(
            there ->
                new Shortfall(
                    0,
                    (int) ((Duration.between(begins, there).toSeconds() + 59) / 60),
                    Optional.empty()));
  }

  /** When a minute of the day is by the clock; absent where no setup has a wanted light. */
  public Optional<Instant> at(int minute) {
    return begins.map(start -> start.plus(Duration.ofMinutes(minute)));
  }

  /** Whether no build or strike of the day can be shorter with these hands. */
  public boolean isShortest() {
    return stages.stream().allMatch(Stage::isShortest);
  }
}
