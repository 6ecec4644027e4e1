package lampwright.tasks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lampwright.learning.drill.DrillKind;
import lampwright.people.Member;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.DrillAnswers;
import lampwright.store.Members;
import lampwright.store.StoredDrillAnswer;

/** Tells owners who can build what, and where people slip. */
public final class LearningReporting {

  private final Database database;

  public LearningReporting(Database database) {
    this.database = database;
  }

  /**
   * What there is to tell.
   *
   * @param members each with their way on every trail
   * @param kinds that somebody answered, where most goes wrong first
   * @param slips how often each was told, by the key of what was said, the most frequent first
   */
  public record Report(List<OfMember> members, List<OfKind> kinds, List<Slip> slips) {
    public Report {
      members = List.copyOf(members);
      kinds = List.copyOf(kinds);
      slips = List.copyOf(slips);
    }
  }

  /** One member. */
  public record OfMember(Member member, List<WalkedTrail> trails, int answered, int right) {
    public OfMember {
      trails = List.copyOf(trails);
    }
  }

  /** One kind of drill, over everybody. */
  public record OfKind(DrillKind kind, int answered, int right) {
    double shareRight() {
      return (double) right / answered;
    }
  }

  /** What was likely wrong, and how often. */
  public record Slip(DrillKind kind, String key, int times) {}

  /** The report, for owners only. */
  public Report report(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.SEE_LEARNING);
          List<KeptTrail> trails = TrailKeeping.all(in);
          List<OfMember> members = new ArrayList<>();
          List<StoredDrillAnswer> all = new ArrayList<>();
          for (Member member : new Members(in).list()) {
            List<StoredDrillAnswer> answers = new DrillAnswers(in).listOf(member.person().id());
            all.addAll(answers);
            members.add(
                new OfMember(
                    member,
                    TrailWalking.walked(in, trails, member.person().id()),
                    answers.size(),
                    (int) answers.stream().filter(StoredDrillAnswer::isRight).count()));
          }
          return new Report(members, kinds(all), slips(all));
        });
  }

  private static List<OfKind> kinds(List<StoredDrillAnswer> answers) {
    Map<DrillKind, OfKind> kinds = new EnumMap<>(DrillKind.class);
    for (StoredDrillAnswer answer : answers) {
      DrillKind.find(answer.kind())
          .ifPresent(
              kind ->
                  kinds.merge(
                      kind,
                      new OfKind(kind, 1, answer.isRight() ? 1 : 0),
                      (one, more) ->
                          new OfKind(kind, one.answered() + 1, one.right() + more.right())));
    }
    return kinds.values().stream().sorted(Comparator.comparingDouble(OfKind::shareRight)).toList();
  }

  private static List<Slip> slips(List<StoredDrillAnswer> answers) {
    Map<String, Slip> slips = new TreeMap<>();
    for (StoredDrillAnswer answer : answers) {
      Optional<DrillKind> kind = DrillKind.find(answer.kind());
      if (kind.isPresent() && answer.slip().isPresent()) {
        String key = answer.slip().get();
        slips.merge(
            kind.get().word() + " " + key,
            new Slip(kind.get(), key, 1),
            (one, _) -> new Slip(one.kind(), key, one.times() + 1));
      }
    }
    return slips.values().stream()
        .sorted(Comparator.comparingInt(Slip::times).reversed().thenComparing(Slip::key))
        .toList();
  }
}
