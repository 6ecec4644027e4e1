package lampwright.store;

import static lampwright.schema.generated.Tables.AUDIT_ENTRY;
import static lampwright.schema.generated.Tables.BUILT;
import static lampwright.schema.generated.Tables.DRILL_ANSWER;
import static lampwright.schema.generated.Tables.PICTURE;
import static lampwright.schema.generated.Tables.PROPOSAL;
import static lampwright.schema.generated.Tables.SAVED_SEARCH;
import static lampwright.schema.generated.Tables.STAGE_DONE;

import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lampwright.archive.ArchiveKind;
import lampwright.document.Json;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.JSONB;
import org.jooq.Record;
import org.jooq.Table;

/**
 * What a studio keeps of the person of a transaction, and what they wrote there: row by row, as
 * JSON values under the names of the columns. Row-level security has its say on each.
 */
public final class OwnRows {

  private static final int ROWS_AT_A_TIME = 200;

  /** A kind of rows that are about a person, or by them and by nobody after them. */
  public enum Kind {
    SAVED_SEARCHES,
    DRILL_ANSWERS,
    STAGES_DONE,
    BUILDS,
    JUDGEMENTS,
    PROPOSALS,
    PICTURES_ADDED,
    DEEDS
  }

  /**
   * Where a kind's rows are kept.
   *
   * @param person the column of whose they are
   */
  private record Source(
      Table<?> table,
      Field<String> studio,
      Field<String> person,
      List<Field<?>> columns,
      List<Field<?>> order) {}

  private final StudioTransaction in;

  public OwnRows(StudioTransaction in) {
    this.in = in;
  }

  /** Hands out each row of a kind, in the order in which they came to be. */
  public void each(Kind kind, Consumer<Map<String, Object>> to) {
    Source source = source(kind);
    hand(
        source.table(),
        source.columns(),
        source.studio().eq(in.studio().text()).and(source.person().eq(in.person().text())),
        source.order(),
        to);
  }

  /** Hands out each revision of a kind's things that the person made, of deleted things too. */
  public void eachRevision(ArchiveKind kind, Consumer<Map<String, Object>> to) {
    ArchiveShelf of = ArchiveShelf.of(kind);
    Shelf.History history = of.shelf().history();
    Stream<Field<?>> always =
        Stream.of(
            history.id(),
            history.revision(),
            history.label(),
            history.changedAt(),
            history.message(),
            history.deleted());
    hand(
        history.table(),
        Stream.of(always, of.then().stream(), Stream.of(history.document()))
            .<Field<?>>flatMap(fields -> fields)
            .toList(),
        history.studio().eq(in.studio().text()).and(history.changedBy().eq(in.person().text())),
        List.of(history.id(), history.revision()),
        to);
  }

  /** The files of the living pictures that the person added, with what each is by its type. */
  public Map<String, String> pictureFiles() {
    return new TreeMap<>(
        in.sql()
            .selectDistinct(PICTURE.SHA256, PICTURE.MEDIA_TYPE)
            .from(PICTURE)
            .where(PICTURE.STUDIO_ID.eq(in.studio().text()))
            .and(PICTURE.CREATED_BY.eq(in.person().text()))
            .and(PICTURE.DELETED_AT.isNull())
            .fetchMap(PICTURE.SHA256, PICTURE.MEDIA_TYPE));
  }

