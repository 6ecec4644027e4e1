package lampwright.people;

import java.util.Locale;

/** A member's role in a studio; each may do what the next one may, and more. */
public enum Role {
  OWNER,
  AUTHOR,
  CREW,
  READER;

  /** Whether this role may do something: the one place where that is decided. */
  public boolean may(Permission permission) {
    return switch (permission) {
      case READ_SETUPS -> true;
      case READ_DRAFTS, LOG_TAKES -> this != READER;
      case WRITE_SETUPS, WRITE_KITS, WRITE_TRAILS, SIGN_OFF, SHARE_SETUPS ->
          this == OWNER || this == AUTHOR;
      case SEE_LEARNING, MOVE_STUDIO, KEEP_INDEX, SEE_AUDIT, MANAGE_MEMBERS -> this == OWNER;
    };
  }

  /** The lesser of this role and another. */
  Role orLess(Role other) {
    return compareTo(other) < 0 ? other : this;
  }

  /** The role as documents and the database write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The role that a word names.
   *
   * @throws IllegalArgumentException when there is none
   */
  public static Role of(String word) {
    for (Role role : values()) {
      if (role.word().equals(word)) {
        return role;
      }
    }
    throw new IllegalArgumentException("There is no role of that name.");
  }
}
