package lampwright.tasks;

import java.time.Instant;
import java.util.Optional;
import lampwright.people.Permission;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.people.WritesSeen;
import lampwright.setup.Parent;
import lampwright.setup.SetupDocument;
import lampwright.setup.Standing;
import lampwright.store.AnonymousTransaction;
import lampwright.store.Database;
import lampwright.store.Glances;

/**
 * Lets somebody in and shows them a setup, in one round trip to the database. A program asks for
 * single setups far more often than for anything else, and what it waits for is the database.
 */
public final class Glancing {

  private final Database database;
  private final Closed closed;

  public Glancing(Database database, Closed closed) {
    this.database = database;
    this.closed = closed;
  }

  /**
   * What somebody came for.
   *
   * @param caller empty for who cannot come in; the rest says nothing then
   */
  public record Seen(Optional<Caller> caller, Optional<Glances.Seen> at) {

    /**
     * The setup, as it is now.
     *
     * @throws Refused NotFound for who is no member, and where there is none that they may see
     */
    public Shown setup() {
      Sight sight =
          caller
              .flatMap(_ -> at)
              .flatMap(Glances.Seen::role)
              .map(
                  role -> {
                    Leave.must(role, Permission.READ_SETUPS);
                    return Sight.of(role);
                  })
              .orElseThrow(Refused::notFound);
      return at.flatMap(Glances.Seen::setup)
          .filter(found -> sight.covers(found.standing()))
          .map(found -> shown(found, sight))
          .orElseThrow(Refused::notFound);
    }

    private static Shown shown(Glances.Found found, Sight sight) {
      return new Shown(
          found.revision(),
          found.changedAt(),
          found.changedBy(),
          found.standing(),
          found.parent().filter(_ -> found.parentStood().filter(sight::covers).isPresent()),
          found.document());
    }
  }

  /**
   * A setup of the catalogue as it is now.
   *
   * @param changedBy the name of who made this revision
   * @param parent what it was made from; absent for one that comes from no other
   * @param stored its document as it is stored; empty where its revision was known
   */
  public record Shown(
      int revision,
      Instant changedAt,
      String changedBy,
      Standing standing,
      Optional<Parent> parent,
      Optional<String> stored) {

    /** Its document; empty where its revision was known. */
    public Optional<SetupDocument> document() {
      return stored.map(json -> StoredDocuments.read(SetupDocument.FORM, json));
    }
  }

  /**
   * Looks who comes and what they came for.
   *
   * @param secret of a session or a token
   * @param known the revision whose document is not needed
   */
  public Seen look(
      Caller.Way way, String secret, String studio, String setup, Optional<Integer> known) {
    return look(way, secret, new Glances.Wanted(studio, Optional.of(setup), known, false));
  }

  /**
   * Looks who comes into a studio, and how often it was written: they have seen that, unless they
   * are nothing there.
   *
   * @param secret of a session or a token
   */
  public Seen lookAround(Caller.Way way, String secret, String studio) {
    return look(way, secret, new Glances.Wanted(studio, Optional.empty(), Optional.empty(), true));
  }

  private Seen look(Caller.Way way, String secret, Glances.Wanted wanted) {
    SecretHash hash = SecretHash.of(secret);
    return database.eachByItself(
        in -> {
          Glances glances = new Glances(in);
          Optional<Glances.Seen> found =
              switch (way) {
                case TOKEN -> glances.byToken(hash, wanted);
                case SESSION -> glances.bySession(hash, wanted);
              };
          found.ifPresent(seen -> note(in, way, hash, seen));
          return new Seen(
              found
                  .filter(seen -> closed.isOpenTo(seen.person()))
                  .map(
                      seen ->
                          new Caller(
                              seen.person(),
                              way,
                              seen.reach(),
                              seen.writes()
                                  .map(
                                      writes ->
                                          new WritesSeen(new StudioId(wanted.studio()), writes)))),
              found);
        });
  }

  private static void note(
      AnonymousTransaction in, Caller.Way way, SecretHash hash, Glances.Seen seen) {
    switch (way) {
      case TOKEN -> Tokens.note(in, seen.person().id(), seen.wayId(), seen.notedAt());
      case SESSION ->
          SigningIn.note(in, hash, seen.begunAt(), seen.notedAt().orElse(seen.begunAt()));
    }
  }
}
