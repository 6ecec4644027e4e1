package lampwright.store;

import static org.jooq.impl.DSL.val;

import java.time.Instant;
import java.util.Optional;
import lampwright.people.Asker;
import lampwright.people.Role;
import lampwright.people.StudioId;
import org.jooq.DSLContext;

/**
 * A transaction for a person in a studio. It sees that studio's rows and no other's; nobody gets
 * one of a studio that they do not belong to, whether or not leave is asked then.
 */
public final class StudioTransaction extends PersonTransaction {

  /**
   * Says to row-level security who asks, finds what they are in the studio, and opens it where they
   * are something: one round trip, because every request makes it. The second step reads what the
   * first one gave back and the third what the second one did, so they come in this order.
   */
  private static final String ENTER =
      """
      with asker as materialized (
        select set_config('lampwright.person', {0}, true) as person),
      found as materialized (
        select (select m.role from lampwright.member m
          where m.studio_id = {1} and m.person_id = asker.person) as role
        from asker)
      select set_config('lampwright.studio', case when role is null then '' else {1} end, true),
        role
      from found
      """;

  private final StudioId studio;
  private final Optional<Role> role;

  private StudioTransaction(
      DSLContext sql, Instant now, StudioId studio, Asker asker, Optional<Role> role) {
    super(sql, asker, now);
    this.studio = studio;
    this.role = role;
  }

  /**
   * Of a member.
   *
   * @throws NotEntered for anybody else, and where what they came in with is not good for the
   *     studio
   */
  static StudioTransaction ofMember(DSLContext sql, Instant now, StudioId studio, Asker asker) {
    if (!asker.reach().includes(studio)) {
      throw new NotEntered();
    }
    Role role =
        sql.resultQuery(ENTER, val(asker.person().text()), val(studio.text()))
            .fetchSingle()
            .map(found -> Optional.ofNullable(found.get(1, String.class)))
            .map(Role::of)
            .orElseThrow(NotEntered::new);
    return new StudioTransaction(sql, now, studio, asker, Optional.of(asker.reach().limit(role)));
  }

  /** Of whom something other than membership lets in; the caller has made sure of that. */
  static StudioTransaction opened(DSLContext sql, Instant now, StudioId studio, Asker asker) {
    StudioTransaction entered = new StudioTransaction(sql, now, studio, asker, Optional.empty());
    entered.set("lampwright.person", asker.person().text());
    entered.set("lampwright.studio", studio.text());
    return entered;
  }

  public StudioId studio() {
    return studio;
  }

  /**
   * What the person is in the studio, as it was when they entered it; empty where something other
   * than membership let them in.
   */
  public Optional<Role> role() {
    return role;
  }
}
