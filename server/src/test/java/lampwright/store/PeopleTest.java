package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import lampwright.people.Asker;
import lampwright.people.Member;
import lampwright.people.Membership;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.Preferred;
import lampwright.people.Reach;
import lampwright.people.Role;
import lampwright.people.SecretHash;
import lampwright.people.StudioId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** People, their studios, sessions, tokens and the first link. */
class PeopleTest {

  private static final AtomicReference<Instant> time =
      new AtomicReference<>(Instant.parse("2026-03-01T06:00:00Z"));

  @RegisterExtension
  static final TestDatabase database =
      new TestDatabase(((InstantSource) time::get).withZone(ZoneOffset.UTC));

  private final PersonId nora = database.newPerson();

  private SecretHash newSecret() {
    return SecretHash.of(database.ids().nextSecret());
  }

  @Test
  void anAddressIsFoundInWhateverCaseAndBelongsToOne() {
    PersonId id = new PersonId(database.ids().next());
    Optional<Person> made =
        database
            .open()
            .anonymous(in -> new People(in).create(id, "Ines@Demo.Example", "Ines", "h"));
    assertEquals(Optional.of(new Person(id, "ines@demo.example", "Ines", Preferred.NOTHING)), made);
    People.WithPassword found =
        database
            .open()
            .anonymous(in -> new People(in).findByEmail("INES@demo.example"))
            .orElseThrow();
    assertEquals(id, found.person().id());
    assertEquals("h", found.passwordHash());
    assertTrue(
        database
            .open()
            .anonymous(
                in ->
                    new People(in)
                        .create(new PersonId(database.ids().next()), "ines@demo.example", "I", "h"))
            .isEmpty());
    database.open().asPerson(Asker.whole(id), in -> new People(in).changePassword(id, "other"));
    assertEquals(
        "other",
        database
            .open()
            .asPerson(Asker.whole(id), in -> new People(in).findWithPassword(id))
            .orElseThrow()
            .passwordHash());
    assertFalse(database.open().<Boolean>anonymous(in -> new People(in).isEmpty()));
  }

  @Test
  void aPersonSeesTheirOwnStudiosAndRoles() {
    PersonId omar = database.newPerson();
    StudioId noras = database.newStudio(nora);
    StudioId omars = database.newStudio(omar);
    database.join(omars, omar, nora, Role.CREW);
    List<Membership> studios =
        database.open().asPerson(Asker.whole(nora), in -> new Studios(in).list());
    assertEquals(2, studios.size());
    assertEquals(
        Optional.of(Role.CREW),
        database.open().asPerson(Asker.whole(nora), in -> new Studios(in).findRole(omars)));
    assertEquals(
        Optional.of(Role.OWNER),
        database.open().asPerson(Asker.whole(nora), in -> new Studios(in).findRole(noras)));
    assertEquals(
        Optional.empty(),
        database.open().asPerson(Asker.whole(omar), in -> new Studios(in).findRole(noras)));
    assertEquals(
        Optional.empty(),
        database
            .open()
            .asPerson(Asker.whole(omar), in -> new Studios(in).findRole(new StudioId("nowhere0"))));
    // Even one who was let in by mistake is told their own role only.
    assertEquals(
        Optional.empty(),
        database.open().anonymous(in -> new Studios(in.enter(noras, omar)).findRole(noras)));
  }

  @Test
  void membersComeChangeAndGo() {
    StudioId studio = database.newStudio(nora);
    PersonId omar = database.newPerson();
    database
        .open()
        .inStudio(
            studio,
            Asker.whole(nora),
            in -> {
              Members members = new Members(in);
              assertTrue(members.isFounded());
              assertTrue(members.add(omar, Role.READER));
              assertFalse(members.add(omar, Role.OWNER));
              assertTrue(members.changeRole(omar, Role.AUTHOR));
              assertEquals(List.of(nora), members.listOwnersAndHold());
              assertEquals(
                  List.of(Role.AUTHOR),
                  members.list().stream()
                      .filter(member -> member.person().id().equals(omar))
                      .map(Member::role)
                      .toList());
              assertTrue(members.remove(omar));
              assertFalse(members.remove(omar));
              return members.changeRole(omar, Role.CREW);
            });
  }

  @Test
  void aSessionEndsByItsTimeOrByHand() {
    SecretHash token = newSecret();
    Instant expiry = time.get().plus(Duration.ofMinutes(30));
    begin(token, expiry);
    Sessions.Session session = find(token).orElseThrow();
    assertEquals(nora, session.person());
    assertEquals(expiry, session.expiresAt());

    time.updateAndGet(now -> now.plus(Duration.ofMinutes(29)));
    Instant later = time.get().plus(Duration.ofMinutes(30));
    database.open().asPerson(Asker.whole(nora), in -> new Sessions(in).touch(token, later));
    time.updateAndGet(now -> now.plus(Duration.ofMinutes(29)));
    assertEquals(later, find(token).orElseThrow().expiresAt());
    time.updateAndGet(now -> now.plus(Duration.ofMinutes(1)));
    assertTrue(find(token).isEmpty());
    assertTrue(database.open().anonymous(in -> new Sessions(in).forgetExpired()) >= 1);

    SecretHash other = newSecret();
    begin(token, time.get().plus(Duration.ofMinutes(30)));
    begin(other, time.get().plus(Duration.ofMinutes(30)));
    assertEquals(
        2, database.open().asPerson(Asker.whole(nora), in -> new Sessions(in).list(nora)).size());
    database.open().asPerson(Asker.whole(nora), in -> new Sessions(in).endOthers(nora, other));
    assertTrue(find(token).isEmpty());
    database.open().asPerson(Asker.whole(nora), in -> new Sessions(in).end(other));
    assertTrue(find(other).isEmpty());
  }

