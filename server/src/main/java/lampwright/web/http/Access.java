package lampwright.web.http;

import io.javalin.security.RouteRole;
import java.util.Optional;
import lampwright.people.Permission;

/**
 * Who may come in by a route. Each route has exactly one; the server does not start with a route
 * that has none.
 */
public sealed interface Access extends RouteRole {

  /**
   * A member of the studio that the address names whose role covers this. A change is refused
   * before its body is read; what is read asks inside, in the transaction that reads.
   */
  static Access may(Permission permission) {
    return new Member(permission, Optional.empty());
  }

  /**
   * The same, for what is read of a studio in the one step that looks who comes.
   *
   * @param glance takes that step
   */
  static Access may(Permission permission, Glance glance) {
    return new Member(permission, Optional.of(glance));
  }

  /** Whether nobody need have signed in. */
  default boolean isOpen() {
    return equals(Outside.ANYONE) || equals(Outside.BY_LINK) || equals(Outside.WATCHER);
  }

  /** For what lies in no studio. */
  enum Outside implements Access {
    /** Everybody, signed in or not. */
    ANYONE,
    /** Whoever holds the secret that stands in the address; what it opens is looked up inside. */
    BY_LINK,
    /** Whoever watches over the server, see {@link Watchers}. */
    WATCHER,
    /** A person with a session or a token. */
    SIGNED_IN,
    /** A person with a session: what a program must not do in anybody's name. */
    IN_PERSON
  }

  /**
   * For what lies in a studio.
   *
   * @param permission what it takes at least
   * @param glance looks who comes; empty where the door does it
   */
  record Member(Permission permission, Optional<Glance> glance) implements Access {}
}
