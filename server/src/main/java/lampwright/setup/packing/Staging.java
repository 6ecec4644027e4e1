package lampwright.setup.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lampwright.engine.schedule.Jobs;
import lampwright.engine.schedule.Schedule;
import lampwright.engine.schedule.ScheduleSearch;
import lampwright.engine.unit.Seconds;
import lampwright.setup.LightId;
import lampwright.setup.Plan;
import lampwright.setup.SetupDocument;

/** Makes the stages of a day for so many hands, each as short as the search finds it. */
record Staging(WorkTimes times, int hands) {

  /** More would keep a person waiting; what is left open is told. */
  private static final int MOST_STEPS = 40_000;

  Stage build(int setup, SetupDocument document) {
    return scheduled(setup, Stage.Kind.BUILD, Errands.toBuild(document, times, hands));
  }

  Stage strike(int setup, SetupDocument document) {
    return scheduled(setup, Stage.Kind.STRIKE, Errands.toStrike(document, times, hands));
  }

  Stage shoot(int setup, SetupDocument document) {
    return together(setup, Stage.Kind.SHOOT, Work.SHOOT, shootMinutes(document));
  }

  Stage move(int setup) {
    return together(setup, Stage.Kind.MOVE, Work.MOVE, times.move());
  }

  /** The frames that are planned at their pace, where the setup states both. */
  private int shootMinutes(SetupDocument document) {
    Optional<Integer> frames = document.plan().flatMap(Plan::frames);
    Optional<Seconds> between = document.plan().flatMap(Plan::betweenFrames);
    return frames.isPresent() && between.isPresent()
        ? Math.max(1, (int) Math.ceil(frames.get() * between.get().value() / 60))
        : times.shoot();
  }

  private Stage together(int setup, Stage.Kind kind, Work work, int minutes) {
    Errand errand =
        new Errand(work, Optional.empty(), Optional.empty(), minutes, hands, false, List.of());
    List<Integer> all = IntStream.rangeClosed(1, hands).boxed().toList();
    return new Stage(setup, kind, 0, minutes, minutes, List.of(new Stint(errand, 0, all)));
  }

  private Stage scheduled(int setup, Stage.Kind kind, List<Errand> errands) {
    Jobs jobs = new Jobs(errands.stream().map(Errand::job).toList(), hands);
    Schedule schedule = ScheduleSearch.shortest(jobs, MOST_STEPS);
    return new Stage(
        setup, kind, 0, schedule.minutes(), schedule.atLeast(), sent(errands, schedule));
  }

  /** Sends those who are free, first whoever was with the same light last, then the idlest. */
  private List<Stint> sent(List<Errand> errands, Schedule schedule) {
    List<Integer> byStart =
        IntStream.range(0, errands.size())
            .boxed()
            .sorted(Comparator.comparing((Integer i) -> schedule.starts().get(i)))
            .toList();
    List<Hand> crew = new ArrayList<>();
    IntStream.rangeClosed(1, hands).forEach(number -> crew.add(new Hand(number)));
    List<Stint> stints = new ArrayList<>();
    for (int i : byStart) {
      Errand errand = errands.get(i);
      int from = schedule.starts().get(i);
      List<Hand> chosen =
          crew.stream()
              .filter(hand -> hand.freeFrom <= from)
              .sorted(
                  Comparator.comparing((Hand hand) -> !hand.wasWith(errand.light()))
                      .thenComparingInt(hand -> -hand.freeFrom)
                      .thenComparingInt(hand -> hand.number))
              .limit(errand.hands())
              .toList();
      chosen.forEach(hand -> hand.goes(from + errand.minutes(), errand.light()));
      stints.add(
          new Stint(errand, from, chosen.stream().map(hand -> hand.number).sorted().toList()));
    }
    return stints;
  }

  /** One of the crew while the errands are given out. */
  private static final class Hand {
    private final int number;
    private int freeFrom;
    private Optional<LightId> light = Optional.empty();

    Hand(int number) {
      this.number = number;
    }

    boolean wasWith(Optional<LightId> other) {
      return other.isPresent() && other.equals(light);
    }

    void goes(int until, Optional<LightId> to) {
      freeFrom = until;
      light = to;
    }
  }
}