  private void begin(SecretHash token, Instant expiry) {
    database
        .open()
        .anonymous(
            in -> new Sessions(in).begin(database.ids().next(), nora, token, "a browser", expiry));
  }

  private Optional<Sessions.Session> find(SecretHash token) {
    return database.open().anonymous(in -> new Sessions(in).find(token));
  }

  @Test
  void aTokenIsFoundByItsSecretAndOnlyItsOwnerDeletesIt() throws SQLException {
    PersonId omar = database.newPerson();
    String secret = database.ids().nextSecret();
    String id = database.ids().next();
    database
        .open()
        .asPerson(
            Asker.whole(nora),
            in ->
                new Tokens(in)
                    .create(nora, id, SecretHash.of(secret), "van", Reach.WHOLE, Optional.empty()));
    Tokens.Token found =
        database.open().anonymous(in -> new Tokens(in).find(SecretHash.of(secret))).orElseThrow();
    assertEquals(nora, found.person());
    assertEquals(Optional.empty(), found.lastUsedAt());
    database.open().asPerson(Asker.whole(nora), in -> new Tokens(in).touch(nora, id));
    assertEquals(
        List.of(Optional.of(time.get())),
        database.open().asPerson(Asker.whole(nora), in -> new Tokens(in).list(nora)).stream()
            .map(Tokens.Token::lastUsedAt)
            .toList());
    assertFalse(
        database
            .open()
            .<Boolean>asPerson(Asker.whole(omar), in -> new Tokens(in).delete(omar, id)));
    assertTrue(
        database
            .open()
            .<Boolean>asPerson(Asker.whole(nora), in -> new Tokens(in).delete(nora, id)));
    assertTrue(
        database.open().anonymous(in -> new Tokens(in).find(SecretHash.of(secret))).isEmpty());
    assertEquals(
        List.of("0"),
        database.sqlAsSuperuser(
            "select count(*) from lampwright.token t where t::text like '%" + secret + "%'"));
  }

  @Test
  void theFirstLinkWorksOnceEvenForManyAtOnce() throws Exception {
    SecretHash link = newSecret();
    issue(link, time.get().plus(Duration.ofDays(1)));
    assertTrue(database.open().<Boolean>anonymous(in -> new FirstStartLinks(in).isValid(link)));
    Callable<Boolean> use =
        () -> database.open().anonymous(in -> new FirstStartLinks(in).consume(link));
    try (ExecutorService visitors = Executors.newFixedThreadPool(8)) {
      int let = 0;
      for (Future<Boolean> visitor :
          visitors.invokeAll(Stream.generate(() -> use).limit(8).toList())) {
        let += visitor.get() ? 1 : 0;
      }
      assertEquals(1, let);
    }
    assertFalse(database.open().<Boolean>anonymous(in -> new FirstStartLinks(in).isValid(link)));

    SecretHash late = newSecret();
    issue(late, time.get());
    assertFalse(database.open().<Boolean>anonymous(in -> new FirstStartLinks(in).consume(late)));
    assertFalse(
        database.open().<Boolean>anonymous(in -> new FirstStartLinks(in).consume(newSecret())));
  }

  private static void issue(SecretHash link, Instant expiry) {
    database.open().anonymous(in -> new FirstStartLinks(in).issue(link, expiry));
  }

  @Test
  void signingUpMakesPersonStudioAndMemberTogetherOrNotAtAll() {
    PersonId person = new PersonId(database.ids().next());
    StudioId studio = new StudioId(database.ids().next());
    String email = person + "@demo.example";
    try {
      database
          .open()
          .anonymous(
              in -> {
                new People(in).create(person, email, "Ada", "h");
                new Members(in.enter(studio, person)).found("Harbour Light");
                throw new IllegalStateException("at the last moment");
              });
    } catch (IllegalStateException expected) {
      assertTrue(database.open().anonymous(in -> new People(in).findByEmail(email)).isEmpty());
    }
    database
        .open()
        .anonymous(
            in -> {
              new People(in).create(person, email, "Ada", "h");
              new Members(in.enter(studio, person)).found("Harbour Light");
              return person;
            });
    assertEquals(
        List.of(new Membership(studio, "Harbour Light", Role.OWNER)),
        database.open().asPerson(Asker.whole(person), in -> new Studios(in).list()));
  }
}
