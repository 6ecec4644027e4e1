package lampwright.setup.takes;

import static lampwright.document.Field.list;
import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.document.Pointer;
import lampwright.document.Problems;
import lampwright.setup.LightId;

/**
 * One attempt at the picture, or one rehearsal of it.
 *
 * @param at by the clocks of the place
 * @param setupRevision of the setup as it was shot
 * @param why it was kept or not
 * @param changed since the take before
 * @param clientKey what the phone calls it, so that sending it again makes no second one
 */
public record Take(
    Kind kind,
    OffsetDateTime at,
    int setupRevision,
    Kept kept,
    Optional<String> why,
    Optional<String> changed,
    List<TakeReading> readings,
    String clientKey) {

  /** What it was. */
  public enum Kind {
    TAKE,
    RUN_THROUGH
  }

  /** Whether the picture is kept. */
  public enum Kept {
    YES,
    NO,
    UNDECIDED
  }

  private static final int LONGEST_TEXT = 4_000;

  private static final Field<Take, Kind> KIND =
      usually(
          Kind.TAKE,
          "kind",
          Forms.choice(Kind.values()),
          Take::kind,
          "A take, which is usual, or a run-through with a stand-in.");
  private static final Field<Take, OffsetDateTime> AT =
      required(
          "at",
          Forms.dateTime(),
          Take::at,
          "When, by the clocks of the place, such as 2025-09-12T19:13:00+01:00.");
  private static final Field<Take, Integer> SETUP_REVISION =
      required(
          "setup_revision",
          Forms.count(1, 999_999_999),
          Take::setupRevision,
          "The revision of the setup that was shot.");
  private static final Field<Take, Kept> KEPT =
      usually(
          Kept.UNDECIDED,
          "kept",
          Forms.choice(Kept.values()),
          Take::kept,
          "Whether the picture is kept; usually undecided.");
  private static final Field<Take, Optional<String>> WHY =
      optional("why", Forms.text(LONGEST_TEXT), Take::why, "Why it was kept or not.");
  private static final Field<Take, Optional<String>> CHANGED =
      optional(
          "changed", Forms.text(LONGEST_TEXT), Take::changed, "What changed since the one before.");
  private static final Field<Take, List<TakeReading>> READINGS =
      list(
          "readings",
          TakeReading.FORM,
          40,
          Take::readings,
          "What the meter gave, each light once.");
  private static final Field<Take, String> CLIENT_KEY =
      required(
          "client_key",
          Forms.text(64)
              .like(
                  "^[A-Za-z0-9_-]{8,64}$",
                  key -> key.matches("[A-Za-z0-9_-]{8,64}"),
                  "8 to 64 letters, digits, hyphens and underscores"),
          Take::clientKey,
          "What the sender calls it: sending the same again makes no second take.");

  /** The take as a document. */
  public static final ObjectForm<Take> FORM =
      ObjectForm.<Take>of(
              "take",
              "One attempt at the picture, or one rehearsal of it. Its readings are of different"
                  + " lights.",
              values ->
                  new Take(
                      values.get(KIND),
                      values.get(AT),
                      values.get(SETUP_REVISION),
                      values.get(KEPT),
                      values.get(WHY),
                      values.get(CHANGED),
                      values.get(READINGS),
                      values.get(CLIENT_KEY)),
              List.of(KIND, AT, SETUP_REVISION, KEPT, WHY, CHANGED, READINGS, CLIENT_KEY))
          .checked(Take::check);

  private static void check(Take take, Pointer at, Problems problems) {
    Set<LightId> read = new HashSet<>();
    for (int i = 0; i < take.readings.size(); i++) {
      LightId light = take.readings.get(i).light();
      if (!read.add(light)) {
        problems.add(
            at.field("readings").item(i).field("light"),
            "Light (\"" + light + "\") has a reading already. Keep the last one.");
      }
    }
  }

  /** The day by the clocks of the place. */
  public LocalDate day() {
    return at.toLocalDate();
  }

  /** The same at another time. */
  public Take withAt(OffsetDateTime time) {
    return new Take(kind, time, setupRevision, kept, why, changed, readings, clientKey);
  }

  /** What it is called: "Take 3", "Run-through 1". */
  public String label(int number) {
    return (kind == Kind.TAKE ? "Take " : "Run-through ") + number;
  }
}
