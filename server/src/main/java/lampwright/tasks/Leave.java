package lampwright.tasks;

import lampwright.people.Ids;
import lampwright.people.Permission;
import lampwright.people.Role;
import lampwright.people.StudioId;
import lampwright.store.StudioTransaction;
import lampwright.store.Studios;

/**
 * Asks leave, in the one place: whether the person of a transaction may do something in its studio.
 * Who is no member does not learn that there is such a studio.
 */
public final class Leave {

  private Leave() {}

  /**
   * Lets a member pass whose role covers it.
   *
   * @return the member's role
   * @throws Refused NotFound for who is no member, NotAllowed for whom the role does not cover it
   */
  public static Role ask(StudioTransaction in, Permission permission) {
    Role role =
        in.role().or(() -> new Studios(in).findRole(in.studio())).orElseThrow(Refused::notFound);
    must(role, permission);
    return role;
  }

  /**
   * Lets a role pass that covers it.
   *
   * @throws Refused NotAllowed where it does not
   */
  static void must(Role role, Permission permission) {
    if (!role.may(permission)) {
      throw Refused.notAllowed(
          "Your role here is %s, and %s. An owner of the studio can change your role."
              .formatted(role.word(), lack(permission)));
    }
  }

  /**
   * The studio that an address names.
   *
   * @throws Refused NotFound when no studio can have that id
   */
  public static StudioId studio(String text) {
    if (!Ids.isId(text)) {
      throw Refused.notFound();
    }
    return new StudioId(text);
  }

  private static String lack(Permission permission) {
    return switch (permission) {
      case READ_SETUPS -> "it does not cover reading setups";
      case READ_DRAFTS -> "only crew, authors and owners see drafts";
      case LOG_TAKES -> "only crew, authors and owners log takes";
      case WRITE_SETUPS -> "only authors and owners change setups";
      case WRITE_KITS -> "only authors and owners change kits";
      case WRITE_TRAILS -> "only authors and owners change trails";
      case SIGN_OFF -> "only authors and owners sign builds off";
      case SEE_LEARNING -> "only owners see how far everybody is";
      case MOVE_STUDIO -> "only owners take out and bring in archives of the whole studio";
      case KEEP_INDEX -> "only owners look after the search index";
      case SHARE_SETUPS -> "only authors and owners show setups to people outside";
      case SEE_AUDIT -> "only owners read who did what";
      case MANAGE_MEMBERS -> "only owners change who belongs to the studio";
    };
  }
}
