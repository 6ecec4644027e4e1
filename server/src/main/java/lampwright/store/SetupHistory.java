package lampwright.store;

import static lampwright.schema.generated.Tables.SETUP;
import static lampwright.schema.generated.Tables.SETUP_REVISION;
import static org.jooq.impl.DSL.row;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.SelectField;

/** How the setups of the transaction's studio came to be what they are; of deleted ones too. */
public final class SetupHistory {

  private static final List<SelectField<?>> LINE =
      List.of(
          SETUP_REVISION.REVISION,
          SETUP_REVISION.CHANGED_AT,
          SETUP_REVISION.CHANGED_BY,
          SETUP_REVISION.MESSAGE,
          SETUP_REVISION.DELETED,
          SETUP_REVISION.TITLE,
          SETUP_REVISION.STATE,
          SETUP_REVISION.ARCHIVED,
          SETUP_REVISION.PLANNED_REVISION,
          SETUP_REVISION.RESTORED_FROM);

  private final StudioTransaction in;

  public SetupHistory(StudioTransaction in) {
    this.in = in;
  }

  /** A setup as it was at a revision. */
  public record Past(SetupRevision line, String document) {}

  /** Which revision of a setup is the current one, that of a deletion included. */
  public Optional<Integer> findCurrent(SetupId of) {
    return in.sql()
        .select(SETUP.REVISION)
        .from(SETUP)
        .where(SETUP.STUDIO_ID.eq(in.studio().text()))
        .and(SETUP.ID.eq(of.text()))
        .fetchOptional(SETUP.REVISION);
  }

  /**
   * At most so many revisions, the newest first.
   *
   * @param standings only those where the setup stood so
   * @param before only those with a smaller number
   */
  public List<SetupRevision> list(SetupId of, Set<Standing> standings, int before, int limit) {
    return in.sql()
        .select(LINE)
        .from(SETUP_REVISION)
        .where(isOf(of))
        .and(SETUP_REVISION.REVISION.lt(before))
        .and(stoodSo(standings))
        .orderBy(SETUP_REVISION.REVISION.desc())
        .limit(limit)
        .fetch(SetupHistory::line);
  }

  /** One revision. */
  public Optional<Past> find(SetupId of, int number) {
    return in.sql()
        .select(LINE)
        .select(SETUP_REVISION.DOCUMENT)
        .from(SETUP_REVISION)
        .where(isOf(of))
        .and(SETUP_REVISION.REVISION.eq(number))
        .fetchOptional(found -> new Past(line(found), found.get(SETUP_REVISION.DOCUMENT).data()));
  }

  private Condition isOf(SetupId setup) {
    return SETUP_REVISION
        .STUDIO_ID
        .eq(in.studio().text())
        .and(SETUP_REVISION.SETUP_ID.eq(setup.text()));
  }

  static Condition stoodSo(Set<Standing> standings) {
    return standsSo(SETUP_REVISION.STATE, SETUP_REVISION.ARCHIVED, standings);
  }

  static Condition standsSo(Field<String> state, Field<Boolean> archived, Set<Standing> standings) {
    return row(state, archived)
        .in(standings.stream().map(one -> row(one.state().word(), one.archived())).toList());
  }

  private static SetupRevision line(Record found) {
    return new SetupRevision(
        new Revision(
            found.get(SETUP_REVISION.REVISION),
            found.get(SETUP_REVISION.CHANGED_AT),
            new PersonId(found.get(SETUP_REVISION.CHANGED_BY)),
            found.get(SETUP_REVISION.MESSAGE),
            found.get(SETUP_REVISION.DELETED)),
        found.get(SETUP_REVISION.TITLE),
        new Standing(
            Standing.State.of(found.get(SETUP_REVISION.STATE)), found.get(SETUP_REVISION.ARCHIVED)),
        Optional.ofNullable(found.get(SETUP_REVISION.PLANNED_REVISION)),
        Optional.ofNullable(found.get(SETUP_REVISION.RESTORED_FROM)));
  }
}
