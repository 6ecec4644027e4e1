package lampwright.tasks;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lampwright.document.Json;
import lampwright.people.AuditKind;
import lampwright.people.FormerName;
import lampwright.people.Permission;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import lampwright.store.AccountEvents;
import lampwright.store.AuditEntries;
import lampwright.store.AuditEntry;
import lampwright.store.AuditTrail;
import lampwright.store.Database;

/**
 * Tells a studio's owners who did what to what there, and when; and a person what happened with
 * their own account.
 */
public final class Auditing {

  /** In the detail of a sign-in: whether it was in a browser that was new. */
  public static final String NEW_BROWSER = AuditTrail.NEW_BROWSER;

  /** In the detail of ended sessions: how many. */
  public static final String SESSIONS = AuditTrail.SESSIONS;

  private final Database database;

  public Auditing(Database database) {
    this.database = database;
  }

  /**
   * Which lines are wanted; what is empty does not matter.
   *
   * @param subject the id of what it was done to
   * @param setup the setup that it was done to, or to what hangs on it: takes, pictures, links
   * @param from not before
   * @param until before
   */
  public record Wish(
      Optional<PersonId> person,
      Optional<AuditKind> kind,
      Optional<String> subject,
      Optional<String> setup,
      Optional<Instant> from,
      Optional<Instant> until) {}

  /**
   * Part of the trail, the newest first.
   *
   * @throws Refused NotAllowed for who is no owner, Invalid at {@code /cursor}
   */
  public Listed<Audited> list(Caller caller, StudioId studio, Wish wish, Listed.Wish part) {
    Optional<Long> before = before(part.cursor());
    return database.inStudio(
        studio,
        caller.asker(),
        in -> {
          Leave.ask(in, Permission.SEE_AUDIT);
          List<AuditEntry> found =
              new AuditEntries(in)
                  .list(
                      new AuditEntries.Wanted(
                          wish.person(),
                          wish.kind(),
                          wish.subject(),
                          wish.setup(),
                          wish.from(),
                          wish.until()),
                      before,
                      part.limit() + 1);
          return listed(found, part);
        });
  }

  /**
   * Part of what happened with the caller's own account, the newest first.
   *
   * @throws Refused Invalid at {@code /cursor}
   */
  public Listed<Audited> listOwn(Caller caller, Listed.Wish part) {
    Optional<Long> before = before(part.cursor());
    return listed(
        database.asPerson(
            caller.asker(), in -> new AccountEvents(in).list(before, part.limit() + 1)),
        part);
  }

  private static Listed<Audited> listed(List<AuditEntry> found, Listed.Wish part) {
    boolean more = found.size() > part.limit();
    List<AuditEntry> shown = more ? found.subList(0, part.limit()) : found;
    return new Listed<>(
        shown.stream().map(Auditing::audited).toList(),
        more ? Optional.of(Long.toString(shown.getLast().number())) : Optional.empty());
  }

  private static Optional<Long> before(Optional<String> cursor) {
    return cursor.map(
        text -> {
          if (!text.matches("[1-9]\\d{0,17}")) {
            throw Refused.invalid(
                "/cursor", "Cursor must be one that a page gave in next. Leave it out to start.");
          }
          return Long.valueOf(text);
        });
  }

  private static Audited audited(AuditEntry entry) {
    return new Audited(
        entry.number(),
        entry.at(),
        entry
            .person()
            .map(
                person ->
                    new Audited.Who(
                        person,
                        entry.personName().isEmpty() ? FormerName.UNNAMED : entry.personName())),
        entry.action(),
        entry.kind(),
        entry.subject(),
        entry.subjectName(),
        detail(entry.detail()));
  }

  private static Map<String, Object> detail(String json) {
    Map<String, Object> detail = new HashMap<>();
    if (Json.parse(json) instanceof Map<?, ?> read) {
      read.forEach((key, value) -> detail.put(String.valueOf(key), value));
    }
    return detail;
  }
}
