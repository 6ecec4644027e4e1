package lampwright.store;

import static lampwright.schema.generated.Tables.AUDIT_ENTRY;
import static org.jooq.impl.DSL.noCondition;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lampwright.document.Json;
import org.jooq.Condition;
import org.jooq.Record;

/**
 * What the audit trail tells of the account of a transaction's person. They see it, and nobody
 * else: row-level security says so too.
 */
public final class AccountEvents {

  private static final int ROWS_AT_A_TIME = 200;

  private final PersonTransaction in;

  public AccountEvents(PersonTransaction in) {
    this.in = in;
  }

  /**
   * At most so many, the newest first.
   *
   * @param before only those with a smaller number
   */
  public List<AuditEntry> list(Optional<Long> before, int limit) {
    return in.sql()
        .select(AUDIT_ENTRY.SEQ, AUDIT_ENTRY.AT, AUDIT_ENTRY.ACTION, AUDIT_ENTRY.KIND)
        .select(AUDIT_ENTRY.SUBJECT_ID, AUDIT_ENTRY.SUBJECT_NAME, AUDIT_ENTRY.DETAIL)
        .from(AUDIT_ENTRY)
        .where(mine())
        .and(before.<Condition>map(AUDIT_ENTRY.SEQ::lt).orElse(noCondition()))
        .orderBy(AUDIT_ENTRY.SEQ.desc())
        .limit(limit)
        .fetch(this::entry);
  }

  /** Hands out all of them as JSON values, the oldest first, however many there are. */
  public void each(Consumer<Map<String, Object>> to) {
    try (Stream<? extends Record> rows =
        in
            .sql()
            .select(AUDIT_ENTRY.AT, AUDIT_ENTRY.ACTION, AUDIT_ENTRY.KIND)
            .select(AUDIT_ENTRY.SUBJECT_ID, AUDIT_ENTRY.SUBJECT_NAME, AUDIT_ENTRY.DETAIL)
            .from(AUDIT_ENTRY)
            .where(mine())
            .orderBy(AUDIT_ENTRY.SEQ)
            .fetchSize(ROWS_AT_A_TIME)
            .stream()) {
      rows.forEach(row -> to.accept(json(row)));
    }
  }

  private Condition mine() {
    return AUDIT_ENTRY.STUDIO_ID.isNull().and(AUDIT_ENTRY.PERSON_ID.eq(in.person().text()));
  }

  private AuditEntry entry(Record found) {
    return new AuditEntry(
        found.get(AUDIT_ENTRY.SEQ),
        found.get(AUDIT_ENTRY.AT),
        Optional.of(in.person()),
        "",
        found.get(AUDIT_ENTRY.ACTION),
        found.get(AUDIT_ENTRY.KIND),
        found.get(AUDIT_ENTRY.SUBJECT_ID),
        found.get(AUDIT_ENTRY.SUBJECT_NAME),
        found.get(AUDIT_ENTRY.DETAIL).data());
  }

  private static Map<String, Object> json(Record row) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("at", row.get(AUDIT_ENTRY.AT).toString());
    json.put("action", row.get(AUDIT_ENTRY.ACTION));
    json.put("kind", row.get(AUDIT_ENTRY.KIND));
    json.put("subject_id", row.get(AUDIT_ENTRY.SUBJECT_ID));
    json.put("subject_name", row.get(AUDIT_ENTRY.SUBJECT_NAME));
    json.put("detail", Json.parse(row.get(AUDIT_ENTRY.DETAIL).data()));
    return json;
  }
}
