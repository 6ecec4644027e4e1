package lampwright.store;

import static lampwright.schema.generated.Tables.INVITATION;
import static lampwright.schema.generated.Tables.MEMBER;
import static lampwright.schema.generated.Tables.PERSON;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lampwright.people.Invitation;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import org.jooq.Condition;
import org.jooq.Record;
import org.jooq.SelectConditionStep;

/** The open invitations of the studio that the transaction is in. */
public final class Invitations {

  private final StudioTransaction in;

  public Invitations(StudioTransaction in) {
    this.in = in;
  }

  /** Makes one, by the person of the transaction. */
  public void create(String id, SecretHash secret, Role role, String meantFor, Instant expiresAt) {
    in.sql()
        .insertInto(INVITATION)
        .set(INVITATION.STUDIO_ID, in.studio().text())
        .set(INVITATION.ID, id)
        .set(INVITATION.TOKEN_HASH, secret.bytes())
        .set(INVITATION.ROLE, role.word())
        .set(INVITATION.MEANT_FOR, meantFor)
        .set(INVITATION.INVITED_BY, in.person().text())
        .set(INVITATION.CREATED_AT, in.now())
        .set(INVITATION.EXPIRES_AT, expiresAt)
        .execute();
  }

  /** The studio that a link's secret invites to; empty where it does not, or no longer. */
  public static Optional<StudioId> findStudio(AnonymousTransaction in, SecretHash secret) {
    return in.holding(secret)
        .sql()
        .select(INVITATION.STUDIO_ID)
        .from(INVITATION)
        .where(INVITATION.TOKEN_HASH.eq(secret.bytes()))
        .and(INVITATION.EXPIRES_AT.gt(in.now()))
        .fetchOptional(found -> new StudioId(found.get(INVITATION.STUDIO_ID)));
  }

  /** Those that would work now, the newest first. */
  public List<Invitation> list() {
    return open(INVITATION.STUDIO_ID.eq(in.studio().text()))
        .orderBy(INVITATION.CREATED_AT.desc(), INVITATION.ID)
        .fetch(Invitations::invitation);
  }

  /** The one of that id, where it would work now. */
  public Optional<Invitation> find(String id) {
    return open(INVITATION.STUDIO_ID.eq(in.studio().text()).and(INVITATION.ID.eq(id)))
        .fetchOptional(Invitations::invitation);
  }

  /** The one of a secret, where it would work now. */
  public Optional<Invitation> find(SecretHash secret) {
    return open(INVITATION
            .STUDIO_ID
            .eq(in.studio().text())
            .and(INVITATION.TOKEN_HASH.eq(secret.bytes())))
        .fetchOptional(Invitations::invitation);
  }

  /** Who made it must still be an owner: nobody is let in by who could not let them in today. */
  private SelectConditionStep<? extends Record> open(Condition which) {
    return in.sql()
        .select(INVITATION.fields())
        .select(PERSON.NAME)
        .from(INVITATION)
        .join(MEMBER)
        .on(MEMBER.STUDIO_ID.eq(INVITATION.STUDIO_ID))
        .and(MEMBER.PERSON_ID.eq(INVITATION.INVITED_BY))
        .join(PERSON)
        .on(PERSON.ID.eq(INVITATION.INVITED_BY))
        .where(which)
        .and(INVITATION.EXPIRES_AT.gt(in.now()))
        .and(MEMBER.ROLE.eq(Role.OWNER.word()));
  }

  /**
   * Takes one away, because it was used or withdrawn. Of several who try at once one is told true;
   * it counts when the transaction is kept.
   */
  public boolean delete(String id) {
    return in.sql()
            .deleteFrom(INVITATION)
            .where(INVITATION.STUDIO_ID.eq(in.studio().text()))
            .and(INVITATION.ID.eq(id))
            .execute()
        == 1;
  }

  /** Forgets those that have expired, and those of a person who owns the studio no more. */
  public void forgetVoid() {
    in.sql()
        .deleteFrom(INVITATION)
        .where(INVITATION.STUDIO_ID.eq(in.studio().text()))
        .and(
            INVITATION
                .EXPIRES_AT
                .le(in.now())
                .or(
                    INVITATION.INVITED_BY.notIn(
                        in.sql()
                            .select(MEMBER.PERSON_ID)
                            .from(MEMBER)
                            .where(MEMBER.STUDIO_ID.eq(in.studio().text()))
                            .and(MEMBER.ROLE.eq(Role.OWNER.word())))))
        .execute();
  }

  private static Invitation invitation(Record found) {
    return new Invitation(
        new StudioId(found.get(INVITATION.STUDIO_ID)),
        found.get(INVITATION.ID),
        Role.of(found.get(INVITATION.ROLE)),
        found.get(INVITATION.MEANT_FOR),
        new PersonId(found.get(INVITATION.INVITED_BY)),
        found.get(PERSON.NAME),
        found.get(INVITATION.CREATED_AT),
        found.get(INVITATION.EXPIRES_AT));
  }
}
