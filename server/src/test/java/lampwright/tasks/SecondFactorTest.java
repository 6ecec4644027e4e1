package lampwright.tasks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.security.SecureRandom;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import lampwright.people.DeviceForTests;
import lampwright.people.Person;
import lampwright.people.PersonId;
import lampwright.people.RecoveryCode;
import lampwright.people.Seal;
import lampwright.store.People;
import lampwright.store.TestDatabase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.function.Executable;

/** A person who has switched their second factor on, by a clock that the test moves. */
class SecondFactorTest {

  private static final String PASSWORD = "rim light at low tide";
  private static final Visit VISIT = Visit.from("192.0.2.1");

  private static final AtomicReference<Instant> TIME =
      new AtomicReference<>(Instant.parse("2031-03-01T20:00:00Z"));
  private static final Clock CLOCK = ((InstantSource) TIME::get).withZone(ZoneOffset.UTC);

  @RegisterExtension static final TestDatabase database = new TestDatabase(CLOCK);

  private static final Passwords PASSWORDS = new Passwords(64, 1);
  private static final String HASH = PASSWORDS.hash(PASSWORD);

  private static final SecureRandom RANDOM = new SecureRandom();
  private static final Seal SEAL = Seal.of(new byte[Seal.KEY_BYTES], RANDOM);

  private final Closed closed = new Closed(Set.of());
  private final FailedSignIns failures = new FailedSignIns(database.open(), CLOCK);
  private final SigningIn signingIn =
      new SigningIn(database.open(), database.ids(), PASSWORDS, failures, closed, SEAL);
  private final SecondFactorKeeping factors =
      new SecondFactorKeeping(database.open(), database.ids(), PASSWORDS, failures, closed, SEAL);

  private final String email = database.ids().next() + "@light.example";
  private DeviceForTests device = new DeviceForTests("");
  private List<RecoveryCode> recovery = List.of();
  private String first = "";
  private String elsewhere = "";
  private String here = "";

  @BeforeEach
  void itIsSwitchedOn() {
    PersonId id = new PersonId(database.ids().next());
    database.open().anonymous(in -> new People(in).create(id, email, "Imke", HASH));
    elsewhere = signingIn.signIn(email, PASSWORD, VISIT).token();
    first = signingIn.signIn(email, PASSWORD, VISIT).token();
    Caller caller = caller(first);
    SecondFactorKeeping.Offer offer = factors.offer(caller, PASSWORD, VISIT);
    device = new DeviceForTests(offer.secret().base32());
    assertFalse(signingIn.signIn(email, PASSWORD, VISIT).waitsForCode(), "it is offered only");
    SecondFactorKeeping.SwitchedOn on = factors.confirm(caller, first, code(), VISIT);
    recovery = on.recoveryCodes();
    here = on.session();
  }

  private Caller caller(String token) {
    return signingIn.find(token).orElseThrow();
  }

  private String code() {
    return device.codeAt(CLOCK.instant());
  }

  private static void pass(Duration duration) {
    TIME.updateAndGet(now -> now.plus(duration));
  }

  private static void assertRefused(Class<? extends Refusal> why, Executable what) {
    assertInstanceOf(why, assertThrows(Refused.class, what).refusal());
  }

  @Test
  void switchingItOnGivesTheSessionAnotherTokenAndEndsAllOthers() {
    assertTrue(signingIn.find(here).isPresent());
    assertTrue(signingIn.find(first).isEmpty());
    assertTrue(signingIn.find(elsewhere).isEmpty());
    assertEquals(10, Set.copyOf(recovery).size());
    assertEquals(10, factors.get(caller(here)).recoveryCodes());
  }

  @Test
  void afterThePasswordASessionWaitsFiveMinutesAndLetsNobodyIn() {
    pass(Duration.ofSeconds(30));
    SigningIn.Session waiting = signingIn.signIn(email, PASSWORD, VISIT);
    assertTrue(waiting.waitsForCode());
    assertTrue(signingIn.isWaiting(waiting.token()));
    assertTrue(signingIn.find(waiting.token()).isEmpty());
    SigningIn.Session full = signingIn.giveCode(waiting.token(), code(), VISIT);
    assertTrue(signingIn.find(full.token()).isPresent());
    assertTrue(signingIn.find(waiting.token()).isEmpty(), "the token is another");
    assertFalse(signingIn.isWaiting(waiting.token()));
    String late = signingIn.signIn(email, PASSWORD, VISIT).token();
    pass(SigningIn.CODE_WAIT);
    assertFalse(signingIn.isWaiting(late));
    assertRefused(Refusal.NotSignedIn.class, () -> signingIn.giveCode(late, code(), VISIT));
  }

