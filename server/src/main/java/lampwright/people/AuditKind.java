package lampwright.people;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What the audit trail tells of. */
public enum AuditKind {
  STUDIO,
  MEMBER,
  SETUP,
  KIT,
  GEAR,
  LOCATION,
  TRAIL,
  TAKE,
  NOTE,
  PICTURE,
  PROPOSAL,
  /** What somebody built for a trail, and handed in. */
  BUILD,
  SHARE_LINK,
  INVITATION,
  RESET_LINK,
  ARCHIVE,
  ACCOUNT,
  TOKEN,
  SECOND_FACTOR,
  RECOVERY_CODES;

  /** The kind as the database and the API write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The kind that a word names. */
  public static Optional<AuditKind> find(String word) {
    return Stream.of(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
