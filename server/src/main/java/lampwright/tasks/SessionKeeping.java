package lampwright.tasks;

import java.time.Instant;
import java.util.List;
import lampwright.people.SecretHash;
import lampwright.store.AuditTrail;
import lampwright.store.Database;
import lampwright.store.Sessions;

/** Where a person is signed in, for them to see and to end. */
public final class SessionKeeping {

  private final Database database;

  public SessionKeeping(Database database) {
    this.database = database;
  }

  /**
   * One of the caller's.
   *
   * @param device what it began on, as the browser called itself; may be empty
   * @param usedAt when it was last used, to ten minutes
   * @param isThisOne whether the caller came by it
   */
  public record OwnSession(
      String id,
      String device,
      Instant begunAt,
      Instant usedAt,
      Instant expiresAt,
      boolean isThisOne) {}

  /**
   * All of the caller's: the one that they came by first, then those last used.
   *
   * @param session the token that they came by
   */
  public List<OwnSession> list(Caller caller, String session) {
    SecretHash here = SecretHash.of(session);
    return database.anonymous(
        in ->
            new Sessions(in)
                .list(caller.person().id()).stream()
                    .map(
                        one ->
                            new OwnSession(
                                one.id(),
                                one.device(),
                                one.createdAt(),
                                one.seenAt(),
                                one.expiresAt(),
                                one.token().equals(here)))
                    .sorted((one, other) -> Boolean.compare(other.isThisOne(), one.isThisOne()))
                    .toList());
  }

  /**
   * Ends one of the caller's.
   *
   * @throws Refused when they have none of that id
   */
  public void end(Caller caller, String id) {
    boolean ended =
        database.anonymous(
            in -> {
              boolean gone = new Sessions(in).end(caller.person().id(), id);
              new AuditTrail(in).noteEndedSessions(caller.person().id(), gone ? 1 : 0);
              return gone;
            });
    if (!ended) {
      throw Refused.notFound();
    }
  }

  /** Ends all of the caller's but the one that they came by; says how many. */
  public int endOthers(Caller caller, String session) {
    return database.anonymous(
        in -> {
          int ended = new Sessions(in).endOthers(caller.person().id(), SecretHash.of(session));
          new AuditTrail(in).noteEndedSessions(caller.person().id(), ended);
          return ended;
        });
  }
}