  @Test
  void aProgramIsToldThatACodeIsNeededOnlyAfterTheRightPassword() {
    pass(Duration.ofSeconds(30));
    assertRefused(
        Refusal.WrongPassword.class,
        () -> signingIn.signIn(email, "not the password", Optional.empty(), VISIT));
    assertRefused(
        Refusal.CodeNeeded.class, () -> signingIn.signIn(email, PASSWORD, Optional.empty(), VISIT));
    assertRefused(
        Refusal.WrongCode.class,
        () -> signingIn.signIn(email, PASSWORD, Optional.of("12345"), VISIT));
    assertFalse(signingIn.signIn(email, PASSWORD, Optional.of(code()), VISIT).waitsForCode());
  }

  @Test
  void eachCodeLetsInOnce() {
    assertRefused(
        Refusal.WrongCode.class,
        () -> signingIn.signIn(email, PASSWORD, Optional.of(code()), VISIT));
    pass(Duration.ofSeconds(30));
    String code = code();
    signingIn.signIn(email, PASSWORD, Optional.of(code), VISIT);
    assertRefused(
        Refusal.WrongCode.class, () -> signingIn.signIn(email, PASSWORD, Optional.of(code), VISIT));
    String recoveryCode = recovery.getFirst().grouped();
    signingIn.signIn(email, PASSWORD, Optional.of(recoveryCode), VISIT);
    assertRefused(
        Refusal.WrongCode.class,
        () -> signingIn.signIn(email, PASSWORD, Optional.of(recoveryCode), VISIT));
    assertEquals(9, factors.get(caller(here)).recoveryCodes());
  }

  @Test
  void whoKnowsThePasswordCannotGuessCodesByGivingItAgainAndAgain() {
    int looked = 0;
    for (int i = 0; i < 8; i++) {
      String waiting = signingIn.signIn(email, PASSWORD, VISIT).token();
      Refused refused =
          assertThrows(Refused.class, () -> signingIn.giveCode(waiting, "000000", VISIT));
      looked += refused.refusal() instanceof Refusal.WrongCode ? 1 : 0;
    }
    assertEquals(5, looked);
    pass(Duration.ofSeconds(30));
    assertRefused(
        Refusal.TooMany.class, () -> signingIn.signIn(email, PASSWORD, Optional.of(code()), VISIT));
  }

  @Test
  void whatOthersGuessDoesNotKeepAPersonOutOfTheBrowserThatKnowsThem() {
    pass(Duration.ofSeconds(30));
    String waiting = signingIn.signIn(email, PASSWORD, VISIT).token();
    String browser = signingIn.giveCode(waiting, code(), VISIT).knownBy().orElseThrow();
    for (int i = 0; i < 50; i++) {
      failures.judge(new FailedSignIns.Try(email, "198.51.100." + i, Optional.empty()), false);
    }
    Visit onTheRoad = Visit.from("203.0.113.5");
    assertRefused(Refusal.TooMany.class, () -> signingIn.signIn(email, PASSWORD, onTheRoad));
    Visit known = new Visit("203.0.113.5", "", Optional.empty(), Optional.of(browser));
    assertTrue(signingIn.signIn(email, PASSWORD, known).waitsForCode());
    Visit forged = new Visit("203.0.113.5", "", Optional.empty(), Optional.of("made up"));
    assertRefused(Refusal.TooMany.class, () -> signingIn.signIn(email, PASSWORD, forged));
  }

  @Test
  void aLinkLetsNobodyPastTheCode() {
    Person person = caller(here).person();
    SigningIn.Session begun = signingIn.begin(person);
    assertTrue(begun.waitsForCode());
    assertTrue(signingIn.find(begun.token()).isEmpty());
  }

  @Test
  void switchingItOffTakesPasswordAndCode() {
    pass(Duration.ofSeconds(30));
    Caller caller = caller(here);
    assertRefused(
        Refusal.Invalid.class,
        () -> factors.switchOff(caller, here, "not the password", code(), VISIT));
    assertRefused(
        Refusal.Invalid.class, () -> factors.switchOff(caller, here, PASSWORD, "000000", VISIT));
    String next = factors.switchOff(caller, here, PASSWORD, code(), VISIT);
    assertTrue(signingIn.find(here).isEmpty(), "the token is another");
    assertTrue(signingIn.find(next).isPresent());
    assertEquals(new SecondFactorKeeping.Standing(Optional.empty(), 0), factors.get(caller(next)));
    assertFalse(signingIn.signIn(email, PASSWORD, VISIT).waitsForCode());
    assertRefused(
        Refusal.Clash.class, () -> factors.switchOff(caller(next), next, PASSWORD, "", VISIT));
  }

