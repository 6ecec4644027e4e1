package lampwright.web.http;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import lampwright.tasks.Refused;

/** Reads UTF-8 and nothing else: what is malformed is told, never replaced. */
final class StrictUtf8 {

  private StrictUtf8() {}

  /**
   * The text that bytes are.
   *
   * @param otherwise what is said where they are none
   * @throws Refused NotReadable where they are none
   */
  static String decoded(byte[] bytes, String otherwise) {
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .onUnmappableCharacter(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(bytes))
          .toString();
    } catch (CharacterCodingException e) {
      throw Refused.notReadable(otherwise);
    }
  }
}
