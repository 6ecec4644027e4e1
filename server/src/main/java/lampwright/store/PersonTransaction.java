package lampwright.store;

import java.time.Instant;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.StudioId;
import org.jooq.DSLContext;

/** A transaction for a person, who sees their own memberships but no studio's rows. */
public sealed class PersonTransaction extends Transaction permits StudioTransaction {

  private final Asker asker;

  PersonTransaction(DSLContext sql, Instant now, Asker asker) {
    this(sql, asker, now);
    set("lampwright.person", asker.person().text());
  }

  /** For whom the database has been told of already. */
  PersonTransaction(DSLContext sql, Asker asker, Instant now) {
    super(sql, now);
    this.asker = asker;
  }

  public PersonId person() {
    return asker.person();
  }

  /** How far what the person came in with reaches. */
  public Reach reach() {
    return asker.reach();
  }

  /**
   * Goes on in a studio, so that all of it is kept or none; empty for who does not belong to it.
   */
  public StudioTransaction enter(StudioId studio) {
    return StudioTransaction.ofMember(sql(), now(), studio, asker);
  }
}
