package lampwright.tasks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Clock;
import java.util.Set;
import lampwright.people.PersonId;
import lampwright.store.People;
import lampwright.store.TestDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A try to sign in costs the same work, counted in runs of Argon2, whoever it is for (Web Security
 * Testing Guide, IDNT-04: account enumeration).
 */
class SameWorkTest {

  private static final Visit VISIT = Visit.from("192.0.2.1");

  @RegisterExtension static final TestDatabase database = new TestDatabase();

  private final Passwords passwords = new Passwords();
  private final PasswordProof proof =
      new PasswordProof(
          database.open(),
          passwords,
          new FailedSignIns(database.open(), Clock.systemUTC()),
          new Closed(Set.of("closed@light.example")));

  private long runsOf(String email, String password) {
    long before = passwords.runs();
    Refused refused = assertThrows(Refused.class, () -> proof.prove(email, password, VISIT), email);
    assertInstanceOf(Refusal.WrongPassword.class, refused.refusal());
    return passwords.runs() - before;
  }

  private void known(String email) {
    PersonId id = new PersonId(database.ids().next());
    String hash = passwords.hash("rim light at low tide");
    database.open().anonymous(in -> new People(in).create(id, email, "Imke", hash));
  }

  @ParameterizedTest
  @CsvSource({"known@light.example", "nobody@light.example", "closed@light.example"})
  void aWrongPasswordTakesOneRunForEverybody(String email) {
    if (!email.startsWith("nobody")) {
      known(email);
    }
    assertEquals(1, runsOf(email, "a wrong guess"));
  }

  @Test
  void aPasswordThatIsTooLongTakesNoneForAnybody() {
    known("longwinded@light.example");
    String tooLong = "x".repeat(Passwords.LONGEST + 1);
    assertEquals(0, runsOf("longwinded@light.example", tooLong));
    assertEquals(0, runsOf("nobody@light.example", tooLong));
  }
}
