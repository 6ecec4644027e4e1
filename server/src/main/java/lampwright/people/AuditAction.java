package lampwright.people;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What somebody did, as the audit trail tells it. */
public enum AuditAction {
  MADE,
  CHANGED,
  DELETED,
  /** What had been deleted is there again. */
  RESTORED,
  /** A link that shows something to somebody outside was followed. */
  OPENED,
  TAKEN_OUT,
  SIGNED_IN,
  SIGN_IN_FAILED,
  SIGNED_OUT,
  PASSWORD_CHANGED,
  EMAIL_CHANGED,
  /** Sessions of one's own were ended from another one. */
  SESSIONS_ENDED,
  /** What lets in once let in. */
  USED,
  REVOKED;

  /** The action as the database and the API write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The action that a word names. */
  public static Optional<AuditAction> find(String word) {
    return Stream.of(values()).filter(action -> action.word().equals(word)).findFirst();
  }
}
