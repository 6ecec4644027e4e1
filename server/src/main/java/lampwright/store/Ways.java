package lampwright.store;

import static lampwright.schema.generated.Tables.BUILT;
import static lampwright.schema.generated.Tables.STAGE_DONE;
import static lampwright.schema.generated.Tables.TAKE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampwright.learning.trail.HandedIn;
import lampwright.learning.trail.StageId;
import lampwright.learning.trail.TrailId;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import lampwright.setup.takes.TakeId;
import org.jooq.Condition;
import org.jooq.Record;
import org.jooq.impl.DSL;

/**
 * How far members of the transaction's studio have come on its trails: their own way, for owners
 * everybody's, for authors the builds that wait and those that they judged.
 */
public final class Ways {

  private final StudioTransaction in;

  public Ways(StudioTransaction in) {
    this.in = in;
  }

  /** The person of the transaction has done a stage; once is enough. */
  public void done(TrailId trail, StageId stage) {
    in.sql()
        .insertInto(STAGE_DONE)
        .set(STAGE_DONE.STUDIO_ID, in.studio().text())
        .set(STAGE_DONE.PERSON_ID, in.person().text())
        .set(STAGE_DONE.TRAIL_ID, trail.text())
        .set(STAGE_DONE.STAGE, stage.text())
        .set(STAGE_DONE.DONE_AT, in.now())
        .onConflictDoNothing()
        .execute();
  }

  /** The stages that a person has done, by trail. */
  public Map<TrailId, Set<StageId>> listDone(PersonId person) {
    return in
        .sql()
        .select(STAGE_DONE.TRAIL_ID, STAGE_DONE.STAGE)
        .from(STAGE_DONE)
        .where(STAGE_DONE.STUDIO_ID.eq(in.studio().text()))
        .and(STAGE_DONE.PERSON_ID.eq(person.text()))
        .fetch()
        .stream()
        .collect(
            Collectors.groupingBy(
                found -> new TrailId(found.value1()),
                Collectors.mapping(found -> new StageId(found.value2()), Collectors.toSet())));
  }

  /**
   * The person of the transaction hands in a run-through.
   *
   * @return whether it was not handed in for that stage before
   */
  public boolean handIn(String id, TrailId trail, StageId stage, SetupId setup, TakeId take) {
    return in.sql()
            .insertInto(BUILT)
            .set(BUILT.STUDIO_ID, in.studio().text())
            .set(BUILT.ID, id)
            .set(BUILT.PERSON_ID, in.person().text())
            .set(BUILT.TRAIL_ID, trail.text())
            .set(BUILT.STAGE, stage.text())
            .set(BUILT.SETUP_ID, setup.text())
            .set(BUILT.TAKE_ID, take.text())
            .set(BUILT.HANDED_IN_AT, in.now())
            .onConflictDoNothing()
            .execute()
        == 1;
  }

  public Optional<StoredBuild> find(String id) {
    return list(BUILT.ID.eq(id)).stream().findFirst();
  }

  /** What a person handed in, the first first. */
  public List<StoredBuild> listOf(PersonId person) {
    return list(BUILT.PERSON_ID.eq(person.text()));
  }

  /** What waits to be judged by somebody other than who built it, the first first. */
  public List<StoredBuild> listWaiting() {
    return list(BUILT.JUDGED_AT.isNull().and(BUILT.PERSON_ID.ne(in.person().text())));
  }

  /**
   * The person of the transaction judges a build. Of two that judge at once, one does.
   *
   * @return whether it waited until now, and is another's
   */
  public boolean judge(String id, boolean isSignedOff, String words) {
    return in.sql()
            .update(BUILT)
            .set(BUILT.JUDGED_AT, in.now())
            .set(BUILT.JUDGED_BY, in.person().text())
            .set(BUILT.IS_SIGNED_OFF, isSignedOff)
            .set(BUILT.WORDS, words)
            .where(BUILT.STUDIO_ID.eq(in.studio().text()))
            .and(BUILT.ID.eq(id))
            .and(BUILT.PERSON_ID.ne(in.person().text()))
            .and(BUILT.JUDGED_AT.isNull())
            .execute()
        == 1;
  }

  private List<StoredBuild> list(Condition which) {
    return in.sql()
        .selectFrom(BUILT)
        .where(BUILT.STUDIO_ID.eq(in.studio().text()))
        .and(which)
        .and(BUILT.JUDGED_AT.isNotNull().or(isThere()))
        .orderBy(BUILT.HANDED_IN_AT, BUILT.ID)
        .fetch(Ways::build);
  }

  /** Who takes a run-through back takes it from the judge too, and can hand in another. */
  private static Condition isThere() {
    return DSL.exists(
        DSL.selectOne()
            .from(TAKE)
            .where(TAKE.STUDIO_ID.eq(BUILT.STUDIO_ID))
            .and(TAKE.ID.eq(BUILT.TAKE_ID))
            .and(TAKE.DELETED_AT.isNull()));
  }

  private static StoredBuild build(Record found) {
    return new StoredBuild(
        found.get(BUILT.ID),
        new TrailId(found.get(BUILT.TRAIL_ID)),
        new SetupId(found.get(BUILT.SETUP_ID)),
        new TakeId(found.get(BUILT.TAKE_ID)),
        new HandedIn(
            new StageId(found.get(BUILT.STAGE)),
            new PersonId(found.get(BUILT.PERSON_ID)),
            found.get(BUILT.HANDED_IN_AT),
            Optional.ofNullable(found.get(BUILT.JUDGED_AT))
                .map(
                    at ->
                        new HandedIn.Judgement(
                            found.get(BUILT.IS_SIGNED_OFF),
                            new PersonId(found.get(BUILT.JUDGED_BY)),
                            at,
                            found.get(BUILT.WORDS)))));
  }
}
