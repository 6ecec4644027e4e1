package lampwright.tasks;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import lampwright.people.FormerName;
import lampwright.people.Membership;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.Database;
import lampwright.store.Departure;
import lampwright.store.FormerMembers;
import lampwright.store.Members;
import lampwright.store.PersonTransaction;
import lampwright.store.StudioTransaction;

/**
 * Leaving this server for good. What a person wrote stays in the studios that they wrote it for,
 * under their name or under none; all else that is known of them goes, at once and together.
 */
public final class Leaving {

  private final Database database;
  private final PasswordProof proof;

  public Leaving(Database database, Passwords passwords, FailedSignIns failures, Closed closed) {
    this.database = database;
    this.proof = new PasswordProof(database, passwords, failures, closed);
  }

  /** What becomes of the name beside what a person wrote. */
  public enum Names {
    /** It stays where it stands. */
    KEEP,
    /** From now on it is by a former member, like what was written by those who were let go. */
    NAMELESS
  }

  /**
   * What somebody who leaves says.
   *
   * @param password theirs, once more
   */
  public record Wish(String password, Names names) {

    /** No record's text may carry a password into a log. */
    @Override
    public String toString() {
      return "Wish[" + names + "]";
    }
  }

  /**
   * The caller's studios, and which of them hold the caller back.
   *
   * @param all by name
   * @param ownedAlone those that would have no owner
   */
  public record Ties(List<Membership> all, List<Membership> ownedAlone) {

    public Ties {
      all = List.copyOf(all);
      ownedAlone = List.copyOf(ownedAlone);
    }
  }

  /** What the caller would leave. */
  public Ties ties(Caller caller) {
    return database.asPerson(caller.asker(), Leaving::ties);
  }

  /** Whether the caller could leave at all; the demo's members stay. */
  public boolean canLeave(Caller caller) {
    return !DemoStudio.EMAILS.contains(caller.person().email());
  }

  /**
   * Leaves.
   *
   * @throws Refused NotAllowed for programs and for the demo's members; Invalid for a wrong
   *     password, TooMany after too many; Clash for the only owner of a studio
   */
  public void leave(Caller caller, Wish wish, Visit visit) {
    mustComeInPerson(caller);
    mustNotBeOfTheDemo(caller);
    proof.proveAgain(caller, "/password", wish.password(), visit);
    database.asPerson(
        caller.asker(),
        in -> {
          Departure departure = new Departure(in);
          departure.hold();
          Ties ties = ties(in);
          mustHaveOtherOwners(ties.ownedAlone());
          ties.all().stream()
              .map(Membership::studio)
              .sorted(Comparator.comparing(StudioId::text))
              .forEach(studio -> leave(in.enter(studio), departure, wish.names()));
          departure.end(
              switch (wish.names()) {
                case KEEP -> caller.person().name();
                case NAMELESS -> FormerName.UNNAMED;
              });
          return ties;
        });
  }

  private static void leave(StudioTransaction in, Departure departure, Names names) {
    departure.forgetKeys(in);
    new Members(in).remove(in.person());
    if (names == Names.KEEP) {
      new FormerMembers(in).keepName(in.person());
    }
  }

  /** In one order, so that two who leave at once cannot wait for each other. */
  private static Ties ties(PersonTransaction in) {
    List<Membership> all = new lampwright.store.Studios(in).list();
    List<StudioId> alone =
        all.stream()
            .filter(membership -> membership.role() == Role.OWNER)
            .map(Membership::studio)
            .sorted(Comparator.comparing(StudioId::text))
            .filter(studio -> new Members(in.enter(studio)).listOwnersAndHold().size() <= 1)
            .toList();
    return new Ties(
        all, all.stream().filter(membership -> alone.contains(membership.studio())).toList());
  }

  private static void mustComeInPerson(Caller caller) {
    if (caller.way() != Caller.Way.SESSION) {
      throw Refused.notAllowed(
          "Only a person who signed in can leave, and not a program with a token. Sign in.");
    }
  }

  private void mustNotBeOfTheDemo(Caller caller) {
    if (!canLeave(caller)) {
      throw Refused.notAllowed(
          "The demo's members stay: their password is public, and whoever runs the server takes"
              + " the whole demo away.");
    }
  }

  private static void mustHaveOtherOwners(List<Membership> ownedAlone) {
    if (!ownedAlone.isEmpty()) {
      throw new Refused(
          new Refusal.Clash(
              "You are the only owner of %s. Make somebody else an owner there first."
                  .formatted(
                      ownedAlone.stream()
                          .map(Membership::studioName)
                          .collect(Collectors.joining(", ")))));
    }
  }
}
