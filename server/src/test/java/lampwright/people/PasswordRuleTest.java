package lampwright.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRuleTest {

  private static final PasswordRule RULE =
      PasswordRule.knowing("imke.sorrel@light.example", "Imke Sorrel", "Tidewrack Pictures");

  /**
   * Of the kinds that head every published list of leaked passwords, such as those that the OWASP
   * ASVS 5.0 (6.2.4) asks to be checked; the examples are from memory.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "123456789012",
        "1234567890123",
        "0987654321098",
        "111111111111",
        "aaaaaaaaaaaab",
        "qwertyuiop123",
        "qwertzuiop12",
        "1q2w3e4r5t6y",
        "q1w2e3r4t5y6",
        "1qaz2wsx3edc",
        "qazwsxedcrfv",
        "asdfghjkl123",
        "abcdefghijkl",
        "zxcvbnmasdfghjkl",
        "password1234",
        "Password2024!",
        "P@ssw0rd1234",
        "passwordpassword",
        "administrator1",
        "welcome12345",
        "iloveyou1234",
        "unbelievable",
        "abcabcabcabc",
        "monkeydragon",
        "lampwright2026"
      })
  void whatHeadsTheListsOfLeakedPasswordsIsRefused(String password) {
    assertTrue(RULE.findFault(password).isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"imke.sorrel@light", "ImkeSorrel1990", "tidewrack2026", "T1dewrack-1234"})
  void whatAnybodyKnowsAboutAPersonIsRefused(String password) {
    assertTrue(RULE.findFault(password).isPresent());
  }

  /** NIST SP 800-63B, 3.1.1.2: no rules of composition; spaces and every letter are taken. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "three quiet lamps",
        "four-heads-at-dusk",
        "a password for the tests",
        "lampenfieber im watt",
        "灯火を一つずつ静かに消していく",
        "kyrvotbaldemunx",
        "8402917365528094"
      })
  void wordsThatDoNotBelongTogetherPassWithoutAnyMixtureOfSigns(String password) {
    assertEquals(Optional.empty(), RULE.findFault(password));
  }

  @Test
  void lengthIsCountedInCharactersAndNotInHalvesOfThem() {
    assertEquals(
        Optional.of("Password (11 characters) must have 12 to 200. A few words in a row are fine."),
        RULE.findFault("three quiet".substring(0, 10) + "\uD83D\uDCA1"));
    assertTrue(RULE.findFault("word ".repeat(41)).isPresent());
  }
}
