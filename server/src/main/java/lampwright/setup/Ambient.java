package lampwright.setup;

import static lampwright.document.Field.optional;
import static lampwright.document.Field.required;
import static lampwright.document.Field.usually;

import java.util.List;
import java.util.Optional;
import lampwright.document.Field;
import lampwright.document.Forms;
import lampwright.document.ObjectForm;
import lampwright.engine.Known;
import lampwright.engine.exposure.Ev100;
import lampwright.engine.unit.Kelvin;

/** The light that is not the heads'. */
public record Ambient(
    Ev100 level,
    Known known,
    Optional<String> how,
    Optional<Source> source,
    Optional<Kelvin> temperature) {

  /** Where the ambient light comes from. */
  public enum Source {
    SUN,
    SKY,
    LAMPS,
    MIXED
  }

  private static final Field<Ambient, Ev100> EV100 =
      required(
          "ev100",
          Forms.number("EV").atLeast(-10).atMost(20).maybe(10).as(Ev100::new, Ev100::value),
          Ambient::level,
          "The incident reading as an EV at ISO 100.");
  private static final Field<Ambient, Known> KNOWN =
      usually(
          Known.METERED,
          "known",
          SetupForms.known(),
          Ambient::known,
          "How it is known; usually metered.");
  private static final Field<Ambient, Optional<String>> HOW =
      optional("how", SetupForms.line(), Ambient::how, "How and where the reading was taken.");
  private static final Field<Ambient, Optional<Source>> SOURCE =
      optional("source", Forms.choice(Source.values()), Ambient::source, "Where it comes from.");
  private static final Field<Ambient, Optional<Kelvin>> TEMPERATURE =
      optional(
          "temperature_k",
          Forms.number("K")
              .atLeast(1_000)
              .atMost(40_000)
              .maybe(7_000)
              .as(Kelvin::new, Kelvin::value),
          Ambient::temperature,
          "Its colour temperature.");

  static final ObjectForm<Ambient> FORM =
      ObjectForm.of(
          "ambient",
          "The light that is not the heads'.",
          values ->
              new Ambient(
                  values.get(EV100),
                  values.get(KNOWN),
                  values.get(HOW),
                  values.get(SOURCE),
                  values.get(TEMPERATURE)),
          List.of(EV100, KNOWN, HOW, SOURCE, TEMPERATURE));
}
