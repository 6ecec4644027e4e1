package lampwright.setup.buildable;

import java.util.Optional;
import lampwright.document.Json;
import lampwright.gear.Head;
import lampwright.gear.Modifier;
import lampwright.setup.Light;

/**
 * That a light brings a reading of its own head with its own modifier. Gear is told by a 64-bit
 * print of all that its document says (FNV-1a: G. Fowler, L. C. Noll and P. Vo,
 * draft-eastlake-fnv), since a kit only asks whether it is the same.
 *
 * @param modifier empty for the head's own reflector
 */
record OwnReading(long head, Optional<Long> modifier) {

  private static final long START = 0xcbf29ce484222325L;
  private static final long PRIME = 0x100000001b3L;

  static OwnReading of(Light light) {
    return new OwnReading(print(light.head()), light.modifier().map(OwnReading::print));
  }

  static long print(Head head) {
    return print(Json.print(Head.FORM.write(head)));
  }

  static long print(Modifier modifier) {
    return print(Json.print(Modifier.FORM.write(modifier)));
  }

  private static long print(String text) {
    long print = START;
    for (int i = 0; i < text.length(); i++) {
      print = (print ^ text.charAt(i)) * PRIME;
    }
    return print;
  }
}
