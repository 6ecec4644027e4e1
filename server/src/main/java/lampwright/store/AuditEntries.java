package lampwright.store;

import static lampwright.schema.generated.Tables.AUDIT_ENTRY;
import static lampwright.schema.generated.Tables.PERSON;
import static org.jooq.impl.DSL.jsonbGetAttributeAsText;
import static org.jooq.impl.DSL.noCondition;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.people.AuditKind;
import lampwright.people.PersonId;
import lampwright.schema.generated.tables.Person;
import org.jooq.Condition;
import org.jooq.Record;

/** The audit trail of the studio that the transaction is in. Its owners see it, and nobody else. */
public final class AuditEntries {

  private static final Person WHO = PERSON.as("who");
  private static final Person SUBJECT = PERSON.as("subject");

  private final StudioTransaction in;

  public AuditEntries(StudioTransaction in) {
    this.in = in;
  }

  /**
   * Which entries are wanted; what is empty does not matter.
   *
   * @param subject the id of what it was done to
   * @param setup the setup that it was done to, or to what hangs on it
   * @param from not before
   * @param until before
   */
  public record Wanted(
      Optional<PersonId> person,
      Optional<AuditKind> kind,
      Optional<String> subject,
      Optional<String> setup,
      Optional<Instant> from,
      Optional<Instant> until) {}

  /**
   * At most so many, the newest first.
   *
   * @param before only those with a smaller number
   */
  public List<AuditEntry> list(Wanted wanted, Optional<Long> before, int limit) {
    return in.sql()
        .select(AUDIT_ENTRY.SEQ, AUDIT_ENTRY.AT, AUDIT_ENTRY.PERSON_ID, WHO.NAME)
        .select(AUDIT_ENTRY.ACTION, AUDIT_ENTRY.KIND, AUDIT_ENTRY.SUBJECT_ID)
        .select(AUDIT_ENTRY.SUBJECT_NAME, SUBJECT.NAME, AUDIT_ENTRY.DETAIL)
        .from(AUDIT_ENTRY)
        .leftJoin(WHO)
        .on(WHO.ID.eq(AUDIT_ENTRY.PERSON_ID))
        .leftJoin(SUBJECT)
        .on(AUDIT_ENTRY.KIND.eq(AuditKind.MEMBER.word()))
        .and(SUBJECT.ID.eq(AUDIT_ENTRY.SUBJECT_ID))
        .where(AUDIT_ENTRY.STUDIO_ID.eq(in.studio().text()))
        .and(are(wanted))
        .and(before.<Condition>map(AUDIT_ENTRY.SEQ::lt).orElse(noCondition()))
        .orderBy(AUDIT_ENTRY.SEQ.desc())
        .limit(limit)
        .fetch(AuditEntries::entry);
  }

  private static Condition are(Wanted wanted) {
    return wanted
        .person()
        .<Condition>map(person -> AUDIT_ENTRY.PERSON_ID.eq(person.text()))
        .orElse(noCondition())
        .and(
            wanted
                .kind()
                .<Condition>map(kind -> AUDIT_ENTRY.KIND.eq(kind.word()))
                .orElse(noCondition()))
        .and(wanted.subject().<Condition>map(AUDIT_ENTRY.SUBJECT_ID::eq).orElse(noCondition()))
        .and(wanted.setup().map(AuditEntries::isAbout).orElse(noCondition()))
        .and(wanted.from().<Condition>map(AUDIT_ENTRY.AT::ge).orElse(noCondition()))
        .and(wanted.until().<Condition>map(AUDIT_ENTRY.AT::lt).orElse(noCondition()));
  }

  /** The trigger writes into the detail on which setup something hangs. */
  private static Condition isAbout(String setup) {
    return AUDIT_ENTRY
        .SUBJECT_ID
        .eq(setup)
        .and(AUDIT_ENTRY.KIND.eq(AuditKind.SETUP.word()))
        .or(jsonbGetAttributeAsText(AUDIT_ENTRY.DETAIL, "setup").eq(setup));
  }

  private static AuditEntry entry(Record found) {
    return new AuditEntry(
        found.get(AUDIT_ENTRY.SEQ),
        found.get(AUDIT_ENTRY.AT),
        Optional.ofNullable(found.get(AUDIT_ENTRY.PERSON_ID)).map(PersonId::new),
        Optional.ofNullable(found.get(WHO.NAME)).orElse(""),
        found.get(AUDIT_ENTRY.ACTION),
        found.get(AUDIT_ENTRY.KIND),
        found.get(AUDIT_ENTRY.SUBJECT_ID),
        Optional.ofNullable(found.get(SUBJECT.NAME)).orElse(found.get(AUDIT_ENTRY.SUBJECT_NAME)),
        found.get(AUDIT_ENTRY.DETAIL).data());
  }
}
