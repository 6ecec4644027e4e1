package lampwright.store;

import java.time.Instant;
import lampwright.people.PersonId;
import org.jooq.DSLContext;

/** A transaction for a person, who sees their own memberships but no studio's rows. */
public sealed class PersonTransaction extends Transaction permits StudioTransaction {

  private final PersonId person;

  PersonTransaction(DSLContext sql, Instant now, PersonId person) {
    super(sql, now);
    this.person = person;
    set("lampwright.person", person.text());
  }

  public PersonId person() {
    return person;
  }
}
