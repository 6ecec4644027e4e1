package lampwright.store;

import static lampwright.schema.generated.Tables.MEMBER;
import static org.jooq.impl.DSL.coalesce;
import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.select;
import static org.jooq.impl.DSL.val;

import java.time.Instant;
import lampwright.people.Asker;
import lampwright.people.StudioId;
import org.jooq.DSLContext;
import org.jooq.Field;

/**
 * A transaction for a person in a studio. It sees that studio's rows and no other's; nobody gets
 * one of a studio that they do not belong to, whether or not leave is asked then.
 */
public final class StudioTransaction extends PersonTransaction {

  private final StudioId studio;

  private StudioTransaction(DSLContext sql, Instant now, StudioId studio, Asker asker) {
    super(sql, now, asker);
    this.studio = studio;
  }

  /**
   * Of a member.
   *
   * @throws NotEntered for anybody else, and where what they came in with is not good for the
   *     studio
   */
  static StudioTransaction ofMember(DSLContext sql, Instant now, StudioId studio, Asker asker) {
    StudioTransaction entered = new StudioTransaction(sql, now, studio, asker);
    boolean isOpen =
        asker.reach().includes(studio)
            && entered.set("lampwright.studio", entered.onlyAsMember()).equals(studio.text());
    if (!isOpen) {
      throw new NotEntered();
    }
    return entered;
  }

  /** Of whom something other than membership lets in; the caller has made sure of that. */
  static StudioTransaction opened(DSLContext sql, Instant now, StudioId studio, Asker asker) {
    StudioTransaction entered = new StudioTransaction(sql, now, studio, asker);
    entered.set("lampwright.studio", val(studio.text()));
    return entered;
  }

  private Field<String> onlyAsMember() {
    return coalesce(
        field(
            select(MEMBER.STUDIO_ID)
                .from(MEMBER)
                .where(MEMBER.STUDIO_ID.eq(studio.text()))
                .and(MEMBER.PERSON_ID.eq(person().text()))),
        val(""));
  }

  public StudioId studio() {
    return studio;
  }
}
