package lampwright.tasks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Problem;
import lampwright.gear.exchange.FileLine;
import lampwright.gear.exchange.GearFile;
import lampwright.gear.exchange.LineFault;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.Gear;
import lampwright.store.StudioTransaction;
import lampwright.tasks.GearImport.Outcome;

/** Takes a file of gear in: all of it or nothing, and on trial nothing. */
public final class GearImporting {

  private static final int MOST_PROBLEMS = 50;

  private final Database database;
  private final Ids ids;

  public GearImporting(Database database, Ids ids) {
    this.database = database;
    this.ids = ids;
  }

  /**
   * Takes it in, or says what that would do.
   *
   * @throws Refused Invalid for a file that is none, and where it is no trial for a line that is
   *     wrong; Clash where kits or the studio's room forbid it
   */
  public GearImport take(
      Caller caller, StudioId studio, GearFile file, boolean trial, Message message) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.WRITE_KITS);
          List<FileLine> lines = lines(file);
          Gear gear = new Gear(in);
          gear.holdKitsAndGear();
          GearMatching matching =
              new GearMatching(GearKeeping.readable(in, gear.listAll(Optional.empty())));
          List<GearMatching.Matched> matched = lines.stream().map(matching::match).toList();
          Optional<String> clash = clash(in, matched);
          if (trial) {
            return new GearImport(
                true, matched.stream().map(GearMatching.Matched::line).toList(), clash);
          }
          mustBeSound(matched);
          if (clash.isPresent()) {
            throw new Refused(new Refusal.Clash(clash.get()));
          }
          return new GearImport(false, keep(in, matched, message), Optional.empty());
        });
  }

  private static List<FileLine> lines(GearFile file) {
    return switch (file) {
      case GearFile.Lines(List<FileLine> lines) -> lines;
      case GearFile.Unreadable(int line, LineFault fault) ->
          throw Refused.invalid(List.of(problem(line, fault)));
    };
  }

  /** Each place once, whatever the file was: its number in it, then the place in the document. */
  private static Problem problem(int line, LineFault fault) {
    String column = fault.column().map(", column %d"::formatted).orElse("");
    return new Problem(
        "/%d%s".formatted(line, fault.pointer()),
        "Number %d%s: %s".formatted(line, column, fault.message()));
  }

  private static void mustBeSound(List<GearMatching.Matched> matched) {
    List<Problem> problems =
        matched.stream()
            .map(GearMatching.Matched::line)
            .flatMap(line -> line.faults().stream().map(fault -> problem(line.number(), fault)))
            .limit(MOST_PROBLEMS)
            .toList();
    if (!problems.isEmpty()) {
      throw Refused.invalid(problems);
    }
  }

  private static Optional<String> clash(StudioTransaction in, List<GearMatching.Matched> matched) {
    long more = matched.stream().filter(m -> m.line().outcome() == Outcome.NEW).count();
    try {
      GearKeeping.mustHaveRoom(new Gear(in).count() + (int) more);
      Map<GearId, GearItem> changed = changed(matched);
      KitsOfGear.of(in, changed.keySet()).mustStayWhole(changed);
      return Optional.empty();
    } catch (Refused refused) {
      if (refused.refusal() instanceof Refusal.Clash(String what)) {
        return Optional.of(what);
      }
      throw refused;
    }
  }

  private static Map<GearId, GearItem> changed(List<GearMatching.Matched> matched) {
    Map<GearId, GearItem> changed = new HashMap<>();
    for (GearMatching.Matched one : matched) {
      if (one.line().outcome() == Outcome.CHANGED) {
        changed.put(one.gear().orElseThrow().id(), one.item().orElseThrow());
      }
    }
    return changed;
  }

  private List<GearImport.Line> keep(
      StudioTransaction in, List<GearMatching.Matched> matched, Message message) {
    Map<GearId, GearItem> changed = changed(matched);
    KitsOfGear kits = KitsOfGear.of(in, changed.keySet());
    List<GearImport.Line> lines = new ArrayList<>();
    for (GearMatching.Matched one : matched) {
      lines.add(keep(new Gear(in), one, message));
    }
    kits.follow(changed);
    return lines;
  }

  private GearImport.Line keep(Gear gear, GearMatching.Matched one, Message message) {
    GearItem item = one.item().orElseThrow();
    String json = StoredDocuments.print(GearItem.FORM, item);
    return switch (one.line().outcome()) {
      case NEW -> {
        GearId id = new GearId(ids.next());
        gear.create(id, item.name(), json, message.text());
        yield new GearImport.Line(
            one.line().number(), Outcome.NEW, Optional.of(id), one.line().name(), List.of());
      }
      case CHANGED -> {
        KeptGear before = one.gear().orElseThrow();
        Cataloguing.mustBeSaved(
            gear.replace(before.id(), before.revision(), item.name(), json, message.text()));
        yield one.line();
      }
      case SAME, FAULTY -> one.line();
    };
  }
}
