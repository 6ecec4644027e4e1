package lampwright.web.http;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import lampwright.tasks.Refused;

/** Percent escapes of addresses and forms, read strictly (RFC 3986, section 2.1). */
final class Escapes {

  private Escapes() {}

  /**
   * The text that escapes stand for.
   *
   * @throws Refused when an escape is malformed, or they give no UTF-8 or the character U+0000
   */
  static String decode(String escaped) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(escaped.length());
    int i = 0;
    while (i < escaped.length()) {
      int sign = escaped.indexOf('%', i);
      int plainEnd = sign < 0 ? escaped.length() : sign;
      bytes.writeBytes(escaped.substring(i, plainEnd).getBytes(StandardCharsets.UTF_8));
      i = plainEnd;
      if (sign < 0) {
        break;
      }
      int high = i + 2 < escaped.length() ? Character.digit(escaped.charAt(i + 1), 16) : -1;
      int low = i + 2 < escaped.length() ? Character.digit(escaped.charAt(i + 2), 16) : -1;
      if (high < 0 || low < 0) {
        throw Refused.notReadable("A % must be followed by two hexadecimal digits. Maybe %25?");
      }
      bytes.write(high << 4 | low);
      i += 3;
    }
    String text = utf8(bytes.toByteArray());
    if (text.indexOf('\0') >= 0) {
      throw Refused.notReadable("The character U+0000 (%00) stands for nothing here. Take it out.");
    }
    return text;
  }

  private static String utf8(byte[] bytes) {
    return StrictUtf8.decoded(
        bytes, "The escapes do not give UTF-8. Encode the text as UTF-8 first.");
  }
}
