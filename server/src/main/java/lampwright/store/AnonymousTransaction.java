package lampwright.store;

import java.time.Instant;
import lampwright.people.Asker;
import lampwright.people.PersonId;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import org.jooq.DSLContext;

/** A transaction for nobody yet: signing in and signing up. It sees no studio's rows. */
public final class AnonymousTransaction extends Transaction {

  AnonymousTransaction(DSLContext sql, Instant now) {
    super(sql, now);
  }

  /** Goes on as whoever holds a link's secret, and sees the row that it is of. */
  public AnonymousTransaction holding(SecretHash secret) {
    set("lampwright.link", secret.hex());
    return this;
  }

  /** Goes on as a person in a studio, both just made, so that all of it is kept or none. */
  public StudioTransaction enter(StudioId studio, PersonId person) {
    return StudioTransaction.opened(sql(), now(), studio, Asker.whole(person));
  }

  /** Goes on as a person outside every studio, for what is to be known of their memberships. */
  public PersonTransaction as(PersonId person) {
    return new PersonTransaction(sql(), now(), Asker.whole(person));
  }
}
