package lampwright.archive;

import java.time.DateTimeException;
import java.time.Instant;
import lampwright.document.Form;
import lampwright.document.Forms;
import lampwright.people.Ids;

/** How moments and ids stand in the lines of an archive: each in one way only. */
final class Moments {

  /** The id of a thing, and the key of an author. */
  static final Form<String> ID =
      Forms.text(32).like("^[0-9a-z]{4,32}$", Ids::isId, "an id, 4 to 32 small letters and digits");

  /** Universal time to the microsecond, as the database keeps it. */
  static final Form<Instant> FORM =
      Forms.text(27)
          .like(
              "^\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2}(\\.\\d{3}|\\.\\d{6})?Z$",
              Moments::isOne, "a time such as 2026-11-27T08:15:30.123456Z")
          .as(Instant::parse, Instant::toString);

  private Moments() {}

  private static boolean isOne(String text) {
    try {
      return text.length() <= 27
          && text.charAt(0) != '0'
          && Instant.parse(text).toString().equals(text);
    } catch (DateTimeException notAMoment) {
      return false;
    }
  }
}
