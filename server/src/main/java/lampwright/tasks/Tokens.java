package lampwright.tasks;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import lampwright.people.Ids;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.store.AnonymousTransaction;
import lampwright.store.AuditTrail;
import lampwright.store.Database;
import lampwright.store.PersonTransaction;

/** The tokens by which a person's programs come in. Only their hashes are kept. */
public final class Tokens {

  /** The most days that a token can be asked to last. */
  public static final int MOST_DAYS = 366;

  /** Characters of a token's name. */
  public static final int LONGEST_NAME = 200;

  /** The most tokens that one may have. */
  public static final int MOST = 50;

  private static final Duration BETWEEN_NOTES = Duration.ofMinutes(10);

  private final Database database;
  private final Ids ids;
  private final Closed closed;

  public Tokens(Database database, Ids ids, Closed closed) {
    this.database = database;
    this.ids = ids;
    this.closed = closed;
  }

  /**
   * What somebody wants.
   *
   * @param name which program it is for
   * @param reach how much it may do
   * @param days after which it ends; empty where it lasts until it is revoked
   */
  public record Wish(String name, Reach reach, Optional<Integer> days) {}

  /** A token, without its secret. */
  public record Token(
      String id,
      String name,
      Reach reach,
      Instant createdAt,
      Optional<Instant> expiresAt,
      Optional<Instant> lastUsedAt) {

    private static Token of(lampwright.store.Tokens.Token kept) {
      return new Token(
          kept.id(),
          kept.name(),
          kept.reach(),
          kept.createdAt(),
          kept.expiresAt(),
          kept.lastUsedAt());
    }
  }

  /**
   * A new token.
   *
   * @param secret what the program sends; nobody can show it again
   */
  public record Made(Token token, String secret) {

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Made[" + token.id() + "]";
    }
  }

  /**
   * Makes a token.
   *
   * @throws Refused Clash when the person has as many as one may have; Invalid for a studio that
   *     they do not belong to
   */
  public Made make(Caller caller, Wish wish) {
    String secret = ids.nextSecret();
    return database.asPerson(
        caller.asker(),
        in -> {
          wish.reach().only().ifPresent(studio -> mustBelongTo(in, studio));
          lampwright.store.Tokens tokens = new lampwright.store.Tokens(in);
          tokens.hold(caller.person().id());
          if (tokens.list(caller.person().id()).size() >= MOST) {
            throw new Refused(
                new Refusal.Clash(
                    "You have %d tokens, and that is the most. Revoke one first.".formatted(MOST)));
          }
          Token made =
              Token.of(
                  tokens.create(
                      caller.person().id(),
                      ids.next(),
                      SecretHash.of(secret),
                      wish.name(),
                      wish.reach(),
                      wish.days().map(days -> in.now().plus(days, ChronoUnit.DAYS))));
          new AuditTrail(in)
              .note(
                  caller.person().id(), AuditAction.MADE, AuditKind.TOKEN, made.id(), made.name());
          return new Made(made, secret);
        });
  }

  private static void mustBelongTo(PersonTransaction in, StudioId studio) {
    if (new lampwright.store.Studios(in).findRole(studio).isEmpty()) {
      throw Refused.invalid(
          "/studio",
          "Studio (%s) must be one that you belong to. Your studios are at /api/studios."
              .formatted(studio.text()));
    }
  }

  /** The caller's own, the newest first. */
  public List<Token> list(Caller caller) {
    return database.anonymous(
        in ->
            new lampwright.store.Tokens(in)
                .list(caller.person().id()).stream().map(Token::of).toList());
  }

  /**
   * Revokes one of the caller's own.
   *
   * @throws Refused when they have none of that id
   */
  public void revoke(Caller caller, String id) {
    boolean revoked =
        database.anonymous(
            in -> {
              lampwright.store.Tokens tokens = new lampwright.store.Tokens(in);
              String name =
                  tokens.list(caller.person().id()).stream()
                      .filter(token -> token.id().equals(id))
                      .map(lampwright.store.Tokens.Token::name)
                      .findFirst()
                      .orElse("");
              boolean gone = tokens.delete(caller.person().id(), id);
              if (gone) {
                new AuditTrail(in)
                    .note(caller.person().id(), AuditAction.REVOKED, AuditKind.TOKEN, id, name);
              }
              return gone;
            });
    if (!revoked) {
      throw Refused.notFound();
    }
  }

  /** Who a secret belongs to. */
  public Optional<Caller> find(String secret) {
    return database.eachByItself(
        in -> {
          Optional<lampwright.store.Tokens.Bearer> found =
              new lampwright.store.Tokens(in).findBearer(SecretHash.of(secret));
          found
              .map(lampwright.store.Tokens.Bearer::token)
              .ifPresent(token -> note(in, token.person(), token.id(), token.lastUsedAt()));
          return found
              .filter(bearer -> closed.isOpenTo(bearer.person()))
              .map(bearer -> new Caller(bearer.person(), Caller.Way.TOKEN, bearer.token().reach()));
        });
  }

  /** Notes a use, not every one: a note a request would make reading as dear as writing. */
  static void note(AnonymousTransaction in, PersonId person, String id, Optional<Instant> noted) {
    if (noted.map(in.now().minus(BETWEEN_NOTES)::isAfter).orElse(true)) {
      new lampwright.store.Tokens(in).touch(person, id);
    }
  }
}
