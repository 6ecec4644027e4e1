package lampwright.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SealTest {

  private static final PersonId IMKE = new PersonId("imke0000");
  private static final PersonId TOVE = new PersonId("tove0000");

  private final SecureRandom random = new SecureRandom();
  private final DeviceSecret secret = new Ids(random).nextDeviceSecret();
  private final Seal seal = Seal.of(key(7), random);

  private static byte[] key(int each) {
    byte[] key = new byte[Seal.KEY_BYTES];
    Arrays.fill(key, (byte) each);
    return key;
  }

  @Test
  void whatIsSealedIsOpenedForThePersonItIsOf() {
    SealedSecret sealed = seal.seal(IMKE, secret);
    assertEquals(Optional.of(secret), seal.open(IMKE, sealed));
    assertEquals(Optional.of(secret), Seal.of(key(7), random).open(IMKE, sealed));
    assertEquals(Optional.empty(), seal.open(TOVE, sealed), "it is not hers");
    assertFalse(sealed.hex().contains(secret.hex()));
    assertFalse((sealed + "" + secret).contains(secret.hex()));
  }

  @Test
  void noTwoSealsAreAlike() {
    assertNotEquals(seal.seal(IMKE, secret), seal.seal(IMKE, secret));
  }

  @Test
  void anotherKeyAndEveryChangedBitOpenNothing() {
    SealedSecret sealed = seal.seal(IMKE, secret);
    assertEquals(Optional.empty(), Seal.of(key(8), random).open(IMKE, sealed));
    for (int at = 0; at < sealed.bytes().length; at++) {
      byte[] changed = sealed.bytes();
      changed[at] ^= 1;
      assertEquals(
          Optional.empty(), seal.open(IMKE, SealedSecret.of(changed, sealed.under())), "at " + at);
    }
    assertEquals(Optional.empty(), seal.open(IMKE, SealedSecret.of(new byte[3], sealed.under())));
  }

  @Test
  void whatLiesOpenIsTakenAsItIs() {
    assertEquals(Optional.of(secret), seal.open(IMKE, SealedSecret.inTheOpen(secret)));
  }

  /**
   * Test case 14 of "The Galois/Counter Mode of Operation" (McGrew and Viega, 2005): key, nonce and
   * text of zeros; from memory. What stands beside the text changes the tag only.
   */
  @Test
  void itIsAesOf256BitsInGaloisCounterMode() {
    SecureRandom zeros =
        new SecureRandom() {
          @Override
          public void nextBytes(byte[] bytes) {
            Arrays.fill(bytes, (byte) 0);
          }
        };
    String sealed = Seal.of(key(0), zeros).seal(IMKE, DeviceSecret.of(new byte[16])).hex();
    assertEquals("00".repeat(12) + "cea7403d4d606b6e074ec5d3baf39d18", sealed.substring(0, 56));
    assertEquals(2 * (12 + 16 + 16), sealed.length());
  }

  @Test
  void theNameOfAKeyTellsItFromOthersAndIsNoPartOfIt() {
    assertNotEquals(seal.name(), Seal.of(key(8), random).name());
    assertTrue(seal.name().matches("[0-9a-f]{16}"));
    assertFalse(HexFormat.of().formatHex(key(7)).contains(seal.name()));
  }
}
