package lampwright.store;

import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.name;
import static org.jooq.impl.DSL.val;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import lampwright.people.PersonId;
import lampwright.people.Reach;
import lampwright.people.Role;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import lampwright.setup.Parent;
import lampwright.setup.SetupId;
import lampwright.setup.Standing;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.impl.SQLDataType;

/**
 * Who comes, and one setup of a studio, in one round trip and in a transaction that lasts as long:
 * it is what is asked for most. The steps are in the database, see {@code lampwright.glance}.
 */
public final class Glances {

  private static final String GLANCE =
      "select * from lampwright.glance({0}, {1}, {2}, {3}, {4}, {5}, {6})";

  private static final Field<String> WAY_ID = field(name("way_id"), String.class);
  private static final Field<Instant> BEGUN_AT = field(name("begun_at"), SQLDataType.INSTANT);
  private static final Field<Instant> NOTED_AT = field(name("noted_at"), SQLDataType.INSTANT);
  private static final Field<String> AT_MOST = field(name("at_most"), String.class);
  private static final Field<String> ONLY_STUDIO = field(name("only_studio_id"), String.class);
  private static final Field<String> PERSON = field(name("person_id"), String.class);
  private static final Field<String> EMAIL = field(name("email"), String.class);
  private static final Field<String> NAME = field(name("name"), String.class);
  private static final Field<String> LANGUAGE = field(name("language"), String.class);
  private static final Field<String> LENGTHS = field(name("lengths"), String.class);
  private static final Field<String> STOP_FRACTION = field(name("stop_fraction"), String.class);
  private static final Field<String> ROLE = field(name("role"), String.class);
  private static final Field<Integer> REVISION = field(name("revision"), Integer.class);
  private static final Field<Instant> CHANGED_AT = field(name("changed_at"), SQLDataType.INSTANT);
  private static final Field<String> STATE = field(name("state"), String.class);
  private static final Field<Boolean> ARCHIVED = field(name("archived"), Boolean.class);
  private static final Field<String> PARENT = field(name("parent_id"), String.class);
  private static final Field<Integer> PARENT_REVISION =
      field(name("parent_revision"), Integer.class);
  private static final Field<String> PARENT_TITLE = field(name("parent_title"), String.class);
  private static final Field<String> PARENT_STATE = field(name("parent_state"), String.class);
  private static final Field<Boolean> PARENT_ARCHIVED =
      field(name("parent_archived"), Boolean.class);
  private static final Field<String> CHANGED_BY = field(name("changed_by_name"), String.class);
  private static final Field<Boolean> IS_MEMBER = field(name("is_member"), Boolean.class);
  private static final Field<Boolean> IS_NAMED = field(name("is_named"), Boolean.class);
  private static final Field<Boolean> IS_OF_ARCHIVE = field(name("is_of_archive"), Boolean.class);
  private static final Field<String> DOCUMENT = field(name("document"), String.class);
  private static final Field<String> WRITES = field(name("writes"), String.class);

  private static final Field<?>[] COLUMNS = {
    WAY_ID,
    BEGUN_AT,
    NOTED_AT,
    AT_MOST,
    ONLY_STUDIO,
    PERSON,
    EMAIL,
    NAME,
    LANGUAGE,
    LENGTHS,
    STOP_FRACTION,
    ROLE,
    REVISION,
    CHANGED_AT,
    STATE,
    ARCHIVED,
    PARENT,
    PARENT_REVISION,
    PARENT_TITLE,
    PARENT_STATE,
    PARENT_ARCHIVED,
    CHANGED_BY,
    IS_MEMBER,
    IS_NAMED,
    IS_OF_ARCHIVE,
    DOCUMENT,
    WRITES
  };

  private final AnonymousTransaction in;

  /**
   * @param in of one statement, see {@link Database#eachByItself}
   */
  public Glances(AnonymousTransaction in) {
    this.in = in;
  }

  /**
   * What is asked for.
   *
   * @param studio as the address says it, whether or not there is one
   * @param setup the same; empty where it is only asked who comes
   * @param known the revision whose document is not needed
   * @param withWrites whether to tell how often the studio was written
   */
  public record Wanted(
      String studio, Optional<String> setup, Optional<Integer> known, boolean withWrites) {}

