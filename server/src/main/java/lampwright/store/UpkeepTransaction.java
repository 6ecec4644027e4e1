package lampwright.store;

import java.time.Instant;
import lampwright.people.StudioId;
import org.jooq.DSLContext;

/**
 * A transaction of the server itself in a studio, for what it works out from the studio's things:
 * nobody did it, so nothing that a person does can be written in it.
 */
public final class UpkeepTransaction extends Transaction {

  private final StudioId studio;

  UpkeepTransaction(DSLContext sql, Instant now, StudioId studio) {
    super(sql, now);
    this.studio = studio;
    set("lampwright.studio", studio.text());
  }

  public StudioId studio() {
    return studio;
  }
}
