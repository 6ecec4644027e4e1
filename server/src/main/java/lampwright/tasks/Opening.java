package lampwright.tasks;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.gear.KitId;
import lampwright.people.Membership;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.setup.SetupId;
import lampwright.store.Database;
import lampwright.store.StudioTransaction;

/**
 * Opens a setup with all that lies beside it, read in one transaction: its page is looked at more
 * than any other, and to begin and end a transaction for each of its parts cost more than the
 * parts.
 */
public final class Opening {

  private static final int LAST_FEW = 3;

  private final Database database;

  public Opening(Database database) {
    this.database = database;
  }

  /**
   * A setup and what lies beside it.
   *
   * @param history its last few revisions, the newest first
   * @param isAuditOpen whether the caller may read who did what
   * @param links that show it to somebody outside; empty for whose role does not cover showing
   * @param kits what the studio calls its kits, the last changed first
   * @param memberships the studios that the caller belongs to, by name
   */
  public record Opened(
      Catalogued setup,
      Tracing.Kin kin,
      Signing.Signed signature,
      Recording.State used,
      Proposing.State proposed,
      Listed<KeptPicture> pictures,
      List<Past> history,
      boolean isAuditOpen,
      Optional<List<OutsideLink>> links,
      Map<KitId, String> kits,
      List<Membership> memberships) {

    /** Copies the lists, and keeps the order of the kits. */
    public Opened {
      history = List.copyOf(history);
      kits = Collections.unmodifiableMap(new LinkedHashMap<>(kits));
      memberships = List.copyOf(memberships);
    }
  }

  /**
   * Opens one.
   *
   * @throws Refused NotFound where there is none that the caller may see
   */
  public Opened open(Caller caller, StudioId studio, SetupId id) {
    return database.inStudio(studio, caller.asker(), in -> open(in, caller, id));
  }

  private static Opened open(StudioTransaction in, Caller caller, SetupId id) {
    Role role = Leave.ask(in, Permission.READ_SETUPS);
    Sight sight = Sight.of(role);
    Catalogued setup = Cataloguing.get(in, sight, id);
    Map<PersonId, String> names = Cataloguing.names(in);
    return new Opened(
        setup,
        Tracing.kin(in, sight, setup),
        Signing.signed(in, id, setup.revision(), setup::document),
        Recording.state(in, role, setup),
        Proposing.state(in, caller, role, id),
        PictureKeeping.list(in, id, Optional.empty(), Listed.MOST, names),
        Histories.newest(in, sight, id, LAST_FEW, names),
        role.may(Permission.SEE_AUDIT),
        role.may(Permission.SHARE_SETUPS)
            ? Optional.of(Sharing.list(in, id, names))
            : Optional.empty(),
        KitKeeping.names(in),
        new lampwright.store.Studios(in).list());
  }
}
