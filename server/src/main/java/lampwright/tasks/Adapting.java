package lampwright.tasks;

import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import lampwright.gear.Kit;
import lampwright.gear.KitId;
import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.setup.MapQuestion;
import lampwright.setup.SetupDocument;
import lampwright.setup.SetupId;
import lampwright.setup.adapting.AdaptationSearch;
import lampwright.setup.adapting.Answer;
import lampwright.setup.adapting.Patience;
import lampwright.setup.adapting.Wishes;
import lampwright.setup.figures.Figures;
import lampwright.setup.figures.FiguresComputation;
import lampwright.setup.figures.SetupMap;
import lampwright.store.Database;
import lampwright.store.StudioTransaction;

/**
 * Computes: a setup's figures, its reading map, and the setup made with another kit. Stores
 * nothing.
 */
public final class Adapting {

  /** Most searches take milliseconds; a kit of hundreds of pieces may need to be cut short. */
  private static final Duration LONGEST_SEARCH = Duration.ofSeconds(2);

  /** All that is tried out together, to say what would help. */
  private static final Duration LONGEST_TRIALS = Duration.ofSeconds(1);

  /** A search and its writing down; more would keep people waiting. */
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(5);

  private final Database database;

  /** The search is nothing but computing: more at a time than cores would make all slower. */
  private final Turns turns =
      new Turns(Runtime.getRuntime().availableProcessors(), LONGEST_WAIT, LONGEST_WAIT);

  public Adapting(Database database) {
    this.database = database;
  }

  /** A stored setup beside a stored kit, and what came of it. */
  public record Adapted(Catalogued setup, KeptKit kit, Answer answer) {}

  private record Both(Catalogued setup, KeptKit kit) {}

  /**
   * Recomputes a stored setup for a stored kit.
   *
   * @param kit the kit's id
   * @throws Refused Invalid at {@code /kit} where the studio has no such kit
   */
  public Adapted adapt(Caller caller, StudioId studio, SetupId setup, String kit, Wishes wishes) {
    Both both =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              return new Both(Cataloguing.get(in, Sight.ask(in), setup), kit(in, kit));
            });
    // Outside of the transaction: computing must not hold a connection.
    return new Adapted(
        both.setup(), both.kit(), adapt(both.setup().document(), both.kit().document(), wishes));
  }

  /** Recomputes a document of the caller's own for a kit of their own. */
  public Answer adapt(Caller caller, StudioId studio, SetupDocument setup, Kit kit, Wishes wishes) {
    mustBelong(caller, studio);
    return adapt(setup, kit, wishes);
  }

  private Answer adapt(SetupDocument setup, Kit kit, Wishes wishes) {
    return inPlace(() -> AdaptationSearch.adapt(setup, kit, wishes, patience()));
  }

  /** A stored setup's levels over a plane. */
  public SetupMap map(Caller caller, StudioId studio, SetupId setup, MapQuestion question) {
    Catalogued stored =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              return Cataloguing.get(in, Sight.ask(in), setup);
            });
    return inPlace(() -> SetupMap.of(stored.document(), question));
  }

  /** The levels over a plane of a document of the caller's own. */
  public SetupMap map(Caller caller, StudioId studio, SetupDocument setup, MapQuestion question) {
    mustBelong(caller, studio);
    return inPlace(() -> SetupMap.of(setup, question));
  }

  private static Patience patience() {
    return new Patience(limit(LONGEST_SEARCH), () -> limit(LONGEST_TRIALS));
  }

  private static BooleanSupplier limit(Duration longest) {
    long start = System.nanoTime();
    return () -> System.nanoTime() - start > longest.toNanos();
  }

  /** Computes what takes long, when it is its turn. */
  private <T> T inPlace(Supplier<T> work) {
    try (var _ = turns.take()) {
      return work.get();
    }
  }

  /** The figures of a document of the caller's own. */
  public Figures figures(Caller caller, StudioId studio, SetupDocument setup) {
    mustBelong(caller, studio);
    return FiguresComputation.of(setup);
  }

  static KeptKit kit(StudioTransaction in, String id) {
    Optional<KeptKit> found = Ids.isId(id) ? KitKeeping.find(in, new KitId(id)) : Optional.empty();
    return found.orElseThrow(
        () -> Refused.invalid("/kit", "Kit must be the id of one of the studio's kits."));
  }

  private void mustBelong(Caller caller, StudioId studio) {
    database.inStudio(studio, caller.asker(), in -> Leave.ask(in, Permission.READ_SETUPS));
  }
}
