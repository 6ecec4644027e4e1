package lampwright.tasks;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import lampwright.document.Problem;
import lampwright.people.Ids;
import lampwright.people.Invitation;
import lampwright.people.Permission;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.store.AnonymousTransaction;
import lampwright.store.Database;
import lampwright.store.Invitations;
import lampwright.store.Members;
import lampwright.store.People;
import lampwright.store.StudioTransaction;

/**
 * Invitations to a studio: an owner makes a link, and whoever holds it comes in once, with the
 * account that they have or a new one. A link that was used or withdrawn, has expired, was never
 * made, or is of somebody who owns the studio no more, is one and the same: not found.
 */
public final class Inviting {

  /** How many days an invitation may last at most. */
  public static final int MOST_DAYS = 30;

  /** How many days it lasts where nothing is said. */
  public static final int USUAL_DAYS = 7;

  /** The most characters that say for whom it is. */
  public static final int LONGEST_MEANT_FOR = 200;

  private static final int MOST_OPEN = 50;

  /** Looks without being anybody; an id that nobody can get, being longer than those we make. */
  private static final PersonId NOBODY = new PersonId("nobody00nobody00nobody00nobody00");

  private final Database database;
  private final Ids ids;
  private final Passwords passwords;
  private final SigningIn signingIn;

  public Inviting(Database database, Ids ids, Passwords passwords, SigningIn signingIn) {
    this.database = database;
    this.ids = ids;
    this.passwords = passwords;
    this.signingIn = signingIn;
  }

  /**
   * What an owner wants.
   *
   * @param meantFor for whom, in words of the owner's own
   * @param days how long it lasts, 1 to {@link #MOST_DAYS}
   */
  public record Wish(Role role, String meantFor, int days) {
    public Wish {
      meantFor = meantFor.strip();
    }

    private List<Problem> problems() {
      List<Problem> problems = new ArrayList<>();
      NewAccount.bounded(problems, "/meant_for", "For whom", meantFor, LONGEST_MEANT_FOR);
      if (days < 1 || days > MOST_DAYS) {
        problems.add(
            new Problem(
                "/days",
                "Days (%d) must be 1 to %d. Maybe %d?".formatted(days, MOST_DAYS, USUAL_DAYS)));
      }
      return problems;
    }
  }

  /**
   * A new invitation.
   *
   * @param secret what the link holds; nobody can show it again
   */
  public record Made(Invitation invitation, String secret) {

    /** No record's text may carry a secret into a log. */
    @Override
    public String toString() {
      return "Made[" + invitation.id() + "]";
    }
  }

  /** What whoever holds a link learns: which studio, who invites, as what, until when. */
  public record Offer(
      StudioId studio, String studioName, String inviterName, Role role, Instant expiresAt) {

    private static Offer of(StudioTransaction in, Invitation invitation) {
      return new Offer(
          invitation.studio(),
          new Members(in).findStudio().orElseThrow(Refused::notFound).name(),
          invitation.inviterName(),
          invitation.role(),
          invitation.expiresAt());
    }
  }

  /** Who came in by a link with a new account, where, and their session. */
  public record Arrived(Offer offer, SigningIn.Session session) {}

