package lampwright.store;

import java.time.Instant;
import lampwright.people.PersonId;
import lampwright.people.StudioId;
import org.jooq.DSLContext;

/** A transaction for a person in a studio. It sees that studio's rows and no other's. */
public final class StudioTransaction extends PersonTransaction {

  private final StudioId studio;

  StudioTransaction(DSLContext sql, Instant now, StudioId studio, PersonId person) {
    super(sql, now, person);
    this.studio = studio;
    set("lampwright.studio", studio.text());
  }

  public StudioId studio() {
    return studio;
  }
}
