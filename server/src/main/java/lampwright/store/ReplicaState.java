package lampwright.store;

import java.util.Optional;

/** How a replica holds up, for whoever watches. */
public final class ReplicaState {

  private final Replica replica;

  ReplicaState(Replica replica) {
    this.replica = replica;
  }

  /** Why it is not read from, in one line; empty where it is. */
  public Optional<String> trouble() {
    return replica.trouble();
  }

  /** How many bytes of the database's log it has not replayed; NaN where that is not known. */
  public double lagBytes() {
    return replica.lagBytes();
  }

  /** How many readings it has answered. */
  public long answered() {
    return replica.answered();
  }

  /** How many readings the database answered, since the replica had not got so far. */
  public long behind() {
    return replica.behind();
  }

  /** How many readings the database answered, since something went wrong on the replica. */
  public long failed() {
    return replica.failed();
  }
}
