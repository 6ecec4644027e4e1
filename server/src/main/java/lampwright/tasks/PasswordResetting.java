package lampwright.tasks;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import lampwright.people.Ids;
import lampwright.people.Membership;
import lampwright.people.Permission;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.store.AnonymousTransaction;
import lampwright.store.AuditTrail;
import lampwright.store.Database;
import lampwright.store.Members;
import lampwright.store.PasswordResets;
import lampwright.store.People;
import lampwright.store.Sessions;
import lampwright.store.Transaction;

/**
 * A new password for who forgot theirs, by a link from an owner or from the server's keeper.
 * Whoever makes such a link could use it themself. So an owner makes one only for who belongs to no
 * studio but those that the owner owns, and it works only as long as that is so.
 */
public final class PasswordResetting {

  private static final Duration LINK_LASTS = Duration.ofHours(24);

  private final Database database;
  private final Ids ids;
  private final Passwords passwords;

  public PasswordResetting(Database database, Ids ids, Passwords passwords) {
    this.database = database;
    this.ids = ids;
    this.passwords = passwords;
  }

  /**
   * A new link.
   *
   * @param secret what the link holds; nobody can show it again
   */
  public record Made(Person person, String secret, Instant expiresAt) {

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Made[" + person + "]";
    }
  }

  /**
   * Makes a link for a member.
   *
   * @throws Refused NotAllowed for who is no owner and for a program, NotFound where the person is
   *     no member, Clash where they belong to another studio that the caller does not own
   */
  public Made issue(Caller caller, StudioId studio, PersonId id) {
    Person person =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Leave.ask(in, Permission.MANAGE_MEMBERS);
              return new Members(in).find(id).orElseThrow(Refused::notFound).person();
            });
    if (caller.way() != Caller.Way.SESSION) {
      throw Refused.notAllowed(
          "Only an owner who signed in can make such a link, and not a program with a token.");
    }
    if (id.equals(caller.person().id())) {
      throw new Refused(
          new Refusal.Clash("This is your own account. Change the password in your account."));
    }
    if (!database.<Boolean>anonymous(in -> ownsAllOf(in, caller.person().id(), id))) {
      throw new Refused(
          new Refusal.Clash(
              "They belong to a studio that you do not own, and such a link would open it to you."
                  + " Ask who keeps the server for one: the command reset-link makes it."));
    }
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.MANAGE_MEMBERS);
          AuditTrail.note(in, AuditAction.MADE, AuditKind.RESET_LINK, id.text(), "");
          return issue(in, person, Optional.of(caller.person().id()));
        });
  }

  /** Makes a link as the server's keeper; empty where nobody signs in by that address. */
  public Optional<Made> issueAsKeeper(String email) {
    return database.anonymous(
        in ->
            new People(in)
                .findByEmail(email.strip())
                .map(found -> issue(in, found.person(), Optional.empty())));
  }

  private Made issue(Transaction in, Person person, Optional<PersonId> madeBy) {
    String secret = ids.nextSecret();
    Instant expiresAt = in.now().plus(LINK_LASTS);
    new PasswordResets(in).issue(person.id(), SecretHash.of(secret), madeBy, expiresAt);
    return new Made(person, secret, expiresAt);
  }

  private static boolean ownsAllOf(AnonymousTransaction in, PersonId owner, PersonId person) {
    Set<StudioId> owned = new HashSet<>();
    for (Membership membership : studios(in, owner)) {
      if (membership.role() == Role.OWNER) {
        owned.add(membership.studio());
      }
    }
    List<Membership> all = studios(in, person);
    return !all.isEmpty() && all.stream().map(Membership::studio).allMatch(owned::contains);
  }

  private static List<Membership> studios(AnonymousTransaction in, PersonId person) {
    return new lampwright.store.Studios(in.as(person)).list();
  }

  /**
   * Whose password a link sets; does not use it up.
   *
   * @throws Refused NotFound where it does not work, or no longer
   */
  public Person look(String secret) {
    return database.anonymous(in -> find(in, secret));
  }

  private static Person find(AnonymousTransaction in, String secret) {
    PasswordResets.Reset reset =
        new PasswordResets(in).find(SecretHash.of(secret)).orElseThrow(Refused::notFound);
    boolean isGood = reset.madeBy().map(by -> ownsAllOf(in, by, reset.person())).orElse(true);
    if (!isGood) {
      throw Refused.notFound();
    }
    return new People(in).find(reset.person()).orElseThrow(Refused::notFound);
  }

  /**
   * Sets the password and signs the person out everywhere. Tokens of programs stay, and so does a
   * second factor.
   *
   * @throws Refused NotFound where the link does not work, or no longer; Invalid at {@code
   *     /password}
   */
  public void use(String secret, String password) {
    Person person = look(secret);
    passwords
        .findFault(password, person.email(), person.name())
        .ifPresent(
            fault -> {
              throw Refused.invalid("/password", fault);
            });
    String hash = passwords.hash(password);
    database.anonymous(
        in -> {
          Person found = find(in, secret);
          if (!new PasswordResets(in).consume(SecretHash.of(secret))
              || !new People(in).changePassword(found.id(), hash)) {
            throw Refused.notFound();
          }
          new AuditTrail(in).note(found.id(), AuditAction.PASSWORD_CHANGED);
          return new Sessions(in).endAll(found.id());
        });
  }
}
