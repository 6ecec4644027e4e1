package lampwright.setup.adapting;

import static lampwright.document.Field.optional;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.ObjectForm;
import lampwright.engine.exposure.FNumber;
import lampwright.engine.exposure.Iso;
import lampwright.engine.exposure.ShutterTime;
import lampwright.gear.GearForms;

/** What an adaptation must not do. */
public record Limits(
    Optional<Iso> isoAtMost, Optional<FNumber> keepFNumber, Optional<ShutterTime> keepTime) {

  private static final Field<Limits, Optional<Iso>> ISO =
      optional("iso_at_most", GearForms.iso(), Limits::isoAtMost, "No higher ISO than this.");
  private static final Field<Limits, Optional<FNumber>> F_NUMBER =
      optional("keep_f_number", GearForms.fNumber(), Limits::keepFNumber, "This aperture only.");
  private static final Field<Limits, Optional<ShutterTime>> TIME =
      optional("keep_time", GearForms.shutterTime(), Limits::keepTime, "This shutter time only.");

  public static final ObjectForm<Limits> FORM =
      ObjectForm.of(
          "limits",
          "What an adaptation must not do.",
          values -> new Limits(values.get(ISO), values.get(F_NUMBER), values.get(TIME)),
          List.of(ISO, F_NUMBER, TIME));

  /** No limits beyond what the gear can do. */
  public static Limits none() {
    return new Limits(Optional.empty(), Optional.empty(), Optional.empty());
  }
}
