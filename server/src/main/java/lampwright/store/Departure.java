package lampwright.store;

import static lampwright.schema.generated.Tables.KNOWN_DEVICE;
import static lampwright.schema.generated.Tables.MADE_ONCE;
import static lampwright.schema.generated.Tables.PASSWORD_RESET;
import static lampwright.schema.generated.Tables.PERSON;
import static lampwright.schema.generated.Tables.SECOND_FACTOR;
import static lampwright.schema.generated.Tables.SESSION;
import static lampwright.schema.generated.Tables.TOKEN;

import lampwright.people.Preferred;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.impl.DSL;

/**
 * Takes away what the person of a transaction is on this server, when they leave it for good. Their
 * row stays, since what they wrote names it; of them it holds no more than a name.
 */
public final class Departure {

  private final PersonTransaction in;

  public Departure(PersonTransaction in) {
    this.in = in;
  }

  /** Holds the person until the transaction ends: no studio takes them in meanwhile. */
  public void hold() {
    in.sql().select(PERSON.ID).from(PERSON).where(isOneself(PERSON.ID)).forUpdate().fetch();
  }

  /** Forgets in a studio what the person's programs called the things that they made. */
  public void forgetKeys(StudioTransaction studio) {
    studio
        .sql()
        .deleteFrom(MADE_ONCE)
        .where(MADE_ONCE.STUDIO_ID.eq(studio.studio().text()))
        .and(isOneself(MADE_ONCE.PERSON_ID))
        .execute();
  }

  /**
   * Ends every session and token, and lets nobody in as this person again.
   *
   * @param name what they are called from now on
   */
  public void end(String name) {
    in.sql().deleteFrom(SESSION).where(isOneself(SESSION.PERSON_ID)).execute();
    in.sql().deleteFrom(TOKEN).where(isOneself(TOKEN.PERSON_ID)).execute();
    in.sql().deleteFrom(SECOND_FACTOR).where(isOneself(SECOND_FACTOR.PERSON_ID)).execute();
    in.sql().deleteFrom(KNOWN_DEVICE).where(isOneself(KNOWN_DEVICE.PERSON_ID)).execute();
    in.sql().deleteFrom(PASSWORD_RESET).where(isOneself(PASSWORD_RESET.PERSON_ID)).execute();
    in.sql()
        .update(PERSON)
        .set(PERSON.NAME, name)
        .set(PERSON.EMAIL, DSL.castNull(PERSON.EMAIL))
        .set(PERSON.PASSWORD_HASH, DSL.castNull(PERSON.PASSWORD_HASH))
        .set(PERSON.LANGUAGE, DSL.castNull(PERSON.LANGUAGE))
        .set(PERSON.LENGTHS, Preferred.NOTHING.lengths().key())
        .set(PERSON.STOP_FRACTION, Preferred.NOTHING.stops().key())
        .set(PERSON.LEFT_AT, in.now())
        .where(isOneself(PERSON.ID))
        .execute();
  }

  private Condition isOneself(Field<String> person) {
    return person.eq(in.person().text());
  }
}