  @Test
  void underAnotherKeyOfTheServerRecoveryCodesLetInAndDevicesDoNot() {
    pass(Duration.ofSeconds(30));
    byte[] other = new byte[Seal.KEY_BYTES];
    other[0] = 1;
    SigningIn restored =
        new SigningIn(
            database.open(), database.ids(), PASSWORDS, failures, closed, Seal.of(other, RANDOM));
    assertRefused(
        Refusal.WrongCode.class,
        () -> restored.signIn(email, PASSWORD, Optional.of(code()), VISIT));
    restored.signIn(email, PASSWORD, Optional.of(recovery.getFirst().text()), VISIT);
    assertFalse(signingIn.signIn(email, PASSWORD, Optional.of(code()), VISIT).waitsForCode());
  }

  @Test
  void noCopyOfTheDatabaseHoldsTheKeyOfADevice() throws SQLException {
    assertEquals(
        List.of("0"),
        database.sql(
            "select count(*) from lampwright.second_factor where sealed_under is null or"
                + " length(secret) < 48"));
  }

  @Test
  void whoKnowsThePasswordAndHasASessionCannotGuessCodesThereEither() {
    Caller caller = caller(here);
    int looked = 0;
    for (int i = 0; i < 8; i++) {
      Refused refused =
          assertThrows(
              Refused.class, () -> factors.switchOff(caller, here, PASSWORD, "000000", VISIT));
      looked += refused.refusal() instanceof Refusal.Invalid ? 1 : 0;
    }
    assertEquals(5, looked);
  }

  @Test
  void newRecoveryCodesTakeThePlaceOfTheOldOnes() {
    pass(Duration.ofSeconds(30));
    Caller caller = caller(here);
    assertRefused(
        Refusal.Invalid.class,
        () -> factors.remakeRecoveryCodes(caller, "not the password", code(), VISIT));
    assertRefused(
        Refusal.Invalid.class,
        () -> factors.remakeRecoveryCodes(caller, PASSWORD, "000000", VISIT));
    assertEquals(10, factors.get(caller).recoveryCodes(), "what was refused changed nothing");
    List<RecoveryCode> second = factors.remakeRecoveryCodes(caller, PASSWORD, code(), VISIT);
    assertRefused(
        Refusal.Invalid.class,
        () -> factors.remakeRecoveryCodes(caller, PASSWORD, recovery.getFirst().grouped(), VISIT));
    List<RecoveryCode> third =
        factors.remakeRecoveryCodes(caller, PASSWORD, second.getFirst().grouped(), VISIT);
    assertEquals(10, factors.get(caller).recoveryCodes());
    assertTrue(signingIn.find(here).isPresent(), "the session goes on");
    assertRefused(
        Refusal.WrongCode.class,
        () -> signingIn.signIn(email, PASSWORD, Optional.of(second.getLast().text()), VISIT));
    signingIn.signIn(email, PASSWORD, Optional.of(third.getLast().text()), VISIT);
    String next = factors.switchOff(caller, here, PASSWORD, third.getFirst().text(), VISIT);
    assertRefused(
        Refusal.Clash.class, () -> factors.remakeRecoveryCodes(caller(next), PASSWORD, "", VISIT));
  }

  @Test
  void anOfferWaitsAQuarterOfAnHour() {
    pass(Duration.ofSeconds(30));
    String next = factors.switchOff(caller(here), here, PASSWORD, code(), VISIT);
    Caller caller = caller(next);
    assertRefused(Refusal.Invalid.class, () -> factors.offer(caller, "not the password", VISIT));
    SecondFactorKeeping.Offer offer = factors.offer(caller, PASSWORD, VISIT);
    assertEquals(Optional.of(offer), factors.findOffer(caller));
    pass(SecondFactorKeeping.OFFER_LASTS);
    assertEquals(Optional.empty(), factors.findOffer(caller));
    assertRefused(
        Refusal.Clash.class,
        () ->
            factors.confirm(
                caller,
                next,
                new DeviceForTests(offer.secret().base32()).codeAt(CLOCK.instant()),
                VISIT));
  }

  @Test
  void theKeeperSwitchesOffWhatAPersonLost() {
    assertTrue(SecondFactorKeeping.switchOffFor(database.open(), email));
    assertTrue(signingIn.find(here).isEmpty());
    assertFalse(signingIn.signIn(email, PASSWORD, VISIT).waitsForCode());
    assertFalse(SecondFactorKeeping.switchOffFor(database.open(), email));
    assertRefused(
        Refusal.NotFound.class,
        () -> SecondFactorKeeping.switchOffFor(database.open(), "nobody@light.example"));
  }
}
