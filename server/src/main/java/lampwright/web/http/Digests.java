package lampwright.web.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampwright.tasks.Refused;

/** Digests of what is sent (RFC 9530), by SHA-256; other ways to hash are not looked at. */
public final class Digests {

  private static final String OF_THE_WHOLE = "Repr-Digest";
  private static final String OF_WHAT_IS_SENT = "Content-Digest";
  private static final Pattern MEMBER = Pattern.compile("(?:^|,)[ \\t]*sha-256[ \\t]*=([^,]*)");
  private static final Pattern BYTES = Pattern.compile(":([A-Za-z0-9+/]{43}=):[ \\t]*");

  private Digests() {}

  /** Of a text in UTF-8, as 64 hexadecimal digits. */
  public static String sha256(String text) {
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java has SHA-256.", e);
    }
  }

  /** Tells the digest of what the answer is, or is a part of. */
  public static void tell(Context context, String sha256) {
    context.header(
        OF_THE_WHOLE,
        "sha-256=:" + Base64.getEncoder().encodeToString(HexFormat.of().parseHex(sha256)) + ":");
  }

  /**
   * Holds a body that came against the digests that were sent with it.
   *
   * @param sha256 of the body, 64 hexadecimal digits
   * @throws Refused NotReadable where they differ, or one is malformed
   */
  public static void mustMatch(Context context, String sha256) {
    mustMatch(context, OF_WHAT_IS_SENT, sha256);
    mustMatch(context, OF_THE_WHOLE, sha256);
  }

  private static void mustMatch(Context context, String name, String sha256) {
    String header = context.header(name);
    if (header == null) {
      return;
    }
    Matcher member = MEMBER.matcher(header);
    if (!member.find()) {
      return;
    }
    Matcher bytes = BYTES.matcher(member.group(1));
    if (!bytes.matches()) {
      throw Refused.notReadable(
          "The header %s must hold sha-256 as :44 characters of Base64:.".formatted(name));
    }
    if (!HexFormat.of().formatHex(Base64.getDecoder().decode(bytes.group(1))).equals(sha256)) {
      throw Refused.notReadable(
          "What came is not what %s tells of: it was damaged on its way. Send it again."
              .formatted(name));
    }
  }
}
