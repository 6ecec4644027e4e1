package lampwright.tasks;

import java.util.Optional;
import java.util.Set;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import lampwright.store.Setups;
import lampwright.store.StoredSetup;
import lampwright.store.StudioTransaction;

/**
 * Which of a studio's setups a member may know of: all, or only those that are proven and not
 * archived. Every task that reads a stored setup reads it by this, so that what one may not see is
 * nowhere to be found.
 *
 * @param standings where a setup may stand to be seen
 */
record Sight(Set<Standing> standings) {

  private static final Set<Standing> EVERYTHING =
      Set.of(
          Standing.DRAFT,
          Standing.PROVEN,
          new Standing(Standing.State.DRAFT, true),
          new Standing(Standing.State.PROVEN, true));

  Sight {
    standings = Set.copyOf(standings);
  }

  /** What a role sees. */
  static Sight of(Role role) {
    return new Sight(role.may(Permission.READ_DRAFTS) ? EVERYTHING : Set.of(Standing.PROVEN));
  }

  /**
   * What the person of a transaction sees.
   *
   * @throws Refused NotFound for who is no member
   */
  static Sight ask(StudioTransaction in) {
    return of(Leave.ask(in, Permission.READ_SETUPS));
  }

  boolean covers(Standing standing) {
    return standings.contains(standing);
  }

  /** Whether nothing is hidden. */
  boolean isWhole() {
    return standings.equals(EVERYTHING);
  }

  Optional<StoredSetup> find(StudioTransaction in, SetupId id) {
    return new Setups(in).find(id).filter(setup -> covers(setup.standing()));
  }

  /**
   * A setup as it is now.
   *
   * @throws Refused NotFound where there is none that may be seen
   */
  StoredSetup get(StudioTransaction in, SetupId id) {
    return find(in, id).orElseThrow(Refused::notFound);
  }
}
