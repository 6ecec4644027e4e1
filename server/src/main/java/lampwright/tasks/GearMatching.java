package lampwright.tasks;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampwright.gear.exchange.FileLine;
import lampwright.gear.exchange.LineFault;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.tasks.GearImport.Outcome;

/** Finds the gear that each line of a file means. Belongs to one import, one thread. */
final class GearMatching {

  private final Map<GearId, KeptGear> byId;
  private final Map<List<Object>, List<KeptGear>> byName;
  private final Set<GearId> taken = new HashSet<>();
  private final Map<List<Object>, Integer> begun = new HashMap<>();

  GearMatching(List<KeptGear> gear) {
    byId = gear.stream().collect(Collectors.toMap(KeptGear::id, Function.identity()));
    byName = gear.stream().collect(Collectors.groupingBy(kept -> called(kept.document())));
  }

  private static List<Object> called(GearItem item) {
    return List.of(item.kind(), item.name());
  }

  /**
   * A line with what it means.
   *
   * @param gear what it changes, or is the same as
   * @param item what it says; absent for a faulty line
   */
  record Matched(GearImport.Line line, Optional<KeptGear> gear, Optional<GearItem> item) {}

  Matched match(FileLine line) {
    return switch (line) {
      case FileLine.Faulty(int number, List<LineFault> faults) ->
          new Matched(
              new GearImport.Line(
                  number, Outcome.FAULTY, Optional.empty(), Optional.empty(), faults),
              Optional.empty(),
              Optional.empty());
      case FileLine.Sound sound ->
          sound.id().isPresent() ? byId(sound, sound.id().get()) : byName(sound);
    };
  }

  private Matched byId(FileLine.Sound line, GearId id) {
    KeptGear gear = byId.get(id);
    if (gear == null) {
      return faulty(
          line,
          "",
          "Id (\"%s\") is none of this studio's gear. Leave it out for new gear.".formatted(id));
    }
    if (gear.document().kind() != line.item().kind()) {
      return faulty(
          line,
          "/kind",
          "Kind (\"%s\") must stay \"%s\". Leave the id out for new gear."
              .formatted(line.item().kind().word(), gear.document().kind().word()));
    }
    return known(line, gear);
  }

  private Matched byName(FileLine.Sound line) {
    List<Object> called = called(line.item());
    List<KeptGear> candidates = byName.getOrDefault(called, List.of());
    if (candidates.size() > 1) {
      return faulty(
          line,
          "",
          "The studio has %d of this kind and name. Give the id of the one that is meant."
              .formatted(candidates.size()));
    }
    if (candidates.size() == 1) {
      return known(line, candidates.getFirst());
    }
    Integer before = begun.putIfAbsent(called, line.number());
    return before == null
        ? matched(line, Outcome.NEW, Optional.empty())
        : faulty(line, "", "Number %d is of the same kind and name already.".formatted(before));
  }

  private Matched known(FileLine.Sound line, KeptGear gear) {
    if (!taken.add(gear.id())) {
      return faulty(line, "", "The gear \"%s\" stands in the file twice.".formatted(gear.id()));
    }
    boolean same = gear.document().equals(line.item());
    return matched(line, same ? Outcome.SAME : Outcome.CHANGED, Optional.of(gear));
  }

  private static Matched matched(FileLine.Sound line, Outcome outcome, Optional<KeptGear> gear) {
    return new Matched(
        new GearImport.Line(
            line.number(),
            outcome,
            gear.map(KeptGear::id),
            Optional.of(line.item().name()),
            List.of()),
        gear,
        Optional.of(line.item()));
  }

  private static Matched faulty(FileLine.Sound line, String pointer, String message) {
    return new Matched(
        new GearImport.Line(
            line.number(),
            Outcome.FAULTY,
            Optional.empty(),
            Optional.of(line.item().name()),
            List.of(new LineFault(Optional.empty(), pointer, message))),
        Optional.empty(),
        Optional.empty());
  }
}