  private static Source source(Kind kind) {
    return switch (kind) {
      case SAVED_SEARCHES ->
          new Source(
              SAVED_SEARCH,
              SAVED_SEARCH.STUDIO_ID,
              SAVED_SEARCH.PERSON_ID,
              List.of(
                  SAVED_SEARCH.ID,
                  SAVED_SEARCH.NAME,
                  SAVED_SEARCH.QUESTION,
                  SAVED_SEARCH.CREATED_AT,
                  SAVED_SEARCH.CHANGED_AT,
                  SAVED_SEARCH.SEEN_AT,
                  SAVED_SEARCH.SEEN),
              List.of(SAVED_SEARCH.CREATED_AT, SAVED_SEARCH.ID));
      case DRILL_ANSWERS ->
          new Source(
              DRILL_ANSWER,
              DRILL_ANSWER.STUDIO_ID,
              DRILL_ANSWER.PERSON_ID,
              List.of(
                  DRILL_ANSWER.KIND,
                  DRILL_ANSWER.SETUP_ID,
                  DRILL_ANSWER.SETUP_REVISION,
                  DRILL_ANSWER.SEED,
                  DRILL_ANSWER.ANSWER,
                  DRILL_ANSWER.IS_RIGHT,
                  DRILL_ANSWER.SLIP,
                  DRILL_ANSWER.ANSWERED_AT),
              List.of(DRILL_ANSWER.ID));
      case STAGES_DONE ->
          new Source(
              STAGE_DONE,
              STAGE_DONE.STUDIO_ID,
              STAGE_DONE.PERSON_ID,
              List.of(STAGE_DONE.TRAIL_ID, STAGE_DONE.STAGE, STAGE_DONE.DONE_AT),
              List.of(STAGE_DONE.DONE_AT, STAGE_DONE.TRAIL_ID, STAGE_DONE.STAGE));
      case DEEDS -> ofDeeds();
      case BUILDS -> ofBuilds(BUILT.PERSON_ID);
      case JUDGEMENTS -> ofBuilds(BUILT.JUDGED_BY);
      case PROPOSALS ->
          new Source(
              PROPOSAL,
              PROPOSAL.STUDIO_ID,
              PROPOSAL.CREATED_BY,
              List.of(
                  PROPOSAL.ID,
                  PROPOSAL.SETUP_ID,
                  PROPOSAL.SETUP_REVISION,
                  PROPOSAL.CREATED_AT,
                  PROPOSAL.DECIDED_AT,
                  PROPOSAL.MADE_REVISION,
                  PROPOSAL.USED),
              List.of(PROPOSAL.CREATED_AT, PROPOSAL.ID));
      case PICTURES_ADDED ->
          new Source(
              PICTURE,
              PICTURE.STUDIO_ID,
              PICTURE.CREATED_BY,
              List.of(
                  PICTURE.ID,
                  PICTURE.SETUP_ID,
                  PICTURE.CREATED_AT,
                  PICTURE.DELETED_AT,
                  PICTURE.SHA256,
                  PICTURE.BYTES,
                  PICTURE.MEDIA_TYPE,
                  PICTURE.WIDTH,
                  PICTURE.HEIGHT,
                  PICTURE.FACTS,
                  PICTURE.STATISTICS),
              List.of(PICTURE.CREATED_AT, PICTURE.ID));
    };
  }

  private static Source ofDeeds() {
    return new Source(
        AUDIT_ENTRY,
        AUDIT_ENTRY.STUDIO_ID,
        AUDIT_ENTRY.PERSON_ID,
        List.of(AUDIT_ENTRY.AT, AUDIT_ENTRY.ACTION, AUDIT_ENTRY.KIND, AUDIT_ENTRY.SUBJECT_ID),
        List.of(AUDIT_ENTRY.SEQ));
  }

  private static Source ofBuilds(Field<String> person) {
    return new Source(
        BUILT,
        BUILT.STUDIO_ID,
        person,
        List.of(
            BUILT.ID,
            BUILT.TRAIL_ID,
            BUILT.STAGE,
            BUILT.SETUP_ID,
            BUILT.TAKE_ID,
            BUILT.HANDED_IN_AT,
            BUILT.JUDGED_AT,
            BUILT.IS_SIGNED_OFF,
            BUILT.WORDS),
        List.of(BUILT.HANDED_IN_AT, BUILT.ID));
  }

  private void hand(
      Table<?> table,
      List<Field<?>> columns,
      Condition which,
      List<Field<?>> order,
      Consumer<Map<String, Object>> to) {
    try (Stream<Record> rows =
        in
            .sql()
            .select(columns)
            .from(table)
            .where(which)
            .orderBy(order)
            .fetchSize(ROWS_AT_A_TIME)
            .stream()) {
      rows.forEach(row -> to.accept(json(row)));
    }
  }

  /** What is empty is left out. */
  private static Map<String, Object> json(Record row) {
    Map<String, Object> json = new LinkedHashMap<>();
    for (Field<?> column : row.fields()) {
      Object value = row.get(column);
      if (value != null) {
        json.put(column.getName(), json(value));
      }
    }
    return json;
  }

  private static Object json(Object value) {
    return switch (value) {
      case Instant moment -> moment.toString();
      case JSONB document -> Json.parse(document.data());
      case Object[] list -> Arrays.stream(list).map(OwnRows::json).toList();
      default -> value;
    };
  }
}
