package lampwright.setup;

import static lampwright.document.Field.optional;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.unit.Seconds;

/**
 * The pace and the number of frames that somebody wishes for.
 *
 * @param betweenFrames from one frame to the next
 * @param frames of the whole session
 */
public record Plan(Optional<Seconds> betweenFrames, Optional<Integer> frames) {

  private static final Field<Plan, Optional<Seconds>> BETWEEN =
      optional(
          "seconds_between_frames",
          Forms.number("s")
              .moreThan(0)
              .atLeast(0.01)
              .atMost(3_600)
              .maybe(2)
              .as(Seconds::new, Seconds::value),
          Plan::betweenFrames,
          "Seconds from one frame to the next.");
  private static final Field<Plan, Optional<Integer>> FRAMES =
      optional("frames", Forms.count(1, 100_000), Plan::frames, "Frames of the whole session.");

  static final ObjectForm<Plan> FORM =
      ObjectForm.of(
          "plan",
          "The pace and the number of frames that are wished for.",
          values -> new Plan(values.get(BETWEEN), values.get(FRAMES)),
          List.of(BETWEEN, FRAMES));
}
