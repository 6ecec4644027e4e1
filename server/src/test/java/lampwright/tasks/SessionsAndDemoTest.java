package lampwright.tasks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import lampwright.people.Asker;
import lampwright.people.Membership;
import lampwright.people.PersonId;
import lampwright.people.Role;
import lampwright.people.Seal;
import lampwright.people.SealedSecret;
import lampwright.store.Members;
import lampwright.store.People;
import lampwright.store.SecondFactors;
import lampwright.store.TestDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class SessionsAndDemoTest {

  private static final AtomicReference<Instant> TIME =
      new AtomicReference<>(Instant.parse("2031-03-01T20:00:00Z"));
  private static final InstantSource SOURCE = TIME::get;
  private static final Clock CLOCK = SOURCE.withZone(ZoneOffset.UTC);

  @RegisterExtension static final TestDatabase database = new TestDatabase(CLOCK);

  private final Passwords passwords = new Passwords();
  private final DemoStudio demo = new DemoStudio(database.open(), database.ids(), passwords);
  private final SigningIn signingIn =
      new SigningIn(
          database.open(),
          database.ids(),
          passwords,
          new FailedSignIns(database.open(), CLOCK),
          new Closed(Set.of()),
          Seal.of(new byte[Seal.KEY_BYTES], new SecureRandom()));

  @Test
  void aSessionLastsWhileItIsUsedAndSixtyDaysAtMost() {
    demo.ensure("Tidewrack", "first password");
    String used = signIn("owner@demo.example", "first password");
    String idle = signIn("owner@demo.example", "first password");
    for (int days = 0; days < 52; days += 13) {
      assertTrue(signingIn.find(used).isPresent(), days + " days");
      TIME.updateAndGet(now -> now.plus(Duration.ofDays(13)));
    }
    assertTrue(signingIn.find(used).isPresent());
    assertTrue(signingIn.find(idle).isEmpty());
    TIME.updateAndGet(now -> now.plus(Duration.ofDays(8)));
    assertTrue(signingIn.find(used).isEmpty());
  }

  @Test
  void signingInEndsTheSessionThatTheBrowserCameWith() {
    demo.ensure("Tidewrack", "first password");
    String planted = signIn("reader@demo.example", "first password");
    SigningIn.Session begun =
        signingIn.signIn(
            "owner@demo.example",
            "first password",
            new Visit("192.0.2.1", "", Optional.of(planted), Optional.empty()));
    assertNotEquals(planted, begun.token());
    assertTrue(signingIn.find(planted).isEmpty());
    assertTrue(signingIn.find(begun.token()).isPresent());
  }

  @Test
  void aPersonSeesWhereTheyAreSignedInAndSignsOutThere() {
    demo.ensure("Tidewrack", "first password");
    SessionKeeping sessions = new SessionKeeping(database.open());
    String phone = signIn("author@demo.example", "first password");
    TIME.updateAndGet(now -> now.plus(Duration.ofHours(1)));
    Visit visit =
        new Visit("192.0.2.1", "Tablet\n" + "x".repeat(400), Optional.empty(), Optional.empty());
    String tablet = signingIn.signIn("author@demo.example", "first password", visit).token();
    Caller caller = signingIn.find(phone).orElseThrow();
    List<SessionKeeping.OwnSession> own = sessions.list(caller, phone);
    assertEquals(
        List.of(true, false), own.stream().map(SessionKeeping.OwnSession::isThisOne).toList());
    assertEquals(TIME.get(), own.getFirst().usedAt());
    assertEquals(TIME.get().minus(Duration.ofHours(1)), own.getFirst().begunAt());
    assertEquals("Tablet " + "x".repeat(193), own.getLast().device());
    Caller other = signingIn.find(signIn("crew@demo.example", "first password")).orElseThrow();
    assertThrows(Refused.class, () -> sessions.end(other, own.getLast().id()));
    sessions.end(caller, own.getLast().id());
    assertTrue(signingIn.find(tablet).isEmpty());
    assertThrows(Refused.class, () -> sessions.end(caller, own.getLast().id()));
    String again = signIn("author@demo.example", "first password");
    assertEquals(1, sessions.endOthers(caller, phone));
    assertTrue(signingIn.find(again).isEmpty());
    assertTrue(signingIn.find(phone).isPresent());
  }

  @Test
  void theDemoIsTheSameAtEachStartAndFollowsItsPassword() {
    DemoStudio.People people = demo.ensure("Tidewrack", "first password");
    PersonId crew = signed("crew@demo.example", "first password");
    database
        .open()
        .inStudio(
            DemoStudio.ID,
            Asker.whole(people.owner().person().id()),
            in -> new Members(in).remove(crew));
    database
        .open()
        .anonymous(
            in -> {
              SecondFactors factors = new SecondFactors(in);
              factors.offer(crew, SealedSecret.inTheOpen(database.ids().nextDeviceSecret()));
              return factors.confirm(crew, in.now(), 1, List.of());
            });
    assertEquals(people, demo.ensure("Tidewrack", "second password"));
    assertEquals(crew, signed("crew@demo.example", "second password"));
    assertThrows(Refused.class, () -> signIn("crew@demo.example", "first password"));
    List<Membership> memberships =
        database.open().asPerson(Asker.whole(crew), in -> new lampwright.store.Studios(in).list());
    assertEquals(List.of(Role.CREW), memberships.stream().map(Membership::role).toList());
  }

  @Test
  void aPasswordUnderOlderParametersIsTakenAndHashedAnew() {
    Argon2Function older = Argon2Function.getInstance(8 * 1024, 1, 1, 32, Argon2.ID);
    String hash = older.hash("an older password").getResult();
    PersonId person = new PersonId(database.ids().next());
    database
        .open()
        .anonymous(in -> new People(in).create(person, "old@light.example", "Old", hash));
    assertEquals(person, signed("old@light.example", "an older password"));
    String now =
        database
            .open()
            .anonymous(in -> new People(in).findByEmail("old@light.example").orElseThrow())
            .passwordHash();
    assertTrue(now.startsWith("$argon2id$v=19$m=19456,t=2,p=1$"), now);
    assertEquals(person, signed("old@light.example", "an older password"));
  }

  private String signIn(String email, String password) {
    return signingIn.signIn(email, password, Visit.from("192.0.2.1")).token();
  }

  private PersonId signed(String email, String password) {
    return signingIn.find(signIn(email, password)).orElseThrow().person().id();
  }
}
