package lampwright.store;

import static lampwright.schema.generated.Tables.DRILL_ANSWER;

import java.util.List;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.setup.SetupId;
import org.jooq.Record;

/**
 * What was answered to drills in the studio that the transaction is in: one's own, and for owners
 * everybody's.
 */
public final class DrillAnswers {

  private final StudioTransaction in;

  public DrillAnswers(StudioTransaction in) {
    this.in = in;
  }

  /** What the person of the transaction answers now. */
  public record Given(
      String kind,
      SetupId setup,
      int setupRevision,
      long seed,
      String answer,
      boolean isRight,
      Optional<String> slip) {}

  /** Keeps an answer of the person of the transaction. */
  public void add(Given given) {
    in.sql()
        .insertInto(DRILL_ANSWER)
        .set(DRILL_ANSWER.STUDIO_ID, in.studio().text())
        .set(DRILL_ANSWER.PERSON_ID, in.person().text())
        .set(DRILL_ANSWER.KIND, given.kind())
        .set(DRILL_ANSWER.SETUP_ID, given.setup().text())
        .set(DRILL_ANSWER.SETUP_REVISION, given.setupRevision())
        .set(DRILL_ANSWER.SEED, given.seed())
        .set(DRILL_ANSWER.ANSWER, given.answer())
        .set(DRILL_ANSWER.IS_RIGHT, given.isRight())
        .set(DRILL_ANSWER.SLIP, given.slip().orElse(null))
        .set(DRILL_ANSWER.ANSWERED_AT, in.now())
        .execute();
  }

  /** What a person answered, in the order in which they did. */
  public List<StoredDrillAnswer> listOf(PersonId person) {
    return in.sql()
        .selectFrom(DRILL_ANSWER)
        .where(DRILL_ANSWER.STUDIO_ID.eq(in.studio().text()))
        .and(DRILL_ANSWER.PERSON_ID.eq(person.text()))
        .orderBy(DRILL_ANSWER.ANSWERED_AT, DRILL_ANSWER.ID)
        .fetch(DrillAnswers::answer);
  }

  private static StoredDrillAnswer answer(Record found) {
    return new StoredDrillAnswer(
        new PersonId(found.get(DRILL_ANSWER.PERSON_ID)),
        found.get(DRILL_ANSWER.KIND),
        new SetupId(found.get(DRILL_ANSWER.SETUP_ID)),
        found.get(DRILL_ANSWER.SETUP_REVISION),
        found.get(DRILL_ANSWER.SEED),
        found.get(DRILL_ANSWER.ANSWER),
        found.get(DRILL_ANSWER.IS_RIGHT),
        Optional.ofNullable(found.get(DRILL_ANSWER.SLIP)),
        found.get(DRILL_ANSWER.ANSWERED_AT));
  }
}
