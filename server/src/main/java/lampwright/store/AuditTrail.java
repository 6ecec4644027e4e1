package lampwright.store;

import static lampwright.schema.generated.Tables.AUDIT_ENTRY;
import static lampwright.schema.generated.Tables.PERSON;
import static org.jooq.impl.DSL.select;
import static org.jooq.impl.DSL.val;

import java.util.Map;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.people.AuditAction;
import lampwright.people.AuditKind;
import lampwright.people.PersonId;
import org.jooq.JSONB;

/**
 * Writes into the audit trail what no row of a table tells. What is made, changed or deleted in a
 * table is told by a trigger of that table (migration V23), so that no way of writing forgets it.
 */
public final class AuditTrail {

  /** In the detail of a sign-in: whether it was in a browser that was new. */
  public static final String NEW_BROWSER = "new_browser";

  /** In the detail of ended sessions: how many. */
  public static final String SESSIONS = "sessions";

  private static final int LONGEST_NAME = 200;

  private final Transaction in;

  public AuditTrail(Transaction in) {
    this.in = in;
  }

  /**
   * Notes what concerns somebody's account. Only they can read it.
   *
   * @param account whose
   * @param subject the id of what it was done to; empty for the account itself
   * @param name what that is called; may be empty
   */
  public void note(
      PersonId account, AuditAction action, AuditKind kind, String subject, String name) {
    note(account, action, kind, subject, name, Map.of());
  }

  /**
   * Notes that somebody signed in.
   *
   * @param fromNewBrowser in a browser in which they had not before, as far as we know
   */
  public void noteSignIn(PersonId account, boolean fromNewBrowser) {
    note(
        account,
        AuditAction.SIGNED_IN,
        AuditKind.ACCOUNT,
        "",
        "",
        fromNewBrowser ? Map.of(NEW_BROWSER, true) : Map.of());
  }

  /** Notes that so many of somebody's sessions were ended; nothing where there were none. */
  public void noteEndedSessions(PersonId account, int sessions) {
    if (sessions > 0) {
      note(
          account,
          AuditAction.SESSIONS_ENDED,
          AuditKind.ACCOUNT,
          "",
          "",
          Map.of(SESSIONS, sessions));
    }
  }

  private void note(
      PersonId account,
      AuditAction action,
      AuditKind kind,
      String subject,
      String name,
      Map<String, Object> detail) {
    in.sql()
        .insertInto(AUDIT_ENTRY)
        .set(AUDIT_ENTRY.PERSON_ID, account.text())
        .set(AUDIT_ENTRY.ACTION, action.word())
        .set(AUDIT_ENTRY.KIND, kind.word())
        .set(AUDIT_ENTRY.SUBJECT_ID, subject.isEmpty() ? account.text() : subject)
        .set(AUDIT_ENTRY.SUBJECT_NAME, bounded(name))
        .set(AUDIT_ENTRY.DETAIL, JSONB.jsonb(Json.print(detail)))
        .execute();
  }

  /** The same of the account itself. */
  public void note(PersonId account, AuditAction action) {
    note(account, action, AuditKind.ACCOUNT, "", "");
  }

  /**
   * Notes that somebody tried to sign in and could not. It takes the same work for an account that
   * is not known, of which nothing is noted, and waits for no disk: how long it takes tells
   * nothing.
   */
  public void noteFailedSignIn(Optional<PersonId> account) {
    in.sql().execute("set local synchronous_commit = off");
    in.sql()
        .insertInto(
            AUDIT_ENTRY,
            AUDIT_ENTRY.PERSON_ID,
            AUDIT_ENTRY.ACTION,
            AUDIT_ENTRY.KIND,
            AUDIT_ENTRY.SUBJECT_ID,
            AUDIT_ENTRY.SUBJECT_NAME)
        .select(
            select(
                    PERSON.ID,
                    val(AuditAction.SIGN_IN_FAILED.word()),
                    val(AuditKind.ACCOUNT.word()),
                    PERSON.ID,
                    val(""))
                .from(PERSON)
                .where(PERSON.ID.eq(account.map(PersonId::text).orElse(""))))
        .execute();
  }

  /**
   * Notes what was done in a studio by the person of its transaction.
   *
   * @param name what it was done to is called; may be empty
   */
  public static void note(
      StudioTransaction in, AuditAction action, AuditKind kind, String subject, String name) {
    in.sql()
        .insertInto(AUDIT_ENTRY)
        .set(AUDIT_ENTRY.STUDIO_ID, in.studio().text())
        .set(AUDIT_ENTRY.PERSON_ID, in.person().text())
        .set(AUDIT_ENTRY.ACTION, action.word())
        .set(AUDIT_ENTRY.KIND, kind.word())
        .set(AUDIT_ENTRY.SUBJECT_ID, subject)
        .set(AUDIT_ENTRY.SUBJECT_NAME, bounded(name))
        .execute();
  }

  private static String bounded(String name) {
    return name.codePointCount(0, name.length()) <= LONGEST_NAME
        ? name
        : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME));
  }
}
