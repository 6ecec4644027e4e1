package lampwright.people;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Seals what devices make codes from under a key of the server, so that who has a copy of the
 * database alone cannot make those codes: AES-256 in Galois/Counter Mode (NIST SP 800-38D) with a
 * nonce of 96 random bits, and the person's id beside it, so that one person's cannot be put in the
 * place of another's. Nonces by chance are good for 2^32 seals under one key (section 8.3).
 */
public final class Seal {

  /** How long a key is. */
  public static final int KEY_BYTES = 32;

  private static final String CIPHER = "AES/GCM/NoPadding";
  private static final int NONCE_BYTES = 12;
  private static final int TAG_BITS = 128;
  private static final int NAME_DIGITS = 16;

  private final SecretKeySpec key;
  private final String name;
  private final SecureRandom random;

  private Seal(SecretKeySpec key, String name, SecureRandom random) {
    this.key = key;
    this.name = name;
    this.random = random;
  }

  /**
   * The seal of a key.
   *
   * @param key of {@link #KEY_BYTES}
   * @param random what nonces are taken from
   */
  public static Seal of(byte[] key, SecureRandom random) {
    if (key.length != KEY_BYTES) {
      throw new IllegalArgumentException(
          "Key (%d bytes) must have %d.".formatted(key.length, KEY_BYTES));
    }
    String name =
        SecretHash.of("lampwright sealing key\n" + HexFormat.of().formatHex(key))
            .hex()
            .substring(0, NAME_DIGITS);
    return new Seal(new SecretKeySpec(key, "AES"), name, random);
  }

  /** What tells this key from others, and nothing of it. */
  public String name() {
    return name;
  }

  /** Seals a person's. */
  public SealedSecret seal(PersonId person, DeviceSecret secret) {
    byte[] nonce = new byte[NONCE_BYTES];
    random.nextBytes(nonce);
    try {
      byte[] sealed = cipher(Cipher.ENCRYPT_MODE, person, nonce).doFinal(secret.bytes());
      byte[] all = new byte[NONCE_BYTES + sealed.length];
      System.arraycopy(nonce, 0, all, 0, NONCE_BYTES);
      System.arraycopy(sealed, 0, all, NONCE_BYTES, sealed.length);
      return SealedSecret.of(all, Optional.of(name));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every Java has AES-GCM.", e);
    }
  }

  /** A person's in the open; empty where it is sealed under another key, or is not theirs. */
  public Optional<DeviceSecret> open(PersonId person, SealedSecret kept) {
    if (kept.under().isEmpty()) {
      return Optional.of(DeviceSecret.of(kept.bytes()));
    }
    byte[] all = kept.bytes();
    if (!kept.under().get().equals(name) || all.length <= NONCE_BYTES) {
      return Optional.empty();
    }
    byte[] nonce = new byte[NONCE_BYTES];
    System.arraycopy(all, 0, nonce, 0, NONCE_BYTES);
    try {
      return Optional.of(
          DeviceSecret.of(
              cipher(Cipher.DECRYPT_MODE, person, nonce)
                  .doFinal(all, NONCE_BYTES, all.length - NONCE_BYTES)));
    } catch (GeneralSecurityException e) {
      return Optional.empty();
    }
  }

  private Cipher cipher(int mode, PersonId person, byte[] nonce) throws GeneralSecurityException {
    Cipher cipher = Cipher.getInstance(CIPHER);
    cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
    cipher.updateAAD(person.text().getBytes(StandardCharsets.UTF_8));
    return cipher;
  }
}