  /**
   * Makes an invitation.
   *
   * @throws Refused NotAllowed for who is no owner, Invalid where the wish has a problem, Clash
   *     where as many are open as may be
   */
  public Made invite(Caller caller, StudioId studio, Wish wish) {
    String secret = ids.nextSecret();
    String id = ids.next();
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.MANAGE_MEMBERS);
          List<Problem> problems = wish.problems();
          if (!problems.isEmpty()) {
            throw Refused.invalid(problems);
          }
          Invitations invitations = new Invitations(in);
          // Owners who invite at once wait for one another, so that they count right.
          new Members(in).listOwnersAndHold();
          invitations.forgetVoid();
          if (invitations.list().size() >= MOST_OPEN) {
            throw new Refused(
                new Refusal.Clash(
                    "%d invitations are open, and that is the most. Withdraw one first."
                        .formatted(MOST_OPEN)));
          }
          invitations.create(
              id,
              SecretHash.of(secret),
              wish.role(),
              wish.meantFor(),
              in.now().plus(Duration.ofDays(wish.days())));
          return new Made(invitations.find(id).orElseThrow(), secret);
        });
  }

  /**
   * The open ones, the newest first.
   *
   * @throws Refused NotAllowed for who is no owner
   */
  public List<Invitation> list(Caller caller, StudioId studio) {
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.MANAGE_MEMBERS);
          return new Invitations(in).list();
        });
  }

  /**
   * Takes one back.
   *
   * @throws Refused NotAllowed for who is no owner, NotFound where none of that id is open
   */
  public void withdraw(Caller caller, StudioId studio, String id) {
    boolean gone =
        database.inStudio(
            studio,
            caller.asker(),
            in -> {
              Leave.ask(in, Permission.MANAGE_MEMBERS);
              return new Invitations(in).delete(id);
            });
    if (!gone) {
      throw Refused.notFound();
    }
  }

  /**
   * What a link offers; does not use it up.
   *
   * @throws Refused NotFound where it does not work, or no longer
   */
  public Offer look(String secret) {
    SecretHash hash = SecretHash.of(secret);
    return database.anonymous(
        in -> {
          StudioTransaction there = in.enter(studio(in, hash), NOBODY);
          return Offer.of(there, new Invitations(there).find(hash).orElseThrow(Refused::notFound));
        });
  }

  /**
   * Comes in with the account that one has.
   *
   * @return what the link offered
   * @throws Refused NotFound where it does not work, or no longer; Clash for who belongs to the
   *     studio already, and it stays open then; NotAllowed for a program
   */
  public Offer accept(String secret, Caller caller) {
    if (caller.way() != Caller.Way.SESSION) {
      throw Refused.notAllowed(
          "Only a person who signed in can accept an invitation, and not a program with a token.");
    }
    return database.anonymous(in -> accept(in, SecretHash.of(secret), caller.person().id()));
  }

  /**
   * Comes in with a new account, and is signed in.
   *
   * @throws Refused NotFound where the link does not work, or no longer; Invalid where the account
   *     has a problem
   */
  public Arrived accept(String secret, NewAccount account) {
    List<Problem> problems = account.problems(look(secret).studioName(), passwords);
    if (!problems.isEmpty()) {
      throw Refused.invalid(problems);
    }
    String passwordHash = passwords.hash(account.password());
    record Joined(Person person, Offer offer) {}
    Joined joined =
        database.anonymous(
            in -> {
              Person person =
                  new People(in)
                      .create(
                          new PersonId(ids.next()), account.email(), account.name(), passwordHash)
                      .orElseThrow(
                          () ->
                              Refused.invalid(
                                  "/email",
                                  "E-mail belongs to an account already. Sign in with it, then"
                                      + " open this link again."));
              return new Joined(person, accept(in, SecretHash.of(secret), person.id()));
            });
    return new Arrived(joined.offer(), signingIn.begin(joined.person()));
  }

  private static Offer accept(AnonymousTransaction in, SecretHash secret, PersonId person) {
    StudioTransaction there = in.enter(studio(in, secret), person);
    Members members = new Members(there);
    // Whoever made it cannot stop being an owner until this is kept.
    members.listOwnersAndHold();
    Invitations invitations = new Invitations(there);
    Invitation invitation = invitations.find(secret).orElseThrow(Refused::notFound);
    Offer offer = Offer.of(there, invitation);
    if (!members.add(person, invitation.role())) {
      throw new Refused(
          new Refusal.Clash("You belong to this studio already. Leave the link to somebody else."));
    }
    if (!invitations.delete(invitation.id())) {
      throw Refused.notFound();
    }
    return offer;
  }

  private static StudioId studio(AnonymousTransaction in, SecretHash secret) {
    return Invitations.findStudio(in, secret).orElseThrow(Refused::notFound);
  }
}