  /**
   * Who has come.
   *
   * @param wayId which of their sessions or tokens they come by
   * @param begunAt since when there is that session or token
   * @param notedAt when its use was last noted
   * @param role what they are in the studio, as far as what they come by reaches; empty for who is
   *     nothing there
   * @param setup empty where the studio has none of that id
   * @param writes differs whenever something of the studio was written; was read before the rest.
   *     Empty where nobody asked, and for who is nothing there
   */
  public record Seen(
      String wayId,
      Instant begunAt,
      Optional<Instant> notedAt,
      lampwright.people.Person person,
      Reach reach,
      Optional<Role> role,
      Optional<Found> setup,
      Optional<String> writes) {}

  /**
   * A setup as it is now, whoever may see it.
   *
   * @param parent what it was made from
   * @param parentStood how that stood
   * @param document of the form; empty where the revision was known
   */
  public record Found(
      int revision,
      Instant changedAt,
      String changedBy,
      Standing standing,
      Optional<Parent> parent,
      Optional<Standing> parentStood,
      Optional<String> document) {}

  /** By a token; empty where it has ended or its maker has gone. */
  public Optional<Seen> byToken(SecretHash secret, Wanted wanted) {
    return look(true, secret, wanted);
  }

  /** By a session; empty where it has ended or waits for a code. */
  public Optional<Seen> bySession(SecretHash secret, Wanted wanted) {
    return look(false, secret, wanted);
  }

  private Optional<Seen> look(boolean byToken, SecretHash secret, Wanted wanted) {
    return in.sql()
        .resultQuery(
            GLANCE,
            val(byToken),
            val(secret.bytes()),
            val(OffsetDateTime.ofInstant(in.now(), ZoneOffset.UTC)),
            val(wanted.studio()),
            val(wanted.setup().orElse(null), SQLDataType.CLOB),
            val(wanted.known().orElse(null), SQLDataType.INTEGER),
            val(wanted.withWrites()))
        .coerce(COLUMNS)
        .fetchOptional(Glances::seen);
  }

  private static Seen seen(Record found) {
    Reach reach =
        new Reach(
            Optional.ofNullable(found.get(AT_MOST)).map(Role::of),
            Optional.ofNullable(found.get(ONLY_STUDIO)).map(StudioId::new));
    return new Seen(
        found.get(WAY_ID),
        found.get(BEGUN_AT),
        Optional.ofNullable(found.get(NOTED_AT)),
        new lampwright.people.Person(
            new PersonId(found.get(PERSON)),
            found.get(EMAIL),
            found.get(NAME),
            People.preferred(
                Optional.ofNullable(found.get(LANGUAGE)),
                found.get(LENGTHS),
                found.get(STOP_FRACTION))),
        reach,
        Optional.ofNullable(found.get(ROLE)).map(Role::of).map(reach::limit),
        found.get(REVISION) == null ? Optional.empty() : Optional.of(found(found)),
        Optional.ofNullable(found.get(WRITES)));
  }

  private static Found found(Record found) {
    Optional<String> parentTitle = Optional.ofNullable(found.get(PARENT_TITLE));
    return new Found(
        found.get(REVISION),
        found.get(CHANGED_AT),
        Names.of(
            Optional.ofNullable(found.get(CHANGED_BY)),
            Boolean.TRUE.equals(found.get(IS_MEMBER)),
            Optional.ofNullable(found.get(IS_NAMED)),
            Boolean.TRUE.equals(found.get(IS_OF_ARCHIVE))),
        standing(found.get(STATE), found.get(ARCHIVED)),
        parentTitle.map(
            title -> new Parent(new SetupId(found.get(PARENT)), found.get(PARENT_REVISION), title)),
        parentTitle.map(_ -> standing(found.get(PARENT_STATE), found.get(PARENT_ARCHIVED))),
        Optional.ofNullable(found.get(DOCUMENT)));
  }

  private static Standing standing(String state, boolean archived) {
    return new Standing(Standing.State.of(state), archived);
  }
}
