package lampwright.tasks;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import lampwright.meaning.Sentences;
import lampwright.people.Permission;
import lampwright.people.StudioId;
import lampwright.search.Follower;
import lampwright.search.FollowerState;
import lampwright.search.IndexRebuild;
import lampwright.search.SetupIndex;
import lampwright.store.Database;
import lampwright.store.Setups;

/**
 * What an owner can know of this server's search index, and have done: it is made anew as a whole,
 * for all studios, while searches go on from the one that is there.
 */
public final class IndexKeeping {

  private final Database database;
  private final SetupIndex index;
  private final Follower follower;
  private final Optional<Sentences> sentences;
  private final Clock clock;

  /**
   * @param sentences the model of meanings; empty where the server runs without one
   * @param clock says when a rebuild ended
   */
  public IndexKeeping(
      Database database,
      SetupIndex index,
      Follower follower,
      Optional<Sentences> sentences,
      Clock clock) {
    this.database = database;
    this.index = index;
    this.follower = follower;
    this.sentences = sentences;
    this.clock = clock;
  }

  /** How the index stands to the database. */
  public enum State {
    CURRENT,
    BEHIND,
    REBUILDING,
    FAILED
  }

  /** Whether searches go by what texts mean, too. */
  public enum ByMeaning {
    YES,
    LOADING,
    NO_MODEL,
    TURNED_OFF
  }

  /**
   * How the index stands.
   *
   * @param setups of the studio in the database
   * @param indexed of the studio in the index
   * @param lag for how long it may have lacked a change
   * @param rebuild being made now
   * @param last that was made since the server started
   */
  public record Told(
      int setups,
      int indexed,
      State state,
      Duration lag,
      ByMeaning byMeaning,
      Optional<IndexRebuild> rebuild,
      Optional<Ended> last) {}

  /** A rebuild that is over. */
  public record Ended(IndexRebuild.Ending ending, long setups, Duration took, Instant at) {}

  /** How it stands now. */
  public Told get(Caller caller, StudioId studio) {
    int setups =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Leave.ask(in, Permission.KEEP_INDEX);
              return new Setups(in).count();
            });
    return new Told(
        setups,
        index.count(studio.text()),
        switch (follower.state()) {
          case FollowerState.Ready _ -> State.CURRENT;
          case FollowerState.Behind _ -> State.BEHIND;
          case FollowerState.Rebuilding _ -> State.REBUILDING;
          case FollowerState.Failed _ -> State.FAILED;
        },
        follower.lag(),
        byMeaning(),
        follower.rebuild(),
        follower
            .lastRebuild()
            .map(
                past ->
                    new Ended(
                        past.ending(),
                        past.setups(),
                        past.took(),
                        clock.instant().minus(past.ago()))));
  }

  private ByMeaning byMeaning() {
    return sentences
        .map(
            model ->
                model.isLoading()
                    ? ByMeaning.LOADING
                    : model.trouble().isPresent() ? ByMeaning.NO_MODEL : ByMeaning.YES)
        .orElse(ByMeaning.TURNED_OFF);
  }

  /**
   * Has a new one made.
   *
   * @throws Refused Clash where one is being made
   */
  public Told start(Caller caller, StudioId studio) {
    mayKeep(caller, studio);
    if (!follower.orderRebuild()) {
      throw new Refused(
          new Refusal.Clash("The index is being made anew already. Wait, or stop that first."));
    }
    return get(caller, studio);
  }

  /**
   * Ends the making of a new one, where there is any; the one that is there stays.
   *
   * @throws Refused Clash where it must be finished
   */
  public void stop(Caller caller, StudioId studio) {
    mayKeep(caller, studio);
    // Asked first: it may be finished meanwhile, and then needs no stopping.
    if (follower.rebuild().filter(now -> !now.mayStop()).isPresent()) {
      throw new Refused(
          new Refusal.Clash("There is no other index to search in. This one must be finished."));
    }
    follower.stopRebuild();
  }

  private void mayKeep(Caller caller, StudioId studio) {
    database.inStudio(studio, caller.asker(), in -> Leave.ask(in, Permission.KEEP_INDEX));
  }
}
